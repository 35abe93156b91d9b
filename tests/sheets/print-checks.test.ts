/** What checks the sheets finds what is wrong with a page, and nothing on a page that is right. */
import { describe, expect, it } from "vitest";
import { SHEET_FORM, pageRule } from "../../src/sheets/paper.js";
import { BROWSER, usePress } from "./print-checks.js";

function page(body: string): string {
  return `<!DOCTYPE html><html><head><meta charset="utf-8"><style>${pageRule("a4", SHEET_FORM)}body{margin:0;font:11pt sans-serif}</style></head><body>${body}</body></html>`;
}

const svg = (inner: string): string => `<svg width="180mm" height="60mm" viewBox="0 0 180 60" font-size="4">${inner}</svg>`;
/** Each in a page of its own, with what is said about it. */
const FAULTY: readonly (readonly [string, string, RegExp])[] = [
  ["text over the edge of a drawing", svg('<text x="150" y="20">Home field, twelve days</text>'), /cut at the edge \(right by [\d.]+ px\): "Home field, twelve days"/],
  ["text over the edge of the page", '<p style="white-space:nowrap">' + "a long line ".repeat(20) + "</p>", /cut at the edge \(right by [\d.]+ px\): "a long line/],
  ["text in a box that is too small", '<div style="overflow:hidden;height:6px">Home field</div>', /cut at the edge \(bottom by [\d.]+ px\): "Home field"/],
  ["one text on the other", svg('<text x="10" y="20">Cows</text><text x="14" y="21">Hens</text>'), /one on the other: "Cows" and "Hens"/],
  ["one text on the other on end", svg('<text x="10" y="20" transform="rotate(-90 10 20)">Cows</text><text x="8" y="14">Hens</text>'), /one on the other/],
  ["grey text", '<p style="color:#777">Cows</p>', /neither black nor white but rgb\(119, 119, 119\): "Cows"/],
  ["text too small to copy", svg('<text x="10" y="20" style="font-size:.3px">Cows</text>'), /lost in a copy of 1 bit: "Cows"/],
  ["white text on white", '<p style="color:#fff">Cows</p>', /lost in a copy of 1 bit: "Cows"/],
  ["a page too many", '<p>Cows</p><p style="break-before:page">Hens</p>', /2 pages, 1 expected/],
  ["a drawing higher than the page", '<svg width="100mm" height="290mm"></svg>', /a drawing is \d+ px higher than the page/],
];

describe("the checks of a printed page", () => {
  const press = usePress();
  const right = page(`<h1>Cows</h1><p>They go from H1 to H2, and <b>two people</b> walk with them.</p>${svg('<text x="10" y="20">Cows</text><text x="10" y="26">Hens</text><text x="60" y="40" transform="rotate(-90 60 40)">Pigs</text>')}`);

  it.skipIf(!BROWSER)("find nothing on a page that is right", async () => {
    expect(await press.faults(right, "a4", { pages: 1 })).toEqual([]);
  });

  it.skipIf(!BROWSER)("find a page of the wrong size", async () => {
    expect((await press.faults(right, "letter", { pages: 1 })).join("\n")).toContain("the page is 210 x 297 mm, no letter");
  });

  it.skipIf(!BROWSER).each(FAULTY)("find %s", async (_name, body, said) => {
    expect((await press.faults(page(body), "a4", { pages: 1 })).join("\n")).toMatch(said);
  });
});
