import { addDays, daysBetween, type IsoDate, type Span } from "../quantity/calendar.js";
import type { Breach, Charge, RuleId } from "../rules/rule.js";
import type { Words } from "../words/words.js";
import { roughMoney, toldMoney } from "./amounts.js";
import type { Sheet } from "./made.js";
import { RUNNING, ruleWords } from "./rule-words.js";

/** A numbered triangle: white, allowed at a price; black, to be put right. One number in grid, list and sheets. */
export interface Note {
  readonly number: number;
  readonly day: IsoDate;
  readonly black: boolean;
  /** "Fri 11 Jun: Cows in W3, 24 days of rest, 36 usual. About £3." */
  readonly text: string;
  /** What it costs; 0 for what must be put right. */
  readonly money: number;
}

/** Charges of one rule, told together. */
export interface SumNote {
  readonly words: string;
  readonly times: number;
  readonly money: number;
}

export interface Notes {
  readonly numbered: readonly Note[];
  /** Those that have no triangle, each cheaper than any that has one; by rule, by money. */
  readonly others: readonly SumNote[];
  /** Running costs by rule, by money: moves, hay, pens. */
  readonly running: readonly SumNote[];
}

/** White triangles for each month of the season; a grid with more is not read. */
const A_MONTH = 2;
const DAYS_A_MONTH = 30.4;
/** Less than this is told as "under" one, and has no triangle. */
const LEAST_MONEY = 0.5;
/** One charge over more days than this is judged at their end. */
const LONGEST_DAYS = 45;

interface Event extends Span {
  readonly rule: RuleId;
  readonly group: string | null;
  readonly cells: readonly string[];
  readonly money: number;
  /** What was found where it costs most. */
  readonly found: string;
  readonly most: number;
  readonly times: number;
}

/** Sorts what a plan pays into numbered notes, others and running costs. Its layout has no say, so numbers hold on every sheet. */
export function notesOf(sheet: Sheet, words: Words): Notes {
  const charges = sheet.report.charges.filter((charge) => charge.money > 0);
  const events = eventsOf(charges.filter((charge) => !RUNNING.includes(charge.rule)));
  const chosen = dearest(events, sheet.scenario.season);
  const white = chosen.map((event) => ({ day: dayOf(event, sheet.scenario.season), black: false, text: eventText(event, sheet.made.currency, words), money: event.money }));
  const all = [...blackNotes(sheet, words), ...white].sort((a, b) => a.day.localeCompare(b.day) || Number(b.black) - Number(a.black));
  return {
    numbered: all.map((note, i) => ({ number: i + 1, ...note })),
    others: byRule(events.filter((event) => !chosen.includes(event)), words),
    running: byRule(charges.filter((charge) => RUNNING.includes(charge.rule)), words),
  };
}

/** The dearest of all, whatever the rule; of equal ones the first. */
function dearest(events: readonly Event[], season: Span): readonly Event[] {
  const most = Math.max(6, Math.round((A_MONTH * (daysBetween(season.firstDay, season.lastDay) + 1)) / DAYS_A_MONTH));
  return events.filter((event) => event.money >= LEAST_MONEY).sort((a, b) => b.money - a.money || a.firstDay.localeCompare(b.firstDay)).slice(0, most);
}

/** Charges of one rule, group and cell on touching days are one event; so are cells of which the same is found on the same days. */
function eventsOf(charges: readonly Charge[]): readonly Event[] {
  const events: Event[] = [];
  for (const charge of [...charges].sort((a, b) => a.firstDay.localeCompare(b.firstDay))) {
    const next: Event = { ...charge, cells: charge.cell === null ? [] : [charge.cell], most: charge.money, times: 1 };
    const at = events.findLastIndex((event) => goesOn(event, charge));
    if (at >= 0) events[at] = joined(events[at]!, next);
    else events.push(next);
  }
  return events.reduce<readonly Event[]>(beside, []);
}

function goesOn(event: Event, charge: Charge): boolean {
  const same = event.rule === charge.rule && event.group === charge.group && (event.cells[0] ?? null) === charge.cell;
  return same && charge.firstDay <= addDays(event.lastDay, touching(charge.rule));
}

/** What is asked on the weekly walk touches from week to week. */
function touching(rule: RuleId): number {
  return rule === "grass-in-hand" || rule === "upper-cover" ? 7 : 1;
}

function joined(event: Event, next: Event): Event {
  const dearer = next.most > event.most ? next : event;
  return {
    ...event, lastDay: next.lastDay > event.lastDay ? next.lastDay : event.lastDay,
    money: event.money + next.money, times: event.times + next.times, found: dearer.found, most: dearer.most,
  };
}

