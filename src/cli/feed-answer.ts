import { z } from "zod";
import type { Feed } from "../decide/feed.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { addDays } from "../quantity/calendar.js";

const day = z.iso.date();
const amount = z.number().min(0);
const count = z.number().int().min(0);

const span = z.strictObject({
  firstDay: day,
  lastDay: day,
  hayKg: amount.meta({ description: "hay as stored" }),
  yardDays: amount.meta({ description: "days on that hay, groups added up" }),
});

const carried = z.strictObject({
  head: z.array(count).meta({ description: "whole head, group by group" }),
  times: amount.meta({ description: "as a multiple of today's" }),
});

const group = z.strictObject({
  group: z.string(),
  grassKg: amount.meta({ description: "dry matter eaten as grass" }),
  hayKg: amount.meta({ description: "hay as stored, fed because grass does not reach" }),
  yardDays: amount.meta({ description: "days on that hay" }),
  keptInDays: count.meta({ description: "days in the yard by dates the owner has fixed" }),
  keptInHayKg: amount,
});

const week = z.strictObject({
  firstDay: day,
  grownKg: z.number().meta({ description: "dry matter, as are all that are not named hay as stored; below nothing where grass longer than it can keep is lost" }),
  groups: z.array(group),
  eatenKg: amount,
  troddenKg: amount,
  ownCutKg: amount.meta({ description: "mown on days the owner has fixed" }),
  cutKg: amount.meta({ description: "mown beside that, where the hay is worth more than the mowing" }),
  joinedKg: z.number().meta({ description: "standing on ground that comes in hand, less that on ground that goes" }),
  coverKg: amount.meta({ description: "all that stands at the week's end on ground in hand" }),
  standingKg: amount.meta({ description: "above what must be left, on open ground, at the week's end" }),
  daysAhead: amount.nullable().meta({ description: "that, in days of what grazers out take; null when none are out" }),
  daysWished: amount,
  short: z.boolean(),
  surplus: z.boolean(),
});

/** Shape of `feed --json`; the shape of a finding is given, so that there is one of it. */
export function feedAnswerShape(finding: z.ZodType<Finding>) {
  return z.strictObject({
    farm: z.string(),
    units: z.enum(["metric", "US"]),
    currency: z.string(),
    season: z.strictObject({ firstDay: day, lastDay: day }),
    changes: z.array(z.string()),
    cells: z.array(z.strictObject({ group: z.string(), needed: z.number().nullable(), mayEnter: count })),
    standingAtStartKg: amount.meta({ description: "cover on ground in hand on the first morning" }),
    weeks: z.array(week),
    pinches: z.array(span),
    surpluses: z.array(span),
    tightestWeek: day.nullable().meta({ description: "first day of the week that ends with the fewest days ahead against the wish" }),
    carries: z.array(z.strictObject({ groups: z.array(z.string()), head: z.array(count), withoutHay: carried.extend({ week: day.nullable().meta({ description: "the week that holds it down" }) }), withHay: carried })),
    cuts: z.strictObject({
      pays: z.enum(["winter", "price"]).nullable().meta({ description: "winter: the hay is needed; price: it pays at the price of hay" }),
      cells: z.array(z.strictObject({
        cells: z.array(z.string()), areaHa: amount, dropFrom: day, cutOn: day, readyOn: day.nullable(), hayKg: amount, standingKg: amount, daysAhead: amount.nullable(),
      })),
    }),
    worth: z.array(z.strictObject({
      of: z.enum(["hay to feed", "hay in store", "hectare", "head"]),
      month: z.number().int().min(1).max(12).nullable(),
      group: z.string().nullable(),
      money: z.number().meta({ description: "saved over the season with a tonne, a hectare, a head more; below nothing where it costs" }),
    })),
    files: z.array(z.string()),
    notes: z.array(finding),
  });
}

export type FeedAnswer = z.infer<ReturnType<typeof feedAnswerShape>>;

/** What the answer of `feed` is made from. */
export interface FeedSeen {
  readonly scenario: Scenario;
  readonly feed: Feed;
  readonly changes: readonly string[];
  readonly files: readonly string[];
  readonly notes: readonly Finding[];
}

export function feedAnswer({ scenario, feed, changes, files, notes }: FeedSeen): FeedAnswer {
  const { firstDay, lastDay } = scenario.season;
  const date = (index: number): string => addDays(firstDay, index);
  const weekDay = (w: number): string => date(feed.weeks[w]!.day);
  const lastOf = (w: number): string => (w + 1 < feed.weeks.length ? date(feed.weeks[w + 1]!.day - 1) : lastDay);
  const spans = (own: Feed["pinches"]) => own.map(({ from, to, hayStoredKg, hayDays }) => ({ firstDay: weekDay(from), lastDay: lastOf(to), hayKg: hayStoredKg, yardDays: hayDays }));
  const inSpans = (own: Feed["pinches"], w: number): boolean => own.some(({ from, to }) => w >= from && w <= to);
  const headOf = (name: string): number => scenario.groups.find((one) => one.name === name)!.head;
  return {
    farm: scenario.farm, units: scenario.units, currency: scenario.prices.currency, season: scenario.season, changes: [...changes],
    cells: feed.groups.map((one) => ({ group: one.group, needed: one.cellsNeeded, mayEnter: one.cellsItMayEnter })),
    standingAtStartKg: feed.startKg,
    weeks: feed.weeks.map((one, w) => ({
      firstDay: weekDay(w), grownKg: one.grownKg,
      groups: one.groups.map(({ group: name, grassKg, hayStoredKg, hayDays, keptInDays, keptInHayStoredKg }) => (
        { group: name, grassKg, hayKg: hayStoredKg, yardDays: hayDays, keptInDays, keptInHayKg: keptInHayStoredKg })),
      eatenKg: one.eatenKg, troddenKg: one.troddenKg, ownCutKg: one.ownCutKg, cutKg: one.cutKg, joinedKg: one.joinedKg, coverKg: one.coverKg, standingKg: one.standingKg,
      daysAhead: one.daysInHand, daysWished: one.daysWished, short: inSpans(feed.pinches, w), surplus: inSpans(feed.surpluses, w),
    })),
    pinches: spans(feed.pinches), surpluses: spans(feed.surpluses), tightestWeek: feed.tightest === null ? null : weekDay(feed.tightest),
    carries: feed.carries.map(({ groups, withoutHay, withHay }) => ({
      groups: [...groups], head: groups.map(headOf),
      withoutHay: { head: [...withoutHay.head], times: withoutHay.times, week: withoutHay.week === null ? null : weekDay(withoutHay.week) },
      withHay: { head: [...withHay.head], times: withHay.times },
    })),
    cuts: {
      pays: feed.drops.pays,
      cells: feed.drops.drops.map(({ cells, areaHa, from, cutOn, back, hayKg, standingKg, daysInHand }) => (
        { cells: [...cells], areaHa, dropFrom: date(from), cutOn: date(cutOn), readyOn: back === null ? null : date(back), hayKg, standingKg, daysAhead: daysInHand })),
    },
    worth: feed.worths.map(({ of, month, group: name, money }) => ({ of, month: month === null ? null : month + 1, group: name, money })),
    files: [...files], notes: [...notes],
  };
}
