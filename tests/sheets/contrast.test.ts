/** Colours: contrast of every pair that sheets and pages show, by WCAG 2.2 (success criteria 1.4.3 and 1.4.11). */
import { describe, expect, it } from "vitest";
import { KINDS } from "../../src/farm/scenario.js";
import { gridCss } from "../../src/sheets/grid/css.js";
import { MARKS } from "../../src/sheets/marks.js";

const TEXT = 4.5;
const MARK = 3;

/** Relative luminance, WCAG 2.2, definitions. */
function luminance(colour: string): number {
  const long = colour.length === 4 ? colour.replaceAll(/[\da-f]/gi, "$&$&") : colour;
  const [red, green, blue] = [1, 3, 5].map((at) => parseInt(long.slice(at, at + 2), 16) / 255).map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** Contrast ratio, WCAG 2.2, definitions. */
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}

/** Colours by name, as one part of the style sheet sets them. */
function coloursIn(css: string): Readonly<Record<string, string>> {
  return Object.fromEntries([.../:root\{([^}]*)\}/.exec(css)![1]!.matchAll(/--([a-z]+):(#[\da-fA-F]{3,6})/g)].map((match) => [match[1]!, match[2]!]));
}

describe("contrast", () => {
  const [onScreen, inPrint] = gridCss("a4").split("@media print");
  const [screen, print] = [coloursIn(onScreen!), coloursIn(inPrint!)];

  // W3C, Understanding 1.4.3: black on white is 21:1; #777777 on white is 4.47:1, rounded not up to 4.5:1
  it("is reckoned as the standard has it", () => {
    expect([contrast("#000", "#fff"), contrast("#fff", "#ffffff")]).toEqual([21, 1]);
    expect(contrast("#777777", "#fff")).toBeCloseTo(4.47, 1);
    expect(contrast("#777777", "#fff")).toBeLessThan(TEXT);
  });

  it.each([["ink", "paper", TEXT], ["ink", "weekend", TEXT], ["soft", "paper", TEXT], ["soft", "weekend", TEXT], ["rule", "paper", MARK], ["pick", "paper", TEXT]] as const)(
    "of %s on %s is enough on the screen", (a, b, least) => expect(contrast(screen[a]!, screen[b]!)).toBeGreaterThanOrEqual(least));

  it("is that of black on white in print, and enough over a weekend's grey", () => {
    expect(contrast(print["ink"]!, print["paper"]!)).toBe(21);
    expect([print["soft"], print["rule"]]).toEqual([print["ink"], print["ink"]]);
    expect(contrast(print["ink"]!, print["weekend"]!)).toBeGreaterThanOrEqual(TEXT);
  });

  it.each(KINDS)("of %s: the pattern on its fill, letter and frame on their plate, the bar on the paper", (kind) => {
    const { fill, line, pattern } = MARKS[kind];
    if (pattern === "solid") expect(contrast(screen["paper"]!, fill)).toBeGreaterThanOrEqual(TEXT);
    else expect(contrast(line, fill)).toBeGreaterThanOrEqual(TEXT);
    expect(contrast(line, screen["paper"]!)).toBeGreaterThanOrEqual(MARK);
    if (pattern !== "solid") expect(contrast(screen["ink"]!, fill)).toBeGreaterThanOrEqual(TEXT);
  });
});
