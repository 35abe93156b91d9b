import { rowOf } from "../science/tables.js";
import { daysBetween, type Span } from "../quantity/calendar.js";
import { amountIn, nameAt, say, take, type Desk, type Thing } from "./desk.js";
import { OWN, takeDefault, takeOwn } from "./own-defaults.js";
import { readAnimals } from "./read-animals.js";
import { hereOf, outOf, runsWithOf } from "./read-presence.js";
import { textsIn, type Pen } from "./read-pens.js";
import { isBird, isGrazer, KINDS, type Group, type Kind, type Strip } from "./scenario.js";
import type { Land } from "./read-land.js";
import type { GroupYards } from "./read-yards.js";
import { child, entriesOf, itemsOf, textOf, type Entry, type MapNode } from "./tree.js";

/** What groups are read against. */
export interface Around {
  readonly season: Span;
  readonly land: Land;
  readonly pens: readonly Pen[];
  readonly yards: GroupYards;
  readonly letters: Readonly<Record<string, string>>;
  readonly names: readonly string[];
}

/** The kinds of all groups by name; one without a known kind is left out, its fault has been said. */
export function kindsOf(root: MapNode): Readonly<Record<string, Kind>> {
  const kinds = entriesOf(child(root, "groups")).flatMap((entry) => {
    const kind = KINDS.find((k) => k === textOf(child(entry.value, "kind")));
    return kind ? [[entry.key, kind] as const] : [];
  });
  return Object.fromEntries(kinds);
}

/** Reads every group that has a kind, in the order written. */
export function readGroups(desk: Desk, root: MapNode, around: Around): readonly Group[] {
  const kinds = kindsOf(root);
  return entriesOf(child(root, "groups")).flatMap((entry) => (kinds[entry.key] === undefined ? [] : [readGroup(desk, entry, kinds[entry.key]!, around)]));
}

function readGroup(desk: Desk, entry: Entry, kind: Kind, around: Around): Group {
  const thing: Thing = { map: entry.value, name: entry.key };
  const here = hereOf(desk, thing, entry, around.season);
  const first = here[0];
  const animals = readAnimals(desk, thing, kind, first ? daysBetween(first.firstDay, first.lastDay) : 0);
  const pen = penOf(desk, thing, entry, kind, around.pens);
  return {
    name: entry.key,
    letter: around.letters[entry.key]!,
    kind,
    ...animals,
    here,
    out: outOf(desk, thing, around.season),
    strip: pen ? withNeed(desk, kind, pen.strip) : kind === "pigs" ? pigStrip(desk, thing, animals.head) : null,
    follows: otherGroup(desk, thing, "follows", around),
    runsWith: runsWithOf(desk, thing, around.names.filter((name) => name !== entry.key), around.season),
    yard: around.yards.yardOf[entry.key]!,
    mayEnter: mayEnterOf(desk, thing, around.land),
    ...handlingOf(desk, thing, kind, pen, animals.animalClass),
  };
}

/** Hens in a net have a published need of ground; of other birds nets none is known. */
function withNeed({ tables }: Desk, kind: Kind, strip: Strip): Strip {
  return kind === "layers" && strip.nets > 0 ? { ...strip, needM2PerHead: rowOf(tables.poultry, "layers.in-use").value } : strip;
}

function penOf(desk: Desk, thing: Thing, entry: Entry, kind: Kind, pens: readonly Pen[]): Pen | undefined {
  const node = child(thing.map, "pen");
  if (node) {
    const name = nameAt(desk, node, `${thing.name}: pen`, "pens", pens.map((pen) => pen.name));
    return pens.find((pen) => pen.name === name);
  }
  if (isBird(kind)) {
    say(desk, entry.at, { code: "pen-missing", found: `${thing.name} are birds without a pen`, allowed: "birds go out in a pen, or in a house with a net round it", next: "write pen: and the pen's name, and the pen under pens" });
  }
  return undefined;
}

/** Pigs' strip: written, or as much ground as their days on it come to at the usual pressure. */
function pigStrip(desk: Desk, thing: Thing, head: number): Strip {
  const days = amountIn(desk, thing, "strip-days") ?? takeDefault(desk, "pigs.strip-days", thing.name, "strip-days");
  const usual = (head * days) / OWN.pigDaysPerHa;
  const areaHa = amountIn(desk, thing, "strip") ?? takeOwn(desk, "strip", thing.name, usual, `${Math.round(usual * 10_000)} m2, ${OWN.pigDaysPerHa} pig-days/ha`);
  return { areaHa, days, movedBy: "hand", stepMinutes: OWN.pigsStripMinutes, nets: 0, pen: null };
}

function otherGroup(desk: Desk, thing: Thing, key: string, around: Around): string | null {
  const node = child(thing.map, key);
  return (node && nameAt(desk, node, `${thing.name}: ${key}`, "groups", around.names.filter((name) => name !== thing.name))) ?? null;
}

/** Cells by name or by field, in walk order. */
function mayEnterOf(desk: Desk, thing: Thing, land: Land): readonly string[] {
  const words = [...land.cells.map((cell) => cell.name), ...land.fields.map((field) => field.name)];
  const named = (key: string): readonly string[] => itemsOf(child(thing.map, key)).flatMap((node) => nameAt(desk, node, `${thing.name}: ${key}`, "cells and fields", words) ?? []);
  const [only, not] = [named("only-in"), named("not-in")];
  const onlyWritten = textsIn(thing, "only-in").length > 0;
  const fits = (names: readonly string[], cell: { readonly name: string; readonly field: string }): boolean => names.includes(cell.name) || names.includes(cell.field);
  return land.cells
    .filter((cell) => !cell.notFor.includes(thing.name) && (!onlyWritten || fits(only, cell)) && !fits(not, cell))
    .map((cell) => cell.name);
}

type Handling = Pick<Group, "moveMinutes" | "setMinutes" | "peopleToMove" | "needsTow">;

function handlingOf(desk: Desk, thing: Thing, kind: Kind, pen: Pen | undefined, animalClass: string): Handling {
  const half = OWN.pigsCellMinutes / 2;
  const [move, set] = pen ? [pen.moveMinutes, pen.setMinutes] : isGrazer(kind) || kind !== "pigs" ? [OWN.moveMinutes, OWN.setMinutes] : [half, half];
  const needsTow = pen?.strip.movedBy === "tow";
  const people = needsTow || animalClass === "bull" ? 2 : 1;
  return {
    moveMinutes: amountIn(desk, thing, "move-takes") ?? takeOwn(desk, "move-takes", thing.name, move, `${move} min`),
    setMinutes: amountIn(desk, thing, "set-takes") ?? takeOwn(desk, "set-takes", thing.name, set, `${set} min`),
    peopleToMove: amountIn(desk, thing, "people-to-move") ?? peopleTaken(desk, thing, people),
    needsTow,
  };
}

function peopleTaken(desk: Desk, thing: Thing, people: number): number {
  take(desk, "people-to-move", thing.name, String(people), people === 2 ? "common practice: never alone with a bull or a tow" : "judgement", "judgement");
  return people;
}
