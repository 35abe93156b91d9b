import type { Group } from "../../farm/scenario.js";
import { weekdayOf, type IsoDate } from "../../quantity/calendar.js";
import type { Words } from "../../words/words.js";
import type { DayWork, Job, JobKind } from "../../work/job.js";
import { seasonWork } from "../../work/season-work.js";
import { groundWords, isDaily, jobWords } from "../job-words.js";
import type { Sheet } from "../made.js";

/** One group on one day of the month. */
export interface MonthBox {
  /** Where it was, for a move; words for one that comes to the farm. Null where it stays. */
  readonly from: string | null;
  /** Where it stands at night; empty when it is not on the farm. */
  readonly at: string;
  /** A strip or position worth telling, or that it leaves; empty when there is none. */
  readonly note: string;
}

export interface MonthRow {
  readonly day: IsoDate;
  readonly weekend: boolean;
  readonly boxes: readonly MonthBox[];
  readonly atHome: number;
  readonly jobs: readonly { readonly words: string; readonly strong: boolean }[];
}

/** Jobs that stand in the last column; moves have their own, looks and dusk are every day's. */
const LISTED: readonly JobKind[] = ["set", "shut-in", "step", "strip", "walk", "cut", "leave", "join"];

/** The days of a month that the season has, the evening before it among them where that has work: "2027-06". */
export function monthRows({ scenario, plan }: Sheet, words: Words, month: string): readonly MonthRow[] {
  const { firstDay } = scenario.season;
  return seasonWork(scenario, plan)
    .filter(({ day, jobs }) => day.startsWith(month) && (day >= firstDay || jobs.length > 0))
    .map((work) => ({
      day: work.day, weekend: weekdayOf(work.day) > 4, atHome: work.people.length,
      boxes: scenario.groups.map((group) => boxOf(work, group, words)),
      jobs: [
        ...work.ground.map((news) => ({ words: groundWords(news, words), strong: false })),
        ...listed(work.jobs.filter((job) => LISTED.includes(job.kind) && !isDaily(job, scenario)), words),
      ],
    }));
}

/** Cells to set are told together; birds to be kept shut in stand out. */
function listed(jobs: readonly Job[], words: Words): MonthRow["jobs"] {
  const set = jobs.filter(({ kind }) => kind === "set").map(({ to }) => to!.name);
  const sets = set.length === 0 ? [] : [{ words: words.say("job.set", { to: set.join(", ") }), strong: false }];
  return [...sets, ...jobs.filter(({ kind }) => kind !== "set").map((job) => ({ words: jobWords(job, words), strong: job.kind === "shut-in" }))];
}

function boxOf({ standing, jobs }: DayWork, group: Group, words: Words): MonthBox {
  const at = standing.find((one) => one.group === group.name);
  const own = jobs.filter((job) => job.group === group.name);
  if (!at) return { from: null, at: "", note: "" };
  if (at.host !== null) return { from: null, at: words.say("month.with", { host: at.host }), note: "" };
  const move = own.find(({ kind }) => kind === "move" || kind === "arrive" || kind === "part");
  const leaves = own.some(({ kind }) => kind === "leave");
  const strip = group.strip?.pen === null && at.position !== null && (move !== undefined || own.some(({ kind }) => kind === "strip"));
  return {
    from: move === undefined ? null : (move.from?.name ?? words.say("month.in")),
    at: at.place.name,
    note: leaves ? words.say("month.leaves") : strip ? String(at.position) : "",
  };
}
