import type { Finding } from "../farm/finding.js";
import { listOr, nearestNames } from "../farm/near-names.js";
import { addDays, isIsoDate, weekdayOf, type IsoDate, type Span } from "../quantity/calendar.js";
import { PAPER_NAMES, type PaperName } from "../sheets/paper.js";
import { changesOf, columnsOf, languageOf, named, type Say, type Typed } from "./options.js";
import { commandLineFinding, InputFault } from "./outcome.js";

export const FORMATS = ["html", "pdf", "txt"] as const;
export type Format = (typeof FORMATS)[number];

/** Stretches of the season that a sheet may be of, each with its option. */
export const STRETCHES = ["day", "week", "month"] as const;
export type Stretch = (typeof STRETCHES)[number];

/** Sheets by name, and the stretch that each is of; null of the whole season. */
export type Takes = Readonly<Record<string, Stretch | null>>;

type TypedOption = "sheet" | "calls" | Stretch | "out" | "paper" | "as" | "columns" | "language" | "change";
export type TypedSheetsOptions = Readonly<Partial<Record<TypedOption, Typed>>>;

export interface SheetsOptions {
  readonly sheets: readonly string[];
  /** First days of the stretches that were named: the day, a Monday, a first of the month. */
  readonly from: Readonly<Record<Stretch, IsoDate | null>>;
  readonly out: string | null;
  /** File of calls; null for the one beside the farm file, where there is one. */
  readonly calls: string | null;
  /** Null: as the farm's units have it. */
  readonly paper: PaperName | null;
  readonly as: Format;
  /** Of the sheets, by the name of its catalogue: "en". */
  readonly language: string;
  readonly columns: number | null;
  readonly changes: readonly string[];
}

/** Reads the options of `sheets`, or stops with every finding about them. */
export function readSheetsOptions(typed: TypedSheetsOptions, takes: Takes): SheetsOptions {
  const findings: Finding[] = [];
  const say: Say = (finding) => {
    findings.push(finding);
    return null;
  };
  const sheets = sheetsOf(typed.sheet, Object.keys(takes), say);
  const options = {
    sheets, from: { day: startOf("day", typed.day, say), week: startOf("week", typed.week, say), month: startOf("month", typed.month, say) },
    out: typed.out === undefined ? null : named("out", typed.out, say),
    calls: typed.calls === undefined ? null : named("calls", typed.calls, say),
    paper: oneOf("paper", typed.paper, PAPER_NAMES, say),
    as: oneOf("as", typed.as, FORMATS, say) ?? "html",
    language: languageOf(typed.language, say),
    columns: columnsOf(typed.columns, say),
    changes: changesOf(typed.change, say),
  };
  for (const stretch of STRETCHES) {
    const wanted = sheets.some((sheet) => takes[sheet] === stretch);
    if (typed[stretch] !== undefined && sheets.length > 0 && !wanted) say(noSuchSheet(stretch, sheets, takes));
  }
  if (findings.length > 0) throw new InputFault(findings);
  return options;
}

function sheetsOf(typed: Typed, names: readonly string[], say: Say): readonly string[] {
  const allowed = `${names.join(", ")}; several with commas between`;
  const asked = [...new Set((typed ?? "").split(",").map((name) => name.trim()).filter((name) => name !== ""))];
  if (asked.length === 0) say(commandLineFinding("option-value", typed === undefined ? "no sheet is named" : "--sheet has nothing after it", allowed, `write --sheet ${names[0]}`));
  for (const name of asked.filter((one) => !names.includes(one))) say(commandLineFinding("option-value", `there is no sheet ${name}`, allowed, `write --sheet ${nearestNames(name, names, 1)[0]}`));
  return asked.filter((name) => names.includes(name));
}

function oneOf<T extends string>(name: string, typed: Typed, allowed: readonly T[], say: Say): T | null {
  if (typed === undefined) return null;
  const found = allowed.find((one) => one === typed.trim().toLowerCase());
  return found ?? say(commandLineFinding("option-value", typed.trim() === "" ? `--${name} has nothing after it` : `--${name} is ${typed}`, listOr(allowed), `write --${name} ${allowed[0]}`));
}

const FORMS: Readonly<Record<Stretch, { readonly allowed: string; readonly example: string }>> = {
  day: { allowed: "a day: year-month-day", example: "2027-06-15" },
  week: { allowed: "any day of the week: year-month-day", example: "2027-06-15" },
  month: { allowed: "a month: year-month", example: "2027-06" },
};

/** First day of the stretch that was typed. */
function startOf(stretch: Stretch, typed: Typed, say: Say): IsoDate | null {
  if (typed === undefined) return null;
  const day = stretch === "month" ? `${typed.trim()}-01` : typed.trim();
  if (isIsoDate(day)) return firstOf(stretch, day);
  const { allowed, example } = FORMS[stretch];
  return say(commandLineFinding("option-value", typed.trim() === "" ? `--${stretch} has nothing after it` : `--${stretch} is ${typed}`, allowed, `write it as --${stretch} ${example}`));
}

function firstOf(stretch: Stretch, day: IsoDate): IsoDate {
  if (stretch === "day") return day;
  return stretch === "week" ? addDays(day, -weekdayOf(day)) : `${day.slice(0, 8)}01`;
}

function lastOf(stretch: Stretch, first: IsoDate): IsoDate {
  if (stretch === "day") return first;
  return stretch === "week" ? addDays(first, 6) : addDays(`${addDays(first, 31).slice(0, 8)}01`, -1);
}

function noSuchSheet(stretch: Stretch, sheets: readonly string[], takes: Takes): Finding {
  const fitting = Object.keys(takes).filter((name) => takes[name] === stretch);
  const next = fitting.length === 0 ? `leave --${stretch} out` : `add ${listOr(fitting)} to --sheet, or leave --${stretch} out`;
  return commandLineFinding("option-value", `--${stretch} is given, and no sheet of a ${stretch} is asked for`, `${listOr(sheets, "and")}: ${sheets.length === 1 ? "it takes" : "they take"} no ${stretch}`, next);
}

/** First day of the stretch that each sheet asked for is of: as named, else the one that today lies in. Stops with every sheet for which there is none. */
export function stretchesAsked({ sheets, from }: Pick<SheetsOptions, "sheets" | "from">, takes: Takes, season: Span, today: IsoDate): readonly IsoDate[] {
  const findings: Finding[] = [];
  const starts = sheets.map((sheet) => {
    const stretch = takes[sheet] ?? null;
    if (stretch === null) return season.firstDay;
    const first = from[stretch] ?? firstOf(stretch, today);
    if (first <= season.lastDay && lastOf(stretch, first) >= season.firstDay) return first;
    findings.push(outside(sheet, stretch, from[stretch], season));
    return season.firstDay;
  });
  const said = findings.filter((one, i) => findings.findIndex((other) => other.found === one.found) === i);
  if (said.length > 0) throw new InputFault(said);
  return starts;
}

function outside(sheet: string, stretch: Stretch, given: IsoDate | null, { firstDay, lastDay }: Span): Finding {
  const shown = (day: IsoDate): string => (stretch === "month" ? day.slice(0, 7) : day);
  const found = given === null ? `today is not in the season, and the ${sheet} sheet is of one ${stretch}` : `--${stretch} ${shown(given)} is outside the season`;
  return commandLineFinding("outside-season", found, `a ${stretch} from ${shown(firstDay)} to ${shown(lastDay)}`, `write --${stretch} ${shown(firstDay)}`);
}
