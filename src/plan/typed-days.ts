import { isIsoDate, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import type { Finding } from "../farm/finding.js";
import { bareDay, DAY_FORMS, isWhole } from "./day-forms.js";
import { boxFinding } from "./grid-names.js";
import type { Box } from "./grid-table.js";

/** Boxes with their days as year-month-day, and what was made of them; or one fault for all of them. */
export interface TypedDays {
  readonly boxes: readonly Box[];
  readonly note: Finding | null;
  readonly fault: Finding | null;
}

/** All days of a grid, read in one form. */
interface Reading {
  readonly form: string;
  readonly days: readonly IsoDate[];
}

/**
 * Spreadsheets turn the days of a grid into those of their country. Two boxes or more that are no days are read in the
 * one form in which all days lie in the season, each after the one before it; where none or several fit, or most boxes
 * are no days of any kind, one finding says so for all.
 */
export function typedDays(written: readonly Box[], season: Span, file: string): TypedDays {
  const boxes = written.map((box) => (isIsoDate(bareDay(box.text)) ? { ...box, text: bareDay(box.text) } : box));
  const odd = boxes.filter((box) => !isIsoDate(box.text));
  const asTyped = { boxes, note: null, fault: null };
  if (odd.length < 2) return asTyped;
  const [only, ...more] = readingsOf(boxes, season);
  if (only && more.length === 0) return { boxes: boxes.map((box, i) => ({ ...box, text: only.days[i]! })), note: noteOf(odd, boxes, only, file), fault: null };
  if (only) return { ...asTyped, fault: severalFault(odd, boxes, [only, ...more], season, file) };
  const dated = odd.every((box) => DAY_FORMS.some((form) => form.dayIn(bareDay(box.text), season) !== null));
  return dated || odd.length * 2 > boxes.length ? { ...asTyped, fault: faultOf(odd, dated ? "is no day in one form and order with the others" : "is no day", season, file) } : asTyped;
}

/** The readings that hold every day of the season; where none does, those that run on through it. */
function readingsOf(boxes: readonly Box[], season: Span): readonly Reading[] {
  const all = DAY_FORMS.flatMap((form): readonly Reading[] => {
    const days = boxes.map((box) => (isIsoDate(box.text) ? box.text : form.dayIn(bareDay(box.text), season)));
    return inOrder(days, season) ? [{ form: form.name, days }] : [];
  });
  const apart = all.filter(({ days }, i) => all.findIndex((other) => other.days.join() === days.join()) === i);
  const whole = apart.filter(({ days }) => isWhole(days, season));
  return whole.length > 0 ? whole : apart;
}

function inOrder(days: readonly (IsoDate | null)[], season: Span): days is readonly IsoDate[] {
  return days.every((day, i) => day !== null && spanHolds(season, day) && (i === 0 || days[i - 1]! < day));
}

function noteOf(odd: readonly Box[], boxes: readonly Box[], { form, days }: Reading, file: string): Finding {
  const first = odd[0]!;
  const found = `${odd.length} days are read as ${form}: ${first.text} is ${days[boxes.indexOf(first)]!}`;
  return boxFinding(file, first, "days-read", found, "only so do they lie in the season, in order", "nothing to do if that is meant");
}

const NEXT = "give these boxes the form yyyy-mm-dd in the spreadsheet, and save again";
const WIDER = "make the columns wide enough to show their days in the spreadsheet, and save again";

function allowedDays({ firstDay, lastDay }: Span): string {
  return `days as 2027-05-03, year, month, day, from ${firstDay} to ${lastDay}`;
}

function severalFault(odd: readonly Box[], boxes: readonly Box[], readings: readonly Reading[], season: Span, file: string): Finding {
  const apart = odd.find((box) => new Set(readings.map(({ days }) => days[boxes.indexOf(box)])).size > 1)!;
  const meant = [...new Set(readings.map(({ days }) => days[boxes.indexOf(apart)]!))].join(" or ");
  return boxFinding(file, apart, "day-form", `"${apart.text}" may be ${meant}, and so with others in this row or column`, allowedDays(season), NEXT);
}

function faultOf(odd: readonly Box[], amiss: string, season: Span, file: string): Finding {
  const first = odd[0]!;
  return boxFinding(file, first, "day-form", `"${first.text}" ${amiss}, nor are ${odd.length - 1} more in this row or column`, allowedDays(season), /^#+$/.test(first.text) ? WIDER : NEXT);
}
