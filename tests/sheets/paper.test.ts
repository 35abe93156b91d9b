/** Papers: sides as the standards have them, and the page they make. */
import { describe, expect, it } from "vitest";
import { GRID_FORM, PAPERS, PAPER_NAMES, SHEET_FORM, pageRule, printable } from "../../src/sheets/paper.js";

// ISO 216, A series: sides of An are 2^(-1/4 - n/2) m and 2^(1/4 - n/2) m, in whole mm
const isoSide = (exponent: number): number => Math.floor(1000 * 2 ** exponent);

describe("papers", () => {
  it.each([["a4", 4], ["a3", 3]] as const)("%s is ISO 216's", (name, n) => {
    expect([PAPERS[name].shortMm, PAPERS[name].longMm]).toEqual([isoSide(-1 / 4 - n / 2), isoSide(1 / 4 - n / 2)]);
  });

  // ANSI/ASME Y14.1: sizes A and B in inches of 25.4 mm (exactly, since 1959)
  it.each([["letter", 8.5, 11], ["tabloid", 11, 17]] as const)("%s is ANSI's", (name, short, long) => {
    expect(PAPERS[name].shortMm).toBeCloseTo(short * 25.4, 9);
    expect(PAPERS[name].longMm).toBeCloseTo(long * 25.4, 9);
  });

  it("leave a grid lying within 8 mm and other sheets standing within 9", () => {
    expect(printable("a4", GRID_FORM)).toEqual({ w: 281, h: 194 });
    expect(printable("a4", SHEET_FORM)).toEqual({ w: 192, h: 279 });
    expect(pageRule("letter", SHEET_FORM)).toBe("@page{size:215.9mm 279.4mm;margin:9mm}");
    expect(PAPER_NAMES.map((name) => pageRule(name, GRID_FORM))).toContain("@page{size:431.8mm 279.4mm;margin:8mm}");
  });
});
