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
  /** Room in mm; longer text is drawn narrower. */
  readonly room?: number;
  /** Degrees, round the point where the text stands. */
  readonly turn?: number;
}

export const MM_PER_PT = 25.4 / 72;

/** A line of text standing on y. */
export function text(x: number, y: number, words: string, style: TextStyle): string {
  const size = style.pt * MM_PER_PT;
  const wide = textWidth(words, style.pt, style.bold);
  const attributes = [
    `x="${mm(x)}" y="${mm(y)}" font-size="${mm(size)}"`,
    style.bold ? 'font-weight="700"' : "",
    style.italic ? 'font-style="italic"' : "",
    style.anchor && style.anchor !== "start" ? `text-anchor="${style.anchor}"` : "",
    style.as ? `class="${style.as}"` : "",
    style.room !== undefined && wide > style.room ? `textLength="${mm(style.room)}" lengthAdjust="spacingAndGlyphs"` : "",
    style.turn ? `transform="rotate(${style.turn} ${mm(x)} ${mm(y)})"` : "",
  ];
  return `<text ${attributes.filter((one) => one !== "").join(" ")}>${escaped(words)}</text>`;
}

/** Widths of letters in thousandths of the size; letters not named here are as wide as a figure. From the font's own table (Liberation Sans, the widths of Arial). */
const NARROW = "ijlI.,:;'!|";
const SLIM = "ftr()/- []";
const BROAD = "mwMWÄÖ%@";
const CAPITALS = "ABCDEGHKNOPQRSUVXY&£€+=<>~";
const WORST = 1.06;

/** About how wide a text is, mm; rather too wide than too narrow. */
export function textWidth(words: string, pt: number, bold = false): number {
  let thousandths = 0;
  for (const letter of words) {
    thousandths += NARROW.includes(letter) ? 278 : SLIM.includes(letter) ? 333 : BROAD.includes(letter) ? 880 : CAPITALS.includes(letter) ? 722 : 556;
  }
  return (thousandths / 1000) * pt * MM_PER_PT * (bold ? WORST + 0.02 : 1);
}
