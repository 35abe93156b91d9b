/** Paper that sheets are printed on. */
export type PaperName = "a4" | "a3" | "letter" | "tabloid";

export interface Paper {
  /** As printers call it. */
  readonly words: string;
  /** The short and the long side, mm. */
  readonly shortMm: number;
  readonly longMm: number;
}

const MM_PER_INCH = 25.4;
const inches = (short: number, long: number): Pick<Paper, "shortMm" | "longMm"> => ({ shortMm: short * MM_PER_INCH, longMm: long * MM_PER_INCH });

/** ISO 216 for A4 and A3; ANSI/ASME Y14.1 for letter (A) and tabloid (B). */
export const PAPERS: Readonly<Record<PaperName, Paper>> = {
  a4: { words: "A4", shortMm: 210, longMm: 297 },
  a3: { words: "A3", shortMm: 297, longMm: 420 },
  letter: { words: "US letter", ...inches(8.5, 11) },
  tabloid: { words: "US tabloid", ...inches(11, 17) },
};

export const PAPER_NAMES = Object.keys(PAPERS) as readonly PaperName[];

/** Which side lies along the top, and how much of each side stays white, mm. */
export interface PageForm {
  readonly turned: "portrait" | "landscape";
  readonly marginMm: number;
}

/** The season grid lies; everything else stands. */
export const GRID_FORM: PageForm = { turned: "landscape", marginMm: 8 };
export const SHEET_FORM: PageForm = { turned: "portrait", marginMm: 9 };

/** Width and height of a page without its margins, mm. */
export function printable(paper: PaperName, { turned, marginMm }: PageForm): { readonly w: number; readonly h: number } {
  const [w, h] = sides(paper, turned);
  return { w: w - 2 * marginMm, h: h - 2 * marginMm };
}

/** The rule of a style sheet that makes the page this paper. */
export function pageRule(paper: PaperName, form: PageForm): string {
  const [w, h] = sides(paper, form.turned);
  return `@page{size:${length(w)} ${length(h)};margin:${length(form.marginMm)}}`;
}

function sides(paper: PaperName, turned: PageForm["turned"]): readonly [number, number] {
  const { shortMm, longMm } = PAPERS[paper];
  return turned === "portrait" ? [shortMm, longMm] : [longMm, shortMm];
}

function length(mm: number): string {
  return `${Number(mm.toFixed(2))}mm`;
}
