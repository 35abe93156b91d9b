import type { CellState } from "../cell-state.js";
import { cloneState } from "../cell-state.js";
import type { Draft } from "../draft.js";

/** Days on which a group is freed: from the first day of one of its stays to the last day of another. */
export interface FreeDays {
  readonly group: number;
  readonly from: number;
  readonly to: number;
}

export interface CardStay {
  readonly group: number;
  readonly first: number;
  readonly last: number;
}

/** One way for a cell to live its season: the freed groups' stays in it, and what the whole season then comes to. */
export interface Card {
  readonly cell: number;
  readonly stays: readonly CardStay[];
  readonly state: CellState;
}

/** A stay that stays as it is, or an owner's or planner's cut. */
type Fixed = { readonly kind: "stay"; readonly stay: CardStay } | { readonly kind: "cut"; readonly day: number; readonly byOwner: boolean; readonly makesHay: boolean };

/**
 * All cards of a cell: every set of stays of freed groups on their free days that keeps every rule inside the cell to
 * the season's end, by exact replay; or, with `give`, that breaks them by no more than that, a card's `state.over`
 * then counting what its own stays break of the groups' days as well. Null when there are more than `most`, or the
 * window's budget of steps is spent.
 */
export function cardsOf(draft: Draft, cell: number, free: readonly FreeDays[], most: number, budget: { left: number } = { left: Infinity }, give = 0): Card[] | null {
  const { season, simulator } = draft;
  const { fixed, start, next } = fixedStart(draft, cell, free);
  const from = Math.min(...free.map((f) => f.from));
  const to = Math.max(...free.map((f) => f.to));
  const cards: Card[] = [];
  const enterable = free.filter(({ group }) => season.groups[group].mayEnter[cell]);

  const walk = (state: CellState, day: number, event: number, stays: readonly CardStay[]): boolean => {
    if (cards.length > most || budget.left-- <= 0) return false;
    const until = event < fixed.length ? Math.min(firstDay(fixed[event]), to + 1) : to + 1;
    for (const { group, from: least, to: latest } of enterable) {
      for (let first = Math.max(day, least); first <= Math.min(latest, until - 1); first++) {
        if (!mayBegin(draft, cell, group, first, least, give) || runsOn(draft, stays, group, first)) continue;
        const further = (after: CellState, last: number): boolean => walk(after, last + 1, event, [...stays, { group, first, last }]);
        if (!stayLengths(draft, cell, { group, from: least, to: latest }, first, until, state, give, further)) return false;
      }
    }
    return onward(state, event, stays);
  };
  /** No more freed stays before the next fixed event: live that, or finish. */
  const onward = (state: CellState, event: number, stays: readonly CardStay[]): boolean => {
    const after = cloneState(state);
    let at = event;
    if (at < fixed.length && firstDay(fixed[at]) <= to) {
      live(draft, after, fixed[at]);
      return after.over > give ? true : walk(after, after.day, at + 1, stays);
    }
    while (at < fixed.length && after.over <= give) live(draft, after, fixed[at++]);
    if (after.over > give) return true;
    simulator.finish(after);
    if (after.over <= give) cards.push({ cell, stays, state: after });
    return cards.length <= most;
  };
  return start.over > give || !walk(start, Math.max(from, start.day), next, []) ? null : cards;
}

/** By how much a cell breaks rules before the first free day, and over the season if no freed group stood in it. */
export function overWithout(draft: Draft, cell: number, free: readonly FreeDays[]): { readonly before: number; readonly whole: number } {
  const { fixed, start, next } = fixedStart(draft, cell, free);
  const before = start.over;
  for (const event of fixed.slice(next)) live(draft, start, event);
  draft.simulator.finish(start);
  return { before, whole: start.over };
}

/** A cell lived up to the first free day, with what stays as it is in it; `next` is the first event after that. */
function fixedStart(draft: Draft, cell: number, free: readonly FreeDays[]): { fixed: Fixed[]; start: CellState; next: number } {
  const fixed = fixedEvents(draft, cell, free);
  const from = Math.min(...free.map((f) => f.from));
  const start = draft.simulator.fresh(cell);
  let next = 0;
  while (next < fixed.length && firstDay(fixed[next]) < from) live(draft, start, fixed[next++]);
  return { fixed, start, next };
}

