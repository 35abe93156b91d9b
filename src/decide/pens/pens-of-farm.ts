import { checkPlan } from "../../check/check-plan.js";
import type { Report } from "../../check/report.js";
import type { Cell, Group, Scenario, Strip } from "../../farm/scenario.js";
import type { Plan } from "../../plan/plan.js";
import { addDays, daysBetween, spanHolds, type IsoDate, type Span } from "../../quantity/calendar.js";
import { penRun, positionsThatFit, shareCovered, type PenRun } from "../../science/pen-run.js";
import { restDays, restingBefore, takenOf, type Taken } from "./fresh-ground.js";
import { layoutOf, sidesOf, type Layout } from "./layout.js";
import { ceilingLeft, nitrogenADay, nitrogenSource, standLimits, type StandLimit } from "./longest-stand.js";

/** A pen, a house with its net or the pigs' strip in one cell it may enter. */
export interface PenInCell {
  readonly cell: Cell;
  readonly layout: Layout;
  /** Whole positions: by the cell's shape; where only its area is known, by area, at most. */
  readonly positions: number;
  /** The season spent here and nowhere else, at the pen's own step. */
  readonly run: PenRun;
  /** Days that these positions last at that step. */
  readonly lastsDays: number;
  /** Share of the cell that still rests from before the season, and until when. */
  readonly resting: { readonly share: number; readonly until: IsoDate } | null;
  /** What ends a stand on one position, shortest first. */
  readonly limits: readonly StandLimit[];
  /** Days to stand on each position: the pen's own step where the ground bears it, else the longest it bears; null where it bears no day. */
  readonly step: number | null;
  /** Step at which this cell alone lasts all its days out; null where the ground would not bear that. */
  readonly stepToLast: number | null;
  /** What the plan takes of it; null without a plan. */
  readonly taken: Taken | null;
}

/** A group that takes ground position by position, and what it comes to. */
export interface PenOnFarm {
  readonly group: Group;
  readonly strip: Strip;
  /** Sides of one pen, net or strip, m, and how many stand at once. */
  readonly sidesM: readonly [number, number];
  readonly count: number;
  /** Days out on ground by the farm file, housing orders left out, and the first of them. */
  readonly daysOut: number;
  readonly firstOut: IsoDate | null;
  /** Who printed the nitrogen that its animals drop. */
  readonly nitrogenSource: string;
  /** Days that a position rests before the same kind uses it again. */
  readonly restDays: number;
  /** Positions worked in the season, by the plan or else at every step of the days out, and their ground. */
  readonly worked: number;
  readonly workedHa: number;
  /** Ground worked as a share of all cells of the farm. */
  readonly shareOfFarm: number;
  /** In walk order. */
  readonly cells: readonly PenInCell[];
}

/** Every pen, net and strip of the farm with every cell it may enter; with a plan also what that takes of each. */
export function pensOfFarm(scenario: Scenario, plan: Plan | null): readonly PenOnFarm[] {
  const report = plan && checkPlan(scenario, plan);
  return scenario.groups.flatMap((group) => (group.strip ? [penOnFarm(scenario, plan, report, group, group.strip)] : []));
}

function penOnFarm(scenario: Scenario, plan: Plan | null, report: Report | null, group: Group, strip: Strip): PenOnFarm {
  const out = outSpans(scenario, group);
  const daysOut = out.reduce((sum, span) => sum + daysOf(span), 0);
  const steps = out.reduce((sum, span) => sum + Math.ceil(daysOf(span) / strip.days), 0);
  const cells = scenario.cells.filter(({ name }) => group.mayEnter.includes(name))
    .map((cell) => inCell(scenario, plan, report, group, strip, cell, steps));
  const worked = plan === null ? steps : cells.reduce((sum, { taken }) => sum + (taken?.used ?? 0), 0);
  const farmHa = scenario.cells.reduce((sum, { areaHa }) => sum + areaHa, 0);
  const workedHa = worked * strip.areaHa;
  return {
    group, strip, ...sidesOf(strip), daysOut, firstOut: out[0]?.firstDay ?? null, restDays: restDays(scenario, group, null, group.kind),
    nitrogenSource: nitrogenSource(scenario, group), worked, workedHa, shareOfFarm: workedHa / farmHa, cells,
  };
}

function inCell(scenario: Scenario, plan: Plan | null, report: Report | null, group: Group, strip: Strip, cell: Cell, steps: number): PenInCell {
  const layout = layoutOf(cell, strip);
  const positions = layout.asIf ? positionsThatFit(cell.areaHa, strip.areaHa) : layout.positions;
  const left = Math.max(0, ceilingLeft(scenario, cell) - (plan && report ? nitrogenOfOthers(plan, report, group, cell) : 0));
  const run = penRun(cell.areaHa, strip.areaHa, steps * strip.days, strip.days, nitrogenADay(group), left, positions);
  const limits = standLimits(scenario, group, strip, cell, left);
  const longest = limits[0]?.days ?? Infinity;
  const toLast = positions === 0 ? Infinity : Math.max(1, Math.ceil((steps * strip.days) / positions));
  return {
    cell, layout, positions, run, lastsDays: positions * strip.days, resting: restingBefore(scenario, group, cell), limits,
    step: longest < 1 ? null : Math.min(strip.days, longest),
    stepToLast: toLast <= longest ? toLast : null,
    taken: plan && takenOf(scenario, plan, group, strip, cell, positions),
  };
}

/** Nitrogen that the plan's other groups drop on a cell in the season, kg/ha. */
function nitrogenOfOthers(plan: Plan, report: Report, group: Group, cell: Cell): number {
  const whole = report.cells.find((one) => one.cell === cell.name)!.nitrogenKgPerHa;
  const days = plan.stays.filter((stay) => stay.group === group.name && stay.cell === cell.name).reduce((sum, stay) => sum + daysOf(stay), 0);
  return Math.max(0, whole - (days * nitrogenADay(group)) / cell.areaHa);
}

/** Share of a cell that a plan's positions cover. */
export function coveredByPlan({ taken, cell }: PenInCell, strip: Strip): number | null {
  return taken && shareCovered(taken.used, strip.areaHa, cell.areaHa);
}

function daysOf({ firstDay, lastDay }: Span): number {
  return daysBetween(firstDay, lastDay) + 1;
}

/** Spans on which a group may be out on ground: on the farm, between turnout and housing, under no housing order. */
function outSpans(scenario: Scenario, group: Group): readonly Span[] {
  const { firstDay, lastDay } = scenario.season;
  const orders = scenario.housingOrders.filter(({ kinds }) => kinds.includes(group.kind));
  const isOut = (day: IsoDate): boolean => group.here.some((span) => spanHolds(span, day)) && spanHolds(group.out, day) && !orders.some((order) => spanHolds(order, day));
  const spans: { firstDay: IsoDate; lastDay: IsoDate }[] = [];
  for (let t = 0; t <= daysBetween(firstDay, lastDay); t++) {
    const day = addDays(firstDay, t);
    if (!isOut(day)) continue;
    const last = spans.at(-1);
    if (last && addDays(last.lastDay, 1) === day) last.lastDay = day;
    else spans.push({ firstDay: day, lastDay: day });
  }
  return spans;
}
