import type { Boundary } from "../science/boundary.js";
import { areaM2Of } from "../science/rings.js";
import { equalStrips, sidesOf, type Side } from "../science/strips.js";
import { say, type Desk } from "./desk.js";
import { listOr } from "./near-names.js";
import { hectares, withinReach } from "./read-area.js";
import type { Ground } from "./read-ground.js";
import { ALONG } from "./shape.js";
import { stripNames } from "./strip-names.js";
import { child, entriesOf, textOf, type Entry, type MapNode, type Place, type Tree } from "./tree.js";

/** A cell cut from its field. */
export interface StripGround {
  readonly boundary: Boundary;
  readonly areaHa: number;
  /** Its sides inside the field, m. */
  readonly insideM: number;
}

/** Strips by cell; null for a strip that cannot be, which is said. Empty for a field without strips. */
export function readStrips(desk: Desk, field: Entry, ground: Ground): ReadonlyMap<string, StripGround | null> {
  const written = child(field.value, "strips");
  if (written === undefined) return new Map();
  // What is amiss with the names was said when they became cells.
  const { names, at } = stripNames({ ...desk, findings: [] }, field.key, written);
  const none = new Map(names.map((name) => [name, null]));
  sayOwnGround(desk, field, names);
  if (names.length === 0) return none;
  if (ground.boundary === null) {
    if (!ground.refused) say(desk, at, { code: "strips-no-boundary", found: `${field.key} has no boundary to be cut into strips`, allowed: "a field with strips is drawn on the map, or has its corners typed", next: "draw it, or write each cell with its area" });
    return none;
  }
  const side = sideAlong(desk, field.key, sidesOf(ground.boundary), child(written, "along"));
  return side === null ? none : cutInto(desk, names, at, ground.boundary, side);
}

function cutInto(desk: Desk, names: readonly string[], at: Place, boundary: Boundary, side: Side): ReadonlyMap<string, StripGround | null> {
  const cut = equalStrips(boundary, side.facing, names.length);
  return new Map(names.map((name, i) => {
    const { pieces, insideM } = cut[i]!;
    if (pieces.length === 1) return [name, { boundary: { ...boundary, ...pieces[0]! }, areaHa: withinReach(desk, name, at, areaM2Of(pieces[0]!) / 10_000), insideM }];
    const parts = pieces.map((piece) => `${hectares(areaM2Of(piece) / 10_000)} ha`);
    say(desk, at, { code: "strip-in-parts", found: `${name} would be in ${pieces.length} pieces of ${listOr(parts, "and")}`, allowed: "a cell is one piece of ground", next: wholeAlong(boundary, names.length) });
    return [name, null];
  }));
}

/** Sides along which every strip would be whole, as what to write. */
function wholeAlong(boundary: Boundary, count: number): string {
  const sides = sidesOf(boundary);
  const fit = WAYS.filter((word) => {
    const side = facingSide(sides, word);
    return side !== null && wayOf(side) === word && equalStrips(boundary, side.facing, count).every(({ pieces }) => pieces.length === 1);
  });
  return fit.length > 0 ? `write along: ${listOr(fit)}, so that each is whole` : "cut more or fewer strips, or draw the cells on the map";
}

/** A strip is as large as it comes out. */
function sayOwnGround(desk: Desk, field: Entry, names: readonly string[]): void {
  for (const cell of entriesOf(child(field.value, "cells")).filter(({ key }) => names.includes(key))) {
    const own = ["area", "sides", "boundary"].map((key) => (cell.value as MapNode).entries?.find((entry) => entry.key === key)).find((entry) => entry !== undefined);
    if (own) say(desk, own.at, { code: "two-ways", found: `${cell.key} is a strip of ${field.key} and has ${own.key}`, allowed: "one of them says how large it is", next: `take out ${own.key}, or name it no strip` });
  }
}

/** Ways of the compass in degrees from north by east, as a farm file writes them. */
const WAYS: readonly string[] = ALONG.filter((word) => word !== "longest");

/** A side faces a way that is no farther off than half a quarter of the compass. */
const NEAR_DEGREES = 45;

function sideAlong(desk: Desk, field: string, sides: readonly Side[], along: Tree | undefined): Side | null {
  const word = textOf(along) ?? "longest";
  // A word that is no way of the compass was said when the shape was checked.
  if (!WAYS.includes(word)) return longestOf(sides);
  const found = facingSide(sides, word);
  if (found) return found;
  const faced = [...new Set(sides.map(wayOf))];
  say(desk, along!, { code: "side-unknown", found: `no side of ${field} faces ${word}`, allowed: `its sides face ${listOr(faced, "and")}`, next: `write along: ${listOr(faced)}, or along: longest` });
  return null;
}

/** The longest side that faces about that way. */
function facingSide(sides: readonly Side[], word: string): Side | null {
  const off = ({ facing }: Side): number => Math.abs(((facing - (WAYS.indexOf(word) * 360) / WAYS.length + 540) % 360) - 180);
  return longestOf(sides.filter((side) => off(side) <= NEAR_DEGREES));
}

/** The first of those that are as long. */
function longestOf(sides: readonly Side[]): Side | null {
  return sides.reduce<Side | null>((best, side) => (best && best.lengthM >= side.lengthM * (1 - 1e-9) ? best : side), null);
}

function wayOf({ facing }: Side): string {
  return WAYS[Math.round((facing * WAYS.length) / 360) % WAYS.length]!;
}
