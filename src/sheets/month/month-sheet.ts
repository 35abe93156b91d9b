import type { Group } from "../../farm/scenario.js";
import type { Piece, Words } from "../../words/words.js";
import { fittingPt, linesIn } from "../fit.js";
import { escaped, mm, MM_PER_PT } from "../grid/svg.js";
import type { Sheet } from "../made.js";
import { headWords } from "../marks.js";
import { pageRule, printable, SHEET_FORM, type PaperName } from "../paper.js";
import { patternDown, plate } from "../plate.js";
import { printedPage } from "../printed-page.js";
import { MONTH_CSS } from "./css.js";
import { monthRows, type MonthBox, type MonthRow } from "./rows.js";

export interface MonthGiven {
  /** "2027-06". */
  readonly month: string;
  readonly paper: PaperName;
}

/** Groups that one sheet holds so that moves can be read from a yard away. */
const MOST_GROUPS = 6;
/** Room of what stands round the rows, mm: day, people at home, and above and below. */
const DAY_MM = 21;
const HOME_MM = 13;
const ROUND_MM = 44;
const JOBS_LEAST_MM = 36;
const DOWN_MM = 2.6;
const TICK_MM = 5.6;

/** Days x groups for the wall: where everybody stands, moves large with a box to tick. One sheet, or more where there are many groups. */
export function monthSheetHtml(sheet: Sheet, words: Words, { month, paper }: MonthGiven): string {
  const rows = monthRows(sheet, words, month);
  const { groups } = sheet.scenario;
  const sheets = Math.max(1, Math.ceil(groups.length / MOST_GROUPS));
  const each = Math.ceil(groups.length / sheets);
  const title = words.monthYear(`${month}-01`);
  const pages = Array.from({ length: sheets }, (_, i) => pageOf(sheet, words, rows, paper, { from: i * each, to: (i + 1) * each, number: i + 1, of: sheets, title }));
  return printedPage(`${sheet.scenario.farm}: ${title}`, `${MONTH_CSS}\n${pageRule(paper, SHEET_FORM)}`, pages.join("\n"), words.locale);
}

interface Part {
  readonly from: number;
  readonly to: number;
  readonly number: number;
  readonly of: number;
  readonly title: string;
}

function pageOf({ scenario, made }: Sheet, words: Words, rows: readonly MonthRow[], paper: PaperName, { from, to, number, of, title }: Part): string {
  const { w, h } = printable(paper, SHEET_FORM);
  const groups = scenario.groups.slice(from, to);
  const rowMm = Math.min(9.5, (h - ROUND_MM - footMm(scenario.groups, words, w)) / 31);
  const groupMm = Math.min(34, (w - DAY_MM - HOME_MM - JOBS_LEAST_MM) / Math.max(1, groups.length));
  const jobsMm = w - DAY_MM - HOME_MM - groupMm * groups.length;
  const which = of > 1 ? `, ${words.say("month.part", { number, of })}` : "";
  const head = words.say("month.head", { farm: scenario.farm, made: words.fullDay(made.madeOn), version: made.version });
  const columns = [DAY_MM, ...groups.map(() => groupMm), HOME_MM, jobsMm].map((wide) => `<col style="width:${mm(wide)}mm"/>`).join("");
  return `<section class="page"><header><h1>${escaped(title)}</h1><p>${escaped(head + which)}</p></header>
<table style="width:${mm(w)}mm"><colgroup>${columns}</colgroup>
<thead><tr><th scope="col">${escaped(words.say("month.day"))}</th>${groups.map((group) => groupHead(group, groupMm, words)).join("")}<th scope="col">${escaped(words.say("month.home"))}</th><th scope="col">${escaped(words.say("month.jobs"))}</th></tr></thead>
<tbody>
${rows.map((row) => rowOf(row, groups, row.boxes.slice(from, to), words, { rowMm, groupMm, jobsMm })).join("\n")}
</tbody></table>
<p class="foot">${footOf(scenario.groups, words)}</p></section>`;
}

