import type { IsoDate } from "../quantity/calendar.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { boxFinding, cutNamed, groupLettered, groupNamed, namesIn, unknownName } from "./grid-names.js";
import type { GridLine, GridRead } from "./grid-by-group.js";
import type { Box } from "./grid-table.js";
import type { Cut } from "./plan.js";
import type { Standing } from "./standings.js";

/** A row of the grid: a cell, one yard, or every group's own yard. */
type Row = { readonly cell: string } | { readonly yard: string } | "own yards";

/** Reads a grid with a row a cell, letters or names of groups inside (form `cell`). */
export function readByCell(lines: readonly GridLine[], scenario: Scenario, file: string): GridRead {
  const standings: Standing[] = [];
  const cuts: Cut[] = [];
  const findings: Finding[] = [];
  const heads = new Map<string, Box>();
  for (const line of lines) {
    const row = rowOf(line.head, scenario);
    const key = JSON.stringify(row ?? line.head.text);
    const twice = heads.get(key);
    heads.set(key, twice ?? line.head);
    if (row === undefined) findings.push(unknownName(file, line.head, line.head.text, "cell", rowNames(scenario)));
    else if (twice) findings.push(boxFinding(file, line.head, "name-twice", `"${line.head.text}" stands also in box ${twice.name}`, "each cell once", "take one of the two out"));
    else for (const { day, box } of line.boxes) readBox(box, day, row, scenario, file, { standings, cuts, findings });
  }
  return { standings, cuts, findings, notes: cellsLeftOut(heads, scenario, file) };
}

function rowOf(head: Box, scenario: Scenario): Row | undefined {
  if (scenario.cells.some((cell) => cell.name === head.text)) return { cell: head.text };
  if (head.text.toLowerCase() === "yard") return "own yards";
  const yard = /^yard:\s*(.+)$/i.exec(head.text)?.[1];
  return scenario.yards.some((one) => one.name === yard) ? { yard: yard! } : undefined;
}

function rowNames(scenario: Scenario): readonly string[] {
  return [...scenario.cells.map((cell) => cell.name), ...scenario.yards.map((yard) => `yard: ${yard.name}`), "yard"];
}

interface Found {
  readonly standings: Standing[];
  readonly cuts: Cut[];
  readonly findings: Finding[];
}

function readBox(box: Box, day: IsoDate, row: Row, scenario: Scenario, file: string, into: Found): void {
  if (box.text === "" || box.text.toLowerCase() === "nobody") return;
  for (const name of wordsIn(box.text, scenario)) {
    const group = groupLettered(scenario, name) ?? groupNamed(scenario, name);
    const cut = cutNamed(name);
    if (group) into.standings.push({ group: group.name, ...placeOf(row, group.yard), day });
    else if (!cut) into.findings.push(unknownName(file, box, name, "group", scenario.groups.flatMap((g) => [g.letter, g.name])));
    else if (row !== "own yards" && "cell" in row) into.cuts.push({ cell: row.cell, cut, day });
    else into.findings.push(boxFinding(file, box, "cut-form", "a yard cannot be cut", "cuts in the rows of cells", "move it to the row of the cell"));
  }
}

/** Letters and cuts where every word is one, as grids are written; else names, which may be of several words. */
function wordsIn(text: string, scenario: Scenario): readonly string[] {
  const words = namesIn(text, () => false);
  const written = (word: string): boolean => groupLettered(scenario, word) !== undefined || cutNamed(word) !== undefined;
  return words.every(written) ? words : namesIn(text, (name) => groupNamed(scenario, name) !== undefined);
}

function placeOf(row: Row, ownYard: string): { cell: string | null; yard: string | null } {
  if (row === "own yards") return { cell: null, yard: ownYard };
  return "cell" in row ? { cell: row.cell, yard: null } : { cell: null, yard: row.yard };
}

/** A cell without a row is read as empty all season: allowed, and said. */
function cellsLeftOut(heads: ReadonlyMap<string, Box>, scenario: Scenario, file: string): Finding[] {
  const missing = scenario.cells.map((cell) => cell.name).filter((cell) => !heads.has(JSON.stringify({ cell })));
  if (missing.length === 0) return [];
  return [{ file, line: 1, column: 1, code: "cell-missing", found: `no row for ${missing.join(", ")}`, allowed: "a cell without a row is read as nobody there, all season", next: "nothing to do if that is meant" }];
}
