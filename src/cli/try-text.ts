import type { Scenario } from "../farm/scenario.js";
import type { FigureKey } from "../decide/season-figures.js";
import type { Trial } from "../decide/try-changes.js";
import { spanWords } from "../sheets/day-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import { refusalRows } from "./refused-text.js";
import type { Screen } from "./screen.js";
import { columnsOf } from "./table.js";
import { changePart } from "./try-change-text.js";
import { labelOf, moneyRow, toldFigure } from "./try-figures.js";
import { pricesOf } from "./try-prices.js";
import { searchSpread, type ChangeSeen, type TrySeen } from "./try-seen.js";
import { aboutPrice, countWords, shownMoney } from "./words.js";

/** A farm as it is and with changes, for people: what each change comes to, side by side and one by one, and how sure that is. */
export function tryText(seen: TrySeen, columns: number, screen: Screen): string {
  const { scenario, changes, files, notes } = seen;
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  const lines = (rows: readonly string[]) => rows.map((row) => wrapped(row, columns, 2));
  const bullets = (rows: readonly string[]) => rows.map((row) => `  - ${wrapped(row, columns - 4, 4)}`);
  const { firstDay, lastDay } = scenario.season;
  return [
    screen.heading(`${scenario.farm}, ${spanWords(firstDay, lastDay)} ${lastDay.slice(0, 4)}: what if?`),
    ...lines([...seen.laidFirst.length === 0 ? [] : [`As it is: ${seen.laidFirst.join(", then ")}.`], ...headRows(seen)]),
    ...basePart(seen.base, scenario, columns, screen),
    ...part("Side by side", sideBySide(seen)),
    ...changes.flatMap((change, i) => ["", screen.heading(titleOf(change.trial, i, changes.length)), ...changePart(change, scenario, columns, screen)]),
    ...part("Prices", lines(priceRows(seen))),
    ...part("How sure", lines(sureRows(seen).map((row) => `  ${row}`))),
    ...part("Worth knowing", bullets([...trialNotes(seen), ...notes.map((note) => `${note.found}: ${note.allowed}`)])),
    ...part("The sheets", files.map((file) => `  ${file}`)),
    "",
  ].join("\n");
}

/** Changes have numbers where there are several: tables name them by these. */
function titleOf({ title }: Trial, at: number, of: number): string {
  return of === 1 ? title : `${at + 1}  ${title}`;
}

function headRows({ base, changes, scenario, given }: TrySeen): readonly string[] {
  const { currency } = scenario.prices;
  const asItIs = base.planned.kind === "plan" ? [`The season costs ${aboutPrice(base.planned.cost, currency)} as it is.`] : ["No plan was found for the farm as it is."];
  const start = given === null ? [] : [startWords(given, currency)];
  const spread = searchSpread([base, ...changes.map(({ trial }) => trial)]) ?? 0;
  const luck = ({ trial: { planned } }: ChangeSeen): string =>
    (planned.kind === "plan" && base.planned.kind === "plan" && 0 < Math.abs(planned.cost - base.planned.cost) && Math.abs(planned.cost - base.planned.cost) <= spread ? "; so little may be luck" : "");
  return [
    ...asItIs, ...start, ...changes.map((change, i) => `${titleOf(change.trial, i, changes.length)}: ${headWords(change, scenario)}${luck(change)}.`),
    "What is bought, sold or rented for a change is not counted.",
  ];
}

function startWords({ cost, breaches, daysOtherwise }: NonNullable<TrySeen["given"]>, currency: string): string {
  const judged = breaches > 0 ? `breaks rules in ${countWords(breaches, "place")}` : `costs ${aboutPrice(cost, currency)}`;
  const from = daysOtherwise === 0 ? "that is the plan compared with" : `planned on from there, ${countWords(daysOtherwise, "day")} of groups are otherwise, and that plan is compared with`;
  return `The plan you gave ${judged}; ${from}.`;
}

function headWords({ trial: { planned }, comparison }: ChangeSeen, scenario: Scenario): string {
  if (planned.kind === "no-plan") return "no plan was found";
  if (!comparison) return `a plan was found, ${aboutPrice(planned.cost, scenario.prices.currency)}`;
  const [row] = moneyRow("", comparison.figures.cost, scenario);
  if (!row) return "nothing, as it is";
  return row.difference === "same" ? `about ${row.change}, the same` : `about ${row.change}, ${row.difference}`;
}

