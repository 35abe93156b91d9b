import type { GroupFeed } from "../decide/feed-budget.js";
import { isGrazer } from "../farm/scenario.js";
import { addDays } from "../quantity/calendar.js";
import { dayMonth, spanWords } from "../sheets/day-words.js";
import { areaWords, hayWords } from "../sheets/figure-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import type { FeedSeen } from "./feed-answer.js";
import { findingsText } from "./findings-text.js";
import { needPart } from "./read-text.js";
import { widthOf, type Screen } from "./screen.js";
import { columnsOf } from "./table.js";
import { worthRows } from "./feed-worth-text.js";
import { countWords, tonnesWords, weightFigure, weightUnit } from "./words.js";

/** Grass against mouths for people: cells first, then where it pinches, and all of it week by week. */
export function feedText(seen: FeedSeen, screen: Screen): string {
  const { scenario, feed, files, notes, changes } = seen;
  const columns = widthOf(screen);
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  const lines = (rows: readonly string[]) => rows.map((row) => wrapped(`  ${row}`, columns, 4));
  const { firstDay, lastDay } = scenario.season;
  return [
    screen.heading(wrapped(`${scenario.farm}: grass against mouths, ${dayMonth(firstDay)} to ${dayMonth(lastDay)} ${lastDay.slice(0, 4)}`, columns)),
    ...changes.map((title) => `  with: ${title}`),
    ...part("Cells needed, and cells there are", needPart(feed).map((row) => wrapped(row, columns, 4))),
    ...part("Where grass runs short", lines(pinchRows(seen))),
    ...part("Where there is grass to spare", lines(surplusRows(seen))),
    ...part("Cells to drop out of the round and mow", lines(dropRows(seen))),
    ...part("What the land can carry", carryRows(seen, columns)),
    ...part("What one more would be worth", lines(worthRows(seen))),
    ...part(`Week by week in a usual year, ${weightUnit(scenario.units)} of dry matter`, weekRows(seen)),
    ...lines(HOW_TO_READ).flatMap((row, i) => (i === 0 ? ["", row] : [row])),
    ...part("Worth knowing", notes.length === 0 ? [] : [findingsText(notes, columns).trimEnd()]),
    ...part("The picture", files.map((file) => `  ${file}`)),
    "",
  ].join("\n");
}

const HOW_TO_READ = [
  "Grown, eaten, hay and cut are of the whole week; hay is what is eaten of it. \"Standing\" is the grass above what must be left, on ground that is open, when the week ends. \"Days\" is how long it would feed what is out; \"want\" is how many days you wished to have ahead.",
  "Grass may stand and still not be ripe: a cell is entered only with the cover your rules ask. So hay can be needed while some days stand ahead.",
  "All this is a usual year with nobody late. inbye weather tries a plan on other years.",
];

/** What the budget cannot see of cuts. */
const BY_GRASS = "Reckoned by grass alone, all of these together. Take no more than leave each group the cells it needs, and none that birds or pigs are to use.";

const DAY_SHARE = 0.5;

function pinchRows({ scenario, feed }: FeedSeen): readonly string[] {
  const rows = feed.pinches.map(({ from, to, hayStoredKg }) => {
    const when = weeksWords({ scenario, feed }, from, to);
    const groups = scenario.groups.map(({ name }) => ({ name, days: sumOf(feed, from, to, name, (one) => one.hayDays) })).filter(({ days }) => days > 0.05);
    if (groups.length === 0) return `${when}: only just enough. A day on hay now saves as much grass for the short weeks.`;
    const who = groups.map(({ name, days }) => `${name} ${days < DAY_SHARE ? "part of a day" : `about ${countWords(Math.round(days), "day")}`}`).join(", ");
    const long = to - from >= 2 ? " On which of these days you feed it matters little: hay fed early leaves grass for later." : "";
    const most = to - from + 1 > feed.weeks.length / 2 ? " That is most of the season: there are more mouths than the land feeds." : "";
    return `${when}: grass does not reach. Hay in the yard: ${who}, ${hayWords(hayStoredKg, scenario.units)}.${long}${most}`;
  });
  return [...(rows.length > 0 ? rows : [noPinch({ scenario, feed })]), ...keptInRows({ scenario, feed })];
}

function noPinch({ scenario, feed }: Pick<FeedSeen, "scenario" | "feed">): string {
  if (feed.tightest === null) return "No grazers are out in this season, so nothing has to reach.";
  const { daysInHand, daysWished } = feed.weeks[feed.tightest]!;
  const days = countWords(Math.round(daysInHand ?? 0), "day");
  return `In no week: grass feeds all that are out, the whole season. The tightest is ${weeksWords({ scenario, feed }, feed.tightest, feed.tightest)}: it ends with ${days} of grass ahead (${daysWished} wanted).`;
}

/** Yard days that no grass could save. */
function keptInRows({ scenario, feed }: Pick<FeedSeen, "scenario" | "feed">): readonly string[] {
  return scenario.groups.filter(({ kind }) => isGrazer(kind)).flatMap(({ name }) => {
    const last = feed.weeks.length - 1;
    const days = sumOf(feed, 0, last, name, (one) => one.keptInDays);
    const kg = sumOf(feed, 0, last, name, (one) => one.keptInHayStoredKg);
    return days === 0 || kg < 1 ? [] : [`${name}: kept in by your own dates for ${countWords(days, "day")}, whatever the grass: ${hayWords(kg, scenario.units)} of hay.`];
  });
}

