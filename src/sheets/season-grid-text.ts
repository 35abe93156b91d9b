import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { Report } from "../check/report.js";
import type { Words } from "../words/words.js";
import { toldArea, toldNitrogenUnit } from "./amounts.js";
import { nitrogenFigure } from "./figure-words.js";
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
export function seasonGridText(scenario: Scenario, plan: Plan, report: Report, made: Made, words: Words, { columns, paint = (text) => text }: TextOptions): string {
  const sheet: Sheet = { scenario, plan, report, made };
  const width = Math.max(40, Math.floor(columns));
  const glyphs = glyphsOf(scenario);
  const label = labelWidth(scenario, words);
  const bands = bandsOf(seasonDays(scenario), width - label - 1);
  const parts = [
    wrapped(headLine(sheet, words), width),
    ...bands.map((days) => bandText(sheet, days, { label, glyphs, paint, words })),
    wrapped(textKey(sheet, glyphs, words), width),
    nextMoves(sheet, width, words),
    groundLines(sheet, width, words),
    priceLines(sheet, width, words),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function headLine({ scenario: { farm, season }, made }: Sheet, words: Words): string {
  return words.say("season.text-head", { farm, from: words.monthYear(season.firstDay), to: words.monthYear(season.lastDay), day: words.weekdayDate(made.madeOn), version: made.version });
}

/** Next free and nitrogen, cell by cell. */
function groundLines(sheet: Sheet, width: number, words: Words): string {
  const { scenario, report } = sheet;
  const free = scenario.cells.map((cell) => `${cell.name} ${nextFree(sheet, cell, words)}`);
  const nitrogen = report.cells.map((days) => `${days.cell} ${nitrogenFigure(days.nitrogenKgPerHa, scenario.units)}`);
  const areas = scenario.cells.map((cell) => `${cell.name} ${toldArea(cell.areaHa, scenario.units, words)}`);
  return [
    wrapped(words.say("season.text-free", { day: words.weekdayDate(asOf(sheet)), cells: free.join("; ") }), width),
    wrapped(words.say("season.text-nitrogen", { unit: toldNitrogenUnit(scenario.units, words), cells: nitrogen.join("; ") }), width),
    wrapped(words.say("season.text-area", { cells: areas.join("; ") }), width),
  ].join("\n");
}

function priceLines(sheet: Sheet, width: number, words: Words): string {
  const notes = notesOf(sheet, words);
  const { numbered } = notes;
  const { currency } = sheet.made;
  const list = (black: boolean): string[] => numbered.filter((note) => note.black === black).map((note) => wrapped(`${String(note.number).padStart(3)}  ${note.text}`, width, 5));
  const [broken, priced] = [list(true), list(false)];
  return [
    ...(broken.length > 0 ? [words.say("season.text-right"), ...broken] : []),
    ...(priced.length > 0 ? [words.say("season.text-priced"), ...priced] : []),
    ...[othersWords(notes, currency, words), runningWords(notes, currency, words), costWords(sheet, words)].filter((text) => text !== "").map((text) => wrapped(text, width)),
  ].join("\n");
}
