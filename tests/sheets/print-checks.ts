/**
 * Checks of what a sheet looks like on paper, for every printed sheet:
 *
 *   const press = usePress();
 *   it.skipIf(!BROWSER)("prints on two sheets of A4", async () => {
 *     expect(await press.faults(html, "a4", { pages: 2 })).toEqual([]);
 *   });
 *
 * `faults` lays the page out for print in Chromium, once with each of the usual sans that are on this machine (a wide and a narrow one), and
 * gives a sentence for each: count of pages, size of the paper, text cut at the page's edge or by what holds it, two texts one on the other,
 * text that is neither black nor white, text that is lost in a copy of 1 bit at 150 dpi. `press.proof` gives what was measured, to ask more of it.
 * Without a Chromium `BROWSER` is undefined: skip, as above.
 */
import { chromium, type Page } from "playwright-core";
import { PAPERS, type PaperName } from "../../src/sheets/paper.js";
import { fontsHere, type FontSet } from "./press/fonts.js";
import { COPY, inkShares } from "./press/one-bit.js";
import { pagesOf } from "./press/pdf-pages.js";
import { marginOfPage, textsOnPage, type PageLaidOut, type TextBox } from "./press/texts-on-page.js";
import { BROWSER } from "./browser-here.js";

export { BROWSER };

/** On a screen of few dots letters stand on whole dots; on paper they do not. */
const DENSE = { deviceScaleFactor: 4 };
const PX_PER_MM = 96 / 25.4;
/** Boxes may touch by so much, px: a quarter of a millimetre is white round every letter. */
const TOUCH = 1;
/** Of the box of a text, how much is ink at least, and most, in a copy of 1 bit. */
const LEAST_INK = 0.02;
const MOST_INK = 0.9;

/** What a page came to on paper, in one sans. */
export interface Proof extends PageLaidOut {
  readonly font: string;
  readonly pages: number;
  readonly sizeMm: readonly [number, number];
  /** Width and height between the margins, px. */
  readonly printable: readonly [number, number];
  /** Of each text's box, the share that is its own ink in a copy of 1 bit at 150 dpi. */
  readonly inkShares: readonly number[];
}

export interface Press {
  readonly faults: (html: string, paper: PaperName, expected: { readonly pages: number }) => Promise<readonly string[]>;
  readonly proof: (html: string, fonts?: FontSet) => Promise<Proof>;
}

/** A browser with one sans, and the pages that sheets are laid out on in it, one after the other: a new page each time is slow. */
interface Bed {
  readonly page: Page;
  readonly copier: Page;
}

async function bedWith({ env }: FontSet): Promise<Bed> {
  const browser = await chromium.launch({ executablePath: BROWSER!, args: ["--no-sandbox", "--disable-gpu"], env: { ...process.env, ...env } as Record<string, string> });
  const [page, copier] = [await browser.newPage(DENSE), await browser.newPage(COPY)];
  for (const one of [page, copier]) await one.emulateMedia({ media: "print" });
  return { page, copier };
}

/** A browser a sans for all tests of this process; they end with it. */
const beds = new Map<string, Promise<Bed>>();

function bedOf(fonts: FontSet): Promise<Bed> {
  const there = beds.get(fonts.name) ?? bedWith(fonts);
  beds.set(fonts.name, there);
  return there;
}

export function usePress(): Press {
  const proof = async (html: string, fonts: FontSet = fontsHere()[0]!): Promise<Proof> => proofIn(await bedOf(fonts), html, fonts.name);
  return {
    proof,
    faults: async (html, paper, expected) => {
      const found: string[] = [];
      for (const fonts of fontsHere()) found.push(...faultsOf(await proof(html, fonts), paper, expected.pages));
      return found;
    },
  };
}

