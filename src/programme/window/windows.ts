import { AWAY, YARD } from "../../season/season.js";
import type { Draft, Run } from "../draft.js";
import { stayEnd, stayStart } from "../moves.js";
import type { Model, PricingSolver } from "../solver.js";
import { cardsOf, type Card, type FreeDays } from "./cards.js";
import { windowModel, type Column, type WindowModel } from "./window-model.js";

/** What came of one window. `proven`: no better way exists in it; `stands`: the plan stayed, for want of room or time. */
export type WindowEnd = "better" | "proven" | "stands";

export interface WindowLimits {
  /** Most cards of one cell; a window with more is left. */
  readonly cards: number;
  /** Most steps of listing cards, over all cells. */
  readonly steps?: number;
  readonly nodes: number;
  readonly guardSeconds: number;
}

/** Money less than which a gain is none. */
const GAIN = 0.005;

/**
 * Re-does the days of some groups in the best way there is, all cards by exact replay, chosen by the solver, the rest
 * of the plan as it stands. The draft holds the better plan afterwards, or is as it was.
 */
export async function mendWindow(draft: Draft, free: readonly FreeDays[], solver: PricingSolver, limits: WindowLimits): Promise<WindowEnd> {
  const cards: Card[][] = [];
  const budget = { left: limits.steps ?? Infinity };
  for (let c = 0; c < draft.season.cells.length; c++) {
    const own = cardsOf(draft, c, free, limits.cards, budget);
    if (!own || own.length === 0) return "stands";
    cards.push(own);
  }
  const whole = windowModel(draft, free, cards);
  const now = startOf(draft, free, whole);
  if (!now) return "stands";
  const relaxed = await solver.relax(whole.model, limits.guardSeconds);
  if (relaxed.kind !== "optimal") return "stands";
  const room = now.cost - relaxed.value;
  if (room < GAIN) return "proven";
  const small = without(whole, now.columns, (column, i) => column.kind === "card" && now.columns[i] === 0 && relaxed.reducedCosts[i] > room);
  const solved = await solver.solve(small.model, { nodes: limits.nodes, gap: GAIN / 2, start: small.start, guardSeconds: limits.guardSeconds });
  if (solved.kind !== "optimal" && solved.kind !== "limit") return "stands";
  if (!solved.columns || solved.value === null || solved.value > now.cost - GAIN) return solved.kind === "optimal" ? "proven" : "stands";
  return takeAnswer(draft, free, small.columns, solved.columns) ? "better" : "stands";
}

/** Days of a group from a day on, widened to whole stays; null where it has none. */
export function freeDays(draft: Draft, group: number, from: number, days: number): FreeDays | null {
  const own = draft.place[group];
  let a = Math.max(0, from);
  let b = Math.min(draft.season.days, from + days) - 1;
  while (a <= b && own[a] === AWAY) a++;
  while (b >= a && own[b] === AWAY) b--;
  if (a > b) return null;
  a = stayStart(draft, group, a);
  b = stayEnd(draft, group, b);
  // Long yard spells are cut where the days end: a yard day is nobody's stay.
  if (own[a] === YARD) a = Math.max(a, from);
  if (own[b] === YARD) b = Math.min(b, from + days - 1);
  return { group, from: a, to: b };
}

/** The plan as it stands, as columns of the window's programme; null when it is not among the cards. */
export function startOf(draft: Draft, free: readonly FreeDays[], { model, columns }: WindowModel): { columns: Float64Array; cost: number } | null {
  const start = new Float64Array(columns.length);
  const placed = new Set<number>();
  columns.forEach((column, i) => {
    if (column.kind === "card" && !placed.has(column.card.cell) && stands(draft, free, column.card)) {
      placed.add(column.card.cell);
      start[i] = 1;
    } else if (column.kind === "yard") start[i] = draft.place[column.group][column.day] === YARD ? 1 : 0;
    else if (column.kind === "yard-start") start[i] = startsYard(draft, column.group, column.day) ? 1 : 0;
    else if (column.kind === "haul") start[i] = entersField(draft, column.group, column.field, column.day) ? 1 : 0;
  });
  if (placed.size < draft.season.cells.length) return null;
  fillShorts(model, columns, start);
  let cost = 0;
  start.forEach((value, i) => (cost += value * model.cost[i]));
  return { columns: start, cost };
}

