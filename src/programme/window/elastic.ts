import type { Draft } from "../draft.js";
import type { PricingSolver } from "../solver.js";
import { cardsOf, overWithout, type Card, type FreeDays } from "./cards.js";
import { windowModel } from "./window-model.js";
import { answerRuns, startOf, without, type WindowEnd, type WindowLimits } from "./windows.js";

export interface ElasticLimits extends WindowLimits {
  /** Most that a cell's card may break more than the cell breaks without the freed groups, in the rules' own steps. */
  readonly give: number;
}

/** Money that one step of a broken rule weighs: so much that money only chooses among plans that break as little. */
const BREAKING = 10_000;

/** Breaking less than which a gain is none, in steps. */
const LESS = 1e-4;

/** How often a window that has too many cards is tried again with half as much to give. */
const HALVINGS = 2;

/**
 * Re-does the days of some groups so that as little as possible is broken, then as cheaply as possible, the rest of the
 * plan as it stands. Every rule may give: inside a cell by cards that break it, across cells by priced slack. The draft
 * holds the lesser evil afterwards, or is as it was. `proven`: nothing less is to be had in this window, up to `give`.
 */
export async function lessenWindow(draft: Draft, free: readonly FreeDays[], solver: PricingSolver, limits: ElasticLimits): Promise<WindowEnd> {
  let { give } = limits;
  let cards = cardsUpTo(draft, free, limits, give);
  let halved = 0;
  for (; !cards && halved < HALVINGS; halved++) cards = cardsUpTo(draft, free, limits, (give = Math.min(give, draft.over) / 2));
  if (!cards) return "stands";
  const whole = windowModel(draft, free, cards, BREAKING);
  const now = startOf(draft, free, whole);
  const relaxed = await solver.relax(whole.model, limits.guardSeconds);
  if (relaxed.kind !== "optimal") return "stands";
  // A plan that is none of the cards, as one with stock under the mower, is no start; any answer is then held against it below.
  const room = now ? now.cost - relaxed.value : Infinity;
  const none = halved > 0 || !now ? "stands" : "proven";
  if (room < BREAKING * LESS) return none;
  const start = now?.columns ?? new Float64Array(whole.columns.length);
  const small = without(whole, start, (column, i) => column.kind === "card" && start[i] === 0 && relaxed.reducedCosts[i] > room);
  const solved = await solver.solve(small.model, { nodes: limits.nodes, gap: (BREAKING * LESS) / 2, start: now ? small.start : null, guardSeconds: limits.guardSeconds });
  if (solved.kind !== "optimal" && solved.kind !== "limit") return "stands";
  const enough = now ? now.cost - BREAKING * LESS : Infinity;
  if (!solved.columns || solved.value === null || solved.value > enough) return solved.kind === "optimal" ? none : "stands";
  return takeLesser(draft, () => draft.apply(answerRuns(draft, free, small.columns, solved.columns!))) ? "better" : "stands";
}

/** Applies a change and keeps it when the draft, judged by itself, breaks less, or as little and costs less. */
function takeLesser(draft: Draft, change: () => () => void): boolean {
  const before = { over: draft.over, cost: draft.cost };
  const undo = change();
  if (draft.over < before.over - LESS / 2 || (draft.over <= before.over + 1e-9 && draft.cost < before.cost - 0.005)) return true;
  undo();
  return false;
}

/** Cards of every cell that break no more than could still be won, nor more than `give`; null when they are too many. */
function cardsUpTo(draft: Draft, free: readonly FreeDays[], limits: ElasticLimits, give: number): Card[][] | null {
  const floors = draft.season.cells.map((_, c) => {
    const { before, whole } = overWithout(draft, c, free);
    return Number.isFinite(give) ? whole : before;
  });
  const room = Math.min(give, Math.max(0, draft.over - floors.reduce((sum, floor) => sum + floor, 0)));
  const budget = { left: limits.steps ?? Infinity };
  const cards: Card[][] = [];
  for (let c = 0; c < draft.season.cells.length; c++) {
    const most = Math.max(nowBroken(draft, c, free), floors[c] + room) + 1e-9;
    const own = cardsOf(draft, c, free, limits.cards, budget, most);
    if (!own || own.length === 0) return null;
    cards.push(own);
  }
  return cards;
}

/** What a cell breaks now, with what the freed groups' days in it break of their own. */
function nowBroken({ season, tables, place, states }: Draft, cell: number, free: readonly FreeDays[]): number {
  let over = states[cell].over;
  for (const { group, from, to } of free) {
    const strip = season.scenario.groups[group].strip;
    let first = from;
    for (let t = from; t <= to; t++) {
      const starts = t === from || place[group][t] !== place[group][t - 1] || season.groups[group].arrives[t] === 1;
      if (starts) first = t;
      if (place[group][t] !== cell) continue;
      const at = t * tables.width + cell + 1;
      over += tables.standOver[group][at] + (starts ? tables.startOver[group][at] : 0);
      if (!starts && strip && (t - first) % strip.days === 0) over += tables.stepOver[group][t];
    }
  }
  return over;
}
