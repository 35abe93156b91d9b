import type { Scenario } from "../../farm/scenario.js";
import { isSetAhead } from "../../work/changes-of-place.js";
import type { Job, JobKind } from "../../work/job.js";
import type { Words } from "../../words/words.js";
import { jobWords } from "../job-words.js";
import { sureOf, type Made } from "../made.js";
import type { Event } from "./events.js";

/** Jobs on ground and kit alone. */
const NO_ANIMALS: readonly JobKind[] = ["set", "collect", "walk", "cut"];

/** A job and when in the day, as short as a phone shows it: "Cows H1 → K2", "Set K2 for Cows, evening". A cut is of the whole day. */
export function summaryOf(job: Job, words: Words): string {
  const what = titleOf(job, words);
  return job.kind === "cut" ? what : words.say(`calendar.title.${job.part}`, { job: what });
}

function titleOf(job: Job, words: Words): string {
  if (job.kind === "set") return words.say("calendar.set", { to: job.to?.name ?? "", group: job.group ?? "" });
  return job.kind === "walk" ? words.say("calendar.walk") : jobWords(job, words);
}

/** What the job needs, a sentence a line. */
export function descriptionOf(event: Event, scenario: Scenario, made: Made, words: Words): string {
  const { job } = event;
  return [
    ...(job.kind === "cut" ? [] : [words.say(`calendar.when.${job.part}`)]),
    ...needs(event, words), ...around(job, scenario, words),
    homeWords(event, words),
    ...(NO_ANIMALS.includes(job.kind) ? [] : [words.say("calendar.look")]),
    words.say(`calendar.sure.${sureOf(job.day, made)}`), words.say("calendar.version", { made: words.fullDay(made.madeOn), version: made.version }),
  ].join("\n");
}

/** Minutes to 5, people, and who tows. */
function needs({ job, work }: Event, words: Words): readonly string[] {
  const who = work.people.filter(({ tows }) => tows).map(({ name }) => name);
  const minutes = Math.max(5, Math.round(job.minutes / 5) * 5);
  return [
    ...(job.minutes > 0 ? [words.say("calendar.minutes", { minutes })] : []),
    ...(job.people > 1 ? [words.say("calendar.people", { n: job.people })] : []),
    ...(job.tow ? [who.length > 0 ? words.say("calendar.tow", { who: words.list(who) }) : words.say("calendar.tow-nobody")] : []),
  ];
}

/** What goes with it, before it and after it. */
function around(job: Job, scenario: Scenario, words: Words): readonly string[] {
  const setBefore = ["arrive", "part", "move"].includes(job.kind) && job.to !== null && !job.to.yard && job.minutes > 0 && isSetAhead(scenario, job.group!);
  return [
    ...(job.company.length > 0 ? [words.say("calendar.with", { groups: words.list(job.company) })] : []),
    ...(job.positions !== null && job.kind !== "strip" ? [words.say("calendar.strip", { number: job.positions.first })] : []),
    ...(setBefore ? [words.say("calendar.was-set", { to: job.to.name })] : []),
    ...(job.kind === "set" ? [words.say("calendar.for", { day: words.weekdayDay(job.for!) })] : []),
    ...(job.kind === "shut-in" ? [words.say("calendar.until", { day: words.weekdayDay(job.for!) })] : []),
  ];
}

function homeWords({ work }: Event, words: Words): string {
  if (work.people.length === 0) return words.say("calendar.nobody");
  return words.say("calendar.home", { people: words.list(work.people.map(({ name, tows }) => words.say("calendar.person", { name, tows: tows ? "yes" : "no" }))) });
}
