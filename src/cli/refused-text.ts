import type { Gives, Refusal, WayOut } from "../decide/refusal.js";
import { dayMonth, spanWords } from "../sheets/day-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import type { PlanSeen } from "./plan-answer.js";
import type { Screen } from "./screen.js";
import { aboutPrice, countWords } from "./words.js";

/** The farm as it was named on the command line. */
interface GivenFarm {
  readonly farm: string;
  readonly changes: readonly string[];
}

/** The check has the last word: what would have to give, told from the plan that breaks least, and the ways out. */
export function refusedText(seen: PlanSeen, given: GivenFarm, columns: number, screen: Screen): string {
  const { refusal } = seen.planned;
  if (!refusal) throw new Error("a plan that is not refused has no such words");
  return [
    ...refusalRows(refusal, seen.planned.capped, seen.made.currency, columns, screen),
    ...filesRows(refusal, seen.files, given, screen).map((row) => wrapped(row, columns, 4)),
    "",
  ].join("\n");
}

/** What gives and the ways out, without files. */
export function refusalRows(refusal: Refusal, capped: boolean, currency: string, columns: number, screen: Screen): readonly string[] {
  const line = (text: string, indent = 0) => wrapped(text, columns, indent);
  const ended = capped ? "Stopped before a plan was found that keeps every rule." : "No plan was found that keeps every rule.";
  const places = countWords(refusal.gives.length, "place");
  return [
    line(`${ended} The one that breaks least breaks rules in ${places}:`),
    "",
    ...refusal.gives.flatMap((place) => givesRows(place).map((row) => line(row, 4))),
    ...(refusal.provenDays > 0 ? ["", line(`Re-done ${refusal.provenDays} days at a time, one group at a time, it breaks no less; that no plan of the whole season does is not proven.`)] : []),
    ...clashRows(refusal).map((row) => line(row)),
    ...waysRows(refusal, currency, screen).map((row) => line(row, 4)),
  ];
}

/** One stay or day: a line, or a head with a line for each rule where several give. */
function givesRows({ group, cell, yard, firstDay, lastDay, breaches }: Gives): readonly string[] {
  const where = [group, cell ?? yard].filter((name) => name !== null).join(" in ");
  const head = `${spanWords(firstDay, lastDay)}${where === "" ? "" : `, ${where}`}`;
  const rows = breaches.map((breach) => {
    const days = breach.firstDay === firstDay && breach.lastDay === lastDay ? "" : `${spanWords(breach.firstDay, breach.lastDay)}: `;
    return `${days}${breach.found}; allowed ${breach.allowed} [${breach.rule}]`;
  });
  return rows.length === 1 ? [`  ${head}: ${rows[0]}`] : [`  ${head}:`, ...rows.map((row) => `    ${row}`)];
}

function clashRows({ clash }: Refusal): readonly string[] {
  if (!clash) return [];
  const [first, ...others] = clash.holds;
  if (others.length === 0) return ["", `The hold ${first} cannot stand: with it no plan was found, without it there is one.`];
  return ["", `These holds cannot all stand: ${clash.holds.join(", ")}. With any one of them lifted there is a plan for the others, with all of them none was found.`];
}

function waysRows({ waysOut, otherWays }: Refusal, currency: string, screen: Screen): readonly string[] {
  if (waysOut.length === 0) return ["", "No single change that was tried makes a plan possible."];
  const told = ({ words, cost }: WayOut) => `  - ${withDays(words)}: the season then costs ${aboutPrice(cost, currency)}`;
  return [
    "", screen.heading("What would help, each planned; the cheapest first"), ...waysOut.map(told),
    ...(otherWays.length === 0 ? [] : ["  It would also do, planned by a quick look:", ...otherWays.map(told)]),
    "  What the change itself costs or loses, as rent or animals sold, is not in these figures; hay fed is.",
  ];
}

/** ISO days as people say them. */
function withDays(words: string): string {
  return words.replace(/\d{4}-\d{2}-\d{2}/g, dayMonth);
}

function filesRows({ waysOut }: Refusal, files: readonly string[], { farm, changes }: GivenFarm, screen: Screen): readonly string[] {
  const [nearest, ...others] = files;
  if (nearest === undefined) return [];
  const plan = others.at(-1);
  const change = others.length > 1 ? others[0] : undefined;
  const check = (file: string, laid: readonly string[]): string => `inbye check ${farm} ${file}${laid.length === 0 ? "" : ` --change ${laid.join(",")}`}`;
  const wayOut = plan === undefined || waysOut.length === 0 ? [] : [
    `  ${others.join(", ")}: the cheapest way out, planned`, ...(change === undefined ? [] : [`    ${check(plan, [...changes, change])}`]),
  ];
  return ["", screen.heading("To look at, not for the wall"), `  ${nearest}: the plan that breaks least`, `    ${check(nearest, changes)}`, ...wayOut];
}
