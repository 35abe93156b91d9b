import { isBird } from "../../farm/scenario.js";
import { dayNumber } from "../../quantity/calendar.js";
import type { Season } from "../../season/season.js";
import type { WorkedUse } from "../cell-state.js";
import { figures, isOff, type CellHooks, type Half } from "../half.js";
import { nitrogenSums } from "./nitrogen.js";

export type Hooks<K extends keyof CellHooks> = readonly NonNullable<CellHooks[K]>[];

type BoundHooks = { readonly [K in keyof CellHooks]-?: Hooks<K> };

type Figure = (cell: number, group: number) => number;

/** Figures of the ground that the simulator itself needs. */
interface Ground {
  readonly leastStanding: Figure;
  readonly pigCover: Figure;
  readonly birdsInterval: Figure;
  readonly pigsInterval: Figure;
  readonly stubble: Figure;
  readonly makingLoss: Figure;
  readonly openedFrom: Figure;
  readonly followGap: Figure;
}

/** What living a cell's season needs, worked out once for a season; the same for all cells. */
export interface CellContext {
  readonly season: Season;
  readonly hooks: BoundHooks;
  readonly ground: Ground;
  /** By cell: what birds and pigs worked before the season. */
  readonly past: readonly (readonly WorkedUse[])[];
  /** By group, calendar year of the season and day: nitrogen dropped before the day, kg. */
  readonly nitrogen: readonly (readonly Float64Array[])[];
  readonly lastYear: number;
  /** True where twelve-month windows can differ from the season's sum, so that nitrogen counts day by day. */
  readonly windows: boolean;
}

export function cellContext(season: Season, halves: readonly Half[]): CellContext {
  return {
    season,
    hooks: hooksOf(season, halves),
    ground: groundOf(season),
    past: season.scenario.cells.map((_, c) => pastWork(season, c)),
    nitrogen: nitrogenSums(season),
    lastYear: season.year[season.days - 1],
    windows: season.days > 365 || season.scenario.cells.some((cell) => cell.pastNitrogen.length > 0),
  };
}

function hooksOf(season: Season, halves: readonly Half[]): BoundHooks {
  const bound = halves.filter((half) => !isOff(season, half.id)).map((half) => half.bindCell?.(season)).filter((hooks) => hooks != null);
  const pick = <K extends keyof CellHooks>(key: K): Hooks<K> => bound.map((hooks) => hooks[key]).filter((hook) => hook !== undefined) as Hooks<K>;
  return { enter: pick("enter"), graze: pick("graze"), bite: pick("bite"), work: pick("work"), lot: pick("lot"), walk: pick("walk"), mow: pick("mow"), close: pick("close") };
}

function groundOf(season: Season): Ground {
  const [back, reseeded, reseed] = ["back", "reseeded", "reseed"].map((key) => figures(season, "after-pigs", key));
  return {
    leastStanding: figures(season, "demand-met", "least-standing"),
    pigCover: figures(season, "after-pigs", "cover"),
    birdsInterval: figures(season, "worked-ground", "birds"),
    pigsInterval: (cell, group) => (reseed(cell, group) >= 1 ? reseeded : back)(cell, group),
    stubble: figures(season, "hay-stock", "stubble"),
    makingLoss: figures(season, "hay-stock", "making-loss"),
    openedFrom: figures(season, "pig-pressure", "opened"),
    followGap: figures(season, "follow-window", "first"),
  };
}

function pastWork(season: Season, cell: number): WorkedUse[] {
  const { past, areaHa } = season.scenario.cells[cell];
  return past
    .filter((use) => use.by === "pigs" || (use.by !== "hay" && use.by !== "litter" && isBird(use.by)))
    .map((use) => ({ last: dayNumber(use.lastDay) - season.firstDay, area: use.share * areaHa, kind: use.by }));
}
