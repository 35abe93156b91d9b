import { z } from "zod";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import type { Calendar } from "../sheets/calendar/calendar.js";
import type { CalendarOf } from "../sheets/calendar/events.js";
import type { Made } from "../sheets/made.js";
import { fullDay } from "../sheets/day-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import { day, finding, season } from "./answer-parts.js";
import { findingsText } from "./findings-text.js";
import type { Screen } from "./screen.js";
import { countWords } from "./words.js";

const count = z.number().int().min(0);

export const calendarAnswerShape = z.strictObject({
  farm: z.string(),
  season,
  plan: z.strictObject({ version: z.number().int().min(1), madeOn: day }),
  groups: z.array(z.string()).nullable().meta({ description: "groups whose jobs are in it; null of all" }),
  person: z.string().nullable().meta({ description: "whose days at home are in it; null of everybody" }),
  sequence: z.number().int().min(1).meta({ description: "SEQUENCE of every event: the plan's version, or one more than the former plan's where that is higher" }),
  events: count.meta({ description: "events of the plan" }),
  added: count.nullable().meta({ description: "of these, those that the former plan does not have; null without --since" }),
  cancelled: count.nullable().meta({ description: "events more, of the former plan alone, written as called off; null without --since" }),
  file: z.string(),
  rulesBroken: count.meta({ description: "places in which the plan breaks a rule; see check" }),
  notes: z.array(finding),
});

/** What `calendar` made. */
export interface CalendarSeen {
  readonly scenario: Scenario;
  readonly made: Made;
  readonly of: CalendarOf;
  readonly since: string | null;
  readonly sequence: number;
  readonly calendar: Calendar;
  readonly file: string;
  readonly rulesBroken: number;
  readonly notes: readonly Finding[];
}

/** The same as one object. */
export function calendarAnswer({ scenario, made, of, since, sequence, calendar, file, rulesBroken, notes }: CalendarSeen): z.infer<typeof calendarAnswerShape> {
  const { events, kept, cancelled } = calendar;
  const later = since !== null;
  return {
    farm: scenario.farm, season: scenario.season, plan: { version: made.version, madeOn: made.madeOn }, groups: of.groups && [...of.groups], person: of.person,
    sequence, events, added: later ? events - kept : null, cancelled: later ? cancelled : null, file, rulesBroken, notes: [...notes],
  };
}

/** The same for people. */
export function calendarText({ scenario, made, of, since, calendar, file, rulesBroken, notes }: CalendarSeen, columns: number, screen: Screen): string {
  const { events, kept, cancelled } = calendar;
  const who = [...(of.groups ?? []), ...(of.person === null ? [] : [of.person])];
  const held = since === null ? countWords(events, "event") : `${countWords(events, "event")}, of them ${events - kept} that ${since} does not have; ${cancelled} more called off`;
  const broken = rulesBroken > 0 ? [wrapped(`  - This plan breaks a rule in ${countWords(rulesBroken, "place")}: see inbye check.`, columns, 4)] : [];
  return [
    screen.heading(wrapped(`${scenario.farm}: plan of ${fullDay(made.madeOn)}, version ${made.version}${who.length === 0 ? "" : `, for ${who.join(", ")}`}`, columns)),
    "", screen.heading("The calendar"), `  ${file}`, wrapped(`  ${held}`, columns, 2),
    ...(broken.length + notes.length === 0 ? [] : ["", screen.heading("Worth knowing"), ...broken, ...(notes.length === 0 ? [] : [findingsText(notes, columns).trimEnd()])]),
    "",
  ].join("\n");
}