const firstDay = (event: Fixed): number => (event.kind === "stay" ? event.stay.first : event.day);

function live(draft: Draft, state: CellState, event: Fixed): void {
  if (event.kind === "stay") draft.simulator.stay(state, event.stay.group, event.stay.first, event.stay.last);
  else draft.simulator.cut(state, event.day, event.byOwner, event.makesHay);
}

/** A stay may begin where its start is allowed, and never so that it runs together with the stay before the free days. */
function mayBegin(draft: Draft, cell: number, group: number, first: number, least: number, give: number): boolean {
  const { season, tables } = draft;
  const at = first * tables.width + cell + 1;
  if (tables.startOver[group][at] + tables.standOver[group][at] > give || !season.groups[group].present[first]) return false;
  return !(first === least && first > 0 && !season.groups[group].arrives[first] && draft.place[group][first - 1] === cell);
}

/** Touching days of one group in one cell are one stay, not two. */
function runsOn(draft: Draft, stays: readonly CardStay[], group: number, first: number): boolean {
  const before = stays[stays.length - 1];
  return before?.group === group && before.last === first - 1 && !draft.season.groups[group].arrives[first];
}

/** Tries every length of a stay that keeps the rules so far, or breaks them by no more than `give`; false when the cards are too many. */
function stayLengths(
  draft: Draft, cell: number, free: FreeDays, first: number, until: number, state: CellState, give: number, seen: (after: CellState, last: number) => boolean,
): boolean {
  const { season, tables } = draft;
  const { group } = free;
  let over = tables.startOver[group][first * tables.width + cell + 1];
  for (let last = first; last <= free.to && last < until; last++) {
    over += tables.standOver[group][last * tables.width + cell + 1] + (last > first ? stepOver(draft, group, first, last) : 0);
    if (over > give || (last > first && season.groups[group].arrives[last])) return true;
    if (!season.groups[group].present[last]) return true;
    if (!mayEnd(draft, cell, free, last, give)) continue;
    const after = cloneState(state);
    draft.simulator.stay(after, group, first, last);
    after.over += over;
    // A longer grazing stay only takes more. Birds and pigs may lack ground for three days and have it for four, until a
    // week of the stay is full.
    if (after.over > give && season.scenario.groups[group].strip && (last - first + 1) % 7 !== 0) continue;
    if (after.over > give) return true;
    if (!seen(after, last)) return false;
  }
  return true;
}

function stepOver(draft: Draft, group: number, first: number, day: number): number {
  const strip = draft.season.scenario.groups[group].strip;
  return strip && (day - first) % strip.days === 0 ? draft.tables.stepOver[group][day] : 0;
}

/** After its last day the group must be able to go on: to the fixed stay after the free days, away, or anywhere. */
function mayEnd(draft: Draft, cell: number, free: FreeDays, last: number, give: number): boolean {
  const { season, tables, place } = draft;
  const { group, to } = free;
  const next = last + 1;
  if (next >= season.days || !season.groups[group].present[next] || season.groups[group].arrives[next]) return true;
  if (last === to) return place[group][next] !== cell;
  if (give > 0) return true;
  for (let p = 0; p < tables.width; p++) if (p !== cell + 1 && tables.startOver[group][next * tables.width + p] <= 0) return true;
  return false;
}

/** What happens in the cell whatever the freed groups do. */
function fixedEvents(draft: Draft, cell: number, free: readonly FreeDays[]): Fixed[] {
  const { season } = draft;
  const events: Fixed[] = [];
  const freed = (g: number, t: number): boolean => free.some((f) => f.group === g && t >= f.from && t <= f.to);
  for (let t = 0; t < season.days; ) {
    const g = draft.occupant[cell * season.days + t];
    let end = t + 1;
    while (end < season.days && draft.occupant[cell * season.days + end] === g && !(g >= 0 && season.groups[g].arrives[end])) end++;
    if (g >= 0 && !freed(g, t)) events.push({ kind: "stay", stay: { group: g, first: t, last: end - 1 } });
    t = end;
  }
  for (const { day, makesHay } of season.cells[cell].ownerCuts) events.push({ kind: "cut", day, byOwner: true, makesHay });
  for (const day of draft.cuts[cell]) events.push({ kind: "cut", day, byOwner: false, makesHay: true });
  return events.sort((a, b) => firstDay(a) - firstDay(b));
}
