import { daysMeant, whyNoDay } from "../farm/days-meant.js";
import type { Finding } from "../farm/finding.js";
import { listOr, nearNames } from "../farm/near-names.js";
import type { Scenario } from "../farm/scenario.js";
import { hostOf, placeName, samePlace, stayOn, type Place } from "../decide/why-forced.js";
import type { Plan } from "../plan/plan.js";
import { isIsoDate, spanHolds, type IsoDate } from "../quantity/calendar.js";
import { fullDay, spanWords } from "../sheets/day-words.js";
import { flag, valued } from "./command-line.js";
import { commandLineFinding, InputFault } from "./outcome.js";

export const WHY_OPTIONS = {
  group: valued("Group to ask about: why is it where it is that day?"),
  cell: valued("Cell to ask about: why is it empty, or who could use it? With --group, that place alone"),
  day: valued("Day to ask about, as 2027-06-15"),
  not: valued("With --group: why not in this cell (or yard) that day?"),
  change: valued("Change file to lay over the farm; several with commas between"),
  json: flag("Print one JSON object and nothing else; its shape is in schemas/"),
};

/** Options of `why` as typed. */
export interface TypedWhy {
  readonly group?: string | undefined;
  readonly cell?: string | undefined;
  readonly day?: string | undefined;
  readonly not?: string | undefined;
}

/** What is asked: a group on a day, of all places or of one; or a cell on a day. */
export type WhyAsked =
  | { readonly of: "group"; readonly group: string; readonly day: IsoDate; readonly only: Place | null }
  | { readonly of: "cell"; readonly cell: string; readonly day: IsoDate };

type Say = (code: string, found: string, allowed: string, next: string) => null;

/** Reads what `why` is asked, of a farm and its plan, or stops with every finding about it. */
export function readWhyOptions(typed: TypedWhy, scenario: Scenario, plan: Plan): WhyAsked {
  const findings: Finding[] = [];
  const say: Say = (code, found, allowed, next) => {
    findings.push(commandLineFinding(code, found, allowed, next));
    return null;
  };
  const day = dayOf(typed.day, scenario, say);
  const asked = whoAndWhere(typed, scenario, say);
  if (asked?.group && day) presence(scenario, plan, asked.group, day, asked.only, say);
  if (findings.length > 0 || !asked || !day) throw new InputFault(findings);
  return asked.group === null ? { of: "cell", cell: asked.cell, day } : { of: "group", group: asked.group, day, only: asked.only };
}

function dayOf(typed: string | undefined, { season }: Scenario, say: Say): IsoDate | null {
  const allowed = `a day of the season, ${season.firstDay} to ${season.lastDay}`;
  if (typed === undefined) return say("day-missing", "no day is named", allowed, `write --day ${season.firstDay}`);
  const text = typed.trim();
  if (!isIsoDate(text)) {
    const meant = daysMeant(text).filter((day) => spanHolds(season, day));
    return say("day-form", `--day is ${text === "" ? "empty" : text}${whyNoDay(text)}`, `${allowed}, as year-month-day`, meant.length > 0 ? `${listOr(meant)}?` : `write --day ${season.firstDay}`);
  }
  return spanHolds(season, text) ? text : say("day-outside", `${text} is no day of the season`, allowed, "");
}

interface Asked {
  readonly group: string | null;
  readonly cell: string;
  readonly only: Place | null;
}

function whoAndWhere({ group, cell, not }: TypedWhy, scenario: Scenario, say: Say): Asked | null {
  if (group === undefined && cell === undefined) return say("nothing-asked", "neither a group nor a cell is named", "--group with a group of the farm, or --cell with a cell", `write --group "${scenario.groups[0]!.name}"`);
  if (group === undefined && not !== undefined) say("group-missing", "--not is given without --group", "--not asks why a group is not in a place", `write --group "${scenario.groups[0]!.name}"`);
  if (cell !== undefined && not !== undefined) say("two-places", "--cell and --not each name a place", "with --group, one place", "leave one of them out");
  const cells = scenario.cells.map(({ name }) => name);
  if (group === undefined) {
    const name = named(cell!, "cell", cells, say);
    return name === null ? null : { group: null, cell: name, only: null };
  }
  const name = named(group, "group", scenario.groups.map((one) => one.name), say);
  const place = not ?? cell;
  if (place === undefined) return name === null ? null : { group: name, cell: "", only: null };
  const yard = scenario.groups.find((one) => one.name === name)?.yard;
  const only = named(place, "place", [...cells, ...(yard === undefined ? scenario.yards.map((one) => one.name) : [yard])], say);
  if (name === null || only === null) return null;
  return { group: name, cell: "", only: cells.includes(only) ? { cell: only, yard: null } : { cell: null, yard: only } };
}

/** A name of the farm; capitals do not count where only one name is meant. */
function named(typed: string, what: string, names: readonly string[], say: Say): string | null {
  const text = typed.trim();
  const same = names.filter((name) => name.toLowerCase() === text.toLowerCase());
  if (names.includes(text)) return text;
  if (same.length === 1) return same[0]!;
  const near = nearNames(text, names);
  return say("name-unknown", text === "" ? `no ${what} is named` : `there is no ${what} ${text} here`, `${what}s: ${names.join(", ")}`, near.length > 0 ? `${listOr(near)}?` : "");
}

/** The group is on the farm that day, the plan has a place for it, and it is not asked why it is not where it is. */
function presence(scenario: Scenario, plan: Plan, name: string, day: IsoDate, only: Place | null, say: Say): void {
  const { here } = scenario.groups.find((one) => one.name === name)!;
  if (!here.some((span) => spanHolds(span, day))) {
    say("not-here", `${name} are not on the farm on ${fullDay(day)}`, `a day on which they are here: ${here.map(({ firstDay, lastDay }) => spanWords(firstDay, lastDay)).join(", ")}`, "");
    return;
  }
  const stay = stayOn(plan, hostOf(scenario, name, day), day);
  if (!stay) say("no-place", `the plan has no place for ${name} on ${fullDay(day)}`, "a plan with a place for every group every day", "plan again");
  else if (only && samePlace(stay, only)) {
    say("stands-there", `${name} do stand in ${placeName(only)} on ${fullDay(day)}, ${spanWords(stay.firstDay, stay.lastDay)}`, "a place where they do not stand that day", "ask without the place");
  }
}
