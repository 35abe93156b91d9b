import { hayMadeKg } from "../../science/hay.js";
import type { Season } from "../../season/season.js";
import { askedIn, farmFigure, farmWide, figures } from "../half.js";
import { cutsAll, leastToCut } from "./cut-ground.js";
import type { Levels } from "./levels.js";

/** A cut of the owner's: its evening, the level that is left (0 where parts may be left), and the hay it makes at most, kg by level before. */
interface OwnersCut {
  readonly evening: number;
  readonly level: number;
  readonly kg: Float64Array;
  /** Hay of ground that nobody used before, kg. */
  readonly untouchedKg: number;
}

/** Cuts of one cell, by levels: what they cost at least, and what hay they make at most. */
export interface Cuts {
  readonly owners: readonly OwnersCut[];
  /** By morning: evening of the owner's next cut; the season's length where none comes. */
  readonly nextOwners: Int16Array;
  /** By morning: the last evening before it on which the planner may cut some level; -1 where there is none. */
  readonly lastEvening: Int16Array;
  /** By evening: what a cut of the planner's costs at least; Infinity where none may be. */
  readonly mower: Float64Array;
  /** By evening: levels below this index stand high enough to be cut. */
  readonly tall: Int16Array;
  /** By evening x levels + level: hay that a cut of the planner's makes at most, kg. */
  readonly kg: Float64Array;
  /** By evening: level on the morning after a cut. */
  readonly stubble: Int16Array;
  /** By evening: hay of a cut of ground that nobody used before, kg; -1 where it does not stand high enough. */
  readonly untouchedKg: Float64Array;
  /** Whether ground may be cut that birds or pigs have worked this season. */
  readonly onWorked: boolean;
}

/** Slack for comparing with the exact replay, kg DM/ha. */
const HAIR = 1e-6;

export function cellCuts(season: Season, cell: number, levels: Levels): Cuts {
  const { days } = season;
  const { count } = levels;
  const stubble = figures(season, "hay-stock", "stubble")(cell, -1);
  const from = leastToCut(season, cell);
  const made = hayOf(season, cell, stubble);
  const tall = new Int16Array(days);
  const kg = new Float64Array(days * count);
  const evening = eveningCovers(season, cell, levels);
  for (let t = 0; t < days && from < Infinity; t++) {
    for (let j = 0; j < levels.reach[t]; j++) {
      const cover = levels.cover(j, t + 1);
      if (cover < from - HAIR) break;
      tall[t] = j + 1;
      kg[t * count + j] = made(cover);
    }
  }
  const mower = mowerMoney(season, cell);
  const owners = ownersCuts(season, cell, levels, evening);
  return {
    owners, mower, tall, kg,
    nextOwners: Int16Array.from({ length: days + 1 }, (_, t) => owners.find((cut) => cut.evening >= t)?.evening ?? days),
    lastEvening: lastEvenings(tall, mower),
    stubble: Int16Array.from({ length: days }, (_, t) => levels.levelOf(stubble, t + 1)),
    untouchedKg: evening.map((cover) => (cover < from - HAIR ? -1 : made(cover))),
    onWorked: mayCutWorked(season, cell),
  };
}

function lastEvenings(tall: Int16Array, mower: Float64Array): Int16Array {
  const last = new Int16Array(tall.length + 1).fill(-1);
  for (let t = 0; t < tall.length; t++) last[t + 1] = tall[t] > 0 && mower[t] < Infinity ? t : last[t];
  return last;
}

/** What the owner's own cuts cost at least: the mower's coming on each of their evenings. */
export function ownersMowing(season: Season): number {
  if (!farmWide(season, "hay-stock")) return 0;
  const together = farmFigure(season, "hay-stock", "together");
  let money = 0;
  ownersGround(season).forEach((area) => (money += Math.max(together, area) * season.scenario.prices.mowingPerHa));
  return money;
}

/** Ground that the owner's cuts are sure to take, ha, by evening. */
function ownersGround(season: Season): Map<number, number> {
  const ground = new Map<number, number>();
  season.cells.forEach((cell, c) => {
    for (const { day } of cell.ownerCuts) ground.set(day, (ground.get(day) ?? 0) + (cutsAll(season, c, day) ? cell.areaHa : 0));
  });
  return ground;
}

/** The mower over the cell, but for what is paid on an owner's evening anyhow. */
function mowerMoney(season: Season, cell: number): Float64Array {
  const money = new Float64Array(season.days);
  if (!farmWide(season, "hay-stock")) return money;
  const price = season.scenario.prices.mowingPerHa;
  const { areaHa } = season.cells[cell];
  money.fill(areaHa * price);
  const together = farmFigure(season, "hay-stock", "together");
  ownersGround(season).forEach((area, day) => (money[day] = Math.max(0, areaHa - Math.max(0, together - area)) * price));
  return money;
}

/** Cover of ground that nobody used on each evening, before the owner's mower. */
function eveningCovers(season: Season, cell: number, levels: Levels): Float64Array {
  const { rates } = season.cells[cell];
  return Float64Array.from({ length: season.days }, (_, t) => levels.coverAt(levels.logit(levels.untouchedMost[t]) - rates[t], t + 1));
}

function ownersCuts(season: Season, cell: number, levels: Levels, evening: Float64Array): OwnersCut[] {
  const stubble = figures(season, "hay-stock", "stubble")(cell, -1);
  const made = hayOf(season, cell, stubble);
  return season.cells[cell].ownerCuts.map(({ day, makesHay }) => ({
    evening: day,
    level: day + 1 < season.days && cutsAll(season, cell, day) ? levels.levelOf(stubble, day + 1) : 0,
    kg: Float64Array.from({ length: levels.count }, (_, j) => (makesHay ? made(levels.cover(j, day + 1)) : 0)),
    untouchedKg: makesHay ? made(evening[day]) : 0,
  }));
}

/** Hay made of a cover over the whole cell, kg. */
function hayOf(season: Season, cell: number, stubble: number): (cover: number) => number {
  const loss = figures(season, "hay-stock", "making-loss")(cell, -1) / 100;
  return (cover) => hayMadeKg(cover, stubble, season.cells[cell].areaHa, loss, season.scenario.hay.dryMatter);
}

/** Hay is never made of ground that birds used in the same year; where only birds use the cell, worked ground is theirs. */
function mayCutWorked(season: Season, cell: number): boolean {
  const birdsOnly = season.groups.every((group) => group.grazer || group.bird || !group.mayEnter[cell]);
  const asked = askedIn(season, "clean-ground", cell, -1) && figures(season, "clean-ground", "hay-after-birds")(cell, -1) >= 1;
  return !(birdsOnly && asked && new Set(season.year).size === 1);
}
