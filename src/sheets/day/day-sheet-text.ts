import type { Scenario } from "../../farm/scenario.js";
import type { Words } from "../../words/words.js";
import type { Sheet } from "../made.js";
import { wrapped } from "../text-wrap.js";
import { rightWords } from "./day-pages.js";
import { daySheet, type DayOptions } from "./day-sheet.js";
import { lineBits } from "./heights.js";
import type { Bits, DayPart, Task } from "./model.js";

const MARKS = { box: "[    ]", tick: "[ ]", line: "______________" } as const;
const IN_TASK = "     ";

/** The same sheet as plain text, to send or to read on a terminal. */
export function daySheetText(sheet: Sheet, words: Words, options: DayOptions, columns: number): string {
  const told = daySheet(sheet, words, options);
  const lines = (bits: readonly Bits[]): readonly string[] => bits.flatMap((one) => wrapped(plain(one), columns, 0).split("\n"));
  return [
    told.title.toUpperCase(), "", ...lines([told.before.ask, ...told.before.boxes]), "", ...lines([...told.head, ...(told.onFoot.length > 0 ? [told.onFoot] : [])]),
    ...told.parts.flatMap((part) => partLines(part, sheet.scenario, words, columns)),
    "", ...lines([told.waits]), "", told.wrong.title.toUpperCase(), ...lines(told.wrong.lines), ...lines([told.phone]),
    "", ...told.calls.map(({ who, what }) => `${who}: ${what ?? told.notFilled}`), `${told.doneBy}: ${MARKS.line}`, "", ...lines([told.cautions, told.foot]), "",
  ].join("\n");
}

function partLines({ title, sum, tasks }: DayPart, scenario: Scenario, words: Words, columns: number): readonly string[] {
  return ["", wrapped(`${title.toUpperCase()}: ${sum}`, columns, 0), ...tasks.flatMap((task) => taskLines(task, scenario, words, columns))];
}

function taskLines(task: Task, { groups }: Scenario, words: Words, columns: number): readonly string[] {
  const letter = groups.find(({ name }) => name === task.group)?.letter;
  const right = rightWords(task, words);
  const head = `${String(task.number).padStart(2)}. ${letter === undefined ? "" : `${letter}  `}${task.title}${right === "" ? "" : `, ${right}`} ${MARKS.tick}`;
  const own = task.lines.map((line) => IN_TASK + wrapped(`${line.label}: ${plain(lineBits(line))}`, columns - IN_TASK.length, 7));
  return ["", wrapped(head, columns, 4), ...own];
}

function plain(bits: Bits): string {
  return bits.map(({ text, mark }) => (mark ? MARKS[mark] : text)).join("").trim();
}
