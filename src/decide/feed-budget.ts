import type { Model, ModelRow, Solver } from "../programme/solver.js";
import type { Season } from "../season/season.js";
import { daysAhead } from "../science/stocking.js";
import { farmFigure } from "../programme/half.js";

/** One week of the farm's grass as one field: kg DM. */
export interface FeedWeek {
  /** Day index of the week's first day. */
  readonly day: number;
  readonly grownKg: number;
  readonly eatenKg: number;
  /** Dry matter fed as hay because the grass does not reach. */
  readonly hayKg: number;
  /** Grass above the residual at the week's end. */
  readonly standingKg: number;
  readonly daysInHand: number | null;
}

const EATEN = 0;
const HAY = 1;
const STANDING = 2;
const LEFT = 3;
const KINDS = 4;

/**
 * The weekly feed budget, a linear programme: each week the stock eats grass or is fed hay, what is left stands over
 * to the next, up to what a sward holds; as little hay as may be, and as late as may be.
 */
export async function feedBudget(season: Season, solver: Solver): Promise<readonly FeedWeek[]> {
  const weeks = weeksOf(season);
  const solved = await solver.solve(budgetModel(season, weeks), { nodes: 0, gap: 0, start: null, guardSeconds: 10 });
  if (solved.kind !== "optimal") throw new Error(`the feed budget has no answer: ${solved.kind}`);
  const of = (week: number, kind: number): number => Math.max(0, solved.columns[week * KINDS + kind]);
  return weeks.map((week, w) => ({
    day: week.first,
    grownKg: week.grown,
    eatenKg: of(w, EATEN),
    hayKg: of(w, HAY),
    standingKg: of(w, STANDING),
    daysInHand: week.need > 0 ? daysAhead(of(w, STANDING), week.need / week.days) : null,
  }));
}

interface Week {
  readonly first: number;
  readonly days: number;
  readonly grown: number;
  readonly need: number;
}

function weeksOf(season: Season): Week[] {
  return Array.from({ length: Math.ceil(season.days / 7) }, (_, w) => {
    const first = w * 7;
    const days = Math.min(7, season.days - first);
    let grown = 0;
    let need = 0;
    for (let t = first; t < first + days; t++) {
      for (const cell of season.cells) if (cell.inHand[t]) grown += cell.growth[t] * cell.areaHa;
      for (const group of season.groups) need += group.intake[t];
    }
    return { first, days, grown, need };
  });
}

function budgetModel(season: Season, weeks: readonly Week[]): Model {
  const columns = weeks.length * KINDS;
  const residual = farmFigure(season, "residual-cover", "grazers");
  const area = season.cells.reduce((sum, cell) => sum + cell.areaHa, 0);
  const start = season.cells.reduce((sum, cell) => sum + Math.max(0, cell.startCover - residual) * cell.areaHa, 0);
  const trodden = 1 + season.scenario.troddenShare;
  const rows: ModelRow[] = [];
  const upper = new Float64Array(columns).fill(Infinity);
  const cost = new Float64Array(columns);
  weeks.forEach((week, w) => {
    const at = w * KINDS;
    upper[at + STANDING] = Math.max(0, season.ceiling - residual) * area;
    // A little dearer when earlier: hay is fed only when the grass has run out.
    cost[at + HAY] = 1 + (weeks.length - w) / 1000;
    // Grass is left only when no more can stand.
    cost[at + LEFT] = 1e-4;
    rows.push({ name: `week ${w}: fed`, least: week.need, most: week.need, columns: [at + EATEN, at + HAY], values: [1, 1] });
    const before = w > 0 ? { columns: [at - KINDS + STANDING], values: [-1] } : { columns: [], values: [] };
    const stands = week.grown + (w === 0 ? start : 0);
    rows.push({ name: `week ${w}: grass`, least: stands, most: stands, columns: [at + STANDING, at + EATEN, at + LEFT, ...before.columns], values: [1, trodden, 1, ...before.values] });
  });
  return { columns, cost, lower: new Float64Array(columns), upper, whole: new Uint8Array(columns), rows };
}
