import type { Calls } from "../../farm/calls.js";
import type { IsoDate } from "../../quantity/calendar.js";
import type { Words } from "../../words/words.js";
import type { Sheet } from "../made.js";
import { wayWords } from "./amounts.js";
import { dayOf, type Day } from "./context.js";
import { callLines, cautionWords, footWords, phoneWords, waitWords } from "./feet.js";
import { alone, checkBoxes, doneBefore, leaveAlone, workWords } from "./heads.js";
import type { DayPart, DaySheet, Task } from "./model.js";
import { tasksOf } from "./tasks.js";

export interface DayOptions {
  /** A day of the season, or the one before it. */
  readonly day: IsoDate;
  readonly printedOn: IsoDate;
  readonly calls: Calls;
}

/** One day's work for somebody who has never done it. Throws on a day outside the season and the evening before it. */
export function daySheet(sheet: Sheet, words: Words, options: DayOptions): DaySheet {
  return sheetOf(dayOf(sheet, words, options.day), options);
}

/** The same with what it is made from at hand. */
export function sheetOf(day: Day, { printedOn, calls }: DayOptions): DaySheet {
  const { sheet, words } = day;
  const { tasks, round, metres } = tasksOf(day);
  const morning = partOf(day, "morning", tasks.filter(({ part }) => part === "morning"), round);
  const evening = partOf(day, "evening", tasks.filter(({ part }) => part !== "morning"), 0);
  const boxes = checkBoxes(day);
  return {
    farm: sheet.scenario.farm, day: day.day, title: words.longDay(day.day),
    before: { ask: boxes.length === 0 ? words.pieces("day.before.nothing") : words.pieces("day.before.ask"), boxes },
    head: [workWords(day, morning.minutes + evening.minutes), leaveAlone(day), ...alone(day, tasks), ...doneBefore(day)],
    parts: [morning, evening].filter((part) => part.tasks.length > 0),
    onFoot: metres > 0 ? words.pieces("day.on-foot", { way: wayWords(day, metres) }) : [], waits: waitWords(day, tasks),
    wrong: { title: words.say("day.wrong"), lines: [words.pieces("day.wrong.out"), words.pieces("day.wrong.short"), words.pieces("day.wrong.fence", { kv: words.figure(sheet.scenario.handover.leastKv.usual, 1) }), words.pieces("day.wrong.unsure")] },
    calls: callLines(day, calls, tasks.some(({ tow }) => tow)),
    notFilled: words.say("day.not-filled"), phone: phoneWords(day, calls), doneBy: words.say("day.done-by"),
    cautions: cautionWords(day), foot: footWords(day, printedOn),
  };
}

function partOf({ words }: Day, name: DayPart["name"], tasks: readonly Task[], round: number): DayPart {
  const shown = tasks.flatMap(({ minutes }) => (minutes === null ? [] : [minutes]));
  const minutes = shown.reduce((sum, one) => sum + one, 0) + round;
  const parts = [...shown.map(String), ...(round > 0 ? [words.say("day.sum.round", { round })] : [])];
  return {
    name, tasks, minutes, title: name === "morning" ? words.say("day.part.morning") : words.say("day.part.evening"),
    sum: parts.length > 1 ? words.say("day.sum", { parts: parts.join(" + "), minutes }) : words.say("day.minutes", { minutes }),
  };
}
