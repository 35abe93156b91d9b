import { coveredByPlan, type PenInCell, type PenOnFarm } from "../../decide/pens/pens-of-farm.js";
import { stepsIn } from "../../decide/pens/steps.js";
import type { Scenario } from "../../farm/scenario.js";
import type { Caution } from "../../plan/cautions.js";
import { datedCaution } from "../caution-words.js";
import type { Words } from "../../words/words.js";
import { toldArea, toldSpan } from "../amounts.js";
import { escaped } from "../grid/svg.js";
import { headWords, markOf, patternWords } from "../marks.js";
import { penCss } from "./css.js";
import { penDrawing } from "./drawing.js";
import { stepList } from "./steps.js";
import { cellNotes, penSentences, penTitle } from "./pen-words.js";
import type { PaperName } from "../paper.js";
import { printedPage } from "../printed-page.js";

/** A pen's sheet: every drawing to scale, and the figures of all its cells. */
export function penSheet(scenario: Scenario, pen: PenOnFarm, planned: boolean, cautions: readonly Caution[], words: Words, paper: PaperName = "a4"): string {
  const { group, cells } = pen;
  const title = words.say("pens.title", { farm: scenario.farm, group: group.name, letter: group.letter });
  const list = (rows: readonly string[]): string => (rows.length === 0 ? "" : `<ul>\n${rows.map((row) => `<li>${escaped(row)}</li>`).join("\n")}\n</ul>`);
  const notes = cells.flatMap((one) => cellNotes(one, words));
  return printedPage(title, penCss(paper), `<h1>${escaped(title)}</h1>
<p>${escaped(words.say("pens.head", { heads: headWords(group, words), pen: penTitle(pen, scenario.units, words) }))}</p>
${list(penSentences(pen, planned, scenario.units, words))}
${drawn(cells, planned).map((one, i) => cellSection(scenario, pen, one, planned, i + 1, words)).join("\n")}
<section><h2>${escaped(words.say("pens.all-cells"))}</h2>
${allCells(scenario, pen, planned, words)}
${list(notes)}
</section>
<section class="care"><h2>${escaped(words.say("pens.take-care"))}</h2>
${list(cautions.map((caution) => datedCaution(words, caution)))}
</section>`, words.locale);
}

/** With a plan the cells that it uses, without one all that hold a position. */
function drawn(cells: readonly PenInCell[], planned: boolean): readonly PenInCell[] {
  return cells.filter(({ taken, layout }) => layout.positions > 0 && (!planned || (taken?.stays.length ?? 0) > 0));
}

function cellSection(scenario: Scenario, pen: PenOnFarm, one: PenInCell, planned: boolean, number: number, words: Words): string {
  const { cell, layout, taken } = one;
  const { letter, kind } = pen.group;
  const used = new Map(stepsIn(one, pen.strip.days).map((step) => [step.number, words.dayMonth(step.firstDay)]));
  const title = words.say("pens.cell-title", { cell: cell.name, field: cell.field, group: pen.group.name });
  const mark = markOf(pen.group);
  const picture = { title, layout, used, pattern: mark.pattern, kind, units: scenario.units };
  const paragraphs = [
    layout.asIf ? asIfWords(scenario, one, words) : shapeWords(scenario, one, words),
    ...(planned && taken ? [`${stayWords(one, words)} ${words.say("pens.used", { letter, pattern: patternWords(mark.pattern, words) })}`] : []),
  ];
  return `<section class="cell"><div class="drawn"><h2>${escaped(title)}</h2>
${paragraphs.map((row) => `<p>${escaped(row)}</p>`).join("\n")}
<div class="scroll">${penDrawing(picture, `cell-${number}`, words)}</div></div>
${stepList(one, pen.strip, scenario.units, words)}
</section>`;
}

function asIfWords({ units }: Scenario, { cell, layout, positions }: PenInCell, words: Words): string {
  return words.say("pens.as-if", { cell: cell.name, area: toldArea(cell.areaHa, units, words), square: layout.positions, positions });
}

function shapeWords({ units }: Scenario, { cell, layout, positions }: PenInCell, words: Words): string {
  const shape = words.say("pens.shape", { area: toldArea(cell.areaHa, units, words), positions, lanes: layout.lanes.length, shifts: layout.shifts });
  return layout.northKnown ? shape : `${shape} ${words.say("pens.no-north")}`;
}

function stayWords({ taken }: PenInCell, words: Words): string {
  const stays = taken!.stays.map(({ firstDay, lastDay, firstPosition: first, lastPosition: last }) => {
    const days = toldSpan(firstDay, lastDay, words);
    return first === last ? words.say("pens.stay-one", { days, first }) : words.say("pens.stay-more", { days, first, last });
  });
  return words.say("pens.stays", { stays: stays.join("; "), left: taken!.left });
}

function allCells(scenario: Scenario, pen: PenOnFarm, planned: boolean, words: Words): string {
  const row = (tag: string, boxes: readonly string[]): string => `<tr>${boxes.map((box) => `<${tag}>${escaped(box)}</${tag}>`).join("")}</tr>`;
  const rows = pen.cells.map((one) => cellFigures(scenario, pen, one, planned, words));
  return `<table>
<thead>${row("th", columnHeads(words))}</thead>
<tbody>
${rows.map((boxes) => row("td", boxes)).join("\n")}
</tbody>
</table>
<p>${escaped(tableWords(pen.cells, planned, words))}</p>`;
}

const COLUMNS = ["cell", "area", "fit", "lanes", "shifts", "lasts", "covered", "seasons", "passes", "stand"] as const;

/** Heads of the table of all cells. */
export function columnHeads(words: Words): readonly string[] {
  return COLUMNS.map((column) => words.say(`pens.col.${column}`));
}

/** What the columns of the table of all cells mean. */
export function tableWords(cells: readonly PenInCell[], planned: boolean, words: Words): string {
  return [
    cells.some(({ layout }) => layout.asIf) ? words.say("pens.say.by-area") : "",
    words.say("pens.say.fit"),
    planned ? words.say("pens.say.covered-plan") : words.say("pens.say.covered"),
    words.say("pens.say.seasons"),
    planned ? words.say("pens.say.left") : "",
    planned ? words.say("pens.say.passes-plan") : words.say("pens.say.passes"),
  ].filter((one) => one !== "").join(" ");
}

/** A row of the table of all cells. */
export function cellFigures({ units }: Scenario, { strip }: PenOnFarm, one: PenInCell, planned: boolean, words: Words): readonly string[] {
  const { cell, layout, positions, run, lastsDays, limits, taken } = one;
  const used = planned ? (taken?.used ?? 0) : run.used;
  const share = planned ? (coveredByPlan(one, strip) ?? 0) : run.shareCovered;
  const longest = limits[0]?.days;
  const shape = (figure: number): string => (layout.asIf ? "?" : words.figure(figure));
  const days = (count: number): string => words.say("pens.days-short", { days: count });
  return [
    cell.name, toldArea(cell.areaHa, units, words), `${words.figure(positions)}${layout.asIf ? "*" : ""}`, shape(layout.lanes.length), shape(layout.shifts),
    days(lastsDays), words.say("pens.percent", { percent: Math.round(share * 100) }), used === 0 ? "-" : words.fixed(positions / used, 1),
    Number.isFinite(run.passesUnderCeiling) ? words.figure(run.passesUnderCeiling) : "-", longest === undefined ? "-" : longest < 1 ? words.say("pens.none") : days(longest),
  ];
}
