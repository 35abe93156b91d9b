import { shutOn } from "../decide/why-cell-day.js";
import { placeName, standsThere, stayOn } from "../decide/why-forced.js";
import { DAYS_AHEAD, type CellDay } from "../decide/why-cell-day.js";
import type { Weighed } from "../decide/why-weigh.js";
import type { WhyCell, WhyGroup } from "../decide/why.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import type { Stay } from "../plan/plan.js";
import { dayMonth, fullDay, spanWords } from "../sheets/day-words.js";
import { aboutMoney, priceWords } from "../sheets/figure-words.js";
import { english } from "./english.js";
import { ruleWords } from "../sheets/rule-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import type { Screen } from "./screen.js";
import { columnsOf } from "./table.js";
import { aboutPrice, countWords, percentWords } from "./words.js";
import { allowedWords, labelled, moreWords, neverRows, noneFoundWords, placeLabel } from "./why-words.js";

/** A cheaper plan that is worth telling of, money. */
const WORTH_TELLING = 0.5;

/** What the words need besides the answer. */
export interface WhySeen {
  readonly scenario: Scenario;
  readonly plan: string;
  readonly farm: string;
  readonly notes: readonly Finding[];
  readonly columns: number;
  readonly screen: Screen;
}

/** Why a group stands where it stands, for people. */
export function whyGroupText(why: WhyGroup, seen: WhySeen): string {
  const { scenario, screen } = seen;
  const { here, group, day } = why;
  const { currency } = scenario.prices;
  const where = placeName(here);
  const head = `${scenario.farm}, ${fullDay(day)}: ${group} in ${where}`;
  const held = here.held === null ? [] : [`You hold them there: ${here.held}.`];
  return page(seen, [
    screen.heading(head),
    ...(why.runsWith === null ? [] : [`${why.runsWith} answer for those that run with them that day.`]),
    `${group} stand in ${where}, ${spanWords(here.firstDay, here.lastDay)}.`, ...held,
    "", screen.heading("What is asked of that stay, and kept"),
    ...columnsOf(here.facts.map(({ what, found, allowed }) => [what, found, allowed]), [0, 2]),
    ...(here.charges.length === 0 ? [] : ["", screen.heading("What it costs"), ...columnsOf(here.charges.map(({ rule, money, found }) => [priceWords(money, currency), `${ruleWords(rule, english())}: ${found}`]), [1])]),
    ...worthRows(why, here, seen),
    ...placesPart(why.places, placeLabel, "Elsewhere that day", seen, why.day),
    ...footRows(why, seen),
  ]);
}

/** Why a cell is empty, or what it may be used for, for people. */
export function whyCellText(why: WhyCell, seen: WhySeen): string {
  const { scenario, screen } = seen;
  const { cell } = why;
  const group = ({ question }: Weighed): string => question.group;
  return page(seen, [
    screen.heading(`${scenario.farm}, ${fullDay(cell.day)}: ${cell.cell}`),
    cell.stay ? `${cell.stay.group} stand there, ${spanWords(cell.stay.firstDay, cell.stay.lastDay)}.` : `Empty that day${emptyWords(why, seen)}`,
    ...labelled(stateRows(cell)),
    ...(cell.stay ? worthRows(why, cell.stay, seen) : []),
    ...placesPart(why.places, group, cell.stay ? "Who else could use it" : "Who could use it", seen, cell.day),
    "", screen.heading("First day for each with nobody else moved"),
    ...labelled(cell.free.map((one) => [one.group, one.day === null ? `none in the next ${DAYS_AHEAD} days` : dayMonth(one.day)] as const)),
    ...footRows(why, seen),
  ]);
}

function page({ columns }: WhySeen, rows: readonly string[]): string {
  return [...rows.map((row) => wrapped(row, columns, row.startsWith("  ") ? 6 : 0)), ""].join("\n");
}

/** Why it is empty, in one sentence after "Empty that day". */
function emptyWords({ cell, places }: WhyCell, { scenario }: WhySeen): string {
  const { shut } = cell;
  if (shut) return `: closed, ${shut.reason}${shut.opensOn === null ? " to the season's end" : `, open from ${dayMonth(shut.opensOn)}`}.`;
  const costs = places.flatMap(({ kind, more }) => (kind === "allowed" && more !== null ? [more] : []));
  if (costs.length === 0) return places.every(({ kind }) => kind === "never") ? ": nobody may use it." : ": no season was found in which somebody uses it.";
  const least = Math.min(...costs);
  return least < WORTH_TELLING ? ": it could be used at next to no cost." : `: using it would make the season dearer, by ${aboutMoney(least, scenario.prices.currency)} or more in all that was found.`;
}

