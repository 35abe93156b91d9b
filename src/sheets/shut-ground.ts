import { addDays, daysBetween, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import { figureOf, type Cell, type Kind } from "../farm/scenario.js";
import type { Sheet } from "./made.js";
import type { Words } from "../words/words.js";
import { pluralWords } from "./marks.js";

/** Days on which a cell, or a part of it, must be left alone, and why, in a word. */
export interface ShutSpan extends Span {
  readonly reason: string;
  /** The reason in less room. */
  readonly short: string;
  /** Share of the cell that may still be grazed behind a back fence; 0 when all is shut. */
  readonly openShare: number;
}

/** Closed ground, ground not in hand, and ground that pigs or birds worked, in the season, by first day. */
export function shutGround(sheet: Sheet, cell: Cell, words: Words): readonly ShutSpan[] {
  const { season } = sheet.scenario;
  const closed = cell.closed.map(({ firstDay, lastDay, reason }) => ({ firstDay, lastDay, reason, short: reason, openShare: 0 }));
  const spans = [...closed, ...notInHand(cell, season, words)].flatMap((span) => clipped(span, season));
  const firm = (day: IsoDate): boolean => spans.some((span) => spanHolds(span, day));
  return [...spans, ...workedGround(sheet, cell, firm, words)].sort((a, b) => a.firstDay.localeCompare(b.firstDay));
}

function notInHand(cell: Cell, season: Span, words: Words): ShutSpan[] {
  const reason = words.say("shut.not-ours");
  const why = { reason, short: reason, openShare: 0 };
  return [
    { firstDay: season.firstDay, lastDay: addDays(cell.ours.firstDay, -1), ...why },
    { firstDay: addDays(cell.ours.lastDay, 1), lastDay: season.lastDay, ...why },
  ];
}

function clipped<T extends Span>(span: T, season: Span): T[] {
  const firstDay = span.firstDay < season.firstDay ? season.firstDay : span.firstDay;
  const lastDay = span.lastDay > season.lastDay ? season.lastDay : span.lastDay;
  return firstDay <= lastDay ? [{ ...span, firstDay, lastDay }] : [];
}

/** Days on which nobody stands in the cell and the replay has a part of it shut. */
function workedGround(sheet: Sheet, cell: Cell, closed: (day: IsoDate) => boolean, words: Words): ShutSpan[] {
  const { scenario, plan, report } = sheet;
  const open = report.cells.find((days) => days.cell === cell.name)?.openHa ?? [];
  const stays = plan.stays.filter((stay) => stay.cell === cell.name);
  const least = figureOf(scenario, "worked-ground", "least-open", cell.field, null) ?? 0;
  const spans: ShutSpan[] = [];
  const days = daysBetween(scenario.season.firstDay, scenario.season.lastDay);
  for (let t = 0; t <= days; t += 1) {
    const share = (open[t] ?? cell.areaHa) / cell.areaHa;
    if (share > 1 - 1e-6) continue;
    const day = addDays(scenario.season.firstDay, t);
    if (closed(day) || stays.some((stay) => spanHolds(stay, day))) continue;
    const openShare = share * 100 < least ? 0 : share;
    const kind = lastWorker(sheet, cell, day);
    const reason = kind === null ? words.say("shut.worked") : words.say(`shut.after.${kind}`);
    const short = kind === null ? reason : pluralWords(kind, words);
    const last = spans.at(-1);
    const goesOn = last && addDays(last.lastDay, 1) === day && last.reason === reason && (last.openShare === 0) === (openShare === 0);
    if (goesOn) spans[spans.length - 1] = { ...last, lastDay: day, openShare: Math.min(last.openShare, openShare) };
    else spans.push({ firstDay: day, lastDay: day, reason, short, openShare });
  }
  return spans;
}

/** Who worked the cell last before a day. */
function lastWorker({ scenario, plan }: Sheet, cell: Cell, day: IsoDate): Kind | null {
  const strips = scenario.groups.filter((group) => group.strip !== null);
  const last = plan.stays
    .filter((stay) => stay.cell === cell.name && stay.lastDay < day && strips.some((group) => group.name === stay.group))
    .sort((a, b) => a.lastDay.localeCompare(b.lastDay)).at(-1);
  return strips.find((group) => group.name === last?.group)?.kind ?? null;
}

/** A shut part smaller than this is not worth a figure. */
const NEARLY_ALL = 0.95;

/** What a wire says: "hay", or "after hens, 70 % open" where the rest may be grazed. */
export function shutWords(span: ShutSpan, words: Words): string {
  return span.openShare > 0 && span.openShare < NEARLY_ALL ? words.say("shut.part", { reason: span.reason, percent: Math.floor(span.openShare * 20 + 1e-6) * 5 }) : span.reason;
}
