import { grassWish } from "../programme/rules/grass-in-hand.js";
import type { PricingSolver } from "../programme/solver.js";
import { daysAhead } from "../science/stocking.js";
import type { Season } from "../season/season.js";
import { GUARD_SECONDS, programmeOf, type Programme } from "./feed/model.js";
import { coverOn, type Way } from "./feed/ways.js";

/** One week of the farm's grass: kg DM, but for hay as stored. */
export interface FeedWeek {
  /** Day index of the week's first day. */
  readonly day: number;
  readonly grownKg: number;
  /** Grass eaten by all groups, and what their feet take besides. */
  readonly eatenKg: number;
  readonly troddenKg: number;
  /** Dry matter fed as hay because the grass does not reach, by all groups; on days kept in by the owner's dates apart. */
  readonly hayKg: number;
  readonly keptInHayKg: number;
  /** Taken by the mower: cuts that the owner has fixed, and those that pay. */
  readonly ownCutKg: number;
  readonly cutKg: number;
  /** Cover on ground that comes in hand in the week less that on ground that goes. */
  readonly joinedKg: number;
  /** All that stands on ground in hand, and that above the residual on open ground, at the week's end. */
  readonly coverKg: number;
  readonly standingKg: number;
  /** Standing grass as days of what the grazers out take a day, and the days wished; null in a week without grazers out. */
  readonly daysInHand: number | null;
  readonly daysWished: number;
  /** What a day's feed more would cost, as a share of a day on hay: 1 and more where hay must be fed, near 1 where it may as well be. */
  readonly worth: number;
  readonly groups: readonly GroupFeed[];
}

/** A group's part of a week. */
export interface GroupFeed {
  readonly group: string;
  readonly grassKg: number;
  /** Hay as stored, and days in the yard on it. */
  readonly hayStoredKg: number;
  readonly hayDays: number;
  /** Days in the yard by the owner's own dates, and the hay of these. */
  readonly keptInDays: number;
  readonly keptInHayStoredKg: number;
}

/** The budget as solved: its weeks, its money, and the programme with the answer to it. */
export interface FeedBudget {
  readonly weeks: readonly FeedWeek[];
  /** Hay, yard days, mowing and charges for the use of grass, together. */
  readonly money: number;
  readonly programme: Programme;
  readonly answer: Float64Array;
}

/**
 * The season's feed by week, a linear programme: as little money for hay, yard and charges as may be. Throws when there is no
 * answer, for there always is one: hay.
 */
export async function feedBudget(season: Season, solver: PricingSolver): Promise<FeedBudget> {
  const programme = programmeOf(season);
  const solved = await solver.relax(programme.model, GUARD_SECONDS);
  if (solved.kind !== "optimal") throw new Error(`the feed budget has no answer: ${solved.kind}`);
  return { weeks: feedWeeks(programme, solved.columns, solved.rowPrices), money: solved.value, programme, answer: solved.columns };
}

/** The weeks of an answer. */
export function feedWeeks(programme: Programme, answer: Float64Array, prices: Float64Array): readonly FeedWeek[] {
  return programme.weeks.map((_, w) => {
    const groups = programme.season.groups.map((_group, g) => groupFeed(programme, answer, g, w));
    const total = (of: (one: GroupFeed) => number) => groups.reduce((sum, one) => sum + of(one), 0);
    const { hay } = programme.season.scenario;
    const eatenOf = (storedKg: number): number => storedKg * hay.dryMatter * (1 - hay.feedOutLoss) * (1 - hay.storeLoss);
    const eatenKg = total((one) => one.grassKg);
    return {
      day: programme.weeks[w]!.first, eatenKg, troddenKg: eatenKg * programme.season.scenario.troddenShare,
      hayKg: eatenOf(total((one) => one.hayStoredKg)), keptInHayKg: eatenOf(total((one) => one.keptInHayStoredKg)),
      ...groundWeek(programme, answer, w), ...inHand(programme, answer, w), worth: worthOf(programme, prices, w), groups,
    };
  });
}