/** Sets what is short or over to just what the rows ask. */
function fillShorts(model: Model, columns: readonly Column[], start: Float64Array): void {
  for (const row of model.rows) {
    const short = row.columns.findIndex((c) => columns[c].kind === "short");
    if (short < 0) continue;
    let sum = 0;
    row.columns.forEach((c, k) => (sum += k === short ? 0 : start[c] * row.values[k]));
    const lack = row.values[short] > 0 ? row.least - sum : sum - row.most;
    start[row.columns[short]] = Math.max(0, lack);
  }
}

/** True for the card that is just what the freed groups now do in its cell. */
function stands(draft: Draft, free: readonly FreeDays[], { cell, stays }: Card): boolean {
  const days = draft.season.days;
  let held = 0;
  for (const { group, from, to } of free) for (let t = from; t <= to; t++) if (draft.occupant[cell * days + t] === group) held++;
  return stays.reduce((sum, stay) => sum + stay.last - stay.first + 1, 0) === held && stays.every(({ group, first, last }) => {
    for (let t = first; t <= last; t++) if (draft.occupant[cell * days + t] !== group) return false;
    return stayStart(draft, group, first) === first && stayEnd(draft, group, first) === last;
  });
}

function startsYard(draft: Draft, group: number, day: number): boolean {
  const own = draft.place[group];
  return own[day] === YARD && (day === 0 || draft.season.groups[group].arrives[day] === 1 || own[day - 1] !== YARD);
}

function entersField(draft: Draft, group: number, field: number, day: number): boolean {
  const { cells, groups } = draft.season;
  const place = draft.place[group][day];
  if (place < 0 || cells[place].field !== field) return false;
  const before = day > 0 && !groups[group].arrives[day] ? draft.place[group][day - 1] : AWAY;
  return before < 0 || cells[before].field !== field;
}

/** The same programme without some columns, and the start without them. */
export function without(
  { model, columns }: WindowModel, start: Float64Array, drop: (column: Column, i: number) => boolean,
): { model: Model; columns: Column[]; start: Float64Array } {
  const kept = columns.map((_, i) => i).filter((i) => !drop(columns[i], i));
  const at = new Int32Array(columns.length).fill(-1);
  kept.forEach((i, k) => (at[i] = k));
  const pick = (values: Float64Array): Float64Array => Float64Array.from(kept, (i) => values[i]);
  const rows = model.rows.map((row) => {
    const entries = row.columns.map((c, k) => [at[c], row.values[k]] as const).filter(([c]) => c >= 0);
    return { ...row, columns: entries.map(([c]) => c), values: entries.map(([, v]) => v) };
  });
  return {
    model: { columns: kept.length, cost: pick(model.cost), lower: pick(model.lower), upper: pick(model.upper), whole: Uint8Array.from(kept, (i) => model.whole[i]), rows },
    columns: kept.map((i) => columns[i]),
    start: pick(start),
  };
}

/** Puts the chosen cards into the draft; true when the draft, judged by itself, is valid and cheaper. */
function takeAnswer(draft: Draft, free: readonly FreeDays[], columns: readonly Column[], answer: Float64Array): boolean {
  const before = draft.cost;
  const undo = draft.apply(answerRuns(draft, free, columns, answer));
  if (draft.over === 0 && draft.cost < before - GAIN / 2) return true;
  undo();
  return false;
}

/** The chosen cards as runs, after runs that clear the freed days. */
export function answerRuns(draft: Draft, free: readonly FreeDays[], columns: readonly Column[], answer: Float64Array): Run[] {
  const runs: Run[] = free.flatMap(({ group, from, to }) => presentRuns(draft, group, from, to));
  columns.forEach((column, i) => {
    if (column.kind === "card" && answer[i] > 0.5) for (const stay of column.card.stays) runs.push({ group: stay.group, from: stay.first, to: stay.last, place: column.card.cell });
  });
  return runs;
}

/** Runs that send a group to the yard on its own days of a span. */
function presentRuns(draft: Draft, group: number, from: number, to: number): Run[] {
  const runs: Run[] = [];
  for (let t = from; t <= to; ) {
    let end = t;
    while (end + 1 <= to && (draft.place[group][end + 1] === AWAY) === (draft.place[group][t] === AWAY)) end++;
    if (draft.place[group][t] !== AWAY) runs.push({ group, from: t, to: end, place: YARD });
    t = end + 1;
  }
  return runs;
}
