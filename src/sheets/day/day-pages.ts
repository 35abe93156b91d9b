import type { Words } from "../../words/words.js";
import { bottomMm, footMm, linesOf, LINE_MM, taskMm, topMm } from "./heights.js";
import type { Bits, DayPart, DaySheet, Task } from "./model.js";

const BAR_MM = 6.7;
const SMALL_HEAD_MM = 9;

/** Tasks of a part of the day on a page; `goesOn` where it began on the page before. */
export interface PagePart {
  readonly part: DayPart;
  readonly goesOn: boolean;
  readonly tasks: readonly Task[];
}

export interface PageSize {
  readonly w: number;
  readonly h: number;
}

type MapSize = PageSize;

/** Minutes and people at the right of a task's title. */
export function rightWords(task: Task, words: Words): string {
  const people = task.people > 1 ? [words.say("day.people", { n: task.people })] : [];
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

/** Breaks a day between tasks: all on one page where it fits, else the evening on its own where that saves a page, else as many as fit. */
function pagesOfDay(sheet: DaySheet, words: Words, size: PageSize, map: MapSize): readonly (readonly PagePart[])[] {
  const tasks = sheet.parts.flatMap((part) => part.tasks.map((task) => ({ part, task, mm: taskMm(task, size.w, rightWords(task, words)) })));
  const most = (page: number, last: boolean): number =>
    size.h - (page === 0 ? topMm(sheet, size.w, map) : SMALL_HEAD_MM)
    - (last ? bottomMm(sheet, size.w) : footMm(sheet, size.w) + linesOf(callsWords(sheet, words), size.w) * LINE_MM + 2);
  const pages: (typeof tasks)[] = [[]];
  const used = (page: typeof tasks): number => page.reduce((sum, { mm, part }, i) => sum + mm + (i === 0 || page[i - 1]!.part !== part ? BAR_MM : 0), 0);
  tasks.forEach((one, i) => {
    const page = pages.at(-1)!;
    const rest = [...page, ...tasks.slice(i)];
    const fits = used(rest) <= most(pages.length - 1, true) || used([...page, one]) <= most(pages.length - 1, false);
    if (fits || page.length === 0) page.push(one);
    else pages.push([one]);
  });
  if (used(pages.at(-1)!) > most(pages.length - 1, true) && pages.at(-1)!.length > 1) pages.push(pages.at(-1)!.splice(-1));
  return pages.map((page) => sheet.parts.flatMap((part) => {
    const own = page.filter((one) => one.part === part).map(({ task }) => task);
    return own.length === 0 ? [] : [{ part, goesOn: own[0] !== part.tasks[0], tasks: own }];
  }));
}
