import { CAUSES, type Cause, type Failure } from "../decide/weather/lived-year.js";
import type { Enough, KindOfYear, Often, Weak } from "../decide/weather/weather-summary.js";
import { addDays } from "../quantity/calendar.js";
import { ruleOf } from "../rules/index.js";
import { dayMonth } from "../sheets/day-words.js";
import { hayFigure, hayRange } from "../sheets/figure-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import type { Screen } from "./screen.js";
import { columnsOf } from "./table.js";
import type { WeatherSeen } from "./weather-answer.js";
import { flipsRows } from "./weather-flips-text.js";
import { countWords, percentWords } from "./words.js";

/** A plan's years for people: how often and where it fails, what hay to hold, and which figure matters. */
export function weatherText(seen: WeatherSeen, columns: number, screen: Screen): string {
  const { scenario, files, notes } = seen;
  const lines = (rows: readonly string[]) => rows.map((row) => wrapped(row, columns, 4));
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  return [
    screen.heading(wrapped(`${scenario.farm}, ${scenario.season.firstDay.slice(0, 4)}: the plan in ${countWords(seen.summary.years, "made-up year")}`, columns)),
    ...part("How often it fails, and how badly", [...lines(failsRows(seen)), ...causeTable(seen)]),
    ...part("The weak spots", weakRows(seen).map((row) => wrapped(row, columns, row.startsWith("    ") ? 6 : 4))),
    ...part("Hay to hold", [...lines(hayHead(seen)), ...hayTable(seen), ...lines(hayFoot(seen))]),
    ...part("Dry, usual and wet years", kindTable(seen)),
    ...part("How it was tried", lines(triedRows(seen))),
    ...(seen.figures ? part("Which figure the answer hangs on", flipsRows(seen.figures, scenario, columns)) : []),
    ...part("The picture", files.map((file) => `  ${file}`)),
    ...part("Worth knowing", lines([...notes.map((note) => `  - ${note.found}: ${note.allowed}`), ...leftOut(seen)])),
    "",
  ].join("\n");
}

function triedRows({ scenario: { weather }, given, lived, summary, broken }: WeatherSeen): readonly string[] {
  return [
    `  The plan was kept to, day by day, through ${countWords(summary.years, "year")} drawn by lot (seed ${given.seed}): one in ten grows less than ${percentWords(weather.dry)} of a usual year's grass, one in ten more than ${percentWords(weather.wet)}; months differ, spring is early or late; ${weather.lateMoves > 0 ? `a move in ${Math.round(1 / weather.lateMoves)} is a day or two late` : "no move is late"}; ${weather.weekAway > 0 ? `in ${percentWords(weather.weekAway)} of years there is one week with nobody to move animals, only to look at and feed them` : "somebody is always there"}.`,
    "  Where the ground of the plan is not fit, animals stay where they are if they can, go to the next ground of the plan that is fit, or stand in the yard on hay until they can go back to the plan.",
    ...(lived.stopped ? [`  It was stopped: ${summary.years} of ${given.years} years were tried.`] : []),
    ...(broken > 0 ? [`  The plan breaks a rule in ${countWords(broken, "place")} as it stands, whatever the year: see inbye check. Here animals are kept out of such ground where they can be.`] : []),
  ];
}

function failsRows({ scenario, summary }: WeatherSeen): readonly string[] {
  const { failed, byWeek, years } = summary;
  if (failed.years === 0) return [`  It failed in 0 of ${countWords(years, "year")}${tooFew(failed)}.`];
  const most = Math.max(...byWeek);
  const week = byWeek.indexOf(most);
  return [
    `  It failed in ${failed.years} of ${countWords(years, "year")}${tooFew(failed)}. Failed means: on at least one day a rule that is never broken breaks, or grazers stand in the yard and the plan has them out. One such day is enough.`,
    `  ${badlyWords(summary)}`,
    `  Half of them had failed by ${weekOf(scenario, summary.middleWeek!)}; the worst week is ${weekOf(scenario, week)}, in which ${countWords(most, "year")} began to fail.`,
    "  One year may fail for more than one cause:",
  ];
}

/** "Of these, 60 have 1 to 3 such days, 80 have 4 to 14, 40 more than 14. Half have no more than 6." */
function badlyWords({ badness, middleDaysAmiss }: WeatherSeen["summary"]): string {
  const rows = badness.map(({ upToDays, years }, i) => {
    const over = badness[i - 1]?.upToDays ?? 0;
    return `${years} ${years === 1 ? "has" : "have"} ${upToDays === null ? `more than ${over}` : `${over + 1} to ${upToDays}`}${i === 0 ? " such days" : ""}`;
  });
  return `Of these, ${rows.join(", ")}. Half have no more than ${middleDaysAmiss!}.`;
}

/** How sure a share is with so many years: 19 times in 20 it is no farther off. */
function tooFew({ low, high }: Often): string {
  return `; as far as so many can tell, it fails in ${Math.round(low * 100)} to ${Math.round(high * 100)} years of 100`;
}

const CAUSE_WORDS: Readonly<Record<Cause, string>> = {
  grass: "grass or time short", late: "a move made late", away: "the week with nobody",
};

