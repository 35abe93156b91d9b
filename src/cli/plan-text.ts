import type { Planned } from "../decide/plan-season.js";
import type { Scenario } from "../farm/scenario.js";
import { daysBetween } from "../quantity/calendar.js";
import { costRows } from "./cost-text.js";
import type { Screen } from "./screen.js";
import { columnsOf } from "./table.js";
import { countWords, dayWords, hayWords, minutesWords, moneyWords, nitrogenWords, percentWords, surenessWords } from "./words.js";

/** What the words about a plan are made from. */
export interface PlanSeen {
  readonly scenario: Scenario;
  readonly planned: Planned;
  /** The drawn grid. */
  readonly grid: string;
  readonly cautions: readonly string[];
  readonly notes: readonly string[];
  readonly files: readonly string[];
}

/** A planned season for people: the grid, what it costs, how sure it is, and where the sheets lie. */
export function planText(seen: PlanSeen, screen: Screen): string {
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  return [
    screen.heading(headline(seen.scenario)),
    "",
    seen.grid.trimEnd(),
    ...part(`It costs ${moneyWords(seen.planned.cost, seen.scenario.prices.currency)}`, costPart(seen)),
    ...part("Days in a yard, in a dry, a usual and a wet year", yardPart(seen)),
    ...part("Hay and work", workPart(seen)),
    ...part("How sure", [surenessWords(seen.scenario.season.firstDay, seen.scenario.season.lastDay)]),
    ...part("Worth knowing", seen.notes.map(bullet)),
    ...part("Take care", seen.cautions.map(bullet)),
    ...part("The sheets", seen.files.map((file) => `  ${file}`)),
    "",
  ].join("\n");
}

function headline(scenario: Scenario): string {
  const { firstDay, lastDay } = scenario.season;
  const counts = [
    countWords(scenario.cells.length, "cell"),
    countWords(scenario.groups.length, "group"),
    countWords(daysBetween(firstDay, lastDay) + 1, "day"),
  ];
  return `${scenario.farm}: ${dayWords(firstDay)} to ${dayWords(lastDay)} ${lastDay.slice(0, 4)}, ${counts.join(", ")}`;
}

function costPart({ scenario, planned }: PlanSeen): readonly string[] {
  const { currency } = scenario.prices;
  const bound = Math.max(0, planned.bound);
  return [
    ...costRows(planned.report.chargesByRule, currency),
    `No plan can cost less than ${moneyWords(bound, currency)}; this one could still save at most ${moneyWords(Math.max(0, planned.cost - bound), currency)}.`,
    `By eye (always the longest-rested cell that is ready) it would have cost ${moneyWords(planned.handRuleCost, currency)}${savedWords(planned)}.`,
  ];
}

/** (hand rule - cost) / (hand rule - bound): share of what could be saved at all; null when there is nothing to save. */
export function savedOfPossible(planned: Pick<Planned, "cost" | "bound" | "handRuleCost">): number | null {
  const possible = planned.handRuleCost - planned.bound;
  return possible > 1e-6 ? (planned.handRuleCost - planned.cost) / possible : null;
}

function savedWords(planned: Planned): string {
  const share = savedOfPossible(planned);
  return share === null ? ", and nothing less was possible" : `: this plan saves ${percentWords(share)} of what could be saved at all`;
}

function yardPart({ scenario, planned }: PlanSeen): readonly string[] {
  const { dry, usual, wet } = planned.weatherYardDays;
  const days = (of: Readonly<Record<string, number>>, name: string) => String(of[name] ?? 0);
  const rows = scenario.groups.map(({ name }) => [name, days(dry, name), days(usual, name), days(wet, name)]);
  return columnsOf([["", "dry", "usual", "wet"], ...rows]);
}

function workPart({ scenario, planned }: PlanSeen): readonly string[] {
  const { measures } = planned.report;
  const busiest = Math.max(0, ...measures.minutesByDay);
  return [
    `  Hay fed ${hayWords(measures.hayFedKg, scenario.units)}, hay made ${hayWords(measures.hayMadeKg, scenario.units)}.`,
    `  ${countWords(measures.moves, "move")}, ${countWords(measures.hauls, "haul")} to another field; the busiest day takes ${minutesWords(busiest)}.`,
    `  Nitrogen in the yard: ${measures.nitrogenInYardKg < 1 ? "none" : nitrogenWords(measures.nitrogenInYardKg)}.`,
  ];
}

function bullet(text: string): string {
  return `  - ${text}`;
}