function groupFeed({ season, needs, doors, at }: Programme, answer: Float64Array, g: number, w: number): GroupFeed {
  const { keptInDays, fixedHayKg, hayDayKg } = needs[g]![w]!;
  const takenT = doors.reduce((sum, groups, door) => sum + (groups.includes(g) ? answer[at.eat(door, g, w)]! : 0), 0);
  const hayDays = Math.max(0, answer[at.hay(g, w)]!);
  return {
    group: season.groups[g]!.name, grassKg: Math.max(0, (takenT * 1000) / (1 + season.scenario.troddenShare)),
    hayStoredKg: hayDays * hayDayKg, hayDays, keptInDays, keptInHayStoredKg: fixedHayKg,
  };
}

/** Growth, cuts and cover of a week, way by way. */
function groundWeek(programme: Programme, answer: Float64Array, w: number): Pick<FeedWeek, "grownKg" | "ownCutKg" | "cutKg" | "joinedKg" | "coverKg"> {
  const { first, days } = programme.weeks[w]!;
  const [sums, end] = [{ grownKg: 0, ownCutKg: 0, cutKg: 0, joinedKg: 0, coverKg: 0 }, first + days];
  programme.ways.ways.forEach((way, i) => {
    const ha = answer[i]!;
    if (ha <= 0) return;
    const { inHand } = programme.grounds[way.ground]!.like;
    for (let t = Math.max(first, programme.ways.moments[way.from]!.day); t < Math.min(end, way.day); t++) {
      const [before, after] = [coverAt(programme, way, t), coverAt(programme, way, t + 1)];
      if (inHand[t]) sums.grownKg += ha * (after - before);
      // Ground in hand tomorrow and not today comes with what stands on it in the evening.
      const evening = way.kind.endsWith("cut") && t + 1 === way.day ? way.cover - way.taken : after;
      if (t + 1 < programme.season.days) sums.joinedKg += ha * evening * (inHand[t + 1]! - inHand[t]!);
    }
    if (way.kind.endsWith("cut") && way.week === w && inHand[way.day - 1]) sums[way.kind === "cut" ? "cutKg" : "ownCutKg"] += ha * way.taken;
    if (standsOn(programme, way, end) && inHand[Math.min(end, programme.season.days - 1)]) sums.coverKg += ha * coverAt(programme, way, end);
  });
  return sums;
}

/** Grass above the residual on open ground at a week's end, against what grazers take a day. */
function inHand(programme: Programme, answer: Float64Array, w: number): Pick<FeedWeek, "standingKg" | "daysInHand" | "daysWished"> {
  const { season, weeks, needs } = programme;
  const { first, days } = weeks[w]!;
  const day = Math.min(first + days, season.days - 1);
  let standingKg = 0;
  programme.ways.ways.forEach((way, i) => {
    const ground = programme.grounds[way.ground]!;
    if (answer[i]! <= 0 || !ground.grazed || !ground.like.open[day] || !standsOn(programme, way, first + days)) return;
    standingKg += answer[i]! * Math.max(0, coverAt(programme, way, first + days) - ground.figures.residual);
  });
  const daily = season.groups.reduce((sum, group, g) => sum + (group.grazer && needs[g]![w]!.outDays > 0 ? (needs[g]![w]!.takenT * 1000) / needs[g]![w]!.outDays : 0), 0);
  return { standingKg, daysInHand: daily > 0 ? daysAhead(standingKg, daily) : null, daysWished: grassWish(season, first) };
}

/** On the evening before a day: mouths that come in the morning have not been there, the mower has. */
function standsOn({ ways }: Programme, way: Way, day: number): boolean {
  const from = ways.moments[way.from]!;
  const begun = from.day < day || (from.day === day && from.grazed !== day);
  return begun && (way.day > day || (way.day === day && !way.kind.endsWith("cut")));
}

function coverAt({ season, grounds, ways }: Programme, way: Way, day: number): number {
  return coverOn(season, grounds[way.ground]!, ways.moments[way.from]!, day);
}

/** Of the grazers, the one whose feed is worth most in the week. */
function worthOf({ season, needs, rowOf }: Programme, prices: Float64Array, w: number): number {
  const worths = season.groups.map((group, g) => {
    const { outDays, takenT, hayDayKg, dayMoney } = needs[g]![w]!;
    const hay = dayMoney.hay + dayMoney.yard + (prices[rowOf.store]! * hayDayKg) / 1000;
    return group.grazer && outDays > 0 && hay > 0 ? (prices[rowOf.need(g, w)]! * takenT) / outDays / hay : 0;
  });
  return Math.max(0, ...worths);
}
