import type { Group, Scenario, Yard } from "../../farm/scenario.js";
import type { Snapshot } from "../../programme/snapshot.js";
import { addDays, isoDate, spanHolds, type Span } from "../../quantity/calendar.js";
import { buildSeason } from "../../season/build-season.js";
import { YARD, type Season } from "../../season/season.js";
import type { Prober } from "./prober.js";
import { changeText, keyText, type Way } from "./way.js";

/** What a yard day costs more while few of them are looked for, money. */
const DEAR = 25;

/**
 * The yard allowed on as few days more as were found to be enough, and the hay that takes: planned first with the yard
 * open to all, then at a price that makes its days dear, then allowed on the days that this plan uses. Null where no plan is
 * found even so, or every yard is open to all anyhow.
 */
export async function yardDaysAllowed(scenario: Scenario, prober: Prober): Promise<{ way: Way; plan: Snapshot } | null> {
  const shut = scenario.yards.filter((yard) => !isOpen(scenario, yard));
  if (shut.length === 0) return null;
  const open = (dearer: number): Scenario => {
    const opened = (yard: Yard): Yard => ({ ...yard, room: null, open: [scenario.season], costPerDay: yard.costPerDay + dearer });
    return { ...scenario, yards: scenario.yards.map((yard) => (shut.includes(yard) ? opened(yard) : yard)) };
  };
  const first = await prober.validPlan(open(0), true);
  if (!first || prober.stopped) return null;
  const plan = await prober.cheaper(open(DEAR), first);
  return { way: allowedOn(scenario, shut, plan), plan };
}

function isOpen({ season }: Scenario, { room, open }: Yard): boolean {
  return room === null && open.some((span) => span.firstDay <= season.firstDay && span.lastDay >= season.lastDay);
}

/** The farm with shut yards open on just the days that a plan stands in them, and with the room it needs. */
function allowedOn(scenario: Scenario, shut: readonly Yard[], plan: Snapshot): Way {
  const season = buildSeason(scenario);
  const dates = Array.from({ length: season.days }, (_, t) => isoDate(season.firstDay + t));
  const words: string[] = [];
  const lines: string[] = [];
  const yards = scenario.yards.map((yard, y) => {
    if (!shut.includes(yard)) return yard;
    const use = useOfYard(season, y, dates, plan);
    const more = use.head.map((head, t) => head > 0 && !(yard.open.some((span) => spanHolds(span, dates[t]!)) && (yard.room === null || head <= yard.room)));
    const days = more.filter(Boolean).length;
    if (days === 0) return yard;
    const hayKg = use.hayKg.reduce((sum, kg, t) => sum + (more[t] ? kg : 0), 0);
    const open = yard.room === 0 ? spansOf(use.head.map((head) => head > 0), dates) : joined([...yard.open, ...spansOf(more, dates)]);
    const room = yard.room === null ? null : Math.max(yard.room, ...use.head);
    words.push(`${yard.name} allowed on ${days} ${days === 1 ? "day" : "days"} more, ${spansWords(spansOf(more, dates))}, with ${(hayKg / 1000).toFixed(1)} t of hay`);
    lines.push(`  ${keyText(yard.name)}: { ${room === null ? "" : `room: ${room}, `}open: [${open.map(spanText).join(", ")}] }`);
    return { ...yard, room, open };
  });
  const title = words.join("; ");
  return { words: title, scenario: { ...scenario, yards }, change: changeText(title, ["yards:", ...lines]) };
}

/** Head in a yard and hay fed there, by day of the season. */
function useOfYard({ scenario, groups }: Season, yard: number, dates: readonly string[], { place }: Snapshot): { head: number[]; hayKg: number[] } {
  const users = groups.map((_, g) => g).filter((g) => groups[g]!.yard === yard);
  const sum = (of: (g: number, t: number) => number): number[] => dates.map((_, t) => users.reduce((all, g) => all + (place[g]![t] === YARD ? of(g, t) : 0), 0));
  return { head: sum((g, t) => headWith(scenario, g, dates[t]!)), hayKg: sum((g, t) => groups[g]!.hayKg[t]!) };
}

/** Head of a group and of those that run with it that day. */
function headWith(scenario: Scenario, g: number, date: string): number {
  const { name, head } = scenario.groups[g]!;
  const along = (other: Group): boolean =>
    other.runsWith?.with === name && [other.runsWith.days, other.here].every((spans) => spans.some((span) => spanHolds(span, date)));
  return scenario.groups.reduce((sum, other) => sum + (along(other) ? other.head : 0), head);
}

const spanText = ({ firstDay, lastDay }: Span): string => (firstDay === lastDay ? firstDay : `${firstDay} to ${lastDay}`);

function spansOf(days: readonly boolean[], dates: readonly string[]): Span[] {
  const spans: Span[] = [];
  days.forEach((on, t) => {
    if (on && !days[t - 1]) spans.push({ firstDay: dates[t]!, lastDay: dates[t]! });
    else if (on) spans[spans.length - 1] = { ...spans[spans.length - 1]!, lastDay: dates[t]! };
  });
  return spans;
}

/** Spans in order, those that overlap or touch as one. */
function joined(spans: readonly Span[]): Span[] {
  const sorted = [...spans].sort((a, b) => (a.firstDay < b.firstDay ? -1 : 1));
  return sorted.reduce<Span[]>((all, span) => {
    const last = all[all.length - 1];
    if (!last || span.firstDay > addDays(last.lastDay, 1)) return [...all, span];
    return [...all.slice(0, -1), { firstDay: last.firstDay, lastDay: span.lastDay > last.lastDay ? span.lastDay : last.lastDay }];
  }, []);
}

/** Spans told by date; of many the first few. */
const TOLD = 3;

function spansWords(spans: readonly Span[]): string {
  const told = spans.slice(0, TOLD).map(spanText).join(", ");
  return spans.length > TOLD ? `${told} and ${spans.length - TOLD} spells more` : told;
}
