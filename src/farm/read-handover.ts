import type { Span } from "../quantity/calendar.js";
import { AMOUNT_KEYS } from "./amount-keys.js";
import { amountAt, amountIn, flagIn, nameAt, say, type Desk, type Thing } from "./desk.js";
import type { Feed, Handover, Path } from "./handover.js";
import { takeDefault } from "./own-defaults.js";
import { plainSpans, spansAt } from "./read-days.js";
import { child, entriesOf, isNothing, textOf, type Entry, type MapNode } from "./tree.js";

/** Names that a path may lead to. */
export interface PathEnds {
  readonly fields: readonly string[];
  readonly yards: readonly string[];
}

/** Reads what helpers' sheets tell beside the plan; all of it may be left out, and what is left out is not guessed. */
export function readHandover(desk: Desk, root: MapNode, season: Span, ends: PathEnds): Handover {
  const fields = entriesOf(child(root, "fields"));
  const groups = entriesOf(child(root, "groups"));
  const { map } = desk;
  const kit: Thing = { map: child(root, "kit"), name: "kit" };
  return {
    ways: textsOf(fields, "way"),
    paths: entriesOf(child(root, "paths")).flatMap((entry) => pathOf(desk, entry, ends)),
    gates: Object.fromEntries([...(map?.gates ?? [])].map(([name, { at }]) => [name, at])),
    yardAt: map?.yard?.at ?? null,
    feed: Object.fromEntries(groups.flatMap((entry) => feedOf(desk, entry))),
    take: textsOf(groups, "take"),
    births: Object.fromEntries(groups.flatMap(({ key, value }) => {
      const node = child(value, "births");
      return node === undefined || isNothing(node) ? [] : [[key, plainSpans(spansAt(desk, node, `${key}: births`, season))]];
    })),
    kitLies: textOf(child(kit.map, "lies")) ?? null,
    publicPaths: fields.flatMap(publicPathsOf),
    cautions: desk.tables.cautionRows,
    leastKv: {
      usual: amountIn(desk, kit, "least-voltage") ?? takeDefault(desk, "fence.least-kv", "", "least voltage of a fence"),
      wool: amountIn(desk, kit, "least-voltage-wool") ?? takeDefault(desk, "fence.least-kv-wool", "", "least voltage of a fence for sheep and goats"),
    },
  };
}

function textsOf(entries: readonly Entry[], key: string): Readonly<Record<string, string>> {
  return Object.fromEntries(entries.flatMap((entry) => {
    const text = textOf(child(entry.value, key));
    return text === undefined ? [] : [[entry.key, text]];
  }));
}

function feedOf(desk: Desk, { key, value }: Entry): readonly (readonly [string, Feed])[] {
  const node = child(value, "feed");
  const [what, each] = [textOf(child(node, "what")), child(node, "each")];
  if (what === undefined || each === undefined) return [];
  return [[key, { what, kgPerHeadDay: amountAt(desk, each, `${key}: feed each`, AMOUNT_KEYS["feed rate"]), lies: textOf(child(node, "lies")) ?? null }]];
}

/** "Knoll to Far field: 150 m". */
function pathOf(desk: Desk, { key, at, value }: Entry, { fields, yards }: PathEnds): readonly Path[] {
  const names = [...fields, ...yards];
  const ends = names.flatMap((from) => names.filter((to) => key === `${from} to ${to}`).map((to) => ({ from, to })));
  const [found] = ends;
  const metres = amountAt(desk, value, `paths: ${key}`, AMOUNT_KEYS.path);
  if (found) return [{ ...found, metres }];
  const [from, to, ...more] = key.split(" to ");
  if (from === undefined || to === undefined || more.length > 0) {
    say(desk, at, { code: "path-form", found: `paths: ${key}`, allowed: "a path leads from one field or yard to another: their names with \"to\" between", next: `write ${names[0] ?? "Home field"} to ${names[1] ?? "Far field"}: 150 m` });
    return [];
  }
  for (const name of [from, to]) nameAt(desk, { kind: "text", text: name, plain: true, ...at }, `paths: ${key}`, "fields and yards", names);
  return [];
}

/** A field's word holds for its cells, a cell's own wins. */
function publicPathsOf({ value, key }: Entry): readonly string[] {
  const field: Thing = { map: value, name: key };
  return entriesOf(child(value, "cells")).filter((cell) => flagIn({ map: cell.value, name: cell.key }, "public-path") ?? flagIn(field, "public-path") ?? false).map((cell) => cell.key);
}
