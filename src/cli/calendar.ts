import { dirname } from "node:path";
import { checkPlan } from "../check/check-plan.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { sha256 } from "../files/read.js";
import { calendarOf } from "../sheets/calendar/calendar.js";
import type { CalendarOf } from "../sheets/calendar/events.js";
import type { Plan } from "../plan/plan.js";
import { calendarAnswer, calendarText, type CalendarSeen } from "./calendar-answer.js";
import { whoseCalendar, type CalendarOptions } from "./calendar-options.js";
import { madeOfRead, todayHere } from "./made.js";
import { openFarm, openPlanFile, openWords, type Opened } from "./open.js";
import { refuseWhatIsThere, writeOut } from "./out-folder.js";
import { commandLineFinding, InputFault, type Outcome } from "./outcome.js";
import { widthOf, type Screen } from "./screen.js";

export interface CalendarGiven extends CalendarOptions {
  readonly farm: string;
  readonly plan: string;
  readonly replace: boolean;
}

/** `inbye calendar FARM PLAN`: the plan as an iCalendar file; with a former plan, what is no more is called off in it. */
export function calendarCommand(given: CalendarGiven, screen: Screen): Outcome {
  const words = openWords(given.language);
  const farm = openFarm(given.farm, given.changes);
  const scenario = farm.value;
  const of = whoseCalendar(given, scenario);
  const { value: { plan, file: planFile }, notes } = openPlanFile(given.plan, scenario);
  const former = formerOf(given.since, scenario);
  const folder = given.out ?? dirname(given.plan);
  const name = fileName(of);
  refuseWhatIsThere(folder, [name], given.replace);
  const report = checkPlan(scenario, plan);
  const made = madeOfRead(scenario, planFile, report, todayHere());
  const sequence = former === null ? made.version : Math.max(made.version, former.value.version + 1);
  const calendar = calendarOf({ scenario, plan, made, former: former?.value.plan ?? null, sequence, of, words, hash: sha256 });
  if (calendar.events + calendar.cancelled === 0) throw new InputFault([nothingIn(of)]);
  const [file] = writeOut(folder, [{ name, text: calendar.text }], given.replace);
  const said = [
    ...farm.notes, ...notes, ...(former?.notes ?? []), ...(planFile === null ? [undated(given.plan)] : []),
    ...(former !== null && made.version <= former.value.version ? [notHigher(given, made.version, former.value.version)] : []),
  ];
  const seen: CalendarSeen = { scenario, made, of, since: given.since, sequence, calendar, file: file!, rulesBroken: report.breaches.length, notes: said };
  return { exit: report.breaches.length > 0 ? 3 : 0, text: calendarText(seen, widthOf(screen), screen), answer: { shape: "calendar-answer", value: calendarAnswer(seen) } };
}

/** The former plan; a grid counts as version 1, which its calendar said. */
function formerOf(path: string | null, scenario: Scenario): Opened<{ readonly plan: Plan; readonly version: number }> | null {
  if (path === null) return null;
  const { value: { plan, file }, notes } = openPlanFile(path, scenario);
  return { value: { plan, version: file?.version ?? 1 }, notes: notes.map((note) => ({ ...note, file: path })) };
}

/** "calendar.ics", "calendar-cows-layers.ics", "calendar-ann.ics". */
function fileName({ groups, person }: CalendarOf): string {
  const names = [...(groups ?? []), ...(person === null ? [] : [person])].map((name) => name.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, "-").replaceAll(/^-|-$/g, ""));
  return `${["calendar", ...names.filter((name) => name !== "")].join("-")}.ics`;
}

function nothingIn({ groups, person }: CalendarOf): Finding {
  const whom = [...(groups ?? []), ...(person === null ? [] : [person])].join(", ");
  return commandLineFinding("calendar-empty", `this plan has no move and no job${whom === "" ? "" : ` for ${whom}`}`, "a calendar has one event or more", whom === "" ? "plan some stays first" : "leave --group or --person out, or name others");
}

function notHigher({ plan, since }: CalendarGiven, version: number, former: number): Finding {
  const found = `${plan} is version ${version}, ${since!} is version ${former}`;
  return commandLineFinding("version-not-higher", found, `the events are written as version ${former + 1}, so that a calendar takes them for the newer ones`, `plan with --from ${since!}, and versions count on`);
}

/** A grid says neither when it was made nor which version it is. */
function undated(path: string): Finding {
  const found = `${path} does not say when it was made`;
  return commandLineFinding("grid-undated", found, "the calendar says made today, version 1, and firm for two weeks from today or from the season's first day", "use plan.json where the grid is as it was planned");
}
