import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { Report } from "../check/report.js";
import { fullDay, monthYear } from "./day-words.js";
import { areaWords, nitrogenFigure, nitrogenUnit } from "./figure-words.js";
import type { Made, Sheet } from "./made.js";
import { costWords, notesOf, othersWords, runningWords } from "./notes.js";
import { nextFree, asOf } from "./next-free.js";
import { seasonDays } from "./season-days.js";
import { bandsOf, bandText, labelWidth } from "./text-bands.js";
import type { Paint } from "./text-paint.js";
import { textKey, glyphsOf } from "./text-glyphs.js";
import { nextMoves } from "./text-moves.js";
import { wrapped } from "./text-wrap.js";

export interface TextOptions {
  /** Characters across; 40 at least. */
  readonly columns: number;
  readonly paint?: Paint;
}

/** The season grid for a terminal: cells by days, one character a day, in as many bands as the width asks. */
export function seasonGridText(scenario: Scenario, plan: Plan, report: Report, made: Made, { columns, paint = (text) => text }: TextOptions): string {
  const sheet: Sheet = { scenario, plan, report, made };
  const width = Math.max(40, Math.floor(columns));
  const glyphs = glyphsOf(scenario);
  const label = labelWidth(scenario);
  const bands = bandsOf(seasonDays(scenario), width - label - 1);
  const parts = [
    wrapped(`${scenario.farm}, ${monthYear(scenario.season.firstDay)} to ${monthYear(scenario.season.lastDay)}. Plan made ${fullDay(made.madeOn)}, version ${made.version}.`, width),
    ...bands.map((days) => bandText(sheet, days, { label, glyphs, paint })),
    wrapped(textKey(sheet, glyphs), width),
    nextMoves(sheet, width),
    groundLines(sheet, width),
    priceLines(sheet, width),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

/** Next free and nitrogen, cell by cell. */
function groundLines(sheet: Sheet, width: number): string {
  const { scenario, report } = sheet;
  const free = scenario.cells.map((cell) => `${cell.name} ${nextFree(sheet, cell)}`);
  const nitrogen = report.cells.map((days) => `${days.cell} ${nitrogenFigure(days.nitrogenKgPerHa, scenario.units)}`);
  const areas = scenario.cells.map((cell) => `${cell.name} ${areaWords(cell.areaHa, scenario.units)}`);
  return [
    wrapped(`Next free, as of ${fullDay(asOf(sheet))}: ${free.join("; ")}.`, width),
    wrapped(`About ${nitrogenUnit(scenario.units)} in the season: ${nitrogen.join("; ")}.`, width),
    wrapped(`Area: ${areas.join("; ")}.`, width),
  ].join("\n");
}

function priceLines(sheet: Sheet, width: number): string {
  const notes = notesOf(sheet);
  const { numbered } = notes;
  const { currency } = sheet.made;
  const list = (black: boolean): string[] => numbered.filter((note) => note.black === black).map((note) => wrapped(`${String(note.number).padStart(3)}  ${note.text}`, width, 5));
  const [broken, priced] = [list(true), list(false)];
  return [
    ...(broken.length > 0 ? ["To put right:", ...broken] : []),
    ...(priced.length > 0 ? ["Allowed at a price:", ...priced] : []),
    ...[othersWords(notes, currency), runningWords(notes, currency), costWords(sheet)].filter((words) => words !== "").map((words) => wrapped(words, width)),
  ].join("\n");
}
