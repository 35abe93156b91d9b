import type { IsoDate } from "../../quantity/calendar.js";
import type { Words } from "../../words/words.js";
import type { Sheet } from "../made.js";
import { wrapped } from "../text-wrap.js";
import { weekRows, type WeekLine, type WeekRow } from "./rows.js";
import { weekTitle } from "./week-sheet.js";

/** The week as plain text. */
export function weekSheetText(sheet: Sheet, words: Words, week: IsoDate, columns: number): string {
  const rows = weekRows(sheet, words, week);
  const head = words.say("week.head", { farm: sheet.scenario.farm, made: words.fullDay(sheet.made.madeOn), version: sheet.made.version });
  return [weekTitle(rows, words, week), head, "", ...rows.flatMap((row) => dayLines(row, words, columns))].join("\n");
}

function dayLines(row: WeekRow, words: Words, columns: number): readonly string[] {
  const part = (name: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : [`  ${name}`, ...lines.map((one) => `    ${wrapped(one, columns - 4, 8)}`)]);
  const moves = row.moves.map(({ group, from, to }) => `[ ] ${group.letter} ${from} → ${to}`);
  const tell = ({ words: told, bare }: WeekLine): string => (bare ? told : `[ ] ${told}`);
  const who = [words.say("week.people", { count: row.people.length }), ...(row.tow ? [words.say("week.tow")] : []), ...(row.two ? [words.say("week.two")] : [])];
  return [
    `${words.longDay(row.day)}: ${who.join(", ")}`,
    ...part(words.say("week.morning"), [...(moves.length > 0 ? moves : [words.say("week.no-move")]), ...row.morning.map(tell)]),
    ...part(words.say("week.evening"), row.evening.map(tell)),
    ...part(words.say("week.night"), [row.stands.map(({ group, place, note, moved }) => `${group.letter} ${place}${moved ? "*" : ""}${note === "" ? "" : ` ${note}`}`).join(", ")].filter((one) => one !== "")),
    "",
  ];
}
