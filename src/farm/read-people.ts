import { isIsoDate, type Span } from "../quantity/calendar.js";
import { AMOUNT_KEYS } from "./amount-keys.js";
import { amountAt, flagIn, say, type Desk, type Thing } from "./desk.js";
import { listOr, nearNames } from "./near-names.js";
import { OWN, takeOwn } from "./own-defaults.js";
import { plainSpans, spansAt } from "./read-days.js";
import type { Person } from "./scenario.js";
import { child, entriesOf, type Entry, type MapNode, type Tree } from "./tree.js";

const WEEK = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;
const EVERY = { "every day": [0, 1, 2, 3, 4, 5, 6], weekdays: [0, 1, 2, 3, 4], weekends: [5, 6] } as const;

/** Reads the people; with no key at all one owner is taken, who is there every day and tows. */
export function readPeople(desk: Desk, root: MapNode, season: Span): readonly Person[] {
  const node = child(root, "people");
  if (node) return entriesOf(node).map((entry) => readPerson(desk, { map: entry.value, name: entry.key }, season));
  const minutes = takeOwn(desk, "people", "", OWN.assumedOwnerMinutes, `one owner, at home every day with ${OWN.assumedOwnerMinutes / 60} h for the animals, who tows`);
  return [{ name: "Owner", tows: true, minutesByWeekday: Array<number>(7).fill(minutes), minutesByDay: {}, away: [] }];
}

function readPerson(desk: Desk, thing: Thing, season: Span): Person {
  const minutes = child(thing.map, "minutes");
  return {
    name: thing.name,
    tows: flagIn(thing, "tows") ?? takeOwn(desk, "tows", thing.name, false, "no"),
    ...minutesOf(desk, thing, minutes),
    away: plainSpans(spansAt(desk, child(thing.map, "away"), `${thing.name}: away`, season)),
  };
}

/** A day's own figure wins over its weekday's, that over weekdays and weekends, those over every day. */
function minutesOf(desk: Desk, thing: Thing, node: Tree | undefined): Pick<Person, "minutesByWeekday" | "minutesByDay"> {
  const week = Array<number>(7).fill(0);
  const days: [string, number][] = [];
  if (node?.kind === "text") week.fill(amountAt(desk, node, `${thing.name}: minutes`, AMOUNT_KEYS.minutes));
  const read = entriesOf(node).map((entry) => ({ entry, minutes: amountAt(desk, entry.value, `${thing.name}: ${entry.key}`, AMOUNT_KEYS.minutes) }));
  for (const key of Object.keys(EVERY) as (keyof typeof EVERY)[]) {
    for (const { entry, minutes } of read) if (entry.key === key) for (const day of EVERY[key]) week[day] = minutes;
  }
  for (const { entry, minutes } of read) {
    const day = WEEK.findIndex((name) => name === entry.key);
    if (day >= 0) week[day] = minutes;
    else if (isIsoDate(entry.key)) days.push([entry.key, minutes]);
    else if (!Object.hasOwn(EVERY, entry.key)) sayDay(desk, thing, entry);
  }
  return { minutesByWeekday: week.map((m) => (Number.isNaN(m) ? 0 : m)), minutesByDay: Object.fromEntries(days) };
}

function sayDay(desk: Desk, thing: Thing, entry: Entry): void {
  const words = [...Object.keys(EVERY), ...WEEK];
  const near = nearNames(entry.key, words);
  say(desk, entry.at, { code: "word-unknown", found: `${thing.name}: ${entry.key} is no day known here`, allowed: `minutes are for ${listOr(words)}, or a day such as 2027-09-04`, next: near.length > 0 ? `write ${listOr(near)}` : "write one of them" });
}
