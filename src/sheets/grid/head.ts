import { toldNitrogenUnit, toldSpan } from "../amounts.js";
import { dayFigure, isWeekend } from "../day-words.js";
import { sureOf, type Sure } from "../made.js";
import { asOf } from "../next-free.js";
import { mondaysIn } from "../season-days.js";
import { EDGE, HEAD, stretchOf, xOf, type Layout } from "./layout.js";
import { cutTo, line, rect, text, textWidth } from "./svg.js";

/** Title, months, how sure the days are, Mondays, day figures; and the heads of the right edge. */
export function head(layout: Layout): string {
  return [title(layout), months(layout), sureBand(layout), dayFigures(layout), edgeHeads(layout)].join("\n");
}

const TITLE_ROOM = 68;

function title({ sheet: { scenario, made }, part, canvas, words }: Layout): string {
  const [first, last] = [part.days[0]!, part.days.at(-1)!];
  const again = part.repeatedTo ? ` ${words.say("season.both-sheets", { span: toldSpan(first, part.repeatedTo, words) })}` : "";
  const titled = (farm: string): string => words.say("season.title", { farm, year: scenario.season.firstDay.slice(0, 4) });
  const season = titled(cutTo(scenario.farm, 13, true, TITLE_ROOM - textWidth(titled(""), 13, true) * 0.72));
  return [
    text(EDGE, HEAD.title, season, { pt: 13, bold: true, room: TITLE_ROOM }),
    text(72, HEAD.title, `${words.say("season.from-to", { from: words.weekdayDay(first), to: words.weekdayDay(last) })}${again}`, { pt: 9, room: 84 }),
    text(canvas.width - 27, HEAD.title, words.say("season.made", { day: words.weekdayDate(made.madeOn), version: made.version }), { pt: 8, anchor: "end", room: 90 }),
    text(canvas.width - EDGE, HEAD.title, words.say("season.sheet-of", { number: part.number, of: part.of }), { pt: 10, bold: true, anchor: "end", room: 25 }),
  ].join("");
}

/** First places of the days for which `same` tells neighbours apart, and where each run ends. */
function runs(layout: Layout, keyOf: (day: string) => string): readonly { readonly day: string; readonly x: number; readonly end: number }[] {
  const { days } = layout.part;
  const starts = days.flatMap((day, i) => (i === 0 || keyOf(days[i - 1]!) !== keyOf(day) ? [i] : []));
  return starts.map((start, i) => ({ day: days[start]!, x: xOf(layout, days[start]!), end: i + 1 < starts.length ? xOf(layout, days[starts[i + 1]!]!) : layout.right }));
}

function months(layout: Layout): string {
  return runs(layout, (day) => day.slice(0, 7)).map(({ day, x, end }) => {
    const name = end - x > 22 ? layout.words.monthYear(day) : layout.words.month(day);
    return rect({ x, y: HEAD.months, w: end - x, h: HEAD.sure - HEAD.months - 0.3 }, 'class="box" stroke-width="0.3"') +
      (end - x > 7 ? text(x + 1, HEAD.months + 2.8, name, { pt: 8.5, bold: true, room: end - x - 1.5 }) : "");
  }).join("");
}

/** The band over the days, framed as the bars are: done, firm, likely, outline. */
function sureBand(layout: Layout): string {
  const { sheet: { made }, words } = layout;
  const told: Readonly<Record<Sure, readonly string[]>> = {
    done: [words.say("sure.done-written"), words.say("sure.done")], firm: [words.say("sure.firm-to", { day: words.dayMonth(made.firmTo) }), words.say("sure.firm")],
    likely: [words.say("sure.likely-to", { day: words.dayMonth(made.likelyTo) }), words.say("sure.likely")], outline: [words.say("sure.outline-changes"), words.say("sure.outline")],
  };
  const frames: Readonly<Record<Sure, string>> = {
    done: 'class="ink"', firm: 'class="box" stroke-width="0.5"', likely: 'class="box" stroke-width="0.16"', outline: 'class="paper outline"',
  };
  return runs(layout, (day) => sureOf(day, made)).map(({ day, x, end }) => {
    const sure = sureOf(day, made);
    const fitting = told[sure].find((one) => one.length * 1.35 < end - x);
    return rect({ x: x + 0.15, y: HEAD.sure, w: end - x - 0.3, h: 2.6 }, frames[sure]) +
      (fitting ? text((x + end) / 2, HEAD.sure + 2.05, fitting, { pt: 6.4, bold: true, anchor: "middle", as: sure === "done" ? "reverse" : "" }) : "");
  }).join("");
}

function dayFigures(layout: Layout): string {
  const { days } = layout.part;
  const weekends = days.filter(isWeekend).map((day) => rect({ x: xOf(layout, day), y: HEAD.days - 0.1, w: layout.dayWidth, h: HEAD.end - HEAD.days }, 'class="weekend"'));
  const mondays = mondaysIn(days).filter((at) => days.length - at > 3).map((at) =>
    text(xOf(layout, days[at]!) + 0.5, HEAD.mondays + 2.7, layout.words.weekdayFigure(days[at]!), { pt: 6.8, bold: true }));
  const figures = days.map((day) => text(xOf(layout, day) + layout.dayWidth / 2, HEAD.days + 2.2, String(dayFigure(day)), { pt: 5.5, anchor: "middle", room: layout.dayWidth }));
  return [...weekends, ...mondays, ...figures].join("");
}

function edgeHeads(layout: Layout): string {
  const { right, edge, sheet, words } = layout;
  return [
    text(right + 1.6, HEAD.mondays + 2.7, words.say("season.as-of", { day: words.dayMonth(asOf(sheet)) }), { pt: 6, room: 13 }), text(edge - 0.5, HEAD.mondays + 2.7, words.say("season.about"), { pt: 6, anchor: "end" }),
    text(right + 1.6, HEAD.days + 2.2, words.say("season.next-free"), { pt: 6, bold: true, room: 13 }), text(edge - 0.5, HEAD.days + 2.2, toldNitrogenUnit(sheet.scenario.units, words), { pt: 6, bold: true, anchor: "end", room: 9.5 }),
  ].join("");
}

/** Week, month and day lines under the rows, and the line of the day of planning. */
export function uprights(layout: Layout): string {
  const { days } = layout.part;
  const { made } = layout.sheet;
  const [top, end] = [HEAD.end, layout.groundEnd];
  const mondays = new Set(mondaysIn(days));
  return days.map((day, i) => {
    const x = xOf(layout, day);
    if (i === 0) return "";
    if (day === made.madeOn) return line(x, HEAD.sure, x, end, 'class="stroke" stroke-width="0.7"');
    if (dayFigure(day) === 1) return line(x, HEAD.days, x, end, 'class="stroke" stroke-width="0.45"');
    if (mondays.has(i)) return line(x, HEAD.mondays, x, end, 'class="stroke" stroke-width="0.2"');
    return line(x, top, x, end, 'class="stroke dots" stroke-width="0.14"');
  }).join("");
}

/** The first day's share of an element that the sheet does not show, marked by an arrow that points on. */
export function runOnArrows(layout: Layout, firstDay: string, lastDay: string, y: number): string {
  const stretch = stretchOf(layout, firstDay, lastDay);
  const arrow = (x: number, to: number): string => `<path class="ink" d="M${x.toFixed(2)} ${(y - 1).toFixed(2)}l${to} 1l${-to} 1z"/>`;
  return (stretch?.fromBefore ? arrow(layout.left - 0.2, -1.3) : "") + (stretch?.goesOn ? arrow(layout.right + 0.2, 1.3) : "");
}
