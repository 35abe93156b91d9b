import { sharedM2 } from "../science/overlap.js";
import { areaM2Of } from "../science/rings.js";
import { say, type Desk } from "./desk.js";
import { hectares } from "./read-area.js";
import type { Ground } from "./read-ground.js";
import type { Cell, Field } from "./scenario.js";
import { child, type Entry, type Place } from "./tree.js";

/** A cell with the ground it was read from. */
export interface PlacedCell {
  readonly cell: Cell;
  readonly ground: Ground;
  readonly at: Place;
  readonly strip: boolean;
}

export interface ReadField {
  readonly field: Field;
  readonly at: Place;
  readonly ground: Ground;
  readonly cells: readonly PlacedCell[];
}

/** Share of a cell that drawing may let lie outside its field, or in another cell: hands and receivers are no finer. */
const DRAWN_NEAR = 0.02;

/** Cells that make more than their field: to half a square metre where all is typed, to two in a hundred where it is drawn. */
export function checkAreas(desk: Desk, entry: Entry, { areaHa, mapped }: Ground, cells: readonly PlacedCell[]): void {
  const sum = cells.reduce((total, { cell }) => total + cell.areaHa, 0);
  if (areaHa === undefined) return;
  const drawn = mapped || cells.some(({ ground }) => ground.mapped);
  if (!(sum > areaHa + 5e-5 + (drawn ? DRAWN_NEAR * areaHa : 0))) return;
  const at: Place = ["area", "sides", "boundary", "strips"].map((key) => child(entry.value, key)).find((node) => node !== undefined) ?? entry.at;
  say(desk, at, { code: "cells-over-field", found: `${entry.key} is ${hectares(areaHa)} ha, its cells make ${hectares(sum)} ha`, allowed: `that is ${hectares(sum - areaHa)} ha too much`, next: "measure again, or make the cells smaller" });
}

/** Cells of the map that lie in each other or outside their field. */
export function checkPlaces(desk: Desk, fields: readonly ReadField[]): void {
  for (const { field, ground, cells } of fields) {
    if (!ground.mapped || !ground.boundary) continue;
    for (const { cell, at } of cells.filter((one) => one.ground.mapped && !one.strip)) {
      if (!cell.boundary) continue;
      const outside = 1 - sharedM2(cell.boundary, ground.boundary) / areaM2Of(cell.boundary);
      if (outside > DRAWN_NEAR) say(desk, at, { code: "cell-outside", found: `${percent(outside)} of ${cell.name} lies outside ${field.name} on the map`, allowed: "a cell lies in its field", next: "draw it again, or write it under the field that it lies in" });
    }
  }
  const drawn = fields.flatMap(({ cells }) => cells).filter(({ ground }) => ground.mapped && ground.boundary !== null);
  drawn.forEach((one, i) => drawn.slice(0, i).forEach((other) => sayShared(desk, one, other)));
}

function sayShared(desk: Desk, one: PlacedCell, other: PlacedCell): void {
  // One name twice is one fault, said elsewhere.
  if (one.cell.name === other.cell.name) return;
  const [mine, theirs] = [one.ground.boundary!, other.ground.boundary!];
  const shared = sharedM2(mine, theirs);
  const share = shared / Math.min(areaM2Of(mine), areaM2Of(theirs));
  if (share <= DRAWN_NEAR) return;
  say(desk, one.at, { code: "cells-overlap", found: `${one.cell.name} and ${other.cell.name} share ${hectares(shared / 10_000)} ha on the map`, allowed: "cells lie beside each other", next: "draw one of them again" });
}

function percent(share: number): string {
  return `${Number((share * 100).toPrecision(2))} %`;
}
