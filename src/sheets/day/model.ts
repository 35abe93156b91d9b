import type { Mark } from "../../words/words.js";
import type { IsoDate } from "../../quantity/calendar.js";
import type { Job, PartOfDay, Place } from "../../work/job.js";

/** A stretch of a line: words, or something to write into: a box for a figure, a box to tick, a line to write on. */
export interface Bit {
  readonly text: string;
  readonly strong: boolean;
  readonly mark?: Mark;
}

export type Bits = readonly Bit[];

/**
 * What a step of a task does, where its order matters. The order is always: energiser off, dead birds out, net or gate handled,
 * energiser on, the fence read, stock in, doors open.
 */
export const DEEDS = ["off", "dead-out", "net", "on", "reading", "stock-in", "doors"] as const;
export type Deed = (typeof DEEDS)[number];

export interface Step {
  /** Null where its place in the order does not matter. */
  readonly deed: Deed | null;
  readonly bits: Bits;
}

/** Lines of a task, always in this order. */
export const LINE_NAMES = ["first", "take", "do", "fence", "water", "count"] as const;
export type LineName = (typeof LINE_NAMES)[number];

export interface Line {
  readonly name: LineName;
  readonly label: string;
  readonly steps: readonly Step[];
}

/** One thing to do at one place, with all that it takes. */
export interface Task {
  /** Sort of task and its group or cell: "tow:Layers". */
  readonly key: string;
  /** From 1 through the whole day, in walking order. */
  readonly number: number;
  readonly part: PartOfDay;
  readonly jobs: readonly Job[];
  /** Group whose letter and pattern it bears; null for ground. */
  readonly group: string | null;
  readonly title: string;
  /** Of all people together, rounded so that the day's figures add up; null where another task's figure has it. */
  readonly minutes: number | null;
  /** Task whose minutes have this one's too. */
  readonly timedWith: number | null;
  readonly people: number;
  readonly tow: boolean;
  /** Bull, tow, calving cow: not to be done alone. */
  readonly notAlone: boolean;
  readonly from: Place | null;
  readonly to: Place | null;
  readonly lines: readonly Line[];
}

/** Morning or evening: its tasks, and what its minutes add up to. */
export interface DayPart {
  readonly name: "morning" | "evening";
  readonly title: string;
  readonly sum: string;
  readonly minutes: number;
  readonly tasks: readonly Task[];
}

export interface CallLine {
  readonly who: string;
  /** Null where nobody has filled it in. */
  readonly what: string | null;
}

/** A day's sheet as data: what HTML and text are made of. */
export interface DaySheet {
  readonly farm: string;
  readonly day: IsoDate;
  readonly title: string;
  readonly before: { readonly ask: Bits; readonly boxes: readonly Bits[] };
  /** Paragraphs between the first line and the tasks. */
  readonly head: readonly Bits[];
  readonly parts: readonly DayPart[];
  /** How far it is on foot through the day; empty where nothing is to be walked to. */
  readonly onFoot: Bits;
  readonly waits: Bits;
  readonly wrong: { readonly title: string; readonly lines: readonly Bits[] };
  readonly calls: readonly CallLine[];
  readonly notFilled: string;
  /** Where a helper without a phone goes; a line to write on where it is not known. */
  readonly phone: Bits;
  readonly doneBy: string;
  readonly cautions: Bits;
  readonly foot: Bits;
}
