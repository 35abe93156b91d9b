import { describe, expect, it } from "vitest";
import { KINDS } from "../../src/farm/scenario.js";
import { headWords, MARKS, markOf } from "../../src/sheets/marks.js";
import { patternFigures } from "../../src/sheets/grid/patterns.js";
import { group } from "../fixtures/tiny-farm.js";
import { englishWords } from "../fixtures/planned-farm.js";

const words = englishWords();

/** Relative luminance and contrast of two colours: W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio". */
function contrast(a: string, b: string): number {
  const luminance = (hex: string): number => {
    const [r, g, b_] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * b_!;
  };
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

describe("marks", () => {
  it("give every kind a letter and a pattern of its own", () => {
    expect(new Set(KINDS.map((kind) => MARKS[kind].letter)).size).toBe(KINDS.length);
    expect(new Set(KINDS.map((kind) => MARKS[kind].pattern)).size).toBe(KINDS.length);
    expect(KINDS.every((kind) => /^[A-Z]$/.test(MARKS[kind].letter))).toBe(true);
  });

  it("stand out on the screen: lines on their fill 4.5 to 1, white on cattle too", () => {
    for (const kind of KINDS) expect(kind === "cattle" ? contrast(MARKS[kind].fill, "#FBFAF5") : contrast(MARKS[kind].line, MARKS[kind].fill)).toBeGreaterThanOrEqual(4.5);
    expect(contrast("#FFFFFF", "#000000")).toBeCloseTo(21, 5);
  });

  it("tell a second group of a kind by its letter and a notch", () => {
    expect(markOf(group("Young cows", { letter: "Cy" }))).toMatchObject({ letter: "Cy", pattern: "solid", second: true });
    expect(markOf(group("Cows")).second).toBe(false);
  });

  it("say heads in a few words", () => {
    expect(headWords(group("Cows", { young: { head: 5, weightKg: 80, gainKgPerDay: 1 } }), words)).toBe("5, with 5 calves");
    expect(headWords(group("Pigs", { kind: "pigs", animalClass: "weaner", head: 8 }), words)).toBe("8 weaners");
    expect(headWords(group("Pig", { kind: "pigs", animalClass: "sow", head: 1 }), words)).toBe("1 sow");
    expect(headWords(group("Stores", { animalClass: "growing", head: 4 }), words)).toBe("4, growing");
  });

  it("are drawn figure by figure inside the bar, whole figures only", () => {
    const box = { x: 10, y: 20, w: 11.5, h: 4.6 };
    // 11.5 mm at a pitch of 1.15 are ten, 4.6 are four
    const squares = patternFigures("squares", box);
    expect([...squares.matchAll(/v4\.6/g)].length).toBe(10);
    expect([...squares.matchAll(/h11\.5/g)].length).toBe(4);
    for (const kind of KINDS) {
      for (const [, x, y] of patternFigures(MARKS[kind].pattern, box).matchAll(/M([\d.]+) ([\d.]+)/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(10);
        expect(Number(x)).toBeLessThanOrEqual(21.5);
        expect(Number(y)).toBeGreaterThanOrEqual(20);
        expect(Number(y)).toBeLessThanOrEqual(24.6);
      }
      expect(patternFigures(MARKS[kind].pattern, { ...box, w: 0 })).toBe("");
    }
  });
});
