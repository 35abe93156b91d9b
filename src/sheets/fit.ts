import { textWidth } from "./grid/svg.js";

/** Sheets are laid out for the widest of the usual sans, beside which the narrow ones have room to spare. */
const WIDEST = 1.17;

/** Width of a text in the widest of the usual sans, mm. */
export function widestMm(words: string, pt: number, bold = false): number {
  return textWidth(words, pt, bold) * WIDEST;
}

/** The largest size at which a text stands in its room on one line, points; not below the least. */
export function fittingPt(words: string, roomMm: number, most: number, least: number, bold = false): number {
  const wide = widestMm(words, most, bold);
  return wide <= roomMm ? most : Math.max(least, Math.floor((10 * most * roomMm) / wide) / 10);
}

/** Lines that words take when they are broken between blanks. */
export function linesIn(words: string, roomMm: number, pt: number): number {
  let lines = 1;
  let used = 0;
  for (const word of words.split(" ")) {
    const wide = widestMm(word, pt);
    const joined = used === 0 ? wide : used + widestMm(" ", pt) + wide;
    if (joined <= roomMm || used === 0) used = joined;
    else {
      lines += 1;
      used = wide;
    }
  }
  return lines;
}
