import type { PenOnFarm } from "../decide/pens/pens-of-farm.js";
import { dayMonth, spanWords } from "../sheets/day-words.js";
import { headWords } from "../sheets/marks.js";
import { cellFigures, tableWords } from "../sheets/pens/page.js";
import { cellNotes, penSentences, penTitle } from "../sheets/pens/pen-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import { datedCaution } from "./caution-text.js";
import { findingsText } from "./findings-text.js";
import type { PensSeen } from "./pens-answer.js";
import { widthOf, type Screen } from "./screen.js";
import { columnsOf } from "./table.js";

/** What each pen covers, for people; how to see it drawn where the farm file is named. */
export function pensText(seen: PensSeen, farmFile: string | null, screen: Screen): string {
  const { scenario, pens, notes, cautions, files } = seen;
  const columns = widthOf(screen);
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  const bullet = (text: string) => `  - ${wrapped(text, columns - 4, 4)}`;
  return [
    screen.heading(`${scenario.farm}: pens, nets and strips, ${spanWords(scenario.season.firstDay, scenario.season.lastDay)} ${scenario.season.lastDay.slice(0, 4)}`),
    ...(pens.length === 0 ? ["", "No group here takes ground by pen, net or strip."] : []),
    ...pens.flatMap((pen) => penPart(seen, pen, columns, screen)),
    ...part("What the columns say", pens.length === 0 ? [] : [`  ${wrapped(tableWords(pens.flatMap((pen) => pen.cells), seen.planned), columns - 2, 2)}`]),
    ...part("Where these figures come from", sourcesOf(seen).map(bullet)),
    ...part("Worth knowing", notes.length === 0 ? [] : [findingsText(notes, columns).trimEnd()]),
    ...part("Take care", cautions.map((caution) => bullet(datedCaution(caution)))),
    ...part("The drawings", files.map((file) => `  ${file}`)),
    ...(farmFile !== null && files.length === 0 && pens.length > 0 ? ["", wrapped(`To see them drawn to scale: inbye pens ${farmFile} --out FOLDER`, columns)] : []),
    "",
  ].join("\n");
}

function penPart({ scenario, planned }: PensSeen, pen: PenOnFarm, columns: number, screen: Screen): readonly string[] {
  const { group, cells } = pen;
  const line = (text: string) => `  ${wrapped(text, columns - 2, 2)}`;
  return [
    "",
    screen.heading(wrapped(`${group.name} (${group.letter}): ${headWords(group)}`, columns)),
    line(`${penTitle(pen, scenario.units)}.`),
    ...penSentences(pen, planned, scenario.units).map(line),
    "",
    ...columnsOf([HEAD, ...cells.map((one) => cellFigures(scenario, pen, one, planned))]),
    ...(planned ? planPart(pen, line) : []),
    ...notesPart(pen, line),
  ];
}

const HEAD = ["cell", "area", "fit", "lanes", "shifts", "lasts", "covered", "seasons", "passes", "stand"];

/** The positions that each stay takes, in the plan's order. */
function planPart({ cells, group }: PenOnFarm, line: (text: string) => string): readonly string[] {
  const stays = cells.flatMap(({ cell, taken }) => (taken?.stays ?? []).map((stay) => ({ ...stay, cell: cell.name, left: taken!.left })))
    .sort((a, b) => a.firstDay.localeCompare(b.firstDay));
  if (stays.length === 0) return ["", line(`The plan has ${group.name} in no cell.`)];
  const rows = stays.map(({ cell, firstDay, lastDay, firstPosition, lastPosition, left }) =>
    [cell, spanWords(firstDay, lastDay), firstPosition === lastPosition ? String(firstPosition) : `${firstPosition}-${lastPosition}`, String(left)]);
  return ["", ...columnsOf([["cell", "in the plan", "positions", "left at the end"], ...rows], [0, 1])];
}

function notesPart({ cells }: PenOnFarm, line: (text: string) => string): readonly string[] {
  const notes = cells.flatMap((one) => cellNotes(one, dayMonth));
  return notes.length === 0 ? [] : ["", ...notes.map(line)];
}

/** Each limit's source once, and those of nitrogen and rest. */
function sourcesOf({ pens }: PensSeen): readonly string[] {
  const named = { step: "The longest step", nitrogen: "Nitrogen, most in twelve months", grass: "What birds eat", pressure: "Rooting" } as const;
  const limits = pens.flatMap(({ cells, group }) => cells.flatMap(({ limits: of }) =>
    of.map(({ by, source }) => `${by === "grass" ? `What ${group.name} eat` : named[by]}: ${source}`)));
  const dropped = pens.map(({ group, nitrogenSource }) => `Nitrogen that ${group.name} drop: ${nitrogenSource}`);
  return [...new Set([...limits, ...dropped])];
}
