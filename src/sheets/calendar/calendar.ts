import type { Hash } from "../../farm/read-scenario.js";
import type { Plan } from "../../plan/plan.js";
import type { Job, PartOfDay } from "../../work/job.js";
import type { Words } from "../../words/words.js";
import { sureOf, type Sheet } from "../made.js";
import { descriptionOf, summaryOf } from "./event-words.js";
import { eventsOf, type CalendarOf, type Event } from "./events.js";
import { component, dateValue, escapedText } from "./ics-text.js";
import { uidOf } from "./uid.js";

export interface CalendarInput extends Omit<Sheet, "report"> {
  /** The plan that this one takes the place of, where a calendar of it may have been read in. */
  readonly former: Plan | null;
  /** RFC 5545 3.8.7.4: a program takes the event with the higher figure. */
  readonly sequence: number;
  readonly of: CalendarOf;
  readonly words: Words;
  readonly hash: Hash;
}

export interface Calendar {
  /** The whole file; not one to write where it has no events at all (RFC 5545 3.4 asks for one). */
  readonly text: string;
  /** Events of the plan; of these, those that the former plan has too; those of the former plan only, called off. */
  readonly events: number;
  readonly kept: number;
  readonly cancelled: number;
}

type Property = readonly [string, string];

/**
 * When a phone reminds, from the beginning of the day (RFC 5545 3.8.6.3: of an event without a time, midnight of the user's zone), common
 * practice: of the morning's jobs at 19:00 the evening before, of the evening's at 12:00, of dusk at 17:00. An hour off where the clocks change that day.
 */
const REMIND: Readonly<Record<PartOfDay, string>> = { morning: "-PT5H", evening: "PT12H", dusk: "PT17H" };

/**
 * A plan as an iCalendar file (RFC 5545): an event of a whole day a job, for a plan knows mornings and evenings but no hours. Nobody is made busy
 * by it. What is likely or outline is tentative. All that is said of time is from the plan, so the file is the same whenever it is written.
 * It is published, not sent to anybody: so it has no organiser, whom RFC 5545 3.8.4.3 wants with group-scheduled events only.
 */
export function calendarOf(input: CalendarInput): Calendar {
  const { scenario, plan, former, of } = input;
  const events = eventsOf(scenario, plan, of);
  const before = former === null ? [] : eventsOf(scenario, former, of);
  const now = new Set(events.map(({ job }) => job.id));
  const gone = before.filter(({ job }) => !now.has(job.id));
  const inside = [...events.map((event) => eventText(event, input)), ...gone.map(({ job }) => goneText(job, input))];
  return { text: component("VCALENDAR", headOf(input), inside), events: events.length, kept: before.length - gone.length, cancelled: gone.length };
}

function headOf({ scenario, made, of, words }: CalendarInput): readonly Property[] {
  const who = [...(of.groups ?? []), ...(of.person === null ? [] : [of.person])];
  const name = escapedText(who.length === 0 ? words.say("calendar.name", { farm: scenario.farm }) : words.say("calendar.name-of", { farm: scenario.farm, who: words.list(who) }));
  const about = words.say("calendar.about", { made: words.fullDay(made.madeOn), version: made.version });
  return [
    ["VERSION", "2.0"], ["PRODID", "-//inbye//season plan//EN"], ["CALSCALE", "GREGORIAN"], ["METHOD", "PUBLISH"],
    ["NAME", name], ["X-WR-CALNAME", name], ["DESCRIPTION", escapedText(about)],
  ];
}

function identity(job: Job, { scenario, made, sequence, hash }: CalendarInput): readonly Property[] {
  return [
    ["UID", uidOf(scenario.farm, job.id, hash)], ["DTSTAMP", `${dateValue(made.madeOn)}T000000Z`], ["SEQUENCE", String(sequence)],
    ["DTSTART;VALUE=DATE", dateValue(job.day)], ["TRANSP", "TRANSPARENT"],
  ];
}

function eventText(event: Event, input: CalendarInput): string {
  const { job } = event;
  const { scenario, made, words } = input;
  const summary = escapedText(summaryOf(job, words));
  const place = job.to ?? job.from;
  const groups = job.group === null ? [] : [job.group, ...job.company];
  const sure = sureOf(job.day, made);
  return component("VEVENT", [
    ...identity(job, input), ["STATUS", sure === "likely" || sure === "outline" ? "TENTATIVE" : "CONFIRMED"],
    ["SUMMARY", summary], ["DESCRIPTION", escapedText(descriptionOf(event, scenario, made, words))],
    ...(place === null ? [] : [["LOCATION", escapedText(place.name)] as const]),
    ...(groups.length === 0 ? [] : [["CATEGORIES", groups.map(escapedText).join(",")] as const]),
  ], alarmsOf(job, summary));
}

/** Fence kit is fetched after a move, of which the phone has reminded. */
function alarmsOf(job: Job, summary: string): readonly string[] {
  if (job.kind === "collect") return [];
  return [component("VALARM", [["ACTION", "DISPLAY"], ["TRIGGER", REMIND[job.kind === "cut" ? "morning" : job.part]], ["DESCRIPTION", summary]])];
}

function goneText(job: Job, input: CalendarInput): string {
  const { made, words } = input;
  return component("VEVENT", [
    ...identity(job, input), ["STATUS", "CANCELLED"], ["SUMMARY", escapedText(words.say("calendar.gone", { job: summaryOf(job, words) }))],
    ["DESCRIPTION", escapedText(words.say("calendar.gone-why", { made: words.fullDay(made.madeOn), version: made.version }))],
  ]);
}
