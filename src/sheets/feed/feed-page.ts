import type { Feed } from "../../decide/feed.js";
import type { Scenario } from "../../farm/scenario.js";
import { escaped, line, mm, rect, text } from "../grid/svg.js";
import { bandY, frameOf, hatch, HEIGHT, needOf, scaleFor, scaleMarks, shown, weekHeads, weekX, WIDTH, type Band, type Frame } from "./frame.js";
import { feedTable } from "./feed-table.js";
import { printedPage } from "../printed-page.js";

/** Days ahead beyond which a column is cut off: more is only more of the same. */
const MOST_DAYS = 40;
const FEED_BAND = { top: 24, bottom: 98 };
const DAYS_BAND = { top: 126, bottom: 164, most: MOST_DAYS };

/** Growth, need and shortfall by week as one self-contained page: a drawing to print, and the same as a table. */
export function feedPage(scenario: Scenario, feed: Feed): string {
  const title = `${scenario.farm}: grass against mouths`;
  return printedPage(title, CSS, `<h1>${escaped(title)}</h1>
${drawing(frameOf(scenario, feed))}
${feedTable(scenario, feed)}`, "en-GB");
}

const CSS = `:root{--ink:#000;--rule:#666}
body{margin:0;padding:12px;background:#fff;color:#000;font:16px/1.45 system-ui,"Liberation Sans",Arial,sans-serif;font-variant-numeric:tabular-nums}
h1{font-size:20px;margin:0 0 8px}
svg{display:block;width:100%;max-width:${WIDTH * 1.4}mm;height:auto;font-family:"Liberation Sans",Arial,Helvetica,system-ui,sans-serif}
svg text{fill:var(--ink)}
svg .stroke{fill:none;stroke:var(--ink)}
svg .soft{stroke:var(--rule)}
table{border-collapse:collapse;margin-top:24px}
th,td{text-align:right;padding:2px 10px;border-bottom:1px solid var(--rule)}
th:first-child,td:first-child,td:last-child,th:last-child{text-align:left}
caption{text-align:left;padding:0 0 8px}
@page{size:A4 landscape;margin:8mm}
@media print{body{padding:0}svg{width:${WIDTH}mm;max-width:none}h1{display:none}table{break-before:page}*{-webkit-print-color-adjust:exact;print-color-adjust:exact}}`;

function drawing(frame: Frame): string {
  const { weeks } = frame.feed;
  const { most, step } = scaleFor(Math.max(...weeks.map((week) => shown(frame, Math.max(week.grownKg, needOf(week))))));
  const band: Band = { ...FEED_BAND, most };
  const unit = frame.scenario.units === "US" ? "lb" : "kg";
  return `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-labelledby="feed-title feed-words">
<title id="feed-title">${escaped(frame.scenario.farm)}: growth, need and shortfall by week</title>
<desc id="feed-words">Columns of growth, a line of need, solid where hay makes it up; below, days of grass ahead. The same stands in the table.</desc>
<defs>${hatch("grown", 0, 1.3)}${hatch("ahead", 45, 1.6)}</defs>
${text(0, 5, `${frame.scenario.farm}: what grows and what is eaten, by week (${unit} of dry matter)`, { pt: 12, bold: true })}
${key(10)}
${scaleMarks(band, step, (amount) => String(Math.round(amount)))}
${weekHeads(frame, band)}
${weeks.map((_, w) => feedColumn(frame, band, w)).join("\n")}
${needLine(frame, band)}
${text(0, 114, `Days of grass ahead when the week ends (above ${MOST_DAYS} cut off)`, { pt: 12, bold: true })}
${scaleMarks(DAYS_BAND, 10, String)}
${weekHeads(frame, DAYS_BAND)}
${weeks.map((_, w) => daysColumn(frame, w)).join("\n")}
${wishLine(frame)}
${weeks.map((_, w) => weekMark(frame, w)).join("\n")}
</svg>`;
}

