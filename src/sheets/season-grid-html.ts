import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { Words } from "../words/words.js";
import { toldSpan } from "./amounts.js";
import { groundRows } from "./grid/cell-rows.js";
import { gridCss } from "./grid/css.js";
import { FOOT_SIZES, footDrawing, footOf, type FootSize } from "./grid/foot.js";
import { dayRows, groupRows } from "./grid/group-rows.js";
import { head, uprights } from "./grid/head.js";
import { canvasOf, frameOf, layoutOf, rowsThatFit, type Canvas, type Frame } from "./grid/layout.js";
import { partsOf, wholeParts, type Part } from "./grid/parts.js";
import { rightEdge } from "./grid/right-edge.js";
import { escaped, mm } from "./grid/svg.js";
import { twin } from "./grid/twin.js";
import type { Made, Sheet } from "./made.js";
import { notesOf, type Notes } from "./notes.js";
import type { PaperName } from "./paper.js";
import { printedPage } from "./printed-page.js";

export interface SeasonGridOptions {
  /** A4 unless said. The same drawing on each, as large as it takes: A3 and tabloid are for the wall. */
  readonly paper?: PaperName;
}

/** The season grid as one self-contained page: sheets to print, colours on the screen, a table twin below. */
export function seasonGridHtml(scenario: Scenario, plan: Plan, report: Report, made: Made, words: Words, { paper = "a4" }: SeasonGridOptions = {}): string {
  const sheet: Sheet = { scenario, plan, report, made };
  const notes = notesOf(sheet, words);
  const canvas = canvasOf(paper);
  const { parts, size } = laid(sheet, notes, canvas, words);
  const title = words.say("season.page", { farm: scenario.farm });
  return printedPage(title, gridCss(paper), `<div class="screen"><h1>${escaped(title)}</h1>
<p>${escaped(words.say("season.made", { day: words.weekdayDate(made.madeOn), version: made.version }))} ${escaped(words.say("season.below"))}</p></div>
<main>
${parts.map((part) => drawing(frameOf(sheet, part, canvas, words), notes, size)).join("\n")}
</main>
${twin(sheet, notes, words)}`, words.locale);
}

interface Laid {
  readonly parts: readonly Part[];
  readonly size: FootSize;
}

/** The sheets of a season: the longest foot decides how many rows of ground fit, and gives way where that saves a sheet. */
function laid(sheet: Sheet, notes: Notes, canvas: Canvas, words: Words): Laid {
  const { groups, fields } = sheet.scenario;
  const frames = wholeParts(sheet).map((part) => frameOf(sheet, part, canvas, words));
  const tries = FOOT_SIZES.map((size) => {
    const footHeight = Math.max(...frames.map((frame) => footOf(frame, notes, size).height));
    return { size, parts: partsOf(sheet, rowsThatFit(canvas, groups.length, fields.length, footHeight)) };
  });
  return tries.reduce((best, one) => (one.parts.length < best.parts.length ? one : best));
}

function drawing(frame: Frame, notes: Notes, size: FootSize): string {
  const { part, canvas, words } = frame;
  const foot = footOf(frame, notes, size);
  const layout = layoutOf(frame, foot.height);
  const here = notes.numbered.filter((note) => part.days.includes(note.day));
  const id = `sheet-${part.number}`;
  const span = toldSpan(part.days[0]!, part.days.at(-1)!, words);
  return `<section class="sheet" tabindex="0" aria-labelledby="${id}-title"><svg viewBox="0 0 ${mm(canvas.width)} ${mm(Math.min(canvas.height, layout.groundEnd + foot.height))}" role="img" aria-labelledby="${id}-title ${id}-words">
<title id="${id}-title">${escaped(words.say("season.drawing", { number: part.number, of: part.of, span }))}</title>
<desc id="${id}-words">${escaped(words.say("season.drawing-words"))}</desc>
${[head(layout), uprights(layout), groupRows(layout), dayRows(layout, here), groundRows(layout), rightEdge(layout), footDrawing(layout, foot)].join("\n")}
</svg></section>`;
}
