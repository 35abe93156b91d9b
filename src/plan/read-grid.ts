import { inFileOrder, type Finding, type Result } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { readByCell } from "./grid-by-cell.js";
import { readByGroup, type GridLine } from "./grid-by-group.js";
import { gridDays } from "./grid-days.js";
import { boxFinding } from "./grid-names.js";
import { gridTable, type Box, type GridTable } from "./grid-table.js";
import { otherFile } from "./other-file.js";
import type { Plan } from "./plan.js";
import { planOfStandings } from "./standings.js";

/** Which way round a grid is: days down, groups down, or cells down. */
export const GRID_FORMS = ["day", "group", "cell"] as const;
export type GridForm = (typeof GRID_FORMS)[number];

/**
 * Reads a grid that somebody typed in a spreadsheet: comma or semicolon, in any of the three forms, which its first
 * box names. What a plan can hold but a farm cannot (a group nowhere, or in two places) is left to the check.
 *
 * @param text the whole file
 * @param file its name, for findings
 */
export function readGrid(text: string, scenario: Scenario, file: string): Result<Plan> {
  const table = gridTable(text, file);
  const form = formOf(table);
  const other = otherFile(text, file);
  if (other) return { ok: false, findings: [other] };
  if (form === null) return { ok: false, findings: [...table.findings, formFault(table)] };
  const { lines, findings, notes } = form === "day" ? linesDown(table, scenario) : linesAcross(table, scenario);
  const read = form === "cell" ? readByCell(lines, scenario, file) : readByGroup(lines, scenario, file);
  const all = [...table.findings, ...findings, ...onceEach(read.findings)];
  if (all.length > 0) return { ok: false, findings: inFileOrder(all) };
  return { ok: true, value: planOfStandings(read.standings, read.cuts, scenario), notes: inFileOrder([...notes, ...read.notes]) };
}

/** A name the farm does not know is said at the first box that has it. */
function onceEach(findings: readonly Finding[]): readonly Finding[] {
  const said = (finding: Finding): string => finding.found.replace(/^box \S+ /, "");
  const kept = findings.filter((finding, i) => finding.code !== "name-unknown" || findings.findIndex((other) => said(other) === said(finding)) === i);
  return kept.map((finding) => {
    const more = finding.code === "name-unknown" ? findings.filter((other) => said(other) === said(finding)).length - 1 : 0;
    return more > 0 ? { ...finding, found: `${finding.found}, nor in ${more} more ${more === 1 ? "box" : "boxes"}` } : finding;
  });
}

function formOf(table: GridTable): GridForm | null {
  const word = table.head[0]?.text.toLowerCase();
  return GRID_FORMS.find((form) => form === word) ?? null;
}

/** A byte order mark in UTF-8 as the character sets of western and Cyrillic Windows and of older Macs have it. */
const GARBLED_MARK = /^(ï»¿|п»ї|Ôªø)/;

function formFault(table: GridTable): Finding {
  const box = table.head[0];
  if (box && GARBLED_MARK.test(box.text)) {
    return boxFinding(table.file, box, "letters-garbled", "the spreadsheet took this file's letters for others", "files opened as Unicode (UTF-8)", "open the file of the plan again, choose the character set Unicode (UTF-8), and change it there");
  }
  if (box && /^(day|group|cell)[,;\t]/i.test(box.text)) {
    return boxFinding(table.file, box, "one-box", "the whole row stands in one box", "a box a day, or a group", "open the file of the plan again, choose the comma as separator, and change it there");
  }
  return {
    file: table.file, line: box?.line ?? 1, column: box?.column ?? 1, code: "grid-form",
    found: box ? `the first box says "${box.text}"` : "the file is empty",
    allowed: "day (days down), group (groups down) or cell (cells down), then commas or semicolons",
    next: "write day, group or cell into the first box",
  };
}

interface Lines {
  readonly lines: readonly GridLine[];
  readonly findings: readonly Finding[];
  readonly notes: readonly Finding[];
}

/** Days across, a group or a cell a row. */
function linesAcross(table: GridTable, scenario: Scenario): Lines {
  const { days, findings, notes } = gridDays(table.head.slice(1), scenario.season, table.file);
  return { findings, notes, lines: table.rows.map((row) => lineOf(row[0]!, days, row.slice(1))) };
}

/** Days down, a group a column. */
function linesDown(table: GridTable, scenario: Scenario): Lines {
  const { days, findings, notes } = gridDays(table.rows.map((row) => row[0]!), scenario.season, table.file);
  return { findings, notes, lines: table.head.slice(1).map((head, i) => lineOf(head, days, table.rows.map((row) => row[i + 1]!))) };
}

function lineOf(head: Box, days: readonly (string | null)[], boxes: readonly Box[]): GridLine {
  const dated = boxes.flatMap((box, i) => (days[i] ? [{ day: days[i], box }] : []));
  return { head, boxes: dated.sort((a, b) => a.day.localeCompare(b.day)) };
}