function beside(events: readonly Event[], next: Event): readonly Event[] {
  const same = (one: Event): boolean =>
    one.rule === next.rule && one.group === null && next.group === null && one.firstDay === next.firstDay && one.lastDay === next.lastDay && one.found === next.found;
  const at = events.findIndex(same);
  if (at < 0 || next.cells.length === 0) return [...events, next];
  return events.map((one, i) => (i === at ? { ...joined(one, next), cells: [...one.cells, ...next.cells] } : one));
}

const wholeSeason = (event: Event): boolean => event.lastDay > addDays(event.firstDay, LONGEST_DAYS) && event.times <= Math.max(1, event.cells.length);

/** The day of the triangle: the first, or the last where the season as a whole is judged; always one of the season. */
function dayOf(event: Event, season: Span): IsoDate {
  const day = wholeSeason(event) ? event.lastDay : event.firstDay;
  if (day < season.firstDay) return season.firstDay;
  return day > season.lastDay ? season.lastDay : day;
}

function foundWords(group: string | null, cells: readonly string[], found: string, words: Words): string {
  const where = cells.join(", ");
  const who = group === null ? where : where === "" ? group : words.say("note.where", { group, cells: where });
  return who === "" ? found : words.say("note.found", { where: who, found });
}

function eventText(event: Event, currency: string, words: Words): string {
  const { firstDay, lastDay, times, money } = event;
  const [from, to] = [words.weekdayDay(firstDay), words.weekdayDay(lastDay)];
  const ends = lastDay > firstDay && times > event.cells.length && times > 1;
  const days = wholeSeason(event) ? words.say("note.by", { day: to }) : ends ? words.say("span", { from, to }) : from;
  return words.say("note.priced", { days, found: foundWords(event.group, event.cells, event.found, words), money: toldMoney(money, currency, words) });
}

/** Breaches stand only in the check of a grid typed by hand; one of each rule, group and cell. */
function blackNotes({ report }: Sheet, words: Words): Omit<Note, "number">[] {
  const seen = new Map<string, { first: Breach; more: number }>();
  for (const breach of [...report.breaches].sort((a, b) => a.firstDay.localeCompare(b.firstDay))) {
    const key = JSON.stringify([breach.rule, breach.group, breach.cell]);
    const before = seen.get(key);
    seen.set(key, before ? { ...before, more: before.more + 1 } : { first: breach, more: 0 });
  }
  return [...seen.values()].map(({ first, more }) => {
    const found = foundWords(first.group, first.cell === null ? [] : [first.cell], first.found, words);
    const text = words.say("note.broken", { day: words.weekdayDay(first.firstDay), found, allowed: first.allowed, more });
    return { day: first.firstDay, black: true, text, money: 0 };
  });
}

function byRule(events: readonly Pick<Event, "rule" | "money">[], words: Words): SumNote[] {
  const sums = new Map<string, SumNote>();
  for (const event of events) {
    const told = ruleWords(event.rule, words);
    const before = sums.get(told) ?? { words: told, times: 0, money: 0 };
    sums.set(told, { words: told, times: before.times + 1, money: before.money + event.money });
  }
  return [...sums.values()].sort((a, b) => b.money - a.money);
}

/** "Others at a price, £289 together: rest cut short 12 times, £14; long grass, £8." or nothing. */
export function othersWords({ others, numbered }: Notes, currency: string, words: Words): string {
  if (others.length === 0) return "";
  const sum = toldMoney(others.reduce((total, one) => total + one.money, 0), currency, words);
  const parts = others.map((one) => words.say("note.other", { what: one.words, times: one.times, money: toldMoney(one.money, currency, words) })).join("; ");
  return numbered.some((note) => !note.black) ? words.say("note.others", { sum, parts }) : words.say("note.only-others", { sum, parts });
}

/** "Running costs: moves and hauls, £800; hay fed, £29." or nothing. */
export function runningWords({ running }: Notes, currency: string, words: Words): string {
  const parts = running.map((one) => words.say("note.other", { what: one.words, times: 1, money: toldMoney(one.money, currency, words) })).join("; ");
  return running.length === 0 ? "" : words.say("note.running", { parts });
}

/** "This plan costs about £430. No plan can cost less than about £400. By eye it would cost about £960." */
export function costWords({ made }: Sheet, words: Words): string {
  const about = (money: number): string => roughMoney(money, made.currency, words);
  return [
    words.say("cost.plan", { money: about(made.cost) }),
    ...(made.bound === null || made.bound <= 0 ? [] : [words.say("cost.least", { money: about(made.bound) })]),
    ...(made.handRuleCost === null ? [] : [words.say("cost.eye", { money: about(made.handRuleCost) })]),
  ].join(" ");
}
