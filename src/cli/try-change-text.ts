import type { Comparison, GroupDiffers } from "../decide/compare-plans.js";
import type { SeasonFigures } from "../decide/season-figures.js";
import type { Scenario } from "../farm/scenario.js";
import { addDays, monthOf, type IsoDate } from "../quantity/calendar.js";
import { RULE_IDS, type RuleId } from "../rules/rule.js";
import { dayMonth } from "../sheets/day-words.js";
import { english } from "./english.js";
import { ruleWords } from "../sheets/rule-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import { refusalRows } from "./refused-text.js";
import type { Screen } from "./screen.js";
import { columnsOf } from "./table.js";
import { moneyRow, toldRows, type ToldRow } from "./try-figures.js";
import type { ChangeSeen } from "./try-seen.js";
import { minutesWords } from "./words.js";

/** One change for people: every figure as it is, with it, and the difference; or why there is no plan with it. */
export function changePart({ trial: { planned }, comparison }: ChangeSeen, base: Scenario, columns: number, screen: Screen): readonly string[] {
  if (planned.refusal) return refusalRows(planned.refusal, planned.capped, base.prices.currency, columns, screen);
  if (!comparison) return [wrapped("There is a plan with it; the farm as it is has none to compare with.", columns)];
  const lines = (rows: readonly string[]) => rows.map((row) => wrapped(row, columns, 4));
  return [
    ...columnsOf([HEAD, ...toldRows(comparison.figures, base).map(cells)]),
    "", ...columnsOf(whenRows(comparison), [0, 1, 2]),
    "", "  The money, by what it is for (rounded)", ...columnsOf([HEAD, ...moneyRows(comparison, base).map(cells)]),
    "", ...lines([`  ${rulesWords(comparison)}`, ...overRows(comparison)]),
    "", ...lines(["  Days that stand otherwise, by week (a figure counts the days, a dot is none)"]), ...weekRows(comparison),
  ];
}

const HEAD = ["", "as it is", "with it", "difference"];

function cells({ label, base, change, difference }: ToldRow): readonly string[] {
  return [label, base, change, difference];
}

/** When and where the extremes fall. */
function whenRows({ base, change }: Comparison): readonly (readonly string[])[] {
  const row = (label: string, words: (season: SeasonFigures) => string) => [label, words(base), words(change)];
  return [
    ["", "as it is", "with it"],
    row("Fullest week of moves", ({ movesWorstWeek }) => `from ${dayMonth(movesWorstWeek)}`),
    row("Fullest week of work", ({ minutesWorstWeek }) => `from ${dayMonth(minutesWorstWeek)}`),
    row("Fullest day", ({ crowdedDay }) => (crowdedDay ? dayMonth(crowdedDay.day) : "none")),
    row("its work", ({ crowdedDay }) => (crowdedDay ? `${minutesWords(crowdedDay.minutes)} of ${minutesWords(crowdedDay.atHome)}` : "none")),
    ...PIECES.filter((piece) => base.kitDays[piece] !== null || change.kitDays[piece] !== null)
      .map((piece) => row(`Most ${piece} from`, ({ kitDays }) => (kitDays[piece] === null ? "none" : dayMonth(kitDays[piece])))),
    row("Most nitrogen on", ({ nitrogenHighestCell }) => nitrogenHighestCell ?? "no cell"),
  ];
}

const PIECES = ["nets", "reels", "energisers"] as const;

/** Dearest difference first. */
function moneyRows({ charges }: Comparison, base: Scenario): readonly ToldRow[] {
  const paid = [...RULE_IDS].sort((a, b) => Math.abs(charges[b].difference) - Math.abs(charges[a].difference));
  return paid.flatMap((id) => moneyRow(ruleWords(id, english()), charges[id], base));
}

function rulesWords({ newlyBroken, newlyKept, newlyPaid, noLongerPaid }: Comparison): string {
  const list = (ids: readonly RuleId[]): string => ids.map((id) => ruleWords(id, english())).join(", ");
  const broken = newlyBroken.length + newlyKept.length === 0
    ? "Both plans keep every rule that is never broken."
    : `Newly broken: ${list(newlyBroken) || "nothing"}; newly kept: ${list(newlyKept) || "nothing"}.`;
  const paid = newlyPaid.length + noLongerPaid.length === 0 ? "" : ` Newly at a price: ${list(newlyPaid) || "nothing"}; no longer: ${list(noLongerPaid) || "nothing"}.`;
  return broken + paid;
}

function overRows({ base, change }: Comparison): readonly string[] {
  const [before, after] = [base, change].map(({ cellsOverNitrogen }) => cellsOverNitrogen.join(", ") || "none");
  return before === "none" && after === "none" ? [] : [`  Cells over the nitrogen ceiling: ${before} as it is, ${after} with it.`];
}

/** A line of weeks for each group, under the months. */
function weekRows({ firstDay, groups }: Comparison): readonly string[] {
  const width = Math.max(...groups.map(({ group }) => group.length));
  const weeks = groups[0]?.byWeek.length ?? 0;
  return [
    `  ${" ".repeat(width)}  ${monthLine(firstDay, weeks)}`.trimEnd(),
    ...groups.map((group) => `  ${group.group.padEnd(width)}  ${group.byWeek.map((days) => (days === null ? " " : days === 0 ? "." : String(days))).join("").padEnd(weeks)}  ${daysWords(group)}`.trimEnd()),
  ];
}

function daysWords({ on, days, of }: GroupDiffers): string {
  if (on === "both") return days === 0 ? "all the same" : `${days} of ${of}`;
  return on === "change" ? `new, ${of}` : `gone, ${of}`;
}

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** Each month's name over the week in which it begins; the first only where there is room before the next. */
function monthLine(firstDay: IsoDate, weeks: number): string {
  const begins = Array.from({ length: weeks }, (_, w) => ({ week: w, month: monthOf(addDays(firstDay, w === 0 ? 0 : w * 7 + 6)) }))
    .filter(({ week, month }) => week === 0 || month !== monthOf(addDays(firstDay, week * 7 - 1)));
  return begins.filter(({ week }, i) => i > 0 || (begins[1]?.week ?? Infinity) > week + 3).reduce((line, { week, month }) => line.padEnd(week) + MONTHS[month]!, "");
}
