import { readAmount } from "../quantity/amount.js";
import { classesOf, classRow, rowOf, type ClassRow } from "../science/tables.js";
import { AMOUNT_KEYS } from "./amount-keys.js";
import { amountAt, amountIn, say, take, wordAt, type Desk, type Thing } from "./desk.js";
import { takeOwn } from "./own-defaults.js";
import { dayAt } from "./read-days.js";
import { isBird, type Group, type Kind } from "./scenario.js";
import { child, entriesOf, textOf } from "./tree.js";

/** What one group's animals are, weigh, eat and drop. */
export type Animals = Pick<
  Group,
  "animalClass" | "head" | "weightKg" | "gainKgPerDay" | "young" | "intake" | "nitrogenKgPerHeadDay" | "youngNitrogenKgPerHeadDay" | "waterLPerHeadDay"
>;

/**
 * @param daysHere days of the first span here: nitrogen and water are taken at the weight half-way through it
 */
export function readAnimals(desk: Desk, thing: Thing, kind: Kind, daysHere: number): Animals {
  const animalClass = classOf(desk, thing, kind);
  const head = headOf(desk, thing);
  const weightKg = weightOf(desk, thing, "weight", kind, animalClass) ?? Number.NaN;
  const gainKgPerDay = amountIn(desk, thing, "gain") ?? takeOwn(desk, "gain", thing.name, 0, "0 kg/d");
  const young = youngOf(desk, thing, kind, animalClass, head);
  const midKg = Number.isNaN(weightKg + gainKgPerDay) ? 0 : Math.max(0, weightKg + (gainKgPerDay * daysHere) / 2);
  const rate = (key: "nitrogen" | "water-need", rows: readonly ClassRow[]): number =>
    amountIn(desk, thing, key) ?? takeClass(desk, key, thing.name, classRow(rows, kind, classKey(kind, animalClass), midKg));
  return {
    animalClass,
    head,
    weightKg,
    gainKgPerDay,
    young,
    intake: intakeOf(desk, thing, kind, animalClass, young !== null),
    nitrogenKgPerHeadDay: rate("nitrogen", desk.tables.nitrogen),
    youngNitrogenKgPerHeadDay: young === null ? 0 : youngNitrogen(desk, thing, kind),
    waterLPerHeadDay: rate("water-need", desk.tables.water),
  };
}

function classKey(kind: Kind, animalClass: string): string | null {
  return isBird(kind) ? null : animalClass;
}

function takeClass(desk: Desk, key: string, subject: string, row: ClassRow): number {
  const value = row.unit === "share" ? `${Number((row.value * 100).toPrecision(6))} % of live weight` : `${row.value} ${row.unit}`;
  take(desk, key, subject, value, row.source, row.status);
  return row.value;
}

/** Birds have no class: theirs is their kind. A class that is not known has been said, and the first stands in for it. */
function classOf(desk: Desk, thing: Thing, kind: Kind): string {
  const node = child(thing.map, "class");
  const classes = classesOf(desk.tables, kind);
  if (classes.length === 0) {
    if (node) say(desk, node, { code: "key-unknown", found: `${thing.name}: birds have no class`, allowed: "their kind says it all", next: "take class out" });
    return kind;
  }
  if (node) return wordAt(desk, node, `${thing.name}: class`, classes) ?? classes[0]!;
  say(desk, thing.map ?? { file: "", line: 1, column: 1 }, { code: "key-missing", found: `${thing.name} has no class`, allowed: `classes of ${kind}: ${classes.join(", ")}`, next: `write class: ${classes[0]!}` });
  return classes[0]!;
}

function headOf(desk: Desk, thing: Thing): number {
  const node = child(thing.map, "head");
  if (node === undefined || textOf(node) !== "0") return amountIn(desk, thing, "head") ?? Number.NaN;
  say(desk, node, { code: "head-none", found: `${thing.name} has no animals`, allowed: "a group has one head or more", next: `take the group out (in a change: ${thing.name}: null)` });
  return Number.NaN;
}