function stateRows(cell: CellDay): readonly (readonly [string, string])[] {
  const { coverKgPerHa, openShare, shut, grazed, next } = cell;
  const until = (stay: Stay): string => `${stay.group}, ${spanWords(stay.firstDay, stay.lastDay)}`;
  return [
    ["grass", `about ${Math.round(coverKgPerHa / 100) * 100} kg DM/ha that morning`],
    ...(openShare < 1 - 1e-6 ? [["open", `${percentWords(Math.floor(openShare * 100) / 100)} of it; the rest is shut behind birds or pigs`] as const] : []),
    ...(shut ? [["closed", `${shut.reason}, ${shut.opensOn === null ? "to the season's end" : `open from ${dayMonth(shut.opensOn)}`}`] as const] : []),
    ["last grazed", grazed ? `by ${grazed.by} to ${dayMonth(grazed.lastDay)}, ${countWords(grazed.restDays, "day")} of rest since` : "not known"],
    ["next in plan", next ? until(next) : "nobody again this season"],
  ];
}

function worthRows(why: WhyGroup | WhyCell, here: { readonly cell: string | null }, { scenario: { prices: { currency } } }: WhySeen): readonly string[] {
  const rows: string[] = [];
  const { without, hereMore } = why;
  if (here.cell !== null) {
    const day = dayMonth(why.day);
    rows.push(without === null
      ? `What a day of ${here.cell} is worth is not known: no season was found that leaves it empty on ${day}.`
      : without.more < WORTH_TELLING
        ? `A day of ${here.cell} is worth next to nothing: a season that leaves it empty on ${day} costs ${moreWords(without.more, currency)}.`
        : `A day of ${here.cell} is worth ${aboutMoney(without.more, currency)}: so much more costs the season, planned again, if it is left empty on ${day}.`);
  }
  if (hereMore !== null && hereMore >= WORTH_TELLING) rows.push(`As the plan has it costs ${moreWords(hereMore, currency)} than the cheapest season found.`);
  return rows.length === 0 ? [] : ["", ...rows];
}

/** All places or groups asked about, by what is known of them: the cheapest first, in the farm's order where nothing is to be told apart. */
function placesPart(places: readonly Weighed[], label: (one: Weighed) => string, title: string, { scenario, screen }: WhySeen, day: string): readonly string[] {
  const { currency } = scenario.prices;
  const part = (head: string, rows: readonly string[]): readonly string[] => (rows.length === 0 ? [] : ["", screen.heading(head), ...rows]);
  const allowed = places.filter(({ kind }) => kind === "allowed").sort((a, b) => a.more! - b.more!);
  const rowsOf = (some: readonly Weighed[]): readonly string[] => labelled(some.map((one) => [label(one), allowedWords(one, currency)] as const));
  const opens = ({ question, never }: Weighed): string | null => {
    const cell = scenario.cells.find(({ name }) => name === question.place.cell);
    return cell && never.some(({ rule }) => rule === "closed-dates") ? shutOn(scenario, cell, day)?.opensOn ?? null : null;
  };
  return [
    ...part(`${title}, the season planned again round each`, rowsOf(allowed.filter(({ replanned }) => replanned))),
    ...part(allowed.some(({ replanned }) => replanned) ? "The others, by a quick look" : `${title}, by a quick look`, rowsOf(allowed.filter(({ replanned }) => !replanned))),
    ...part("Planned again, and no season was found with it", labelled(places.filter(({ kind }) => kind === "none-found").map((one) => [label(one), noneFoundWords(one)] as const))),
    ...part("Never that day, whatever else is moved", labelled(neverRows(places.filter(({ kind }) => kind === "never"), label, opens))),
  ];
}

/** What the figures are, and what to do where the plan can be made cheaper. */
function footRows(why: WhyGroup | WhyCell, { scenario, farm, plan, notes }: WhySeen): readonly string[] {
  const { currency } = scenario.prices;
  const { planCost, cheapestCost, places, stopped, cheapest } = why;
  const less = planCost - cheapestCost;
  const elsewhere = "here" in why && !standsThere(cheapest.plan, { group: why.group, place: { cell: why.here.cell, yard: why.here.yard }, day: why.day });
  const there = elsewhere ? stayOn(cheapest.plan, why.group, why.day) : null;
  return [
    ...(places.some(({ kind }) => kind === "allowed") ? ["", `"More" is what the whole season costs with that one day so, planned again, less the cheapest season found (${aboutPrice(cheapestCost, currency)}). Found by searching, not proven.`] : []),
    ...(less < WORTH_TELLING ? [] : [
      "", `The plan itself can be made ${aboutMoney(less, currency)} cheaper${there ? `, with ${there.group} in ${placeName(there)} that day` : ""}:`,
      `  inbye plan ${farm} --from ${plan} --keep 0`,
    ]),
    ...(stopped ? ["", "Stopped before all was planned; figures are those found until then."] : []),
    ...(notes.length === 0 ? [] : ["", ...notes.map(({ found, allowed }) => `Note: ${found}: ${allowed}.`)]),
  ];
}