function key(y: number): string {
  const box = (x: number, attributes: string): string => rect({ x, y: y - 3, w: 6, h: 3.6 }, attributes);
  return [
    box(0, 'fill="url(#grown)" stroke="#000" stroke-width="0.2"'), text(8, y, "grown", { pt: 9 }),
    line(26, y - 1.2, 32, y - 1.2, 'class="stroke" stroke-width="0.9"'), text(34, y, "needed by all that are here", { pt: 9 }),
    box(84, 'fill="#000"'), text(92, y, "short: made up with hay, or kept in by your dates", { pt: 9 }),
    line(174, y - 1.2, 180, y - 1.2, 'class="stroke" stroke-width="0.5" stroke-dasharray="1.4 0.9"'), text(182, y, "days wanted ahead", { pt: 9 }),
    text(216, y, "S  grass runs short   M  more than is eaten", { pt: 9, bold: true, room: WIDTH - 217 }),
  ].join("\n");
}

/** A week's growth as a column, and beside it what hay makes up, hanging from the need. */
function feedColumn(frame: Frame, band: Band, w: number): string {
  const week = frame.feed.weeks[w]!;
  const [x, wide] = [weekX(frame, w), frame.weekWidth];
  const grown = bandY(band, shown(frame, week.grownKg));
  const hay = week.hayKg + week.keptInHayKg;
  const [top, foot] = [bandY(band, shown(frame, needOf(week))), bandY(band, shown(frame, needOf(week) - hay))];
  const growth = rect({ x: x + wide * 0.1, y: grown, w: wide * 0.8, h: band.bottom - grown }, 'fill="url(#grown)" stroke="#000" stroke-width="0.2"');
  return hay < 1 ? growth : `${growth}${rect({ x: x + wide * 0.3, y: top, w: wide * 0.4, h: foot - top }, 'fill="#000" stroke="#fff" stroke-width="0.3"')}`;
}

function needLine(frame: Frame, band: Band): string {
  return steps(frame, (w) => bandY(band, shown(frame, needOf(frame.feed.weeks[w]!))), 'stroke-width="0.9"');
}

function wishLine(frame: Frame): string {
  return steps(frame, (w) => bandY(DAYS_BAND, frame.feed.weeks[w]!.daysWished), 'stroke-width="0.5" stroke-dasharray="1.4 0.9"');
}

/** A line that is level within each week. */
function steps(frame: Frame, y: (week: number) => number, attributes: string): string {
  const d = frame.feed.weeks.map((_, w) => `${w === 0 ? "M" : "L"}${mm(weekX(frame, w))} ${mm(y(w))}H${mm(weekX(frame, w + 1))}`).join("");
  return `<path d="${d}" class="stroke" ${attributes}/>`;
}

function daysColumn(frame: Frame, w: number): string {
  const { daysInHand } = frame.feed.weeks[w]!;
  if (daysInHand === null) return "";
  const [x, y] = [weekX(frame, w), bandY(DAYS_BAND, daysInHand)];
  const column = rect({ x: x + frame.weekWidth * 0.1, y, w: frame.weekWidth * 0.8, h: DAYS_BAND.bottom - y }, 'fill="url(#ahead)" stroke="#000" stroke-width="0.2"');
  const more = daysInHand > MOST_DAYS ? text(x + frame.weekWidth / 2, DAYS_BAND.top - 0.6, "+", { pt: 8, anchor: "middle" }) : "";
  return column + more;
}

/** Under the days: a letter for weeks that pinch, another for weeks with too much. */
function weekMark(frame: Frame, w: number): string {
  const short = frame.feed.pinches.some(({ from, to }) => w >= from && w <= to);
  const over = frame.feed.surpluses.some(({ from, to }) => w >= from && w <= to);
  const letter = short ? "S" : over ? "M" : "";
  return letter === "" ? "" : text(weekX(frame, w) + frame.weekWidth / 2, DAYS_BAND.bottom + 9, letter, { pt: 10, bold: true, anchor: "middle" });
}