function surplusRows({ scenario, feed }: FeedSeen): readonly string[] {
  return feed.surpluses.map(({ from, to }) => {
    const most = Math.max(...feed.weeks.slice(from, to + 1).map(({ daysInHand }) => daysInHand ?? 0));
    return `${weeksWords({ scenario, feed }, from, to)}: more than 20 days of grass ahead (up to ${Math.round(most)}), and no later week wants it.`;
  });
}

function dropRows({ scenario, feed }: FeedSeen): readonly string[] {
  const { drops, pays } = feed.drops;
  const date = (index: number): string => dayMonth(addDays(scenario.season.firstDay, index));
  if (drops.length === 0) return feed.surpluses.length > 0 ? ["None beside those you cut anyway: a whole cell more would cost more than its hay is worth, or the grass is wanted later."] : [];
  const why = pays === "winter" ? "The winter needs the hay." : "There is hay enough for the winter; these cuts pay if hay is sold or saves buying at its price.";
  return [why, BY_GRASS, ...drops.map(({ cells, areaHa, from, cutOn, back, hayKg, daysInHand }) => {
    const since = from === 0 ? "do not graze it first" : `leave it alone after the grazing of about ${date(from)}`;
    const then = back === null ? "not ready to graze again in this season" : `ready to graze again about ${date(back)}`;
    const after = daysInHand === null ? "" : ` ${countWords(Math.round(daysInHand), "day")} of grass then still stand ahead.`;
    return `${cells.join(", ")} (${areaWords(areaHa, scenario.units)}): ${since}, mow about ${date(cutOn)}: ${hayWords(hayKg, scenario.units)} of hay; ${then}.${after}`;
  })];
}

function carryRows({ scenario, feed }: FeedSeen, columns: number): readonly string[] {
  if (feed.carries.length === 0) return [];
  const headOf = (name: string): number => scenario.groups.find((one) => one.name === name)!.head;
  const withOthers = (name: string): string => [name, ...scenario.groups.filter((one) => one.runsWith?.with === name).map((one) => one.name)].join(" with ");
  const rows = feed.carries.map(({ groups, withoutHay, withHay }) => [groups.map(withOthers).join(" + "), groups.map(headOf).join(" + "), withoutHay.head.join(" + "), withHay.head.join(" + ")]);
  const { winterNeedKg } = scenario.hay;
  const winter = winterNeedKg > 0 ? ` The winter's ${tonnesWords(winterNeedKg, scenario.units)} are not kept back.` : "";
  const alone = feed.carries.length > 1 ? "Each by itself, the other grazers gone; the last line all together, as they stand to each other now. " : "";
  const note = `  ${alone}Head from the first day to the last, birds and pigs as they are. Hay: what is in store and what you make.${winter}`;
  return [...columnsOf([["", "head now", "without hay", "with hay"], ...rows]), wrapped(note, columns, 4)];
}

function weekRows({ scenario, feed }: FeedSeen): readonly string[] {
  const grazers = feed.groups.filter(({ cellsNeeded }) => cellsNeeded !== null).map(({ group }) => group);
  const others = scenario.groups.map(({ name }) => name).filter((name) => !grazers.includes(name));
  const kg = (amount: number): string => weightFigure(amount, scenario.units);
  const head = ["week from", "grown", ...grazers, ...(others.length > 0 ? ["others"] : []), "hay", "cut", "standing", "days", "want", ""];
  const rows = feed.weeks.map((week, w) => {
    const eaten = (names: readonly string[]): string => kg(week.groups.filter(({ group }) => names.includes(group)).reduce((sum, one) => sum + one.grassKg, 0));
    const days = week.daysInHand === null ? ["", ""] : [String(Math.round(week.daysInHand)), String(week.daysWished)];
    const cut = week.ownCutKg + week.cutKg;
    const figures = [...grazers.map((name) => eaten([name])), ...(others.length > 0 ? [eaten(others)] : []), kg(week.hayKg + week.keptInHayKg), kg(cut), kg(week.standingKg)];
    return [dayMonth(addDays(scenario.season.firstDay, week.day)), kg(week.grownKg), ...figures, ...days, markOf(feed, w)];
  });
  return columnsOf([head, ...rows], [0, head.length - 1]);
}

function markOf({ pinches, surpluses }: FeedSeen["feed"], w: number): string {
  if (pinches.some(({ from, to }) => w >= from && w <= to)) return "short";
  return surpluses.some(({ from, to }) => w >= from && w <= to) ? "spare" : "";
}

function weeksWords({ scenario, feed }: Pick<FeedSeen, "scenario" | "feed">, from: number, to: number): string {
  const { firstDay, lastDay } = scenario.season;
  const first = addDays(firstDay, feed.weeks[from]!.day);
  const last = to + 1 < feed.weeks.length ? addDays(firstDay, feed.weeks[to + 1]!.day - 1) : lastDay;
  return spanWords(first, last);
}

function sumOf({ weeks }: FeedSeen["feed"], from: number, to: number, name: string, of: (one: GroupFeed) => number): number {
  return weeks.slice(from, to + 1).reduce((sum, { groups }) => sum + groups.filter(({ group }) => group === name).reduce((own, one) => own + of(one), 0), 0);
}
