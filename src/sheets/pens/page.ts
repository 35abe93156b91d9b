import { coveredByPlan, type PenInCell, type PenOnFarm } from "../../decide/pens/pens-of-farm.js";
import { stepsIn } from "../../decide/pens/steps.js";
import type { Scenario } from "../../farm/scenario.js";
import type { Caution } from "../../plan/cautions.js";
import { cautionText } from "../caution-words.js";
import type { Words } from "../../words/words.js";
import { dayMonth, spanWords } from "../day-words.js";
import { areaWords } from "../figure-words.js";
import { escaped } from "../grid/svg.js";
import { headWords, markOf } from "../marks.js";
import { penCss } from "./css.js";
import { penDrawing } from "./drawing.js";
import { stepList } from "./steps.js";
import { cellNotes, daysWords, penSentences, penTitle } from "./pen-words.js";
import type { PaperName } from "../paper.js";
import { printedPage } from "../printed-page.js";

/** A pen's sheet: every drawing to scale, and the figures of all its cells. */
export function penSheet(scenario: Scenario, pen: PenOnFarm, planned: boolean, cautions: readonly Caution[], words: Words, paper: PaperName = "a4"): string {
  const { group, cells } = pen;
  const title = `${scenario.farm}: ${group.name} (${group.letter}), pen run`;
  const list = (rows: readonly string[]): string => (rows.length === 0 ? "" : `<ul>\n${rows.map((row) => `<li>${escaped(row)}</li>`).join("\n")}\n</ul>`);
  const notes = cells.flatMap((one) => cellNotes(one, dayMonth));
  return printedPage(title, penCss(paper), `<h1>${escaped(title)}</h1>
<p>${escaped(`${headWords(group)}. ${penTitle(pen, scenario.units)}.`)}</p>
${list(penSentences(pen, planned, scenario.units))}
${drawn(cells, planned).map((one, i) => cellSection(scenario, pen, one, planned, i + 1, words)).join("\n")}
<section><h2>All cells</h2>
${allCells(scenario, pen, planned)}
${list(notes)}
</section>
<section><h2>Take care</h2>
${list(cautions.map((caution) => (caution.days ? `${cautionText(words, caution)} (${spanWords(caution.days.firstDay, caution.days.lastDay)})` : cautionText(words, caution))))}
</section>`);
}

/** With a plan the cells that it uses, without one all that hold a position. */
function drawn(cells: readonly PenInCell[], planned: boolean): readonly PenInCell[] {
  return cells.filter(({ taken, layout }) => layout.positions > 0 && (!planned || (taken?.stays.length ?? 0) > 0));
}

function cellSection(scenario: Scenario, pen: PenOnFarm, one: PenInCell, planned: boolean, number: number, words: Words): string {
  const { cell, layout, taken } = one;
  const { letter, kind } = pen.group;
  const used = new Map(stepsIn(one, pen.strip.days).map((step) => [step.number, words.dayMonth(step.firstDay)]));
  const title = `${cell.name}, ${cell.field}: ${pen.group.name}`;
  const mark = markOf(pen.group);
  const picture = { title, layout, used, pattern: mark.pattern, kind, units: scenario.units };
  const paragraphs = [
    layout.asIf ? asIfWords(scenario, one) : shapeWords(scenario, one),
    ...(planned && taken ? [`${stayWords(one)} Used positions: ${letter}, ${mark.words}.`] : []),
  ];
  return `<section class="cell"><div class="drawn"><h2>${escaped(title)}</h2>
${paragraphs.map((row) => `<p>${escaped(row)}</p>`).join("\n")}
<div class="scroll">${penDrawing(picture, `cell-${number}`)}</div></div>
${stepList(one, pen.strip, scenario.units, words)}
</section>`;
}

function asIfWords({ units }: Scenario, { cell, layout, positions }: PenInCell): string {
  return `The shape of ${cell.name} is not known, only its ${areaWords(cell.areaHa, units)}. Drawn as if it were a square: ${layout.positions} positions. By area alone at most ${positions}.`;
}

function shapeWords({ units }: Scenario, { cell, layout, positions }: PenInCell): string {
  const lanes = `${layout.lanes.length} ${layout.lanes.length === 1 ? "lane" : "lanes"}`;
  const shifts = `${layout.shifts} ${layout.shifts === 1 ? "shift" : "shifts"} from lane to lane`;
  const compass = layout.northKnown ? "" : " Drawn as it was measured: which way north lies is not known.";
  return `${areaWords(cell.areaHa, units)}: ${positions} positions in ${lanes}, walked to and fro, ${shifts}.${compass}`;
}

function stayWords({ taken }: PenInCell): string {
  const stays = taken!.stays.map(({ firstDay, lastDay, firstPosition, lastPosition }) =>
    `${spanWords(firstDay, lastDay)} ${firstPosition === lastPosition ? `position ${firstPosition}` : `positions ${firstPosition} to ${lastPosition}`}`);
  return `${stays.join("; ")}. ${taken!.left} left fresh at the season's end.`;
}

function allCells(scenario: Scenario, pen: PenOnFarm, planned: boolean): string {
  const row = (tag: string, boxes: readonly string[]): string => `<tr>${boxes.map((box) => `<${tag}>${escaped(box)}</${tag}>`).join("")}</tr>`;
  const head = ["Cell", "Area", "Fit", "Lanes", "Shifts", "Lasts", "Covered", "Seasons", "Passes", "Stand"];
  const rows = pen.cells.map((one) => cellFigures(scenario, pen, one, planned));
  return `<table>
<thead>${row("th", head)}</thead>
<tbody>
${rows.map((boxes) => row("td", boxes)).join("\n")}
</tbody>
</table>
<p>${escaped(tableWords(pen.cells, planned))}</p>`;
}

/** What the columns of the table of all cells mean. */
export function tableWords(cells: readonly PenInCell[], planned: boolean): string {
  return [
    cells.some(({ layout }) => layout.asIf) ? "* By area, at most: the shape is not known." : "",
    "Fit: positions. Lasts: days until each is used once.",
    planned ? "Covered: share of the cell that the plan works." : "Covered: share of the cell if they spend the season there and nowhere else.",
    "Seasons: such seasons until all positions were used once.",
    planned ? "Left: positions never used, and not resting from other animals of the sort." : "",
    `Passes: what is left within twelve months, under the nitrogen figure${planned ? ", what the plan's other animals drop counted" : ""}. Stand: longest on one position.`,
  ].filter((one) => one !== "").join(" ");
}

/** A row of the table of all cells. */
export function cellFigures({ units }: Scenario, { strip }: PenOnFarm, one: PenInCell, planned: boolean): readonly string[] {
  const { cell, layout, positions, run, lastsDays, limits, taken } = one;
  const used = planned ? (taken?.used ?? 0) : run.used;
  const share = planned ? (coveredByPlan(one, strip) ?? 0) : run.shareCovered;
  const longest = limits[0]?.days;
  const shape = (figure: number): string => (layout.asIf ? "-" : String(figure));
  return [
    cell.name, areaWords(cell.areaHa, units), `${positions}${layout.asIf ? "*" : ""}`, shape(layout.lanes.length), shape(layout.shifts),
    daysWords(lastsDays).replace(/ days?$/, " d"), `${Math.round(share * 100)} %`, used === 0 ? "-" : (positions / used).toFixed(1),
    Number.isFinite(run.passesUnderCeiling) ? String(run.passesUnderCeiling) : "-", longest === undefined ? "-" : longest < 1 ? "none" : `${longest} d`,
  ];
}
