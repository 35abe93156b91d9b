import { replayPlan, type Replay } from "../../check/replay.js";
import type { Cell, Field, Group, Scenario } from "../../farm/scenario.js";
import { addDays, daysBetween, type IsoDate } from "../../quantity/calendar.js";
import type { DayWork, Job, JobKind, Standing } from "../../work/job.js";
import { seasonWork } from "../../work/season-work.js";
import type { Words } from "../../words/words.js";
import type { Sheet } from "../made.js";

/** A day of a plan with the evening before it and the day after, which a sheet tells of too. */
export interface Day {
  readonly sheet: Sheet;
  readonly scenario: Scenario;
  readonly words: Words;
  readonly day: IsoDate;
  readonly work: DayWork;
  readonly before: DayWork | null;
  readonly after: DayWork | null;
  readonly season: readonly DayWork[];
  readonly replay: Replay;
  /** Day of the season from 0; -1 on the evening before it. */
  readonly t: number;
}

/** Throws on a day that is neither in the season nor the one before it. */
export function dayOf(sheet: Sheet, words: Words, day: IsoDate): Day {
  const { scenario, plan } = sheet;
  const season = seasonWork(scenario, plan);
  const at = daysBetween(addDays(scenario.season.firstDay, -1), day);
  const work = season[at];
  if (!work) throw new Error(`${day} is not in the season`);
  return { sheet, scenario, words, day, work, before: season[at - 1] ?? null, after: season[at + 1] ?? null, season, replay: replayPlan(scenario, plan), t: at - 1 };
}

export function groupOf({ scenario }: Pick<Day, "scenario">, name: string): Group {
  return scenario.groups.find((one) => one.name === name)!;
}

export function cellOf({ scenario }: Pick<Day, "scenario">, name: string): Cell | null {
  return scenario.cells.find((one) => one.name === name) ?? null;
}

export function fieldOf({ scenario }: Pick<Day, "scenario">, cell: string): Field | null {
  return scenario.fields.find(({ cells }) => cells.includes(cell)) ?? null;
}

export function jobOf({ work }: Day, kind: JobKind, group: string): Job | undefined {
  return work.jobs.find((one) => one.kind === kind && one.group === group);
}

export function standingOf(work: DayWork | null, group: string): Standing | undefined {
  return work?.standing.find((one) => one.group === group);
}

/** Last day on which a group stays where it stands after this day, on its strip where it has one. */
export function staysTo({ season, t, day, work }: Day, group: string): IsoDate {
  const now = standingOf(work, group);
  const same = (other: DayWork): boolean => {
    const then = standingOf(other, group);
    return then !== undefined && then.place.name === now?.place.name && then.position === now.position;
  };
  let last = day;
  for (const other of season.slice(t + 2)) {
    if (!same(other)) break;
    last = other.day;
  }
  return last;
}
