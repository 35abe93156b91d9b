import { typedDays } from "./typed-days.js";
import { addDays, daysBetween, isIsoDate, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import { daysMeant } from "../farm/days-meant.js";
import type { Finding } from "../farm/finding.js";
import { boxFinding } from "./grid-names.js";
import type { Box } from "./grid-table.js";

/** Days of a grid: one entry a box, null where the box holds no day that counts. */
export interface GridDays {
  readonly days: readonly (IsoDate | null)[];
  readonly findings: readonly Finding[];
  readonly notes: readonly Finding[];
}

/** Reads the boxes that hold days, and says which days of the season have none. */
export function gridDays(written: readonly Box[], season: Span, file: string): GridDays {
  const typed = typedDays(written, season, file);
  if (typed.fault) return { days: written.map(() => null), findings: [typed.fault], notes: [] };
  const boxes = typed.boxes;
  const seen = new Map<IsoDate, Box>();
  const findings: Finding[] = [];
  const days = boxes.map((box) => {
    const fault = dayFault(box, season, seen, file);
    if (fault) findings.push(fault);
    else seen.set(box.text, box);
    return fault ? null : box.text;
  });
  const unread = findings.some((finding) => finding.code === "day-form");
  const at = boxes[0] ?? { text: "", line: 1, column: 1, name: "A1" };
  if (!unread) findings.push(...missingDays(seen, season, at, file));
  return { days, findings: outsideOnce(findings), notes: typed.note ? [typed.note] : [] };
}

/** Days outside the season, as of another season's grid, are said once. */
function outsideOnce(findings: readonly Finding[]): readonly Finding[] {
  const outside = findings.filter((finding) => finding.code === "day-outside");
  const [first, ...more] = outside;
  if (!first || more.length === 0) return findings;
  return [...findings.filter((finding) => finding.code !== "day-outside"), { ...first, found: `${first.found}, nor ${more.length === 1 ? "is 1 more day" : `are ${more.length} more days`}` }];
}

function dayFault(box: Box, season: Span, seen: ReadonlyMap<IsoDate, Box>, file: string): Finding | null {
  const iso = "days as 2027-05-03: year, month, day";
  if (!isIsoDate(box.text)) return boxFinding(file, box, "day-form", `"${box.text}" is no day`, iso, isoGuesses(box.text, season));
  const first = seen.get(box.text);
  if (first) return boxFinding(file, box, "day-twice", `${box.text} stands also in box ${first.name}`, "each day once", "take one of the two out");
  if (spanHolds(season, box.text)) return null;
  return boxFinding(file, box, "day-outside", `${box.text} is not in the season`, `${season.firstDay} to ${season.lastDay}`, "take it out, or change the season in the farm file");
}

/** The readings of a day like 10/4/2027, which only the owner can tell apart; those in the season first. */
function isoGuesses(text: string, season: Span): string {
  const days = daysMeant(text);
  return [...days.filter((day) => spanHolds(season, day)), ...days.filter((day) => !spanHolds(season, day))].join(" or ") || "2027-05-03";
}

function missingDays(seen: ReadonlyMap<IsoDate, Box>, season: Span, at: Box, file: string): Finding[] {
  const gaps: Span[] = [];
  for (let i = 0; i <= daysBetween(season.firstDay, season.lastDay); i += 1) {
    const day = addDays(season.firstDay, i);
    const last = gaps.at(-1);
    if (seen.has(day)) continue;
    if (last && addDays(last.lastDay, 1) === day) gaps[gaps.length - 1] = { firstDay: last.firstDay, lastDay: day };
    else gaps.push({ firstDay: day, lastDay: day });
  }
  return gaps.map(({ firstDay, lastDay }) => {
    const span = firstDay === lastDay ? firstDay : `${firstDay} to ${lastDay}`;
    return { file, line: at.line, column: at.column, code: "day-missing", found: `${span}: no box`, allowed: `every day from ${season.firstDay} to ${season.lastDay}`, next: `add ${span}` };
  });
}
