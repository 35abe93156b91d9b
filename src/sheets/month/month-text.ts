import type { Words } from "../../words/words.js";
import type { Sheet } from "../made.js";
import { wrapped } from "../text-wrap.js";
import { monthRows, type MonthBox } from "./rows.js";

/** The month as plain text: a day a line, moves with an arrow, jobs behind. */
export function monthSheetText(sheet: Sheet, words: Words, month: string, columns: number): string {
  const { scenario, made } = sheet;
  const rows = monthRows(sheet, words, month);
  const heads = [words.say("month.day"), ...scenario.groups.map(({ name, letter }) => `${letter} ${name}`)];
  const lines = rows.map((row) => [`${row.day.slice(8)} ${words.weekday(row.day)}`, ...row.boxes.map(boxWords)]);
  const widths = heads.map((head, i) => Math.max(head.length, ...lines.map((line) => line[i]!.length)));
  const laid = (line: readonly string[]): string => line.map((part, i) => part.padEnd(widths[i]!)).join("  ");
  const indent = laid(heads).length + 2;
  return [
    `${scenario.farm}, ${words.monthYear(`${month}-01`)}`,
    words.say("month.head", { farm: scenario.farm, made: words.fullDay(made.madeOn), version: made.version }),
    "",
    `${laid(heads)}  ${words.say("month.jobs")}`,
    ...rows.map((row, i) => wrapped(`${laid(lines[i]!)}  ${row.jobs.map((job) => job.words).join(". ")}`.trimEnd(), Math.max(columns, indent + 24), indent)),
    "",
    wrapped(words.say("month.how").trim(), columns, 0),
    "",
  ].join("\n");
}

function boxWords({ from, at, note }: MonthBox): string {
  return `${from === null ? at : `${from} → ${at}`}${note === "" ? "" : ` ${note}`}`;
}