function causeTable({ scenario, summary }: WeatherSeen): readonly string[] {
  if (summary.failed.years === 0) return [];
  const rows = CAUSES.map((cause) => {
    const { failed, middleWeek } = summary.byCause[cause];
    return [CAUSE_WORDS[cause], String(failed.years), percentWords(failed.share), middleWeek === null ? "" : weekOf(scenario, middleWeek)];
  });
  return columnsOf([["", "years", "", "half of them by"], ...rows], [0, 3]);
}

function weekOf({ season }: WeatherSeen["scenario"], week: number): string {
  return `the week of ${dayMonth(addDays(season.firstDay, 7 * week))}`;
}

/** Spots told for each cause. */
const SPOTS = 3;

function weakRows(seen: WeatherSeen): readonly string[] {
  return CAUSES.flatMap((cause) => {
    const { weak, weakRules, failed } = seen.summary.byCause[cause];
    if (weak.length === 0) return [];
    const [rule] = weakRules;
    const mostly = rule.rule === null || weak.length === 1 ? "" : `, most often by: ${plainRule(rule)} (${countWords(rule.years, "year")})`;
    return [`  By ${CAUSE_WORDS[cause]}, in ${countWords(failed.years, "year")}${mostly}`, ...weak.slice(0, SPOTS).map((spot) => `    ${spotWords(seen, spot)}`)];
  });
}

/** The rule's sentence without its full stop, and the id to look it up by. */
function plainRule({ rule }: Weak): string {
  if (rule === null) throw new Error("a failure without a rule has no sentence");
  return `${ruleOf(rule).sentence.replace(/\.$/, "")} [${rule}]`;
}

function spotWords({ scenario }: WeatherSeen, { rule, cell, years, example }: Weak): string {
  const where = [cell === null ? null : `Cell ${cell}`, rule === null ? null : `[${rule}]`].filter((one) => one !== null).join(" ") || "The whole farm";
  return `${where}: first in ${countWords(years, "year")}; as on ${dayMonth(addDays(scenario.season.firstDay, example.day))}, ${exampleWords(example)}`;
}

function exampleWords({ group, cell, found, allowed, inYard }: Failure): string {
  const what = found === "" ? "" : `${found}, allowed ${allowed}`;
  if (!inYard) return `${group === null ? "" : `${group}: `}${what}`;
  return `${group} in the yard and not in ${cell}${what === "" ? "" : ` (there: ${what})`}`;
}

const shareWords = (share: number): string => (share === 0.5 ? "half the years" : share === 0.8 ? "8 years in 10" : "19 years in 20");

function hayHead({ scenario, lived }: WeatherSeen): readonly string[] {
  const planned = hayFigure(lived.usual.hayFedKg, scenario.units);
  return [`  Fed in the yards over the season: ${planned === "none" ? "none" : `up to ${planned}`} as planned, in a usual year with nobody late. Enough in`];
}

function hayTable({ scenario: { units }, summary }: WeatherSeen): readonly string[] {
  const row = ({ share, amount, low, high }: Enough) => [
    `  ${shareWords(share)}`, hayFigure(amount, units), hayRange(low, high, units),
  ];
  return columnsOf([["", "hay", "as far as so many years can tell"], ...summary.hay.map(row)], [0, 2]);
}

function hayFoot({ scenario: { hay, units }, summary, lived: { usual } }: WeatherSeen): readonly string[] {
  const trials = "  The more years are tried (--years), the closer the figures on the right come together.";
  if (hay.winterNeedKg <= 0) return [trials];
  const store = hay.inStoreKg > 0 ? `With ${hayFigure(hay.inStoreKg, units)} in store and the hay made` : "With the hay made and none in store";
  const left = hayFigure(Math.max(0, hay.inStoreKg + usual.hayMadeKg - usual.hayFedKg), units);
  return [trials, `  ${store}, the ${hayFigure(hay.winterNeedKg, units)} that winter needs are there in ${summary.winterKept.years} of ${countWords(summary.years, "year")}; as planned, in a usual year with nobody late, ${left} are left.`];
}

function kindTable({ scenario, summary }: WeatherSeen): readonly string[] {
  const row = (words: string, of: (kind: KindOfYear) => string) => [words, ...summary.kinds.map(of)];
  const groups = scenario.groups.filter(({ name }) => summary.kinds.some(({ yardDays }) => (yardDays?.[name] ?? 0) > 0));
  return [
    ...columnsOf([
      row("", ({ kind }) => kind),
      row("years", ({ years }) => String(years)),
      row("of these failed", ({ failed }) => String(failed)),
      row("hay fed", ({ hayFedKg }) => (hayFedKg === null ? "" : hayFigure(hayFedKg, scenario.units))),
      ...groups.map(({ name }) => row(`${name} in the yard`, ({ yardDays }) => (yardDays === null ? "" : countWords(yardDays[name], "day")))),
    ]),
    "  Half of these years need no more hay, and no more days in the yard.",
  ];
}

function leftOut({ given, figures }: WeatherSeen): readonly string[] {
  if (!given.figures) return ["  - Which figure the answer hangs on most is told with --figures."];
  return figures === null ? ["  - Which figure the answer hangs on most was left out: it was stopped."] : [];
}
