import type { Scenario } from "../../farm/scenario.js";
import type { Words } from "../../words/words.js";
import { escaped, mm } from "../grid/svg.js";
import type { Sheet } from "../made.js";
import { pageRule, printable, SHEET_FORM, type PaperName } from "../paper.js";
import { plate } from "../plate.js";
import { printedPage } from "../printed-page.js";
import { DAY_CSS } from "./css.js";
import { callsWords, fittedPages, rightWords, type PagePart } from "./day-pages.js";
import { daySheet, type DayOptions } from "./day-sheet.js";
import type { Bits, DaySheet, Line, Step, Task } from "./model.js";

/** A drawing of the farm with the tasks' numbers on it, and its size, mm. */
export interface DayMap {
  readonly svg: string;
  readonly w: number;
  readonly h: number;
}

export interface DayPaper extends DayOptions {
  readonly paper: PaperName;
}

/** A day's sheet as a page to print: one sheet of paper where it fits, else broken between tasks. */
export function daySheetHtml(sheet: Sheet, words: Words, options: DayPaper, map: (tasks: readonly Task[]) => DayMap | null): string {
  const told = daySheet(sheet, words, options);
  const drawn = map(told.parts.flatMap(({ tasks }) => tasks));
  const { w, h } = printable(options.paper, SHEET_FORM);
  const { scale, pages } = fittedPages(told, words, { w, h, map: drawn });
  const body = pages.map((parts, i) => {
    const sheetOf = words.say("day.sheet-of", { number: i + 1, of: pages.length });
    const head = i === 0 ? topOf(told, drawn) : `<header class="again"><h1><span>${escaped(told.title)}</span><span>${escaped(sheetOf)}</span></h1></header>`;
    const last = i === pages.length - 1;
    return `<section class="page" style="max-width:${mm(w / scale)}mm${scale === 1 ? "" : `;zoom:${scale}`}">${head}
${parts.map((part) => partOf(part, sheet.scenario, words)).join("\n")}
${last ? bottomOf(told) : `<p class="overleaf">${html(callsWords(told, words))}</p>`}
<p class="version">${html(told.foot)} ${escaped(sheetOf)}</p></section>`;
  });
  return printedPage(`${told.farm}: ${told.title}`, `${DAY_CSS}\n${pageRule(options.paper, SHEET_FORM)}`, body.join("\n"), words.locale);
}

function topOf({ title, before, head }: DaySheet, map: DayMap | null): string {
  const boxes = before.boxes.length === 0 ? "" : `<p class="boxes">${before.boxes.map((bits) => `<span>${html(bits)}</span>`).join("")}</p>`;
  return `<header><h1>${escaped(title)}</h1><div class="before"><p class="ask">${html(before.ask)}</p>${boxes}</div>
<div class="top"><div class="said">${head.map((bits) => `<p>${html(bits)}</p>`).join("")}</div>${map ? `<div class="map">${map.svg}</div>` : ""}</div></header>`;
}

function partOf({ part, goesOn, tasks }: PagePart, scenario: Scenario, words: Words): string {
  const title = goesOn ? words.say("day.goes-on", { part: part.title }) : part.title;
  return `<h2 class="bar"><span>${escaped(title)}</span><span>${escaped(goesOn ? "" : part.sum)}</span></h2>
${tasks.map((task) => taskOf(task, scenario, words)).join("\n")}`;
}

function taskOf(task: Task, { groups }: Scenario, words: Words): string {
  const group = groups.find(({ name }) => name === task.group);
  return `<article class="task"><div class="number">${task.number}</div><div><h3>${group ? plate(group) : ""}<span class="what">${escaped(task.title)}</span><span class="right">${escaped(rightWords(task, words))}</span></h3>
<div class="lines">${task.lines.map(lineOf).join("")}</div></div><div class="tickbox"></div></article>`;
}

function lineOf({ label, steps }: Line): string {
  return `<p class="line"><b>${escaped(label)}</b><span>${steps.map(stepOf).join(" ")}</span></p>`;
}

/** A box stays with its words. */
const SHORT = 40;

function stepOf({ bits }: Step): string {
  const short = bits.some(({ mark }) => mark !== undefined) && bits.reduce((sum, { text }) => sum + text.length, 0) <= SHORT;
  return short ? `<span class="nb">${html(bits)}</span>` : html(bits);
}

const MARKS = { box: "box", tick: "tick", line: "write" } as const;

function html(bits: Bits): string {
  return bits.map(({ text, strong, mark }) => (mark ? `<span class="${MARKS[mark]}"></span>` : strong ? `<b>${escaped(text)}</b>` : escaped(text))).join("");
}

function bottomOf({ waits, wrong, calls, notFilled, phone, doneBy, cautions }: DaySheet): string {
  const call = (who: string, what: string | null): string => `<p class="call"><span>${escaped(who)}</span>${what === null ? `<span class="not">${escaped(notFilled)}</span>` : `<span>${escaped(what)}</span>`}</p>`;
  return `<div class="waits">${waits.map((bits) => `<p>${html(bits)}</p>`).join("")}</div>
<div class="foot"><div><h2>${escaped(wrong.title)}</h2>${wrong.lines.map((bits) => `<p>${html(bits)}</p>`).join("")}<p>${html(phone)}</p></div>
<div>${calls.map(({ who, what }) => call(who, what)).join("")}${call(doneBy, "")}</div></div>
<p class="cautions">${html(cautions)}</p>`;
}
