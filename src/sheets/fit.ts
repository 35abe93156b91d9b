import { widestEms } from "./grid/letter-widths.js";
import { MM_PER_PT } from "./grid/svg.js";

/** Width of a text in the widest of the usual sans, mm: sheets are laid out for it, and the narrow ones have room to spare. */
export function widestMm(words: string, pt: number, bold = false): number {
  return widestEms(words, bold) * pt * MM_PER_PT;
}

/** The largest size at which a text stands in its room on one line, points; not below the least. */
export function fittingPt(words: string, roomMm: number, most: number, least: number, bold = false): number {
  const wide = widestMm(words, most, bold);
  return wide <= roomMm ? most : Math.max(least, Math.floor((10 * most * roomMm) / wide) / 10);
}

/** Lines that words take when they are broken between blanks. */
export function linesIn(words: string, roomMm: number, pt: number, bold = false): number {
  let lines = 1;
  let used = 0;
  for (const word of words.split(" ")) {
    const wide = widestMm(word, pt, bold);
    const joined = used === 0 ? wide : used + widestMm(" ", pt, bold) + wide;
    if (joined <= roomMm || used === 0) used = joined;
    else {
      lines += 1;
      used = wide;
    }
  }
  return lines;
}
