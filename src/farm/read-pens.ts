import { readPair } from "../quantity/amount.js";
import { amountIn, say, toWrite, type Desk, type Thing } from "./desk.js";
import { OWN, takeDefault, takeOwn } from "./own-defaults.js";
import type { Strip } from "./scenario.js";
import { child, entriesOf, itemsOf, textOf, type Entry, type MapNode, type Tree } from "./tree.js";

export interface Pen {
  readonly name: string;
  readonly at: Entry["at"];
  readonly node: Tree;
  readonly strip: Strip;
  /** Minutes to bring it to another cell, and to set its nets there. */
  readonly moveMinutes: number;
  readonly setMinutes: number;
}

/** Reads the pens: footprint or the inside of the net, all pens of the name together. */
export function readPens(desk: Desk, root: MapNode, netM: number): readonly Pen[] {
  return entriesOf(child(root, "pens")).map((entry) => readPen(desk, entry, netM));
}

function readPen(desk: Desk, entry: Entry, netM: number): Pen {
  const thing: Thing = { map: entry.value, name: entry.key };
  const count = amountIn(desk, thing, "count") ?? takeOwn(desk, "count", entry.key, 1, "1");
  const aroundM = amountIn(desk, thing, "net");
  const footprint = sizeOf(desk, thing);
  if (aroundM === undefined && footprint === undefined) {
    say(desk, entry.at, { code: "key-missing", found: `${entry.key} has no size`, allowed: "a pen has a size, a house has a net round it", next: "write size: 3 m x 4 m" });
  }
  const towed = textOf(child(entry.value, "moved-by")) === "tow";
  const nets = aroundM === undefined ? 0 : Math.ceil(aroundM / netM - 1e-9) * count;
  // A net stands as a square: as much ground as four straight sides can hold with corners that fence posts make.
  const sidesM = aroundM === undefined ? (footprint ?? UNKNOWN) : ([aroundM / 4, aroundM / 4] as const);
  const moving = (towed ? OWN.towMinutes : OWN.handMinutes) * count;
  const netting = nets * OWN.netMinutes;
  const days = amountIn(desk, thing, "step") ?? takeDefault(desk, "pen-steps.step", entry.key, "step");
  const stepMinutes = amountIn(desk, thing, "step-takes") ?? takeOwn(desk, "step-takes", entry.key, moving + netting, `${moving + netting} min`);
  return {
    name: entry.key,
    at: entry.at,
    node: entry.value,
    strip: { areaHa: (sidesM[0] * sidesM[1] * count) / 10_000, days, movedBy: towed ? "tow" : "hand", stepMinutes, nets, pen: entry.key, each: { sidesM, count } },
    moveMinutes: moving,
    setMinutes: netting,
  };
}

const UNKNOWN = [Number.NaN, Number.NaN] as const;

/** Sides of the footprint, m. */
function sizeOf(desk: Desk, thing: Thing): readonly [number, number] | undefined {
  const node = child(thing.map, "size");
  const text = textOf(node);
  if (node === undefined || text === undefined) return undefined;
  const read = readPair(text);
  if (!read.ok) {
    say(desk, node, { code: read.code, found: `${thing.name}: size: ${read.found}`, allowed: read.allowed, next: toWrite(read.next) });
    return UNKNOWN;
  }
  const [a, b] = read.value;
  if (a >= 0.5 && b >= 0.5 && a <= 60 && b <= 60) return [a, b];
  say(desk, node, { code: "out-of-reach", found: `${thing.name}: size is ${text}`, allowed: "sides of a pen are 0.5 to 60 m", next: "look at the units" });
  return UNKNOWN;
}

/** Length of the farm's nets or reels, m, and how many; null where they are not counted. */
export function ownedKit(desk: Desk, root: MapNode, key: "nets" | "reels"): { readonly lengthM: number | null; readonly owned: number | null } {
  const kit = child(root, "kit");
  const node = child(kit, key);
  if (node === undefined) {
    takeOwn(desk, key, "", null, "not counted");
    return { lengthM: null, owned: null };
  }
  if (node.kind === "text") return { lengthM: null, owned: amountIn(desk, { map: entryAs(node, "owned"), name: key }, "owned") ?? null };
  return sumOfLengths(desk, key, node);
}

/** Reels of several lengths count as so much fence of the longest; a net is a net. */
function sumOfLengths(desk: Desk, key: string, node: Tree): { readonly lengthM: number | null; readonly owned: number | null } {
  const read = entriesOf(node).map((entry) => ({
    lengthM: amountIn(desk, { map: entryAs({ kind: "text", text: entry.key, plain: true, ...entry.at }, "kit length"), name: key }, "kit length") ?? Number.NaN,
    owned: amountIn(desk, { map: entryAs(entry.value, "owned"), name: `${key} of ${entry.key}` }, "owned") ?? Number.NaN,
  }));
  if (read.length === 0) return { lengthM: null, owned: 0 };
  const lengthM = Math.max(...read.map((r) => r.lengthM));
  const metres = read.reduce((sum, r) => sum + r.lengthM * r.owned, 0);
  return { lengthM, owned: Math.floor(metres / lengthM + 1e-9) };
}

function entryAs(value: Tree, key: string): Tree {
  const { file, line, column } = value;
  return { kind: "map", entries: [{ key, at: { file, line, column }, value }], file, line, column };
}

/** Texts of a list under a key. */
export function textsIn(thing: Thing, key: string): readonly string[] {
  return itemsOf(child(thing.map, key)).flatMap((node) => textOf(node) ?? []);
}
