import { usualEms, widestEms } from "./letter-widths.js";

/** Text made safe inside elements and attributes. */
export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

/** A length in mm as drawings write it: hundredths at most, no blank zeros. */
export function mm(value: number): string {
  return String(Math.round(value * 100) / 100 || 0);
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export function inset(box: Box, by: number): Box {
  return { x: box.x + by, y: box.y + by, w: Math.max(0, box.w - 2 * by), h: Math.max(0, box.h - 2 * by) };
}

export function rect({ x, y, w, h }: Box, attributes: string): string {
  return `<rect x="${mm(x)}" y="${mm(y)}" width="${mm(w)}" height="${mm(h)}" ${attributes}/>`;
}

export function line(x1: number, y1: number, x2: number, y2: number, attributes: string): string {
  return `<path d="M${mm(x1)} ${mm(y1)}L${mm(x2)} ${mm(y2)}" ${attributes}/>`;
}

export interface TextStyle {
  /** Size in points. */
  readonly pt: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly anchor?: "start" | "middle" | "end";
  /** CSS class: colour, or a halo of paper round the letters. */
  readonly as?: string;
  /** Room in mm. Longer text is drawn narrower; one that would be longer in a wider font than the usual is held to its usual width. */
  readonly room?: number;
  /** Degrees, round the point where the text stands. */
  readonly turn?: number;
}

export const MM_PER_PT = 25.4 / 72;

/** A line of text standing on y. */
export function text(x: number, y: number, words: string, style: TextStyle): string {
  const size = style.pt * MM_PER_PT;
  const attributes = [
    `x="${mm(x)}" y="${mm(y)}" font-size="${mm(size)}"`,
    style.bold ? 'font-weight="700"' : "",
    style.italic ? 'font-style="italic"' : "",
    style.anchor && style.anchor !== "start" ? `text-anchor="${style.anchor}"` : "",
    style.as ? `class="${style.as}"` : "",
    style.room === undefined ? "" : heldTo(words, style.pt, style.bold ?? false, style.room),
    style.turn ? `transform="rotate(${style.turn} ${mm(x)} ${mm(y)})"` : "",
  ];
  return `<text ${attributes.filter((one) => one !== "").join(" ")}>${escaped(words)}</text>`;
}

/** A screen of few dots fits each letter to them, which makes a line up to a fiftieth wider. */
const FITTED_TO_DOTS = 1.02;

function heldTo(words: string, pt: number, bold: boolean, room: number): string {
  const size = pt * MM_PER_PT;
  if (widestEms(words, bold) * size * FITTED_TO_DOTS <= room) return "";
  return `textLength="${mm(Math.min(room, usualEms(words, bold) * size))}" lengthAdjust="spacingAndGlyphs"`;
}

/** How wide a text is in the usual sans, mm. */
export function textWidth(words: string, pt: number, bold = false): number {
  return usualEms(words, bold) * pt * MM_PER_PT;
}

/** Letters may be drawn narrower down to this share of their width; beyond it a text is cut short. */
const NARROWEST = 0.72;

/** A name that fits its room, drawn narrower if need be; one that is still too long ends in "…". */
export function cutTo(words: string, pt: number, bold: boolean, room: number): string {
  const fits = (some: string): boolean => textWidth(some, pt, bold) * NARROWEST <= room;
  if (fits(words)) return words;
  const letters = [...words];
  let count = letters.length;
  while (count > 1 && !fits(`${letters.slice(0, count).join("").trimEnd()}…`)) count -= 1;
  return `${letters.slice(0, count).join("").trimEnd()}…`;
}

/** A text broken between words into at most so many lines, the widest as narrow as can be; of equal breaks the fuller first lines. */
export function evenLines(words: string, count: number, pt: number): readonly string[] {
  const parts = words.split(" ");
  const room = [...new Set(parts.flatMap((_, i) => parts.slice(i).map((__, j) => textWidth(parts.slice(i, i + j + 1).join(" "), pt))))].sort((a, b) => a - b);
  for (const wide of room) {
    const lines = filled(parts, wide + 1e-9, pt);
    if (lines !== null && lines.length <= count) return lines;
  }
  return [words];
}

/** Words in lines no wider than asked, each as full as can be; null where a word alone is wider. */
function filled(parts: readonly string[], wide: number, pt: number): readonly string[] | null {
  const lines: string[] = [];
  for (const part of parts) {
    if (textWidth(part, pt) > wide) return null;
    const joined = lines.length > 0 ? `${lines.at(-1)!} ${part}` : part;
    if (lines.length > 0 && textWidth(joined, pt) <= wide) lines[lines.length - 1] = joined;
    else lines.push(part);
  }
  return lines;
}
