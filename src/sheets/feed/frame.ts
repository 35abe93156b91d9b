import type { Feed } from "../../decide/feed.js";
import type { FeedWeek } from "../../decide/feed-budget.js";
import type { Scenario } from "../../farm/scenario.js";
import { addDays, monthOf } from "../../quantity/calendar.js";
import { UNITS } from "../../quantity/units.js";
import { dayFigure, monthName } from "../day-words.js";
import { line, mm, text } from "../grid/svg.js";

/** The drawing, mm: A4 on its side less its margins. */
export const WIDTH = 277;
export const HEIGHT = 186;
const LEFT = 18;
const RIGHT = 3;

/** A band of the drawing with an upright scale, in the scale's own unit. */
export interface Band {
  readonly top: number;
  readonly bottom: number;
  readonly most: number;
}

export interface Frame {
  readonly scenario: Scenario;
  readonly feed: Feed;
  readonly weekWidth: number;
}

export function frameOf(scenario: Scenario, feed: Feed): Frame {
  return { scenario, feed, weekWidth: (WIDTH - LEFT - RIGHT) / feed.weeks.length };
}

/** Left edge of a week, mm. */
export function weekX({ weekWidth }: Frame, week: number): number {
  return LEFT + week * weekWidth;
}

export function bandY({ top, bottom, most }: Band, amount: number): number {
  return bottom - (Math.min(most, Math.max(0, amount)) / most) * (bottom - top);
}

/** A round figure at or above the greatest amount, and the step of its marks. */
export function scaleFor(greatest: number): { readonly most: number; readonly step: number } {
  const rough = Math.max(greatest, 1e-9) / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough - 1e-12)!;
  return { step, most: Math.ceil(greatest / step - 1e-9) * step || step };
}

/** What a week grows and needs as shown: kg or lb of dry matter. */
export function shown({ scenario }: Frame, kg: number): number {
  return kg / UNITS.weight[scenario.units === "US" ? "lb" : "kg"]!;
}

/** Dry matter that all groups want in a week, grass or hay; what feet take is no need. */
export function needOf(week: FeedWeek): number {
  return week.eatenKg + week.hayKg + week.keptInHayKg;
}

/** Marks of an upright scale, with fine lines across. */
export function scaleMarks(band: Band, step: number, words: (amount: number) => string): string {
  const marks = Array.from({ length: Math.round(band.most / step) + 1 }, (_, i) => i * step);
  return marks.map((amount) => {
    const y = bandY(band, amount);
    return line(LEFT, y, WIDTH - RIGHT, y, `class="stroke soft" stroke-width="${amount === 0 ? 0.3 : 0.1}"`) + text(LEFT - 1.5, y + 1.1, words(amount), { pt: 8, anchor: "end" });
  }).join("\n");
}

/** Months over the band, days of the month under it. */
export function weekHeads(frame: Frame, band: Band): string {
  const dates = frame.feed.weeks.map(({ day }) => addDays(frame.scenario.season.firstDay, day));
  return dates.map((date, w) => {
    const [x, first] = [weekX(frame, w), w === 0 || monthOf(date) !== monthOf(dates[w - 1]!)];
    const room = dates.slice(w).findIndex((one) => monthOf(one) !== monthOf(date));
    const wide = (room < 0 ? dates.length - w : room) * frame.weekWidth;
    const month = first ? line(x, band.top - 7, x, band.bottom + 5, 'class="stroke" stroke-width="0.2"') + text(x + 1, band.top - 3.8, monthName(monthOf(date)), { pt: 9, bold: true, room: wide - 1.5 }) : "";
    return month + text(x + frame.weekWidth / 2, band.bottom + 3.6, String(dayFigure(date)), { pt: 7, anchor: "middle", room: frame.weekWidth - 0.3 });
  }).join("\n");
}

/** Upright or slanting lines in a box: patterns told apart in black and white. */
export function hatch(id: string, turn: number, gap: number): string {
  return `<pattern id="${id}" width="${mm(gap)}" height="${mm(gap)}" patternUnits="userSpaceOnUse" patternTransform="rotate(${turn})"><path d="M0 0V${mm(gap)}" class="stroke" stroke-width="0.35"/></pattern>`;
}
