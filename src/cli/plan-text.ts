import { PROVEN, type Planned } from "../decide/plan-season.js";
import { daysBetween } from "../quantity/calendar.js";
import { cautionsFor } from "../plan/cautions.js";
import type { Scenario } from "../farm/scenario.js";
import { dayMonth } from "../sheets/day-words.js";
import { datedCaution } from "../sheets/caution-words.js";
import { hayWords } from "../sheets/figure-words.js";
import { seasonGridText } from "../sheets/season-grid-text.js";
import type { Paint } from "../sheets/text-paint.js";
import { wrapped } from "../sheets/text-wrap.js";
import { english } from "./english.js";
import { costRows } from "./cost-text.js";
import { savedOfPossible, type PlanSeen } from "./plan-answer.js";
import type { Screen } from "./screen.js";
import { columnsOf } from "./table.js";
import { aboutPrice, countWords, minutesWords, nitrogenWords, percentWords, shownMoney, surenessWords } from "./words.js";

/** A planned season for people: the grid, what it costs, how sure it is, and where the sheets lie. */
export function planText(seen: PlanSeen, columns: number, screen: Screen): string {
  const { scenario, planned, made, files, notes } = seen;
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  const lines = (rows: readonly string[]) => rows.map((row) => wrapped(row, columns, 4));
  const bullet = (text: string) => `  - ${wrapped(text, columns - 4, 4)}`;
  return [
    screen.heading(wrapped(headline(scenario), columns)),
    "",
    seasonGridText(scenario, planned.plan, planned.report, made, english(), { columns, paint: paintWith(screen) }).trimEnd(),
    ...part(`What it costs: ${aboutPrice(planned.cost, made.currency)}`, lines(costPart(seen))),
    ...part("Days in a yard, by kind of year", yardPart(seen)),
    ...part("Hay and work", lines(workPart(seen))),
    ...part("How sure", lines([`  ${surenessWords(made.firmTo, made.likelyTo, scenario.season.lastDay)}`])),
    ...part("Worth knowing", [...planned.notes, ...notes.map((note) => `${note.found}: ${note.allowed}`)].map(bullet)),
    ...part("Take care", cautionsFor(scenario, planned.plan).map((caution) => bullet(datedCaution(english(), caution)))),
    ...part("The sheets", files.map((file) => `  ${file}`)),
    "",
  ].join("\n");
}

/** Stays stand out and ground at rest steps back, on a terminal that can show it; letters say it all the same. */
function paintWith(screen: Screen): Paint {
  return (text, part) => {
    if (part === "stay" || part === "head") return screen.heading(text);
    return part === "shut" || part === "weekend" ? screen.soft(text) : text;
  };
}

function headline(scenario: Scenario): string {
  const { firstDay, lastDay } = scenario.season;
  const counts = [
    countWords(scenario.cells.length, "cell"),
    countWords(scenario.groups.length, "group"),
    countWords(daysBetween(firstDay, lastDay) + 1, "day"),
  ];
  return `${scenario.farm}: ${dayMonth(firstDay)} to ${dayMonth(lastDay)} ${lastDay.slice(0, 4)}, ${counts.join(", ")}`;
}

function costPart({ planned, made }: PlanSeen): readonly string[] {
  const about = (money: number) => aboutPrice(money, made.currency);
  const { cost, bound, boundKind, handRuleCost } = planned;
  const left = Math.max(0, shownMoney(cost) - shownMoney(bound));
  return [
    ...costRows(planned.report.chargesByRule, made.currency),
    boundKind === PROVEN ? "  No plan costs less: every way to live this season was looked at." : leastWords(bound > 0 ? { bound: about(bound), left: about(left) } : null),
    `  By eye (always the longest-rested cell that is ready) it would cost ${about(handRuleCost)}${savedWords(planned)}.`,
  ];
}

function leastWords(known: { readonly bound: string; readonly left: string } | null): string {
  return known ? `  No plan can cost less than ${known.bound}: at most ${known.left} could still be saved.` : "  How much less another plan could cost was not worked out.";
}

function savedWords(planned: Planned): string {
  const saved = savedOfPossible(planned);
  if (saved === null) return ", and no plan could save anything on that";
  return planned.bound > 0 ? `; this plan saves ${percentWords(saved)} of what could be saved at all` : "";
}

function yardPart({ scenario, planned }: PlanSeen): readonly string[] {
  const { dry, usual, wet } = planned.weatherYardDays;
  const days = (of: Readonly<Record<string, number>>, name: string) => String(of[name] ?? 0);
  const rows = scenario.groups.map(({ name }) => [name, days(dry, name), days(usual, name), days(wet, name)]);
  return columnsOf([["", "dry", "usual", "wet"], ...rows]);
}

function workPart({ scenario, planned, made }: PlanSeen): readonly string[] {
  const { measures } = planned.report;
  const others = made.hay ? [made.hay.dry.kg, made.hay.wet.kg] : [];
  const busiest = measures.minutesByDay.reduce((most, minutes) => Math.max(most, minutes), 0);
  const yardNitrogen = measures.nitrogenInYardKg < 1 ? "none" : nitrogenWords(measures.nitrogenInYardKg);
  return [
    `  Hay fed, by kind of year: ${hayWords(measures.hayFedKg, scenario.units, others)}. Hay made: ${hayWords(measures.hayMadeKg, scenario.units)}.`,
    `  ${countWords(measures.moves, "move")}${haulWords(measures.hauls)}. The busiest day takes ${minutesWords(busiest)}.`,
    `  Nitrogen dropped in the yard: ${yardNitrogen}.`,
  ];
}

function haulWords(hauls: number): string {
  return hauls === 0 ? "" : `, of these ${countWords(hauls, "haul")} from another field or the yard`;
}
