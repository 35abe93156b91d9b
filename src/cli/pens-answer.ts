import { z } from "zod";
import type { PenInCell, PenOnFarm } from "../decide/pens/pens-of-farm.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import type { Caution } from "../plan/cautions.js";
import { cautionText } from "../sheets/caution-words.js";
import { english } from "./english.js";
import { day, finding, season } from "./answer-parts.js";

const count = z.number().int().min(0);
const share = z.number().min(0).max(1);
const point = z.tuple([z.number(), z.number()]);

const inCell = z.strictObject({
  cell: z.string(),
  areaHa: z.number().min(0),
  shape: z.enum(["known", "area only"]),
  positions: count.meta({ description: "whole positions: by the cell's shape; where only the area is known, by area, at most" }),
  lanes: count.nullable().meta({ description: "null where the shape is not known; so are the next four" }),
  shifts: count.nullable().meta({ description: "moves of the pen to the lane beside" }),
  brought: count.nullable().meta({ description: "times that it is brought round what is in the way" }),
  laneDegrees: z.number().nullable().meta({ description: "direction of the lanes, from the first axis of the boundary towards the second" }),
  middles: z.array(point).nullable().meta({ description: "middle of every pen's place in walking order, m, in the boundary's figures; as many in a row as pens stand at once make one position" }),
  asIfSquare: count.nullable().meta({ description: "positions if the area were a square; null where the shape is known" }),
  lastsDays: count,
  shareCovered: share.meta({ description: "of the cell, if the whole season were spent there; nowhere more than once" }),
  seasonsToCover: z.number().min(0).nullable(),
  nitrogenKgPerHaAPass: z.number().min(0),
  passesLeft: count.nullable().meta({ description: "within twelve months under the nitrogen ceiling; null where there is none" }),
  limits: z.array(z.strictObject({ by: z.enum(["step", "nitrogen", "grass", "pressure"]), days: count, source: z.string() })).meta({ description: "what ends a stand on one position, shortest first" }),
  stepDays: count.nullable().meta({ description: "days to stand on each position; null where it bears no whole day" }),
  stepToLastDays: count.nullable().meta({ description: "step at which this cell alone lasts all the days out; null where the ground would not bear it" }),
  restingShare: share.meta({ description: "of the cell, that rests from before the season" }),
  restingUntil: day.nullable(),
  planned: z.strictObject({
    stays: z.array(z.strictObject({ firstDay: day, lastDay: day, firstPosition: count, lastPosition: count })),
    used: count,
    left: count,
    shareCovered: share,
    runsOut: day.nullable().meta({ description: "first day on which a position is wanted and none is fresh" }),
  }).nullable().meta({ description: "null without a plan" }),
});

export const pensAnswerShape = z.strictObject({
  farm: z.string(),
  season,
  planned: z.boolean(),
  pens: z.array(z.strictObject({
    group: z.string(),
    letter: z.string(),
    kind: z.string(),
    head: count,
    pen: z.string().nullable().meta({ description: "null for strips of ground" }),
    widthM: z.number().min(0),
    lengthM: z.number().min(0),
    count: count.meta({ description: "pens or nets that stand at once" }),
    positionHa: z.number().min(0).meta({ description: "ground of one position, all pens together" }),
    stepDays: count,
    nitrogenSource: z.string(),
    restDays: count.meta({ description: "that a position rests before the same kind uses it again" }),
    daysOut: count,
    firstOut: day.nullable(),
    positionsWorked: count,
    workedHa: z.number().min(0),
    shareOfFarm: z.number().min(0),
    cells: z.array(inCell),
  })),
  cautions: z.array(z.strictObject({ text: z.string(), source: z.string() })),
  files: z.array(z.string()),
  notes: z.array(finding),
});

export type PensAnswer = z.infer<typeof pensAnswerShape>;

/** What `pens` found. */
export interface PensSeen {
  readonly scenario: Scenario;
  readonly pens: readonly PenOnFarm[];
  readonly planned: boolean;
  readonly cautions: readonly Caution[];
  readonly files: readonly string[];
  readonly notes: readonly Finding[];
}

/** The same as one object. */
export function pensAnswer({ scenario, pens, planned, cautions, files, notes }: PensSeen): PensAnswer {
  return {
    farm: scenario.farm,
    season: scenario.season,
    planned,
    pens: pens.map((pen) => ({
      group: pen.group.name, letter: pen.group.letter, kind: pen.group.kind, head: pen.group.head, pen: pen.strip.pen,
      widthM: pen.sidesM[0], lengthM: pen.sidesM[1], count: pen.count, positionHa: pen.strip.areaHa, stepDays: pen.strip.days,
      nitrogenSource: pen.nitrogenSource, restDays: pen.restDays, daysOut: pen.daysOut,
      firstOut: pen.firstOut, positionsWorked: pen.worked, workedHa: pen.workedHa, shareOfFarm: pen.shareOfFarm,
      cells: pen.cells.map((one) => cellAnswer(pen, one)),
    })),
    cautions: cautions.map((caution) => ({ text: cautionText(english(), caution), source: caution.source })),
    files: [...files],
    notes: [...notes],
  };
}

function cellAnswer(pen: PenOnFarm, one: PenInCell): PensAnswer["pens"][number]["cells"][number] {
  const { cell, layout, run, taken, resting } = one;
  const known = <T>(value: T): T | null => (layout.asIf ? null : value);
  const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);
  return {
    cell: cell.name, areaHa: cell.areaHa, shape: layout.asIf ? "area only" : "known", positions: one.positions,
    lanes: known(layout.lanes.length), shifts: known(layout.shifts), brought: known(layout.brought), laneDegrees: known((layout.angle * 180) / Math.PI),
    middles: known(layout.middles.map(([x, y]): [number, number] => [x, y])), asIfSquare: layout.asIf ? layout.positions : null,
    lastsDays: one.lastsDays, shareCovered: run.shareCovered, seasonsToCover: finite(run.seasonsToCover), nitrogenKgPerHaAPass: run.nitrogenKgPerHa,
    passesLeft: finite(run.passesUnderCeiling), limits: one.limits.map(({ by, days, source }) => ({ by, days, source })),
    stepDays: one.step, stepToLastDays: one.stepToLast, restingShare: resting?.share ?? 0, restingUntil: resting?.until ?? null,
    planned: taken && {
      stays: taken.stays.map((stay) => ({ ...stay })), used: taken.used, left: taken.left, runsOut: taken.runsOut,
      shareCovered: Math.min(1, (taken.used * pen.strip.areaHa) / cell.areaHa),
    },
  };
}
