import { readAmount } from "../quantity/amount.js";
import { rowOf } from "../science/tables.js";
import { amountIn, say, take, toWrite, wordAt, type Desk, type Thing } from "./desk.js";
import { coverAtHeight, swardNames } from "./height-cover.js";
import { takeDefault } from "./own-defaults.js";
import { child, textOf, type Tree } from "./tree.js";

const USUAL_ROW = "oceanic-b";
const LEAST_TONNES = 0.5;
const MOST_TONNES = 25;

/** The nearest of cell, field and farm that has one of the keys. */
export function whoHas(things: readonly Thing[], ...keys: readonly string[]): Thing | undefined {
  return things.find((thing) => keys.some((key) => child(thing.map, key) !== undefined));
}

/** Growth by month in kg DM/ha/day, from a row and a scale, or from the tonnes a year that the ground grows. */
export function growthOf(desk: Desk, things: readonly Thing[], subject: string): readonly number[] {
  const who = whoHas(things, "growth");
  const names = desk.tables.growth.map((row) => row.key);
  const chosen = who ? wordAt(desk, child(who.map, "growth")!, `${who.name}: growth`, names) : undefined;
  if (!who) {
    const usual = rowOf(desk.tables.growth, USUAL_ROW);
    take(desk, "growth", subject, USUAL_ROW, usual.source, usual.status);
  }
  const row = rowOf(desk.tables.growth, chosen ?? USUAL_ROW);
  const scale = scaleOf(desk, things, subject, row.total);
  // 4 x 0.55 must read 2.2, not 2.2000000000000002.
  return row.value.map((growth) => Number((growth * scale).toPrecision(12)));
}

function scaleOf(desk: Desk, things: readonly Thing[], subject: string, total: number): number {
  const who = whoHas(things, "growth-scale", "grows");
  if (!who) return takeDefault(desk, "growth-scale", subject);
  const grows = child(who.map, "grows");
  if (!grows) return amountIn(desk, who, "growth-scale") ?? Number.NaN;
  if (child(who.map, "growth-scale")) {
    say(desk, grows, { code: "two-ways", found: `${who.name} has growth-scale and grows`, allowed: "one of them says how much grows", next: "take out growth-scale" });
  }
  return tonnesAYear(desk, who, grows) / total;
}

/** "6.5 t/ha" of dry matter a year, as kg/ha. */
function tonnesAYear(desk: Desk, who: Thing, node: Tree): number {
  const text = textOf(node);
  if (text === undefined) return Number.NaN;
  const parts = /^(.*?)\s*\/\s*(ha|ac)$/.exec(text);
  const amount = readAmount(parts?.[1] ?? text, "weight");
  const acre = readAmount("1 ac", "area");
  if (!parts || !amount.ok) {
    const found = amount.ok ? `${text} does not say on how much ground` : amount.found;
    const meant = amount.ok ? `${text}/ha` : amount.next && `${amount.next}/${parts?.[2] ?? "ha"}`;
    say(desk, node, { code: amount.ok ? "unit-half" : amount.code, found: `${who.name}: grows: ${found}`, allowed: "what grows in a year is in t/ha, kg/ha or lb/ac of dry matter", next: toWrite(meant) });
    return Number.NaN;
  }
  const kgPerHa = amount.value / (parts[2] === "ac" && acre.ok ? acre.value : 1);
  if (kgPerHa >= LEAST_TONNES * 1000 && kgPerHa <= MOST_TONNES * 1000) return kgPerHa;
  say(desk, node, { code: "out-of-reach", found: `${who.name}: grows is ${text}`, allowed: `ground grows ${LEAST_TONNES} to ${MOST_TONNES} t/ha of dry matter a year`, next: "write a figure within that" });
  return Number.NaN;
}

/** The sward's name, of cell, field or farm. */
export function swardOf(desk: Desk, things: readonly Thing[]): string | undefined {
  const who = whoHas(things, "sward");
  return who && wordAt(desk, child(who.map, "sward")!, `${who.name}: sward`, swardNames(desk.tables));
}

/** Standing cover, kg DM/ha, from a cover or a height; undefined when neither is written. */
export function coverOf(desk: Desk, things: readonly Thing[], subject: string): number | undefined {
  const who = whoHas(things, "cover", "height");
  if (!who) return undefined;
  const height = child(who.map, "height");
  if (!height) return amountIn(desk, who, "cover") ?? Number.NaN;
  if (child(who.map, "cover")) {
    say(desk, height, { code: "two-ways", found: `${who.name} has cover and height`, allowed: "one of them says how much stands", next: "take out height" });
  }
  const metres = amountIn(desk, who, "height");
  if (metres === undefined || Number.isNaN(metres)) return Number.NaN;
  const cover = coverAtHeight(metres, swardOf(desk, things), desk.tables);
  take(desk, "cover by height", subject, `${Math.round(cover.kgPerHa)} kg/ha at ${textOf(height)}`, cover.source, cover.status);
  return cover.kgPerHa;
}
