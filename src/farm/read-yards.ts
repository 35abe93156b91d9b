import type { Span } from "../quantity/calendar.js";
import { amountIn, nameAt, take, type Desk, type Thing } from "./desk.js";
import { takeOwn, yardCostOf } from "./own-defaults.js";
import { plainSpans, spansAt } from "./read-days.js";
import { isBird, isGrazer, type Kind, type Yard } from "./scenario.js";
import { child, entriesOf, type MapNode } from "./tree.js";

export interface GroupYards {
  readonly yards: readonly Yard[];
  /** Yard of each group by name. */
  readonly yardOf: Readonly<Record<string, string>>;
}

/**
 * Reads yards and whose they are. A group that names none takes the first written; on a farm that writes none each of
 * grazers, pigs and birds has a yard of the kind's price.
 */
export function readYards(desk: Desk, root: MapNode, season: Span, kinds: Readonly<Record<string, Kind>>): GroupYards {
  const written = entriesOf(child(root, "yards"));
  const names = written.map((entry) => entry.key);
  const yardOf: Record<string, string> = {};
  for (const { key: group, value } of entriesOf(child(root, "groups"))) {
    const node = child(value, "yard");
    const kind = kinds[group];
    if (kind === undefined) continue;
    const named = node && nameAt(desk, node, `${group}: yard`, "yards", names);
    yardOf[group] = named ?? names[0] ?? usualYard(kind);
    if (!node) take(desk, "yard", group, yardOf[group], "judgement", "judgement");
  }
  const taken = [...new Set(Object.values(yardOf))].filter((name) => !names.includes(name));
  const read = written.map((entry) => readYard(desk, { map: entry.value, name: entry.key }, season, kinds, yardOf));
  return { yards: [...read, ...taken.map((name) => takenYard(desk, name, season))], yardOf };
}

function usualYard(kind: Kind): string {
  return isGrazer(kind) ? "Yard" : isBird(kind) ? "Hen yard" : "Pig yard";
}

function takenYard(desk: Desk, name: string, season: Span): Yard {
  const kind = name === "Yard" ? "cattle" : name === "Pig yard" ? "pigs" : "layers";
  const cost = yardCostOf(kind, kind === "cattle");
  takeOwn(desk, "cost", name, cost, `${cost} a day and group`);
  takeOwn(desk, "room", name, null, "no limit");
  takeOwn(desk, "open", name, null, "the whole season");
  return { name, costPerDay: cost, room: null, open: [season] };
}

function readYard(desk: Desk, thing: Thing, season: Span, kinds: Readonly<Record<string, Kind>>, yardOf: Readonly<Record<string, string>>): Yard {
  const open = child(thing.map, "open");
  const user = Object.keys(yardOf).find((group) => yardOf[group] === thing.name);
  const kind = user === undefined ? "cattle" : kinds[user]!;
  const usual = yardCostOf(kind, isGrazer(kind));
  if (!open) takeOwn(desk, "open", thing.name, null, "the whole season");
  return {
    name: thing.name,
    costPerDay: amountIn(desk, thing, "cost") ?? takeOwn(desk, "cost", thing.name, usual, `${usual} a day and group`),
    room: amountIn(desk, thing, "room") ?? takeOwn(desk, "room", thing.name, null, "no limit"),
    open: open ? plainSpans(spansAt(desk, open, `${thing.name}: open`, season)) : [season],
  };
}