function basePart({ planned }: Trial, { prices }: Scenario, columns: number, screen: Screen): readonly string[] {
  return planned.refusal ? ["", ...refusalRows(planned.refusal, planned.capped, prices.currency, columns, screen)] : [];
}

/** Changes that fit beside the farm as it is in 80 columns. */
const ABREAST = 3;
const SUMMARY: readonly FigureKey[] = [
  "cost", "hay-fed-kg", "hay-days", "hay-to-buy-kg", "moves-a-week", "minutes-a-week", "rests-short", "nitrogen-highest-kg-per-ha", "cells-over-nitrogen",
];

/** What several changes come to, beside the farm as it is; those without a plan are told apart. */
function sideBySide({ changes, scenario }: TrySeen): readonly string[] {
  const planned = changes.flatMap(({ comparison }, i) => (comparison ? [{ name: String(i + 1), comparison }] : []));
  if (changes.length < 2 || planned.length === 0) return [];
  const tables = Array.from({ length: Math.ceil(planned.length / ABREAST) }, (_, t) => planned.slice(t * ABREAST, (t + 1) * ABREAST));
  return tables.flatMap((some, t) => [
    ...t === 0 ? [] : [""],
    ...columnsOf([
      ["", "as it is", ...some.map(({ name }) => name)],
      ...SUMMARY.map((key) => {
        const seasons = [some[0]!.comparison.base, ...some.map(({ comparison }) => comparison.change)];
        return [labelOf(key, scenario), ...seasons.map(({ figures }) => toldFigure(key, figures[key], scenario))];
      }),
      ["Days otherwise", "", ...some.map(({ comparison }) => String(comparison.groups.reduce((sum, { days, on }) => sum + (on === "both" ? days : 0), 0)))],
    ]),
  ]);
}

function priceRows({ scenario, changes }: TrySeen): readonly string[] {
  const words = (prices: ReturnType<typeof pricesOf>): string => prices.map(({ what, price, assumed }) => `${what} ${price}${assumed ? " (assumed)" : ""}`).join("; ");
  const others = changes.map(({ trial }, i) => ({ title: titleOf(trial, i, changes.length), prices: pricesOf(trial.scenario, scenario) }));
  return [
    `  Used throughout: ${words(pricesOf(scenario, null))}.`,
    ...others.filter(({ prices }) => prices.length > 0).map(({ title, prices }) => `  ${title}: ${words(prices)}.`),
    "  What rules ask (rests cut short, long stays) has its own figures in the farm file. What is bought, sold or rented for a change is not in it.",
  ];
}

function sureRows({ base, changes, scenario }: TrySeen): readonly string[] {
  const trials = [base, ...changes.map(({ trial }) => trial)];
  const about = (money: number): string => aboutPrice(money, scenario.prices.currency);
  const spread = searchSpread(trials);
  const luck = spread === null
    ? "Each farm was searched once, so how much is luck is not known: look again with --effort usual before a small difference counts."
    : `Searches of one farm, each from another start, ended up to ${about(spread)} apart: a difference in money of that size or less may be luck. --effort long looks harder.`;
  const { kind, bound, cost } = base.planned;
  const left = kind === "plan" && bound > 0
    ? [`As it is, no plan can cost less than ${about(bound)}: at most ${about(Math.max(0, shownMoney(cost) - shownMoney(bound)))} could still be saved. With a change it was not worked out.`]
    : [];
  return [
    "All farms were searched alike, and each one's plan was tried on the others.",
    ...trials.some(({ planned }) => planned.capped) ? ["It was stopped before that was done: differences may be luck."] : [luck],
    ...left,
    "Grass differs by a fifth and more from year to year; all figures are of a usual one.",
  ];
}

function trialNotes({ base, changes }: TrySeen): readonly string[] {
  return [base, ...changes.map(({ trial }) => trial)].flatMap(({ title, planned }) => planned.notes.map((note) => `${title}: ${note}`));
}
