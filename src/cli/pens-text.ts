import type { PenOnFarm } from "../decide/pens/pens-of-farm.js";
import { toldSpan } from "../sheets/amounts.js";
import { datedCaution } from "../sheets/caution-words.js";
import { headWords } from "../sheets/marks.js";
import { cellFigures, columnHeads, tableWords } from "../sheets/pens/page.js";
import { cellNotes, penSentences, penTitle } from "../sheets/pens/pen-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import type { Words } from "../words/words.js";
import { findingsText } from "./findings-text.js";
import type { PensSeen } from "./pens-answer.js";
import { widthOf, type Screen } from "./screen.js";
import { columnsOf } from "./table.js";

/** What each pen covers, for people; how to see it drawn where the farm file is named. */
export function pensText(seen: PensSeen, words: Words, farmFile: string | null, screen: Screen): string {
  const { scenario, pens, notes, cautions, files } = seen;
  const columns = widthOf(screen);
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  const bullet = (text: string) => `  - ${wrapped(text, columns - 4, 4)}`;
  return [
    screen.heading(titleWords(scenario, words)),
    ...(pens.length === 0 ? ["", words.say("pens.text-nothing")] : []),
    ...pens.flatMap((pen) => penPart(seen, pen, words, columns, screen)),
    ...part(words.say("pens.text-columns"), pens.length === 0 ? [] : [`  ${wrapped(tableWords(pens.flatMap((pen) => pen.cells), seen.planned, words), columns - 2, 2)}`]),
    ...part(words.say("pens.text-sources"), sourcesOf(seen, words).map(bullet)),
    ...part("Worth knowing", notes.length === 0 ? [] : [findingsText(notes, columns).trimEnd()]),
    ...part(words.say("pens.take-care"), cautions.map((caution) => bullet(datedCaution(words, caution)))),
    ...part("The drawings", files.map((file) => `  ${file}`)),
    ...(farmFile !== null && files.length === 0 && pens.length > 0 ? ["", wrapped(`To see them drawn to scale: inbye pens ${farmFile} --out FOLDER`, columns)] : []),
    "",
  ].join("\n");
}

function titleWords({ farm, season }: PensSeen["scenario"], words: Words): string {
  return words.say("pens.text-title", { farm, days: toldSpan(season.firstDay, season.lastDay, words), year: season.lastDay.slice(0, 4) });
}

function penPart({ scenario, planned }: PensSeen, pen: PenOnFarm, words: Words, columns: number, screen: Screen): readonly string[] {
  const { group, cells } = pen;
  const line = (text: string) => `  ${wrapped(text, columns - 2, 2)}`;
  return [
    "",
    screen.heading(wrapped(words.say("pens.text-group", { group: group.name, letter: group.letter, heads: headWords(group, words) }), columns)),
    line(`${penTitle(pen, scenario.units, words)}.`),
    ...penSentences(pen, planned, scenario.units, words).map(line),
    "",
    ...columnsOf([columnHeads(words), ...cells.map((one) => cellFigures(scenario, pen, one, planned, words))]),
    ...(planned ? planPart(pen, words, line) : []),
    ...notesPart(pen, words, line),
  ];
}

/** The positions that each stay takes, in the plan's order. */
function planPart({ cells, group }: PenOnFarm, words: Words, line: (text: string) => string): readonly string[] {
  const stays = cells.flatMap(({ cell, taken }) => (taken?.stays ?? []).map((stay) => ({ ...stay, cell: cell.name, left: taken!.left })))
    .sort((a, b) => a.firstDay.localeCompare(b.firstDay));
  if (stays.length === 0) return ["", line(words.say("pens.text-in-no-cell", { group: group.name }))];
  const rows = stays.map(({ cell, firstDay, lastDay, firstPosition, lastPosition, left }) =>
    [cell, toldSpan(firstDay, lastDay, words), firstPosition === lastPosition ? String(firstPosition) : `${firstPosition}-${lastPosition}`, String(left)]);
  return ["", ...columnsOf([[words.say("pens.col.cell"), words.say("pens.text-plan"), words.say("pens.text-positions"), words.say("pens.text-left")], ...rows], [0, 1])];
}

function notesPart({ cells }: PenOnFarm, words: Words, line: (text: string) => string): readonly string[] {
  const notes = cells.flatMap((one) => cellNotes(one, words));
  return notes.length === 0 ? [] : ["", ...notes.map(line)];
}

/** Each limit's source once, and those of nitrogen and rest. */
function sourcesOf({ pens }: PensSeen, words: Words): readonly string[] {
  const limits = pens.flatMap(({ cells, group }) => cells.flatMap(({ limits: of }) =>
    of.map(({ by, source }) => words.say(`pens.source.${by}`, { group: group.name, source }))));
  const dropped = pens.map(({ group, nitrogenSource }) => words.say("pens.source.dropped", { group: group.name, source: nitrogenSource }));
  return [...new Set([...limits, ...dropped])];
}
