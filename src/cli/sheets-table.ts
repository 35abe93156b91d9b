import type { Plan } from "../plan/plan.js";
import type { Calls } from "../farm/calls.js";
import { daySheetHtml } from "../sheets/day/day-sheet-html.js";
import { daySheetText } from "../sheets/day/day-sheet-text.js";
import type { Scenario } from "../farm/scenario.js";
import type { IsoDate } from "../quantity/calendar.js";
import type { Sheet } from "../sheets/made.js";
import type { PaperName } from "../sheets/paper.js";
import { penSheet } from "../sheets/pens/page.js";
import { seasonGridHtml } from "../sheets/season-grid-html.js";
import { seasonGridText } from "../sheets/season-grid-text.js";
import { monthSheetHtml } from "../sheets/month/month-sheet.js";
import { monthSheetText } from "../sheets/month/month-text.js";
import { weekSheetHtml } from "../sheets/week/week-sheet.js";
import { weekSheetText } from "../sheets/week/week-text.js";
import type { Words } from "../words/words.js";
import { fileNames, pensFound } from "./pens.js";
import { pensText } from "./pens-text.js";
import type { Screen } from "./screen.js";
import type { Stretch, Takes } from "./sheets-options.js";

/** What a sheet is made from. */
export interface SheetInput extends Sheet {
  readonly words: Words;
  readonly paper: PaperName;
  readonly printedOn: IsoDate;
  /** Whom to call, from the owner's own file. */
  readonly calls: Calls;
  /** The day asked for, the Monday of the week or the first of the month; the season's first day of a sheet that takes none. */
  readonly day: IsoDate;
}

export interface SheetKind {
  /** Which stretch of the season it is of; null of all of it. */
  readonly takes: Stretch | null;
  /** Names of the files, without their endings, before the sheet is made. */
  readonly names: (scenario: Scenario, plan: Plan, day: IsoDate) => readonly string[];
  /** As many pages as names. */
  readonly html: (input: SheetInput) => readonly string[];
  readonly txt: (input: SheetInput, screen: Screen, columns: number) => string;
}

/** Every sheet there is, by the name after --sheet. */
export const SHEET_KINDS: Readonly<Record<string, SheetKind>> = {
  season: {
    takes: null,
    names: () => ["season-grid"],
    html: ({ scenario, plan, report, made, words, paper }) => [seasonGridHtml(scenario, plan, report, made, words, { paper })],
    txt: ({ scenario, plan, report, made, words }, _screen, columns) => seasonGridText(scenario, plan, report, made, words, { columns }),
  },
  month: {
    takes: "month",
    names: (_scenario, _plan, day) => [`month-${day.slice(0, 7)}`],
    html: (input) => [monthSheetHtml(input, input.words, { month: input.day.slice(0, 7), paper: input.paper })],
    txt: (input, _screen, columns) => monthSheetText(input, input.words, input.day.slice(0, 7), columns),
  },
  week: {
    takes: "week",
    names: (_scenario, _plan, day) => [`week-${day}`],
    html: (input) => [weekSheetHtml(input, input.words, { week: input.day, paper: input.paper })],
    txt: (input, _screen, columns) => weekSheetText(input, input.words, input.day, columns),
  },
  day: {
    takes: "day",
    names: (_scenario, _plan, day) => [`day-${day}`],
    html: (input) => [daySheetHtml(input, input.words, { day: input.day, printedOn: input.printedOn, calls: input.calls, paper: input.paper })],
    txt: (input, _screen, columns) => daySheetText(input, input.words, { day: input.day, printedOn: input.printedOn, calls: input.calls }, columns),
  },
  pens: {
    takes: null,
    names: (scenario, plan) => fileNames(pensFound(scenario, plan).pens.map(({ group }) => group.name)),
    html: ({ scenario, plan, words, paper }) => {
      const { pens, cautions } = pensFound(scenario, plan);
      return pens.map((pen) => penSheet(scenario, pen, true, cautions, words, paper));
    },
    txt: ({ scenario, plan, words }, screen, columns) => pensText({ ...pensFound(scenario, plan), files: [], notes: [] }, words, null, { ...screen, columns }),
  },
};

/** Which stretch each sheet is of. */
export const TAKES: Takes = Object.fromEntries(Object.entries(SHEET_KINDS).map(([name, { takes }]) => [name, takes]));
