/** Figures as people read them: no finer than they are known. */
import { describe, expect, it } from "vitest";
import { aboutPrice, countWords, grassFigure, minutesWords, nitrogenWords, percentWords, surenessWords, tonnesWords, weightWords } from "../../src/cli/words.js";
import { hayWords, priceWords } from "../../src/sheets/figure-words.js";

describe("amounts", () => {
  // a fifth either way, rounded outward to 50 kg; a pound is 0.45359237 kg
  it.each([
    [0, "metric", "none"], [40, "metric", "up to 50 kg"], [500, "metric", "400 to 600 kg"], [510, "metric", "400 to 650 kg"], [453.59237, "US", "800 to 1200 lb"],
  ] as const)("hay of %d kg in %s is %s", (kg, units, words) => {
    expect(hayWords(kg, units)).toBe(words);
  });

  it("reaches as far as the dry and the wet year do", () => {
    expect(hayWords(500, "metric", [1210, 90])).toBe("50 to 1250 kg");
    expect(hayWords(0, "metric", [0, 480])).toBe("up to 500 kg");
  });

  it.each([[3, "under 5 kg N"], [14, "about 10 kg N"], [166, "about 170 kg N"]])("nitrogen of %d kg is %s", (kg, words) => {
    expect(nitrogenWords(kg)).toBe(words);
  });

  it.each([[0, "0 min"], [12, "10 min"], [13, "15 min"], [58, "1 h"], [87, "1 h 25 min"]])("%d minutes are %s", (minutes, words) => {
    expect(minutesWords(minutes)).toBe(words);
  });

  it("says tonnes to a tenth, and short tons where the farm's units are US", () => {
    expect(tonnesWords(12_340, "metric")).toBe("12.3 t");
    expect(tonnesWords(2000 * 0.45359237, "US")).toBe("1.0 short tons");
  });

  it("says stock to 10 and a week's grass to what it is known, in the farm's units", () => {
    expect([weightWords(4483, "metric"), weightWords(453.59237, "US")]).toEqual(["4480 kg", "1000 lb"]);
    expect([grassFigure(1340, "metric"), grassFigure(1340, "US")]).toEqual(["1.3", "3000"]); // 2,954 lb
  });

  it("says shares and counts", () => {
    expect(percentWords(0.876)).toBe("88 %");
    expect([countWords(1, "day"), countWords(205, "day"), countWords(2, "box", "boxes")]).toEqual(["1 day", "205 days", "2 boxes"]);
  });
});

describe("money", () => {
  it.each([[0, "£0"], [0.2, "under £1"], [7.6, "£8"], [99.4, "£99"], [101, "£100"], [102.5, "£105"], [1613, "£1,615"], [1_234_567, "£1,234,565"]])("of %d is %s: to five from a hundred up", (money, words) => {
    expect(priceWords(money, "GBP")).toBe(words);
  });

  it("is about so much, but for nothing and next to nothing", () => {
    expect([aboutPrice(1611, "GBP"), aboutPrice(1611, "CHF"), aboutPrice(0.3, "GBP"), aboutPrice(0, "GBP")]).toEqual(["about £1,610", "about 1,610 CHF", "under £1", "nothing"]);
  });
});

describe("how sure a plan is", () => {
  it("is firm, then likely, then an outline", () => {
    expect(surenessWords("2027-04-23", "2027-05-21", "2027-10-31")).toBe("Firm to 23 Apr, likely to 21 May, an outline from then on: walk the grass and plan again.");
  });

  it("says no more than the season has", () => {
    expect(surenessWords("2027-04-23", "2027-05-21", "2027-04-23")).toBe("All of it is firm.");
    expect(surenessWords("2027-04-23", "2027-05-21", "2027-05-21")).toBe("Firm to 23 Apr, likely from then on.");
  });
});
