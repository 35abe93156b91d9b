import { figureOf, isBird, type Person, type Scenario } from "../farm/scenario.js";
import type { GroupSeason } from "./group-season.js";
import { isYard, NOWHERE } from "./placing.js";
import { daysIn, type SeasonDays } from "./season-days.js";

/** A group's change of place. Coming onto the farm into its yard is none, nor is leaving the farm. */
export interface Move {
  readonly group: number;
  readonly day: number;
  /** Places as `placing.ts` numbers them; NOWHERE for one that comes onto the farm. */
  readonly from: number;
  readonly to: number;
  /** Driving or towing to the place, and setting the next fence ahead. */
  readonly minutes: number;
  /** Minutes more when the group enters a field from elsewhere; 0 when it does not. */
  readonly haulMinutes: number;
  readonly hauled: boolean;
}

/** A step of a pen or net to its next position inside a cell. */
interface Step {
  readonly group: number;
  readonly day: number;
  readonly minutes: number;
  readonly towed: boolean;
}

/** Who does what, by season day. */
export interface Labour {
  readonly moves: readonly Move[];
  readonly steps: readonly Step[];
  readonly minutes: Float64Array;
  readonly minutesAtHome: Float64Array;
  readonly peopleAtHome: Float64Array;
  readonly towersAtHome: Float64Array;
}

export function labourOf(scenario: Scenario, days: SeasonDays, groups: readonly GroupSeason[]): Labour {
  const moves = groups.flatMap((group, g) => movesOf(scenario, group, g)).sort((a, b) => a.day - b.day || a.group - b.group);
  const steps = groups.flatMap(stepsOf).sort((a, b) => a.day - b.day || a.group - b.group);
  const minutes = chores(scenario, days, groups);
  for (const move of moves) minutes[move.day]! += move.minutes + move.haulMinutes;
  for (const step of steps) minutes[step.day]! += step.minutes;
  const home = scenario.people.map((person) => ({ person, minutes: minutesOf(person, days) }));
  const byDay = (value: (at: (typeof home)[number], t: number) => number) =>
    Float64Array.from({ length: days.count }, (_, t) => home.reduce((sum, at) => sum + value(at, t), 0));
  return {
    moves, steps, minutes,
    minutesAtHome: byDay((at, t) => at.minutes[t]!),
    peopleAtHome: byDay((at, t) => (at.minutes[t]! > 0 ? 1 : 0)),
    towersAtHome: byDay((at, t) => (at.person.tows && at.minutes[t]! > 0 ? 1 : 0)),
  };
}

function minutesOf({ minutesByWeekday, minutesByDay, away }: Person, days: SeasonDays): readonly number[] {
  const gone = daysIn(days, away);
  return days.dates.map((date, t) => (gone[t] ? 0 : (minutesByDay[date] ?? minutesByWeekday[days.weekdays[t]!]!)));
}

function movesOf(scenario: Scenario, { group, here, hosts, places }: GroupSeason, g: number): Move[] {
  const moves: Move[] = [];
  for (let t = 0; t < places.length; t++) {
    const to = places[t]!;
    // Parting from a host is the owner's date, like coming onto the farm.
    const from = t > 0 && here[t - 1] && hosts[t - 1]! < 0 ? places[t - 1]! : NOWHERE;
    if (!here[t] || hosts[t]! >= 0 || to === from || to === NOWHERE || (isYard(to) && from === NOWHERE)) continue;
    const fence = isYard(to) ? (from >= 0 ? group.moveMinutes : 0) : group.moveMinutes + group.setMinutes;
    const hauled = to >= 0 && (from < 0 || scenario.cells[from]!.field !== scenario.cells[to]!.field);
    moves.push({ group: g, day: t, from, to, minutes: fence, hauled, haulMinutes: hauled ? haulMinutes(scenario, to, group.name) : 0 });
  }
  return moves;
}

/** Loading, and the way there and back at walking pace. */
function haulMinutes(scenario: Scenario, cell: number, group: string): number {
  const field = scenario.cells[cell]!.field;
  const metres = scenario.fields.find((f) => f.name === field)?.distanceM ?? 0;
  const figure = (key: string) => figureOf(scenario, "people", key, field, group) ?? 0;
  return figure("haul") + metres / (figure("pace") / 2);
}

function stepsOf({ group, stays }: GroupSeason, g: number): Step[] {
  const { strip } = group;
  if (!strip || strip.pen === null) return [];
  const steps: Step[] = [];
  for (const { first, days } of stays) {
    for (let at = strip.days; at < days; at += strip.days) {
      steps.push({ group: g, day: first + at, minutes: strip.stepMinutes, towed: strip.movedBy === "tow" });
    }
  }
  return steps;
}

/** The morning round, each group on its own feet, and birds shut in at dusk. */
function chores(scenario: Scenario, days: SeasonDays, groups: readonly GroupSeason[]): Float64Array {
  const morning = figureOf(scenario, "people", "morning", null, null) ?? 0;
  const dusk = figureOf(scenario, "people", "dusk", null, null) ?? 0;
  const each = groups.map(({ group }) => figureOf(scenario, "people", "each-group", null, group.name) ?? 0);
  return Float64Array.from({ length: days.count }, (_, t) => {
    if (!groups.some(({ here }) => here[t])) return 0;
    const rounds = groups.reduce((sum, { here, hosts }, g) => sum + (here[t] && hosts[t]! < 0 ? each[g]! : 0), 0);
    return morning + rounds + (groups.some(({ group, here }) => here[t] && isBird(group.kind)) ? dusk : 0);
  });
}