function groupHead(group: Group, wide: number, words: Words): string {
  const [name, heads] = [fittingPt(group.name, wide - 2, 10, 6, true), fittingPt(headWords(group, words), wide - 2, 9, 6)];
  return `<th scope="col">${plate(group)}<b style="font-size:${name}pt">${escaped(group.name)}</b><span style="font-size:${heads}pt">${escaped(headWords(group, words))}</span></th>`;
}

interface Sizes {
  readonly rowMm: number;
  readonly groupMm: number;
  readonly jobsMm: number;
}

function rowOf(row: MonthRow, groups: readonly Group[], boxes: readonly MonthBox[], words: Words, sizes: Sizes): string {
  const home = row.atHome > 1 ? `<b>${row.atHome}</b>` : String(row.atHome);
  return `<tr style="height:${mm(sizes.rowMm)}mm"${row.weekend ? ' class="weekend"' : ""}><td class="day"><b>${Number(row.day.slice(8))}</b> ${escaped(words.weekday(row.day))}</td>${
    boxes.map((box, i) => boxOf(box, groups[i]!, sizes)).join("")}<td class="home">${home}</td><td class="jobs">${jobsOf(row, sizes)}</td></tr>`;
}

function boxOf({ from, at, note }: MonthBox, group: Group, { rowMm, groupMm }: Sizes): string {
  if (at === "") return '<td class="group"></td>';
  const room = groupMm - DOWN_MM - 2.4;
  const more = note === "" ? "" : ` <small>${escaped(note)}</small>`;
  const tail = note === "" ? "" : ` ${note}`;
  const place = from === null
    ? `<span class="place" style="font-size:${fittingPt(at + tail, room, 11, 6)}pt">${escaped(at)}${more}</span>`
    : `<span class="place" style="font-size:${fittingPt(`${from} → ${at}${tail}`, room - TICK_MM, 13, 6, true)}pt"><span class="from">${escaped(from)} → </span><b>${escaped(at)}</b>${more}</span><span class="tick"></span>`;
  return `<td class="group"><div class="stay">${patternDown(group, rowMm)}${place}</div></td>`;
}

/** In the largest size in which all jobs of the day stand in the row. */
function jobsOf({ jobs }: MonthRow, { rowMm, jobsMm }: Sizes): string {
  const all = jobs.map(({ words }) => words).join(". ");
  if (all === "") return "";
  const sizes = [9.8, 9, 8.2, 7.4, 6.6, 6, 5.5];
  const pt = sizes.find((one) => linesIn(all, jobsMm - 2.6, one) * one * MM_PER_PT * 1.15 <= rowMm - 0.3) ?? sizes.at(-1)!;
  return `<span style="font-size:${pt}pt">${jobs.map(({ words, strong }) => (strong ? `<b>${escaped(words)}</b>` : escaped(words))).join(". ")}</span>`;
}

const FOOT_PT = 9;
/** Lines below the table for which there is room anyhow. */
const USUAL_FOOT = 2;

/** What the lines below the table take beyond the usual, mm. */
function footMm(groups: readonly Group[], words: Words, wide: number): number {
  const text = footPieces(groups, words).map((one) => one.text).join("");
  return Math.max(0, linesIn(text, wide - 2, FOOT_PT) - USUAL_FOOT) * FOOT_PT * MM_PER_PT * 1.15;
}

function footOf(groups: readonly Group[], words: Words): string {
  return footPieces(groups, words).map(({ text, strong }) => (strong ? `<b>${escaped(text)}</b>` : escaped(text))).join("");
}

/** How to read it, with what every day asks. */
function footPieces(groups: readonly Group[], words: Words): readonly Piece[] {
  const daily = groups.filter(({ strip }) => strip !== null && strip.pen !== null && strip.days === 1).map(({ name }) => name);
  const strips = groups.some(({ strip }) => strip !== null && strip.pen === null);
  return [
    ...words.pieces("month.how"),
    ...(strips ? words.pieces("month.strips") : []),
    ...(daily.length > 0 ? words.pieces("month.daily", { groups: words.list(daily) }) : []),
    ...words.pieces("month.every-day"),
  ];
}
