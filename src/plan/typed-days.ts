import { isIsoDate, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import type { Finding } from "../farm/finding.js";
import { boxFinding } from "./grid-names.js";
import type { Box } from "./grid-table.js";

/** Boxes with their days as year-month-day, and what was made of them; or one fault for all of them. */
export interface TypedDays {
  readonly boxes: readonly Box[];
  readonly note: Finding | null;
  readonly fault: Finding | null;
}

/** Orders in which spreadsheets write a day, by the country they are set to. */
const FORMS = [
  { name: "day, month, year", parts: /^(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})$/, order: [3, 2, 1] },
  { name: "month, day, year", parts: /^(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})$/, order: [3, 1, 2] },
  { name: "year, month, day", parts: /^(\d{4})[./-](\d{1,2})[./-](\d{1,2})$/, order: [1, 2, 3] },
] as const;

type Form = (typeof FORMS)[number];

/**
 * Spreadsheets turn the days of a grid into those of their country. Two boxes or more that are no days are read in the
 * one order of day, month and year in which all days lie in the season, each after the one before it; where none or
 * several fit, or most boxes are no days of any kind, one finding says so for all.
 */
export function typedDays(boxes: readonly Box[], season: Span, file: string): TypedDays {
  const odd = boxes.filter((box) => !isIsoDate(box.text));
  const asTyped = { boxes, note: null, fault: null };
  if (odd.length < 2) return asTyped;
  const fitting = FORMS.map((form) => ({ form, boxes: inForm(boxes, form) })).filter((read) => read.boxes !== null && inOrder(read.boxes, season));
  const [only, second] = fitting;
  if (only?.boxes && !second) return { boxes: only.boxes, note: noteOf(odd, only.boxes, boxes, only.form, file), fault: null };
  const dated = odd.every((box) => FORMS.some((form) => dayIn(box, form) !== null));
  return dated || odd.length * 2 > boxes.length ? { ...asTyped, fault: faultOf(odd, season, file) } : asTyped;
}

function inForm(boxes: readonly Box[], form: Form): readonly Box[] | null {
  const read = boxes.map((box) => (isIsoDate(box.text) ? box.text : dayIn(box, form)));
  return read.some((day) => day === null) ? null : boxes.map((box, i) => ({ ...box, text: read[i]! }));
}

function dayIn({ text }: Box, form: Form): IsoDate | null {
  const parts = form.parts.exec(text);
  if (!parts) return null;
  const [year, month, day] = form.order.map((at) => parts[at]!.padStart(2, "0")) as [string, string, string];
  const iso = `${year.length === 2 ? `20${year}` : year}-${month}-${day}`;
  return isIsoDate(iso) ? iso : null;
}

function inOrder(boxes: readonly Box[], season: Span): boolean {
  return boxes.every((box, i) => spanHolds(season, box.text) && (i === 0 || boxes[i - 1]!.text < box.text));
}

function noteOf(odd: readonly Box[], read: readonly Box[], boxes: readonly Box[], form: Form, file: string): Finding {
  const first = odd[0]!;
  const meant = read[boxes.indexOf(first)]!.text;
  return boxFinding(file, first, "days-read", `${odd.length} days are read as ${form.name}: ${first.text} is ${meant}`, "only so do they lie in the season, in order", "nothing to do if that is meant");
}

function faultOf(odd: readonly Box[], season: Span, file: string): Finding {
  const first = odd[0]!;
  const found = `"${first.text}" is no day, nor are ${odd.length - 1} more in this row or column`;
  return boxFinding(file, first, "day-form", found, `days as 2027-05-03, year, month, day, from ${season.firstDay} to ${season.lastDay}`, "give these boxes the form yyyy-mm-dd in the spreadsheet, and save again");
}
