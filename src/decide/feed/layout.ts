import { useOf } from "../../farm/scenario.js";
import type { Season } from "../../season/season.js";
import { groundsOf, type Ground } from "./grounds.js";
import { needsOf, type GroupWeek } from "./needs.js";
import { waysOf, weeksIn, type Ways } from "./ways.js";

/** What a season's budget is made of, before it is a programme. */
export interface Layout {
  readonly season: Season;
  readonly weeks: readonly { readonly first: number; readonly days: number }[];
  readonly grounds: readonly Ground[];
  readonly ways: Ways;
  /** By group, then by week. */
  readonly needs: readonly (readonly GroupWeek[])[];
  /** Sets of groups that may pass onto the same ground, and which of them each ground has. */
  readonly doors: readonly (readonly number[])[];
  readonly doorOf: readonly number[];
  /** Calendar months of the season, 0 for January, in order. */
  readonly months: readonly number[];
  /** Weekly walks on which grass in hand is asked for. */
  readonly walks: readonly number[];
}

/** Column of each thing; that of a way is its place in the list. */
export interface Columns {
  /** Grass that a group takes through a door in a week, t of dry matter, feet counted. */
  eat(door: number, group: number, week: number): number;
  /** Days in the yard on own hay, and on hay that is given. */
  hay(group: number, week: number): number;
  given(group: number, week: number): number;
  /** Short of the winter's hay, t. */
  readonly short: number;
  /** Days of grass short of the wish on a walk. */
  walk(i: number): number;
  readonly count: number;
}

/** Lays a season out for its budget. */
export function layoutOf(season: Season): Layout {
  const grounds = groundsOf(season);
  const weeks = weeksIn(season);
  const keys = [...new Set(grounds.map((ground) => ground.groups.join()))];
  const asked = useOf(season.scenario, "grass-in-hand", null, null) !== "off";
  return {
    season, weeks, grounds,
    ways: waysOf(season, grounds),
    needs: needsOf(season, weeks),
    doors: keys.map((key) => grounds.find((ground) => ground.groups.join() === key)!.groups),
    doorOf: grounds.map((ground) => keys.indexOf(ground.groups.join())),
    months: [...new Set(weeks.map(({ first }) => season.month[first]!))],
    walks: asked ? season.walks.filter((t) => season.grazersTaken[t]! > 0) : [],
  };
}

/** Numbers the columns: ways, grass by door, group and week, hay and given hay by group and week, winter's shortage, walks. */
export function columnsOf({ season, weeks, ways, doors, walks }: Layout): Columns {
  const [W, G, n] = [weeks.length, season.groups.length, ways.ways.length];
  const hayAt = n + doors.length * G * W;
  const short = hayAt + 2 * G * W;
  return {
    eat: (door, group, week) => n + (door * G + group) * W + week,
    hay: (group, week) => hayAt + group * W + week,
    given: (group, week) => hayAt + (G + group) * W + week,
    short,
    walk: (i) => short + 1 + i,
    count: short + 1 + walks.length,
  };
}
