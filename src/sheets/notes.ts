import { addDays, daysBetween, type IsoDate } from "../quantity/calendar.js";
import type { Charge, RuleId } from "../rules/rule.js";
import { weekdayMonth } from "./day-words.js";
import { aboutMoney, moneyWords } from "./figure-words.js";
import type { Sheet } from "./made.js";
import { RUNNING, ruleWords } from "./rule-words.js";

/** A numbered triangle: white, allowed at a price; black, to be put right. One number in grid, list and sheets. */
export interface Note {
  readonly number: number;
  readonly day: IsoDate;
  readonly black: boolean;
  /** "Fri 11 Jun: Cows in W3, 24 days of rest, 36 usual. About £3." */
  readonly text: string;
}

/** Smaller charges of one rule, told together. */
export interface SmallNotes {
  readonly words: string;
  readonly times: number;
  readonly money: number;
}

export interface Notes {
  readonly numbered: readonly Note[];
  /** Those that have no triangle, by money. */
  readonly small: readonly SmallNotes[];
  /** Running costs by rule, by money: moves, hay, pens. */
  readonly running: readonly SmallNotes[];
}

/** Numbered triangles a month at most; a grid with more is not read. */
const MOST_A_MONTH = 2;
/** A charge over more days than this belongs to no day. */
const LONGEST_DAYS = 45;

interface Event {
  readonly rule: RuleId;
  readonly day: IsoDate;
  readonly lastDay: IsoDate;
  readonly money: number;
  readonly words: string;
  readonly times: number;
}

/** Sorts what a plan pays into numbered notes, small ones and running costs. Its layout has no say, so numbers hold on every sheet. */
export function notesOf(sheet: Sheet): Notes {
  const charges = sheet.report.charges.filter((charge) => charge.money > 0);
  const events = eventsOf(charges.filter((charge) => !RUNNING.includes(charge.rule)));
  const dated = events.filter((event) => daysBetween(event.day, event.lastDay) < LONGEST_DAYS);
  const chosen = new Set(largestByMonth(dated));
  const white = [...chosen].map((event) => ({ day: event.day, black: false, text: eventText(event, sheet.made.currency) }));
  const all = [...blackNotes(sheet), ...white].sort((a, b) => a.day.localeCompare(b.day) || Number(b.black) - Number(a.black));
  return {
    numbered: all.map((note, i) => ({ number: i + 1, ...note })),
    small: byRule(events.filter((event) => !chosen.has(event))),
    running: byRule(charges.filter((charge) => RUNNING.includes(charge.rule)).map((charge) => ({ ...charge, times: 1 }))),
  };
}

/** Charges of one rule, group and cell on touching days are one event. */
function eventsOf(charges: readonly Charge[]): Event[] {
  const events: (Event & { key: string })[] = [];
  for (const charge of [...charges].sort((a, b) => a.firstDay.localeCompare(b.firstDay))) {
    const key = JSON.stringify([charge.rule, charge.group, charge.cell]);
    const at = events.findLastIndex((event) => event.key === key);
    const before = events[at];
    if (before && charge.firstDay <= addDays(before.lastDay, touching(charge.rule))) {
      const lastDay = charge.lastDay > before.lastDay ? charge.lastDay : before.lastDay;
      events[at] = { ...before, lastDay, money: before.money + charge.money, times: before.times + 1 };
    } else {
      events.push({ key, rule: charge.rule, day: charge.firstDay, lastDay: charge.lastDay, money: charge.money, words: chargeWords(charge), times: 1 });
    }
  }
  return events;
}

/** What is asked on the weekly walk touches from week to week. */
function touching(rule: RuleId): number {
  return rule === "grass-in-hand" || rule === "upper-cover" ? 7 : 1;
}

function chargeWords({ group, cell, found }: Pick<Charge, "group" | "cell" | "found">): string {
  const who = group === null ? cell : cell === null ? group : `${group} in ${cell}`;
  return who === null ? found : `${who}, ${found}`;
}

function eventText(event: Event, currency: string): string {
  const until = event.lastDay > event.day && event.times > 1 ? ` to ${weekdayMonth(event.lastDay)}` : "";
  return `${weekdayMonth(event.day)}${until}: ${event.words}. ${capital(aboutMoney(event.money, currency))}.`;
}

function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

function largestByMonth(events: readonly Event[]): Event[] {
  const months = new Map<string, Event[]>();
  for (const event of events) months.set(event.day.slice(0, 7), [...(months.get(event.day.slice(0, 7)) ?? []), event]);
  return [...months.values()].flatMap((month) => [...month].sort((a, b) => b.money - a.money).slice(0, MOST_A_MONTH));
}

/** Breaches stand only in the check of a grid typed by hand; one of each rule, group and cell. */
function blackNotes({ report }: Sheet): Omit<Note, "number">[] {
  const seen = new Map<string, { day: IsoDate; text: string; more: number }>();
  for (const breach of [...report.breaches].sort((a, b) => a.firstDay.localeCompare(b.firstDay))) {
    const key = JSON.stringify([breach.rule, breach.group, breach.cell]);
    const before = seen.get(key);
    const text = `${weekdayMonth(breach.firstDay)}: ${chargeWords(breach)}; allowed ${breach.allowed}.`;
    seen.set(key, before ? { ...before, more: before.more + 1 } : { day: breach.firstDay, text, more: 0 });
  }
  return [...seen.values()].map(({ day, text, more }) => ({ day, black: true, text: more > 0 ? `${text} And ${more} more like it.` : text }));
}

function byRule(events: readonly Pick<Event, "rule" | "money" | "times">[]): SmallNotes[] {
  const sums = new Map<string, SmallNotes>();
  for (const event of events) {
    const words = ruleWords(event.rule);
    const before = sums.get(words) ?? { words, times: 0, money: 0 };
    sums.set(words, { words, times: before.times + 1, money: before.money + event.money });
  }
  return [...sums.values()].sort((a, b) => b.money - a.money);
}

/** "rest cut short 12 times, £14; long grass, £8". */
export function smallWords(notes: readonly SmallNotes[], currency: string): string {
  return notes.map(({ words, times, money }) => `${words}${times > 1 ? ` ${times} times` : ""}, ${moneyWords(money, currency)}`).join("; ");
}

/** "This plan costs about £431. No plan can cost less than about £402. By eye it would cost about £960." */
export function costWords({ made }: Sheet): string {
  const about = (money: number): string => aboutMoney(money, made.currency);
  const least = made.bound === null ? "" : ` No plan can cost less than ${about(made.bound)}.`;
  const eye = made.handRuleCost === null ? "" : ` By eye it would cost ${about(made.handRuleCost)}.`;
  return `This plan costs ${about(made.cost)}.${least}${eye}`;
}
