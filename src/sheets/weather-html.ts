import type { WeatherSummary } from "../decide/weather/weather-summary.js";
import type { Scenario } from "../farm/scenario.js";
import { addDays } from "../quantity/calendar.js";
import { UNITS } from "../quantity/units.js";
import { dayMonth } from "./day-words.js";
import { hayFigure } from "./figure-words.js";
import { escaped, line, mm, rect, text } from "./grid/svg.js";
import { printedPage } from "./printed-page.js";

/** Room of the drawing, mm: the axes, and the row of weeks with failures under them. */
const WIDTH = 262;
const HEIGHT = 150;
const LEFT = 20;
const RIGHT = 212;
const TOP = 8;
const FOOT = 104;
const BARS = { top: 122, foot: 138 } as const;

const BANDS = [
  { words: "half the years", dash: "", width: 0.9 },
  { words: "8 years in 10", dash: "4 1.6", width: 0.7 },
  { words: "19 years in 20", dash: "0.8 1.2", width: 0.7 },
] as const;

const CSS = `*{box-sizing:border-box}body{margin:0;padding:12px;background:#fff;color:#000;font:16px/1.45 system-ui,"Liberation Sans",Arial,sans-serif}
svg{width:100%;max-width:1100px;height:auto;display:block;font-family:"Liberation Sans",Arial,Helvetica,sans-serif}h1{font-size:22px;margin:0 0 8px}p{max-width:70ch;margin:0 0 12px}
table{border-collapse:collapse}th,td{text-align:right;padding:3px 14px 3px 0;border-bottom:1px solid #888}th:first-child,td:first-child{text-align:left}
@page{size:A4 landscape;margin:12mm}@media print{body{padding:0}.twin{break-before:page}}`;

/** Hay fed by week over many years, as one page to print: the drawing, and the same figures as a table. */
export function weatherHtml(scenario: Scenario, summary: WeatherSummary): string {
  const title = `${scenario.farm}: hay fed by week, ${summary.years} made-up years`;
  return printedPage(title, CSS, `<h1>${escaped(title)}</h1>
<p>Each line is the hay fed in the yards since the season began that was enough in so many of the years. Below it, the years in which the plan first failed in that week: ${summary.failed.years} of ${summary.years} in all.</p>
${drawing(scenario, summary)}
<div class="twin">
${table(scenario, summary)}
</div>`, "en-GB");
}

function drawing(scenario: Scenario, summary: WeatherSummary): string {
  const weeks = summary.byWeek.length;
  const unit = scenario.units === "US" ? "lb" : "kg";
  const amounts = summary.hayByWeek.map(({ kg }) => kg.map((one) => one / UNITS.weight[unit]!));
  const top = niceTop(Math.max(...amounts.flat()));
  const x = (week: number): number => LEFT + ((RIGHT - LEFT) * week) / weeks;
  const y = (amount: number): number => FOOT - ((FOOT - TOP) * amount) / top;
  const alt = BANDS.map(({ words }, b) => `${words} ${hayFigure(summary.hay[b].amount, scenario.units)}`).join(", ");
  return [
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escaped(`Hay fed by the season's end: ${alt}`)}">`,
    '<defs><pattern id="lines" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0v2.4" stroke="#000" stroke-width="0.25"/></pattern>',
    '<pattern id="dots" width="2.4" height="2.4" patternUnits="userSpaceOnUse"><circle cx="1.2" cy="1.2" r="0.3"/></pattern></defs>',
    ...axes(scenario, weeks, top, unit, x, y),
    between(amounts[0], amounts[1], "lines", x, y),
    between(amounts[1], amounts[2], "dots", x, y),
    ...amounts.map((own, b) => `<path d="${path(own, x, y)}" fill="none" stroke="#000" stroke-width="${BANDS[b].width}"${BANDS[b].dash === "" ? "" : ` stroke-dasharray="${BANDS[b].dash}"`}/>`),
    ...endWords(amounts, summary, scenario, y),
    ...bars(summary, x),
    "</svg>",
  ].join("\n");
}

/** From nothing on the first morning to the end of each week. */
function path(amounts: readonly number[], x: (week: number) => number, y: (amount: number) => number): string {
  return [0, ...amounts].map((amount, week) => `${week === 0 ? "M" : "L"}${mm(x(week))} ${mm(y(amount))}`).join("");
}

