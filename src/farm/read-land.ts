import type { Span } from "../quantity/calendar.js";
import type { Boundary } from "../science/boundary.js";
import { wayRoundM } from "../science/rings.js";
import { amountIn, flagIn, nameAt, say, take, type Desk, type Thing } from "./desk.js";
import { takeOwn } from "./own-defaults.js";
import { dayAt, spanAt } from "./read-days.js";
import { checkAreas, checkPlaces, type PlacedCell, type ReadField } from "./across-ground.js";
import { namesOnMap, groundOf, type Ground } from "./read-ground.js";
import { distanceOf } from "./map/distance-of.js";
import { readStrips, type StripGround } from "./read-strips.js";
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
  const read = entriesOf(child(root, "fields")).map((entry) => readField(desk, entry, { farm, season, kinds }));
  const cells = read.flatMap((field) => field.cells.map(({ cell }) => cell));
  checkPlaces(desk, read);
  return { fields: read.map((field) => field.field), cells: inWalkOrder(desk, root, cells) };
}

/** What all ground of a farm has in common. */
interface Around {
  readonly farm: Thing;
  readonly season: Span;
  readonly kinds: Kinds;
}

function readField(desk: Desk, entry: Entry, around: Around): ReadField {
  const thing: Thing = { map: entry.value, name: entry.key };
  const inside = entriesOf(child(entry.value, "cells"));
  const own = groundOf(desk, thing);
  const strips = readStrips(desk, entry, own);
  const read = inside.map((cell): PlacedCell => {
    const cellThing: Thing = { map: cell.value, name: cell.key };
    const strip = strips.get(cell.key);
    const ground = strip === undefined ? groundOf(desk, cellThing) : groundOfStrip(strip, own.mapped);
    return { cell: readCell(desk, cell, [cellThing, thing, around.farm], ground, strip ?? null, around), ground, at: cell.at, strip: strip !== undefined };
  });
  const cells = read.map(({ cell }) => cell);
  const distanceM = amountIn(desk, thing, "distance") ?? distanceOf(desk, entry, own, read);
  checkAreas(desk, entry, own, read);
  const misspelt = ["cover", "height"].some((key) => [entry, ...inside].some(({ value }) => isMisspelt(value, key, INNER_KEYS["fields"]!)));
  if (!misspelt && cells.some((cell) => cell.coverKgPerHa === UNWRITTEN)) {
    say(desk, entry.at, { code: "key-missing", found: `${entry.key} has no cover`, allowed: "each field or cell has a cover or a height on a day", next: "write cover: 2200 kg/ha, or height: 9 cm" });
  }
  return { field: { name: entry.key, distanceM, cells: cells.map((cell) => cell.name) }, at: entry.at, ground: own, cells: read };
}

function groundOfStrip(strip: StripGround | null, mapped: boolean): Ground {
  return strip === null ? { areaHa: Number.NaN, boundary: null, mapped, refused: true } : { areaHa: strip.areaHa, boundary: strip.boundary, mapped, refused: false };
}

/** Stands for a cover nobody wrote until the finding is made; no scenario leaves with it. */
const UNWRITTEN = -1;

function readCell(desk: Desk, entry: Entry, things: readonly Thing[], ground: Ground, strip: StripGround | null, { season, kinds }: Around): Cell {
  const name = entry.key;
  const [own, field] = things as readonly [Thing, Thing, Thing];
  const both = [own, field];
  const areaHa = ground.areaHa ?? missingArea(desk, entry);
  return {
    name,
    field: field.name,
    areaHa,
    coverKgPerHa: coverOf(desk, both, name) ?? UNWRITTEN,
    coverDate: coverDateOf(desk, things, season, name),
    growthByMonth: growthOf(desk, things, name),
    water: waterOf(desk, both, name),
    waterWalkM: amountOf(desk, both, "water-walk", name, 0, "0 m"),
    shade: flagOf(desk, both, "shade", name, false),
    wetGround: flagOf(desk, both, "wet-ground", name, false),
    mow: flagOf(desk, both, "mow", name, true),
    slopePercent: amountOf(desk, both, "slope", name, 0, "0 %") * 100,
    fenceM: fenceOf(desk, both, name, { areaHa, boundary: ground.boundary, strip }),
    boundary: ground.boundary,
    notFor: notForOf(desk, both, kinds),
    wants: wantsOf(both),
    closed: closedOf(desk, both, season),
    past: pastOf(desk, both, season, name),
    pastNitrogen: pastNitrogenOf(desk, both, season),
    ours: oursOf(desk, field, season),
  };
}

function missingArea(desk: Desk, entry: Entry): number {
  if (desk.map?.whole) say(desk, entry.at, { code: "not-on-map", found: `${entry.key} has no area and is not on the map`, ...namesOnMap(desk, entry.key) });
  else if (desk.map === null) say(desk, entry.at, { code: "key-missing", found: `${entry.key} has no area`, allowed: "a cell has an area, sides or a boundary", next: "write area: 0.3 ha" });
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

interface Shape {
  readonly areaHa: number;
  readonly boundary: Boundary | null;
  readonly strip: StripGround | null;
}

/** Where no movable fence is written: a strip's sides inside its field, half of the way round a boundary, or two sides of a square. */
function fenceOf(desk: Desk, ground: readonly Thing[], name: string, known: Shape): number {
  const who = whoHas(ground, "fence");
  const written = who && amountIn(desk, who, "fence");
  if (written !== undefined) return written;
  const judged = (words: string): void => take(desk, "fence", name, words, "judgement", "judgement");
  if (known.strip && known.strip.insideM > 0) {
    judged("its sides beside other strips");
    return known.strip.insideM;
  }
  judged(known.boundary ? "half of the way round it" : "two sides of a square");
  return known.boundary ? wayRoundM(known.boundary) / 2 : 2 * Math.sqrt(known.areaHa * 10_000);
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

/** As `walk` lists them, then the others as written. */
function inWalkOrder(desk: Desk, root: MapNode, cells: readonly Cell[]): readonly Cell[] {
  const names = cells.map((cell) => cell.name);
  const walk = itemsOf(child(root, "walk")).flatMap((node) => nameAt(desk, node, "walk", "cells", names) ?? []);
  const rank = (cell: Cell): number => (walk.includes(cell.name) ? walk.indexOf(cell.name) : walk.length + names.indexOf(cell.name));
  return [...cells].sort((a, b) => rank(a) - rank(b));
}

