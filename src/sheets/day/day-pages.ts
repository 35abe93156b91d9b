import type { Words } from "../../words/words.js";
import { barMm, besideMm, bottomMm, footMm, linesOf, LINE_MM, taskMm, topMm } from "./heights.js";
import type { Bits, DayPart, DaySheet, Task } from "./model.js";

const SMALL_HEAD_MM = 9;

/** One task over the whole width, or two short ones side by side. */
export type TaskRow = readonly Task[];

/** Tasks of a part of the day on a page; `goesOn` where it began on the page before. */
export interface PagePart {
  readonly part: DayPart;
  readonly goesOn: boolean;
  readonly rows: readonly TaskRow[];
}

export interface PageSize {
  readonly w: number;
  readonly h: number;
}

type MapSize = PageSize;

/** Minutes and people at the right of a task's title. */
export function rightWords(task: Task, words: Words): string {
  const people = task.people > 1 ? [words.say("day.people", { n: task.people })] : task.notAlone ? [words.say("day.not-alone")] : [];
  const time = task.timedWith !== null ? [words.say("day.timed-with", { number: task.timedWith })] : task.minutes === null ? [] : [words.say("day.minutes", { minutes: task.minutes })];
  return [...people, ...time].join(", ");
}

/** One line for pages whose numbers stand on another. */
export function callsWords(sheet: DaySheet, words: Words): Bits {
  return words.pieces("day.wrong-overleaf", { calls: sheet.calls.map(({ who, what }) => `${who}: ${what ?? sheet.notFilled}`).join(". ") });
}

/** How much smaller a day may be drawn so that it stands on one sheet: 9.9 points are still read at a gate. */
const SCALES = [1, 0.95, 0.9];

export interface DayPages<M> {
  readonly scale: number;
  readonly map: M;
  readonly pages: readonly (readonly PagePart[])[];
}

/**
 * With the largest map, in the largest size in which the day stands on one sheet; full size, the smallest map and more sheets where none does.
 *
 * @param maps from the largest to the smallest
 */
export function fittedPages<M extends MapSize>(sheet: DaySheet, words: Words, { w, h }: PageSize, maps: readonly M[]): DayPages<M> {
  const drawn = (scale: number, map: M): DayPages<M> => ({ scale, map, pages: pagesOfDay(sheet, words, { w: w / scale, h: h / scale }, map) });
  for (const scale of SCALES) {
    for (const map of maps) {
      const day = drawn(scale, map);
      if (day.pages.length === 1) return day;
    }
  }
  return drawn(1, maps.at(-1)!);
}

interface PlacedRow {
  readonly part: DayPart;
  readonly row: TaskRow;
  readonly mm: number;
}

/** Paper that two tasks side by side must save to stand so, mm. */
const WORTH_MM = 4;

/** A part's tasks in order: two that are short stand beside each other where that saves paper. */
function rowsOf(part: DayPart, words: Words, pageMm: number): readonly PlacedRow[] {
  const rows: PlacedRow[] = [];
  for (let i = 0; i < part.tasks.length; i += rows.at(-1)!.row.length) {
    const [one, next] = [part.tasks[i]!, part.tasks[i + 1]];
    const own = taskMm(one, pageMm, rightWords(one, words));
    const pair = next ? pairMm(one, next, words, pageMm) : null;
    const apart = next ? own + taskMm(next, pageMm, rightWords(next, words)) : own;
    rows.push(next && pair !== null && pair + WORTH_MM <= apart ? { part, row: [one, next], mm: pair } : { part, row: [one], mm: own });
  }
  return rows;
}

function pairMm(one: Task, next: Task, words: Words, pageMm: number): number | null {
  const both = [one, next].map((task) => besideMm(task, pageMm, rightWords(task, words)));
  return both.some((mm) => mm === null) ? null : Math.max(...both.map((mm) => mm!));
}

/** Breaks a day between tasks: all on one page where it fits, else the evening on its own where that saves a page, else as many as fit. */
function pagesOfDay(sheet: DaySheet, words: Words, size: PageSize, map: MapSize): readonly (readonly PagePart[])[] {
  const rows = sheet.parts.flatMap((part) => rowsOf(part, words, size.w));
  const most = (page: number, last: boolean): number =>
    size.h - (page === 0 ? topMm(sheet, size.w, map) : SMALL_HEAD_MM)
    - (last ? bottomMm(sheet, size.w) : footMm(sheet, size.w) + linesOf(callsWords(sheet, words), size.w) * LINE_MM + 2);
  const pages: PlacedRow[][] = [[]];
  const used = (page: readonly PlacedRow[]): number => page.reduce((sum, { mm, part }, i) => sum + mm + (i === 0 || page[i - 1]!.part !== part ? barMm(part, size.w) : 0), 0);
  rows.forEach((one, i) => {
    const page = pages.at(-1)!;
    const rest = [...page, ...rows.slice(i)];
    const fits = used(rest) <= most(pages.length - 1, true) || used([...page, one]) <= most(pages.length - 1, false);
    if (fits || page.length === 0) page.push(one);
    else pages.push([one]);
  });
  if (used(pages.at(-1)!) > most(pages.length - 1, true) && pages.at(-1)!.length > 1) pages.push(pages.at(-1)!.splice(-1));
  return pages.map((page) => sheet.parts.flatMap((part) => {
    const own = page.filter((one) => one.part === part).map(({ row }) => row);
    return own.length === 0 ? [] : [{ part, goesOn: own[0]![0] !== part.tasks[0], rows: own }];
  }));
}
