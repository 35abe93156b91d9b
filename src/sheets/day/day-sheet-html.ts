import type { Scenario } from "../../farm/scenario.js";
import type { Words } from "../../words/words.js";
import { escaped, mm } from "../grid/svg.js";
import type { Sheet } from "../made.js";
import { pageRule, printable, SHEET_FORM, type PaperName } from "../paper.js";
import { plate } from "../plate.js";
import { printedPage } from "../printed-page.js";
import { DAY_CSS } from "./css.js";
import { callsWords, fittedPages, rightWords, type PagePart, type TaskRow } from "./day-pages.js";
import { dayOf } from "./context.js";
import { dayMaps, type DayMap } from "./day-map.js";
import { sheetOf, type DayOptions } from "./day-sheet.js";
import { printedLines, WRONG_SHARE, type PrintedLine } from "./heights.js";
import type { Bits, DaySheet, Task } from "./model.js";

export interface DayPaper extends DayOptions {
  readonly paper: PaperName;
}

/** A day's sheet as a page to print: one sheet of paper where it fits, else broken between tasks. */
export function daySheetHtml(sheet: Sheet, words: Words, options: DayPaper): string {
  const day = dayOf(sheet, words, options.day);
  const told = sheetOf(day, options);
  const tasks = told.parts.flatMap((part) => part.tasks);
  const { w, h } = printable(options.paper, SHEET_FORM);
  const { scale, pages, map } = fittedPages(told, words, { w, h }, dayMaps(day, tasks, told.onFoot));
  const body = pages.map((parts, i) => {
    const sheetOf = words.say("day.sheet-of", { number: i + 1, of: pages.length });
    const head = i === 0 ? topOf(told, map) : `<header class="again"><h1><span>${escaped(told.title)}</span><span>${escaped(sheetOf)}</span></h1></header>`;
    const last = i === pages.length - 1;
    return `<section class="page" style="max-width:${mm(w / scale)}mm${scale === 1 ? "" : `;zoom:${scale}`}">${head}
${parts.map((part) => partOf(part, sheet.scenario, words)).join("\n")}
${last ? bottomOf(told) : `<p class="overleaf">${html(callsWords(told, words))}</p>`}
<p class="version">${html(told.foot)} ${escaped(sheetOf)}</p></section>`;
  });
  return printedPage(`${told.farm}: ${told.title}`, `${DAY_CSS}\n${pageRule(options.paper, SHEET_FORM)}`, body.join("\n"), words.locale);
}

function topOf({ title, before, head }: DaySheet, map: DayMap): string {
  const boxes = before.boxes.map((bits) => ` <span class="at">${html(bits)}</span>`).join("");
  return `<header class="top"><div class="map" style="width:${mm(map.w)}mm">${map.svg}<p>${html(map.caption)}</p></div>
<h1>${escaped(title)}</h1><p class="before">${html(before.ask)}${boxes}</p>
${head.map((bits) => `<p>${html(bits)}</p>`).join("\n")}</header>`;
}

function partOf({ part, goesOn, rows }: PagePart, scenario: Scenario, words: Words): string {
  const title = goesOn ? words.say("day.goes-on", { part: part.title }) : part.title;
  return `<h2 class="bar"><span>${escaped(title)}</span><span>${escaped(goesOn ? "" : part.sum)}</span></h2>
${rows.map((row) => rowOf(row, scenario, words)).join("\n")}`;
}

function rowOf(row: TaskRow, scenario: Scenario, words: Words): string {
  const tasks = row.map((task) => taskOf(task, scenario, words)).join("\n");
  return row.length === 1 ? tasks : `<div class="pair">${tasks}</div>`;
}

function taskOf(task: Task, { groups }: Scenario, words: Words): string {
  const group = groups.find(({ name }) => name === task.group);
  return `<article class="task"><div class="number">${task.number}</div><div><h3>${group ? plate(group) : ""}<span class="what">${escaped(task.title)}</span><span class="right">${escaped(rightWords(task, words))}</span></h3>
<div class="lines">${printedLines(task).map(lineOf).join("")}</div></div><div class="tickbox"></div></article>`;
}

function lineOf({ label, steps }: PrintedLine): string {
  return `<p class="line"><b>${escaped(label)}</b><span>${steps.map(({ bits, whole }) => (whole ? `<span class="nb">${html(bits)}</span>` : html(bits))).join(" ")}</span></p>`;
}

const MARKS = { box: "box", tick: "tick", line: "write" } as const;

function html(bits: Bits): string {
  return bits.map(({ text, strong, mark }) => (mark ? `<span class="${MARKS[mark]}"></span>` : strong ? `<b>${escaped(text)}</b>` : escaped(text))).join("");
}

function bottomOf({ waits, wrong, calls, notFilled, phone, doneBy, cautions }: DaySheet): string {
  const call = (who: string, what: string | null): string => `<p class="call"><span>${escaped(who)}</span>${what === null ? `<span class="not">${escaped(notFilled)}</span>` : `<span>${escaped(what)}</span>`}</p>`;
  return `<div class="waits"><p>${html(waits)}</p></div>
<div class="foot" style="grid-template-columns:${WRONG_SHARE}fr ${mm(1 - WRONG_SHARE)}fr"><div><h2>${escaped(wrong.title)}</h2>${wrong.lines.map((bits) => `<p>${html(bits)}</p>`).join("")}<p>${html(phone)}</p></div>
<div>${calls.map(({ who, what }) => call(who, what)).join("")}${call(doneBy, "")}</div></div>
<p class="cautions">${html(cautions)}</p>`;
}
