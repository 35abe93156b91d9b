import type { Span } from "../quantity/calendar.js";
import { amountIn, flagIn, nameAt, say, take, type Desk, type Thing } from "./desk.js";
import { OWN, takeOwn } from "./own-defaults.js";
import { areaOf } from "./read-area.js";
import { dayAt, spanAt } from "./read-days.js";
import { coverOf, growthOf, whoHas } from "./read-growth.js";
import { closedOf, pastNitrogenOf, pastOf } from "./read-past.js";
import { KINDS, type Cell, type Field, type Want } from "./scenario.js";
import { INNER_KEYS } from "./shape.js";
import { isMisspelt } from "./shape-findings.js";
import { child, entriesOf, itemsOf, textOf, type Entry, type MapNode } from "./tree.js";

export interface Land {
  readonly fields: readonly Field[];
  /** In walk order. */
  readonly cells: readonly Cell[];
}

/** Names of groups with their kinds, which `not-for` may name. */
export type Kinds = Readonly<Record<string, string>>;

/** Reads every field and cell: a field's word holds for its cells, a cell's own wins. */
export function readLand(desk: Desk, root: MapNode, season: Span, kinds: Kinds): Land {
  const farm: Thing = { map: root, name: "the farm" };
  const read = entriesOf(child(root, "fields")).map((entry) => readField(desk, entry, farm, season, kinds));
  const cells = read.flatMap((field) => field.cells);
  return { fields: read.map((field) => field.field), cells: inWalkOrder(desk, root, cells) };
}

function readField(desk: Desk, entry: Entry, farm: Thing, season: Span, kinds: Kinds): { field: Field; cells: readonly Cell[] } {
  const thing: Thing = { map: entry.value, name: entry.key };
  const inside = entriesOf(child(entry.value, "cells"));
  const distanceM = amountIn(desk, thing, "distance") ?? takeOwn(desk, "distance", entry.key, OWN.distanceM, `${OWN.distanceM} m`);
  const cells = inside.map((cell) => readCell(desk, cell, [{ map: cell.value, name: cell.key }, thing, farm], season, kinds));
  checkAreas(desk, entry, areaOf(desk, thing), cells);
  const misspelt = ["cover", "height"].some((key) => [entry, ...inside].some(({ value }) => isMisspelt(value, key, INNER_KEYS["fields"]!)));
  if (!misspelt && cells.some((cell) => cell.coverKgPerHa === UNWRITTEN)) {
    say(desk, entry.at, { code: "key-missing", found: `${entry.key} has no cover`, allowed: "each field or cell has a cover or a height on a day", next: "write cover: 2200 kg/ha, or height: 9 cm" });
  }
  return { field: { name: entry.key, distanceM, cells: cells.map((cell) => cell.name) }, cells };
}

/** Stands for a cover nobody wrote until the finding is made; no scenario leaves with it. */
const UNWRITTEN = -1;

function readCell(desk: Desk, entry: Entry, things: readonly Thing[], season: Span, kinds: Kinds): Cell {
  const name = entry.key;
  const [own, field] = things as readonly [Thing, Thing, Thing];
  const ground = [own, field];
  const areaHa = areaOf(desk, own) ?? missingArea(desk, entry);
  return {
    name,
    field: field.name,
    areaHa,
    coverKgPerHa: coverOf(desk, ground, name) ?? UNWRITTEN,
    coverDate: coverDateOf(desk, things, season, name),
    growthByMonth: growthOf(desk, things, name),
    water: waterOf(desk, ground, name),
    waterWalkM: amountOf(desk, ground, "water-walk", name, 0, "0 m"),
    shade: flagOf(desk, ground, "shade", name, false),
    wetGround: flagOf(desk, ground, "wet-ground", name, false),
    mow: flagOf(desk, ground, "mow", name, true),
    slopePercent: amountOf(desk, ground, "slope", name, 0, "0 %") * 100,
    fenceM: fenceOf(desk, ground, name, areaHa),
    boundary: null,
    notFor: notForOf(desk, ground, kinds),
    wants: wantsOf(ground),
    closed: closedOf(desk, ground, season),
    past: pastOf(desk, ground, season, name),
    pastNitrogen: pastNitrogenOf(desk, ground, season),
    ours: oursOf(desk, field, season),
  };
}