async function proofIn({ page, copier }: Bed, html: string, font: string): Promise<Proof> {
  await page.setContent(html);
  const { pages, sizeMm } = pagesOf(await page.pdf({ preferCSSPageSize: true }));
  const margin = parseFloat(await page.evaluate(marginOfPage)) * PX_PER_MM;
  const printable = sizeMm.map((side) => Math.round(side * PX_PER_MM - 2 * margin)) as [number, number];
  await page.setViewportSize({ width: printable[0], height: printable[1] });
  const laid = await page.evaluate(textsOnPage);
  return { ...laid, font, pages, sizeMm, printable, inkShares: await inkShares(copier, html, printable, laid.texts) };
}

/** Sentences about all that is wrong with a proof. */
export function faultsOf(proof: Proof, paper: PaperName, pages: number): readonly string[] {
  const told = (what: string): string => `${proof.font}: ${what}`;
  const { shortMm, longMm } = PAPERS[paper];
  const sides = [...proof.sizeMm].sort((a, b) => a - b);
  const wrongSize = Math.abs(sides[0]! - shortMm) > 0.5 || Math.abs(sides[1]! - longMm) > 0.5;
  return [
    ...(proof.pages === pages ? [] : [`${proof.pages} pages, ${pages} expected`]),
    ...(wrongSize ? [`the page is ${sides.map((side) => side.toFixed(0)).join(" x ")} mm, no ${paper}`] : []),
    ...(proof.drawing > proof.printable[1] + TOUCH ? [`a drawing is ${Math.round(proof.drawing - proof.printable[1])} px higher than the page`] : []),
    ...proof.texts.filter((text) => isCut(text, proof.printable[0])).map((text) => `cut at the edge (${whereCut(text, proof.printable[0])}): "${text.words}"`),
    ...overlapping(proof.texts).map(([a, b]) => `one on the other: "${a.words}" and "${b.words}"`),
    ...proof.texts.filter(({ colour }) => !/^rgb\((0, 0, 0|255, 255, 255)\)$/.test(colour)).map(({ words, colour }) => `neither black nor white but ${colour}: "${words}"`),
    ...proof.texts.filter((_, i) => proof.inkShares[i]! < LEAST_INK || proof.inkShares[i]! > MOST_INK).map(({ words }) => `lost in a copy of 1 bit: "${words}"`),
  ].map(told);
}

const SIDES = ["left", "top", "right", "bottom"] as const;

/** How far a text stands out over each edge of what holds it, px; the page goes on downward. */
function overEdges({ ink, within }: TextBox, pageWidth: number): readonly number[] {
  const over = (edges: readonly number[]): readonly number[] => ink.map((side, i) => (i < 2 ? edges[i]! - side : side - edges[i]!));
  const page = over([0, 0, pageWidth, Infinity]);
  const held = within === null ? page : over(within);
  return page.map((by, i) => Math.max(by, held[i]!));
}

function isCut(text: TextBox, pageWidth: number): boolean {
  return overEdges(text, pageWidth).some((by) => by > TOUCH);
}

function whereCut(text: TextBox, pageWidth: number): string {
  return overEdges(text, pageWidth).flatMap((by, i) => (by > TOUCH ? [`${SIDES[i]} by ${by.toFixed(1)} px`] : [])).join(", ");
}

/** Pairs of texts whose ink is in the same place. */
function overlapping(texts: readonly TextBox[]): readonly (readonly [TextBox, TextBox])[] {
  const sorted = [...texts].sort((a, b) => a.ink[0] - b.ink[0]);
  return sorted.flatMap((a, i) => {
    const pairs: (readonly [TextBox, TextBox])[] = [];
    for (let k = i + 1; k < sorted.length && sorted[k]!.ink[0] < a.ink[2] - TOUCH; k += 1) {
      const b = sorted[k]!;
      if (Math.min(a.ink[3], b.ink[3]) - Math.max(a.ink[1], b.ink[1]) > TOUCH) pairs.push([a, b]);
    }
    return pairs;
  });
}