function between(low: readonly number[], high: readonly number[], fill: string, x: (week: number) => number, y: (amount: number) => number): string {
  const back = low.map((amount, week) => `L${mm(x(week + 1))} ${mm(y(amount))}`).reverse().join("");
  return `<path d="${path(high, x, y)}${back}L${mm(x(0))} ${mm(y(0))}Z" fill="url(#${fill})" stroke="none"/>`;
}

/** A round figure at or above the most, with five steps below it. */
function niceTop(most: number): number {
  const step = [1, 2, 5].flatMap((lead) => Array.from({ length: 7 }, (_, power) => lead * 10 ** power)).sort((a, b) => a - b).find((one) => one * 5 >= most);
  return 5 * Math.max(20, step ?? most / 5);
}

function axes(scenario: Scenario, weeks: number, top: number, unit: string, x: (week: number) => number, y: (amount: number) => number): readonly string[] {
  const every = Math.max(1, Math.ceil(weeks / 15));
  const dates = Array.from({ length: Math.ceil(weeks / every) }, (_, i) => i * every);
  return [
    ...[0, 1, 2, 3, 4, 5].flatMap((step) => {
      const amount = (top * step) / 5;
      return [
        line(LEFT, y(amount), RIGHT, y(amount), `stroke="#000" stroke-width="${step === 0 ? 0.5 : 0.12}"`),
        text(LEFT - 2, y(amount) + 1.2, `${amount}${step === 5 ? ` ${unit}` : ""}`, { pt: 9, anchor: "end" }),
      ];
    }),
    ...dates.flatMap((week) => [
      line(x(week), FOOT, x(week), FOOT + 1.5, 'stroke="#000" stroke-width="0.3"'),
      text(x(week), FOOT + 5.5, dayMonth(addDays(scenario.season.firstDay, 7 * week)), { pt: 8, anchor: "middle" }),
    ]),
  ];
}

/** Least distance of two lines of words, mm. */
const APART = 10;

/** What each line ends at, set apart where they end close together. */
function endWords(amounts: readonly (readonly number[])[], summary: WeatherSummary, scenario: Scenario, y: (amount: number) => number): readonly string[] {
  let lowest = Infinity;
  return amounts.flatMap((own, b) => {
    const at = y(own.at(-1) ?? 0);
    lowest = Math.min(at, lowest - APART);
    return [
      line(RIGHT, at, RIGHT + 3, lowest, 'stroke="#000" stroke-width="0.2"'),
      text(RIGHT + 4, lowest, BANDS[b].words, { pt: 9 }),
      text(RIGHT + 4, lowest + 4, hayFigure(summary.hay[b].amount, scenario.units), { pt: 9, bold: true }),
    ];
  });
}

function bars({ byWeek }: WeatherSummary, x: (week: number) => number): readonly string[] {
  const most = Math.max(1, ...byWeek);
  return [
    text(LEFT, BARS.top - 5, "Years in which the plan first fails, by week", { pt: 9, bold: true }),
    line(LEFT, BARS.foot, RIGHT, BARS.foot, 'stroke="#000" stroke-width="0.4"'),
    ...byWeek.flatMap((years, week) => {
      if (years === 0) return [];
      const h = ((BARS.foot - BARS.top) * years) / most;
      const box = { x: x(week) + 0.6, y: BARS.foot - h, w: x(week + 1) - x(week) - 1.2, h };
      return [rect(box, 'fill="#000"'), text((x(week) + x(week + 1)) / 2, BARS.foot + 4, String(years), { pt: 8, anchor: "middle" })];
    }),
  ];
}

function table(scenario: Scenario, summary: WeatherSummary): string {
  const rows = summary.byWeek.map((years, week) => {
    const boxes = [...summary.hayByWeek.map(({ kg }) => hayFigure(kg[week], scenario.units)), String(years)];
    return `<tr><td>${dayMonth(addDays(scenario.season.firstDay, 7 * week))}</td>${boxes.map((box) => `<td>${box}</td>`).join("")}</tr>`;
  });
  const heads = ["Week of", ...BANDS.map(({ words }) => words), "first failures"].map((head) => `<th scope="col">${head}</th>`).join("");
  return `<table>\n<thead><tr>${heads}</tr></thead>\n<tbody>\n${rows.join("\n")}\n</tbody>\n</table>`;
}
