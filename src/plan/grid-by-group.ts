import { spanHolds, type IsoDate } from "../quantity/calendar.js";
import type { Finding } from "../farm/finding.js";
import type { Group, Scenario } from "../farm/scenario.js";
import { boxFinding, cutNamed, groupNamed, nightNamed, placeNames, unknownName, type Night } from "./grid-names.js";
import type { Box } from "./grid-table.js";
import { unguardBox } from "./guarded-box.js";
import type { Cut } from "./plan.js";
import type { Standing } from "./standings.js";

/** What a grid says, box by box, before days are joined to stays. */
export interface GridRead {
  readonly standings: readonly Standing[];
  readonly cuts: readonly Cut[];
  readonly findings: readonly Finding[];
  readonly notes: readonly Finding[];
}

/** A group's or the cuts' boxes, one a day, days ascending. */
export interface GridLine {
  readonly head: Box;
  readonly boxes: readonly { readonly day: IsoDate; readonly box: Box }[];
}

interface Reading {
  readonly scenario: Scenario;
  readonly file: string;
  readonly standings: Standing[];
  readonly cuts: Cut[];
  readonly findings: Finding[];
  readonly notes: Finding[];
}

/** Reads a grid with a line a group: days down (form `day`) or groups down (form `group`). */
export function readByGroup(lines: readonly GridLine[], scenario: Scenario, file: string): GridRead {
  const reading: Reading = { scenario, file, standings: [], cuts: [], findings: [], notes: [] };
  const heads = new Map<string, Box>();
  for (const line of lines) {
    const group = groupNamed(scenario, line.head.text);
    const name = group?.name ?? line.head.text.toLowerCase();
    const twice = heads.get(name);
    if (twice) reading.findings.push(boxFinding(file, line.head, "name-twice", `"${line.head.text}" stands also in box ${twice.name}`, "each group once", "take one of the two out"));
    else if (group) readGroup(reading, group, line);
    else if (name === "cut" || name === "cuts") readCuts(reading, line);
    else reading.findings.push(unknownName(file, line.head, line.head.text, "group", scenario.groups.map((g) => g.name)));
    heads.set(name, twice ?? line.head);
  }
  const at = lines[0]?.head ?? { text: "", line: 1, column: 1, name: "A1" };
  for (const group of scenario.groups) {
    if (!heads.has(group.name)) reading.findings.push({ file, line: at.line, column: at.column, code: "group-missing", found: `${group.name} is not in the grid`, allowed: "every group of the farm", next: `add ${group.name}, with away where it is not on the farm` });
  }
  return reading;
}

function readGroup(reading: Reading, group: Group, line: GridLine): void {
  let night: Night | undefined;
  let carried = 0;
  for (const { day, box } of line.boxes) {
    if (box.text === "") {
      carried += 1;
      if (night === undefined) night = firstNight(reading, group, day, box);
    } else {
      const read = nightOf(reading, group, box, night);
      night = read === undefined ? null : read;
    }
    if (night) reading.standings.push({ group: group.name, ...night, day });
  }
  if (carried > 0) reading.notes.push(boxFinding(reading.file, line.head, "as-before", `${group.name} has ${carried} empty boxes`, "an empty box is read as the day before", "nothing to do if that is meant"));
}

/** A grid that begins with empty boxes says nothing of a group that is on the farm by then. */
function firstNight(reading: Reading, group: Group, day: IsoDate, box: Box): Night {
  if (group.here.some((span) => spanHolds(span, day))) {
    reading.findings.push(boxFinding(reading.file, box, "nothing-there", `${group.name} is on the farm on ${day}, and no box before says where`, placeNames(reading.scenario).join(", "), `write where ${group.name} stands that night`));
  }
  return null;
}

/** The night's place of a box "H2", or of a move "H1>H2", whose left side must be the night before. */
function nightOf(reading: Reading, group: Group, box: Box, before: Night | undefined): Night | undefined {
  const [left, ...rest] = box.text.split(">").map((part) => part.trim());
  if (rest.length === 0) return namedNight(reading, group, box, left!);
  if (rest.length > 1) {
    reading.findings.push(boxFinding(reading.file, box, "move-form", `"${box.text}" names more than two places`, "from > to: one move a day", `${left}>${rest.at(-1)}`));
    return undefined;
  }
  const from = namedNight(reading, group, box, left!);
  const to = namedNight(reading, group, box, rest[0]!);
  if (from !== undefined && before !== undefined && !sameNight(from, before)) {
    reading.findings.push(boxFinding(reading.file, box, "move-from", `${group.name} moves from ${left}, but stood in ${nightWords(before)} the night before`, nightWords(before), `${nightWords(before)}>${rest[0]}`));
  }
  return to;
}

function namedNight(reading: Reading, group: Group, box: Box, text: string): Night | undefined {
  const written = nightNamed(reading.scenario, group, text);
  const night = written === undefined ? nightNamed(reading.scenario, group, unguardBox(text)) : written;
  if (night === undefined) reading.findings.push(unknownName(reading.file, box, text, "place", placeNames(reading.scenario)));
  return night;
}

function sameNight(a: Night, b: Night): boolean {
  return a?.cell === b?.cell && a?.yard === b?.yard;
}

function nightWords(night: Night): string {
  return night?.cell ?? night?.yard ?? "away";
}

function readCuts(reading: Reading, line: GridLine): void {
  for (const { day, box } of line.boxes) {
    for (const part of box.text.split(/[;,]|(?<=\s(?:cut|hay|topping))\s*\+|\s\+\s/i).map((text) => text.trim()).filter((text) => text !== "")) {
      const match = /^(.*\S)\s+(\S+)$/.exec(part);
      const cut = match ? cutNamed(match[2]!) : undefined;
      const names = reading.scenario.cells.map((cell) => cell.name);
      if (!match || !cut) reading.findings.push(boxFinding(reading.file, box, "cut-form", `"${part}" does not say cell and kind of cut`, "a cell and hay or topping", `${part.split(" ")[0]} hay`));
      else {
        const cell = [match[1]!, unguardBox(match[1]!)].find((name) => names.includes(name));
        if (cell === undefined) reading.findings.push(unknownName(reading.file, box, match[1]!, "cell", names));
        else reading.cuts.push({ cell, cut, day });
      }
    }
  }
}
