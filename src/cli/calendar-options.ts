import type { Finding } from "../farm/finding.js";
import { nearestNames } from "../farm/near-names.js";
import type { Scenario } from "../farm/scenario.js";
import type { CalendarOf } from "../sheets/calendar/events.js";
import { changesOf, languageOf, named, type Say, type Typed } from "./options.js";
import { commandLineFinding, InputFault } from "./outcome.js";

export type TypedCalendarOptions = Readonly<Partial<Record<"group" | "person" | "since" | "out" | "language" | "change", Typed>>>;

export interface CalendarOptions {
  /** Names as typed. */
  readonly groups: readonly string[] | null;
  readonly person: string | null;
  /** The plan that a calendar was made of before. */
  readonly since: string | null;
  readonly out: string | null;
  readonly language: string;
  readonly changes: readonly string[];
}

/** Reads the options of `calendar`, or stops with every finding about them. */
export function readCalendarOptions(typed: TypedCalendarOptions): CalendarOptions {
  return orStop((say) => {
    const textOf = (name: "group" | "person" | "since" | "out"): string | null => {
      const text = typed[name];
      return text === undefined ? null : named(name, text, say);
    };
    const [groups, person] = [textOf("group"), textOf("person")];
    return { groups: groups === null ? null : listed(groups), person: person === null ? null : person.trim(), since: textOf("since"), out: textOf("out"), language: languageOf(typed.language, say), changes: changesOf(typed.change, say) };
  });
}

function listed(text: string): readonly string[] {
  return [...new Set(text.split(",").map((name) => name.trim()).filter((name) => name !== ""))];
}

/** Whose calendar it is, by the farm's own names in the farm's order; stops with every name that the farm does not have. Capitals do not count. */
export function whoseCalendar({ groups, person }: CalendarOptions, { farm, groups: herds, people }: Scenario): CalendarOf {
  return orStop((say) => {
    const known = (what: "group" | "person", written: string, names: readonly string[]): string | null =>
      names.find((name) => name === written) ?? names.find((name) => name.toLowerCase() === written.toLowerCase()) ?? say(unknown(farm, what, written, names));
    const own = herds.map(({ name }) => name);
    const asked = groups?.map((name) => known("group", name, own)) ?? null;
    return { groups: asked && own.filter((name) => asked.includes(name)), person: person === null ? null : known("person", person, people.map(({ name }) => name)) };
  });
}

function unknown(farm: string, what: "group" | "person", written: string, names: readonly string[]): Finding {
  const near = nearestNames(written, names, 1)[0];
  return commandLineFinding("name-unknown", `${farm} has no ${what} ${written}`, `${what}: ${names.join(", ")}`, near === undefined ? `leave --${what} out` : `write --${what} ${near}`);
}

function orStop<T>(read: (say: Say) => T): T {
  const findings: Finding[] = [];
  const value = read((finding) => {
    findings.push(finding);
    return null;
  });
  if (findings.length > 0) throw new InputFault(findings);
  return value;
}