/** A weight within what animals of the class weigh. */
function weightOf(desk: Desk, thing: Thing, key: "weight" | "young-weight", kind: Kind, animalClass: string): number | undefined {
  const node = child(thing.map, key);
  if (node === undefined) return undefined;
  const name = key === "young-weight" ? "young" : classKey(kind, animalClass);
  const row = desk.tables.weights.find((r) => r.key === (name === null ? kind : `${kind}.${name}`));
  const reach = row ? { ...AMOUNT_KEYS.weight, least: row.least, most: row.most, reach: `${row.least} to ${row.most} kg for ${row.appliesTo.split(",")[0]!}` } : AMOUNT_KEYS.weight;
  return textOf(node) === undefined ? undefined : amountAt(desk, node, `${thing.name}: ${key}`, reach);
}

/** Young with their mothers: one each for a class that has them, none for another unless they are written. */
function youngOf(desk: Desk, thing: Thing, kind: Kind, animalClass: string, head: number): Group["young"] {
  if (isBird(kind)) return noYoung(desk, thing);
  const written = amountIn(desk, thing, "young");
  const mothers = animalClass.includes(" with ");
  if (written === 0 || (written === undefined && !mothers)) return null;
  const number = written ?? takeOwn(desk, "young", thing.name, head, `${head}, one each`);
  const row = desk.tables.weights.find((r) => r.key === `${kind}.young`);
  const weightKg = weightOf(desk, thing, "young-weight", kind, animalClass) ?? youngWeight(desk, thing, row);
  const gainKgPerDay = amountIn(desk, thing, "young-gain") ?? takeOwn(desk, "young-gain", thing.name, 0, "0 kg/d");
  const last = child(thing.map, "young-until");
  const lastDay = last && dayAt(desk, last, `${thing.name}: young-until`);
  return { head: number, weightKg, gainKgPerDay, ...(lastDay === undefined ? {} : { lastDay }) };
}

const YOUNG_KEYS = ["young", "young-weight", "young-gain", "young-until", "young-nitrogen"];

function noYoung(desk: Desk, thing: Thing): null {
  for (const { key, at } of entriesOf(thing.map)) {
    if (YOUNG_KEYS.includes(key)) say(desk, at, { code: "key-unknown", found: `${thing.name}: birds have no ${key}`, allowed: "chicks are a group of their own", next: `take ${key} out` });
  }
  return null;
}

function youngWeight(desk: Desk, thing: Thing, row: { readonly value: number; readonly source: string; readonly status: string } | undefined): number {
  if (row) take(desk, "young-weight", thing.name, `${row.value} kg`, row.source, row.status);
  return row?.value ?? 0;
}

function youngNitrogen(desk: Desk, thing: Thing, kind: Kind): number {
  return amountIn(desk, thing, "young-nitrogen") ?? takeClass(desk, "young-nitrogen", thing.name, rowOf(desk.tables.nitrogen, `${kind}.young`));
}

/** A share of live weight, or kg of dry matter a head and day. */
function intakeOf(desk: Desk, thing: Thing, kind: Kind, animalClass: string, young: boolean): Group["intake"] {
  const node = child(thing.map, "intake");
  const text = textOf(node);
  const youngShare = (): number => (young ? takeClass(desk, "young intake", thing.name, rowOf(desk.tables.intake, `${kind}.young`)) : 0);
  if (node === undefined || text === undefined) {
    const row = classRow(desk.tables.intake, kind, classKey(kind, animalClass), 0);
    const usual = takeClass(desk, "intake", thing.name, row);
    return row.unit === "share" ? { shareOfWeight: usual, youngShareOfWeight: youngShare() } : { kgDmPerHeadDay: usual };
  }
  if (readAmount(text, "share").ok) {
    return { shareOfWeight: amountAt(desk, node, `${thing.name}: intake`, AMOUNT_KEYS["intake share"]), youngShareOfWeight: youngShare() };
  }
  return { kgDmPerHeadDay: amountAt(desk, node, `${thing.name}: intake`, AMOUNT_KEYS["intake rate"]) };
}