function missingArea(desk: Desk, entry: Entry): number {
  say(desk, entry.at, { code: "key-missing", found: `${entry.key} has no area`, allowed: "a cell has an area, sides or a boundary", next: "write area: 0.3 ha" });
  return Number.NaN;
}

function coverDateOf(desk: Desk, things: readonly Thing[], season: Span, name: string): string {
  const who = whoHas(things, "cover-date");
  if (who) return dayAt(desk, child(who.map, "cover-date")!, `${who.name}: cover-date`) ?? season.firstDay;
  return takeOwn(desk, "cover-date", name, season.firstDay, season.firstDay);
}

function waterOf(desk: Desk, ground: readonly Thing[], name: string): Cell["water"] {
  const who = whoHas(ground, "water");
  const written = who && textOf(child(who.map, "water"));
  // A word that is none of these was said when the shape was checked.
  return written === undefined ? takeOwn(desk, "water", name, "trough", "trough") : (written as Cell["water"]);
}

function amountOf(desk: Desk, ground: readonly Thing[], key: "water-walk" | "slope", name: string, usual: number, shown: string): number {
  const who = whoHas(ground, key);
  return (who && amountIn(desk, who, key)) ?? takeOwn(desk, key, name, usual, shown);
}

function flagOf(desk: Desk, ground: readonly Thing[], key: string, name: string, usual: boolean): boolean {
  const who = whoHas(ground, key);
  return (who && flagIn(who, key)) ?? takeOwn(desk, key, name, usual, usual ? "yes" : "no");
}

function fenceOf(desk: Desk, ground: readonly Thing[], name: string, areaHa: number): number {
  const who = whoHas(ground, "fence");
  const written = who && amountIn(desk, who, "fence");
  if (written !== undefined) return written;
  take(desk, "fence", name, "two sides of a square", "judgement", "judgement");
  return 2 * Math.sqrt(areaHa * 10_000);
}

/** Kinds stand for all their groups. */
function notForOf(desk: Desk, ground: readonly Thing[], kinds: Kinds): readonly string[] {
  const who = whoHas(ground, "not-for");
  if (!who) return [];
  const words = [...Object.keys(kinds), ...KINDS];
  const named = itemsOf(child(who.map, "not-for")).map((node) => nameAt(desk, node, `${who.name}: not-for`, "kinds and groups", words));
  return Object.keys(kinds).filter((group) => named.includes(group) || named.includes(kinds[group]));
}

function wantsOf(ground: readonly Thing[]): readonly Want[] {
  const who = whoHas(ground, "wants");
  return who ? itemsOf(child(who.map, "wants")).flatMap((node) => (textOf(node) as Want | undefined) ?? []) : [];
}

function oursOf(desk: Desk, field: Thing, season: Span): Span {
  const node = child(field.map, "ours");
  return (node && spanAt(desk, node, `${field.name}: ours`, season)) ?? season;
}

function checkAreas(desk: Desk, entry: Entry, fieldHa: number | undefined, cells: readonly Cell[]): void {
  const sum = cells.reduce((total, cell) => total + cell.areaHa, 0);
  if (fieldHa === undefined || !(sum > fieldHa + 5e-5)) return;
  const node = ["area", "sides", "boundary"].map((key) => child(entry.value, key)).find((n) => n !== undefined)!;
  const ha = (value: number): string => String(Number(value.toFixed(4)));
  say(desk, node, { code: "cells-over-field", found: `${entry.key} is ${ha(fieldHa)} ha, its cells make ${ha(sum)} ha`, allowed: `that is ${ha(sum - fieldHa)} ha too much`, next: "measure again, or make the cells smaller" });
}

/** As `walk` lists them, then the others as written. */
function inWalkOrder(desk: Desk, root: MapNode, cells: readonly Cell[]): readonly Cell[] {
  const names = cells.map((cell) => cell.name);
  const walk = itemsOf(child(root, "walk")).flatMap((node) => nameAt(desk, node, "walk", "cells", names) ?? []);
  const rank = (cell: Cell): number => (walk.includes(cell.name) ? walk.indexOf(cell.name) : walk.length + names.indexOf(cell.name));
  return [...cells].sort((a, b) => rank(a) - rank(b));
}

