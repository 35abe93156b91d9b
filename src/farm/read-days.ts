import { addDays, isIsoDate, type IsoDate, type Span } from "../quantity/calendar.js";
import { daysMeant, spansMeant, whyNoDay } from "./days-meant.js";
import { say, type Desk } from "./desk.js";
import { entriesOf, isNothing, itemsOf, textOf, type Tree } from "./tree.js";

/** A span with the place where it is written, and its name where it has one. */
export interface PlacedSpan extends Span {
  readonly at: Tree;
  readonly name: string | null;
}

/** One ISO day; undefined when the text is none, with what it may mean. */
export function dayAt(desk: Desk, node: Tree, label: string): IsoDate | undefined {
  const text = textOf(node);
  return text === undefined ? undefined : dayOf(desk, node, label, text);
}

function dayOf(desk: Desk, node: Tree, label: string, text: string): IsoDate | undefined {
  if (isIsoDate(text) && text >= EARLIEST && text <= LATEST) return text;
  const there = daysMeant(text).filter((day) => day !== text);
  const next = there.length > 0 ? `${there.join(" or ")}?` : "write the day so";
  say(desk, node, { code: "day-form", found: `${label}: ${text} is not a day of the calendar${whyNoDay(text)}`, allowed: "days are written year-month-day, 2027-04-10", next });
  return undefined;
}

/** Days of another age are slips, and walking a span of ages day by day would take one. */
const EARLIEST = "1950-01-01";
const LATEST = "2150-12-31";

/** "A to B", "from A", "until B" or one day; open ends are the season's. */
export function spanAt(desk: Desk, node: Tree, label: string, season: Span): Span | undefined {
  const text = textOf(node);
  if (text === undefined) return undefined;
  const open = /^(from|until)\s+(.+)$/.exec(text);
  if (open) {
    const day = dayOf(desk, node, label, open[2]!);
    if (day === undefined) return undefined;
    if (open[1] === "from") return { firstDay: day, lastDay: later(day, season.lastDay) };
    return { firstDay: day < season.firstDay ? day : season.firstDay, lastDay: day };
  }
  const both = /^(.+?)\s+to\s+(.+)$/.exec(text);
  const meant = both && (isIsoDate(both[1]!) || isIsoDate(both[2]!)) ? [] : spansMeant(text);
  if (meant.length > 0) {
    say(desk, node, { code: "day-form", found: `${label}: ${text} is not a span of days`, allowed: "days are written year-month-day, with to between them", next: `${meant.join(" or ")}?` });
    return undefined;
  }
  if (!both) {
    const day = dayOf(desk, node, label, text);
    return day === undefined ? undefined : { firstDay: day, lastDay: day };
  }
  const [firstDay, lastDay] = [dayOf(desk, node, label, both[1]!), dayOf(desk, node, label, both[2]!)];
  if (firstDay === undefined || lastDay === undefined) return undefined;
  if (firstDay <= lastDay) return { firstDay, lastDay };
  say(desk, node, { code: "days-reversed", found: `${label} ends on ${lastDay}, before it begins on ${firstDay}`, allowed: "a span runs from its first day to its last", next: `${lastDay} to ${firstDay}?` });
  return undefined;
}

/** One span, a list of spans, or named spans, in order of days. */
export function spansAt(desk: Desk, node: Tree | undefined, label: string, season: Span): readonly PlacedSpan[] {
  if (node === undefined || isNothing(node)) return [];
  const named = entriesOf(node).map((entry) => ({ at: entry.value, name: entry.key }));
  const placed = node.kind === "map" ? named : itemsOf(node).map((at) => ({ at, name: null }));
  const spans = placed.flatMap(({ at, name }): PlacedSpan[] => {
    const span = spanAt(desk, at, name === null ? label : `${label}, ${name}`, season);
    return span ? [{ ...span, at, name }] : [];
  });
  return [...spans].sort((a, b) => (a.firstDay < b.firstDay ? -1 : a.firstDay > b.firstDay ? 1 : 0));
}

function later(a: IsoDate, b: IsoDate): IsoDate {
  return a > b ? a : b;
}

/** Spans without place and name; touching ones stay apart. */
export function plainSpans(spans: readonly PlacedSpan[]): readonly Span[] {
  return spans.map(({ firstDay, lastDay }) => ({ firstDay, lastDay }));
}

/** Every day of a span. */
export function daysOf(span: Span): readonly IsoDate[] {
  const days: IsoDate[] = [];
  for (let day = span.firstDay; day <= span.lastDay; day = addDays(day, 1)) days.push(day);
  return days;
}

/** True when two spans share a day. */
export function overlap(a: Span, b: Span): boolean {
  return a.firstDay <= b.lastDay && b.firstDay <= a.lastDay;
}
