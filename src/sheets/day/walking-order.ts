import type { Scenario } from "../../farm/scenario.js";
import type { PartOfDay, Place } from "../../work/job.js";
import { onFoot } from "../../work/on-foot.js";
import { shortestRound } from "../../work/shortest-round.js";
import type { Day } from "./context.js";
import type { Draft } from "./draft.js";

const PARTS: readonly PartOfDay[] = ["morning", "evening", "dusk"];

/** One part of a day as it is walked from the yard and back. */
export interface Walk {
  readonly part: PartOfDay;
  readonly drafts: readonly Draft[];
  /** On foot, m; what has no place of its own is not in it. */
  readonly metres: number;
}

/** Morning, evening, dusk; in each the shortest way from the yard and back, with whatever must come first first. */
export function walksOf({ scenario }: Pick<Day, "scenario">, drafts: readonly Draft[]): readonly Walk[] {
  return PARTS.map((part) => walkOf(scenario, part, drafts.filter((one) => one.part === part))).filter((walk) => walk.drafts.length > 0);
}

/** Tasks that follow on each other directly, at one stop of the round. */
type Unit = readonly Draft[];

function walkOf(scenario: Scenario, part: PartOfDay, drafts: readonly Draft[]): Walk {
  const placed = drafts.filter((draft) => startOf(draft) !== null).sort((a, b) => along(scenario, a) - along(scenario, b));
  const units = placed.filter(({ rightAfter }) => !placed.some(({ key }) => key === rightAfter)).map((first) => unitFrom(first, placed));
  const after = waitsOf(units);
  const places: Place[] = [{ name: "", yard: true }];
  const numberOf = (place: Place): number => {
    const known = places.findIndex(({ name, yard }) => yard === place.yard && (yard || name === place.name));
    return known >= 0 ? known : places.push(place) - 1;
  };
  const stops = units.map((unit, i) => ({ comes: numberOf(startOf(unit[0]!)!), leaves: numberOf(endOf(unit.at(-1)!)), after: after[i]! }));
  const foot = onFoot(scenario);
  const { order, metres } = shortestRound(stops, (from, to) => foot(places[from]!, places[to]!), 0);
  return { part, drafts: [...order.flatMap((i) => units[i]!), ...drafts.filter((draft) => startOf(draft) === null)], metres };
}

function unitFrom(first: Draft, drafts: readonly Draft[]): Unit {
  const next = drafts.find(({ rightAfter }) => rightAfter === first.key);
  return next ? [first, ...unitFrom(next, drafts)] : [first];
}

function startOf({ from, to }: Draft): Place | null {
  return from ?? to;
}

function endOf({ from, to, endsAt }: Draft): Place {
  return endsAt ?? to ?? from!;
}

/** For each unit those before it: what its tasks say, and who leaves ground before who enters it; two that wait for each other for ground go as they lie. */
function waitsOf(units: readonly Unit[]): readonly (readonly number[])[] {
  const after: number[][] = units.map(() => []);
  const waitsFor = (i: number, j: number): boolean => i === j || after[i]!.some((one) => waitsFor(one, j));
  const add = (i: number, j: number): void => {
    if (!waitsFor(j, i)) after[i]!.push(j);
  };
  const pairs = units.flatMap((unit, i) => units.map((other, j) => ({ unit, other, i, j })));
  for (const { unit, other, i, j } of pairs) if (unit.some((draft) => other.some(({ key }) => draft.after.includes(key)))) add(i, j);
  for (const { unit, other, i, j } of pairs) if (unit.some((draft) => other.some((one) => leaves(one, entered(draft))))) add(i, j);
  return after;
}

function entered({ from, to }: Draft): Place | null {
  return from?.name !== to?.name ? to : null;
}

function leaves({ from, to }: Draft, place: Place | null): boolean {
  return place !== null && !place.yard && from?.name === place.name && to !== null && to.name !== place.name;
}

/** Place along the farm's own list of cells: yards first. */
function along({ cells }: Scenario, draft: Draft): number {
  return cells.findIndex(({ name }) => name === startOf(draft)!.name);
}
