/** Figures as people read them: no finer than they are known. */
import { describe, expect, it } from "vitest";
import { countWords, dayWords, hayWords, minutesWords, moneyWords, nitrogenWords, percentWords, spanWords, surenessWords, tonnesWords } from "../../src/cli/words.js";

describe("days", () => {
  it("say the month as a word", () => {
    expect(dayWords("2027-06-03")).toBe("3 Jun");
  });

  it.each([
    ["2027-05-03", "2027-05-09", "3 to 9 May"],
    ["2027-04-28", "2027-05-03", "28 Apr to 3 May"],
    ["2027-05-03", "2027-05-03", "3 May"],
    ["2027-05-03", "2028-05-09", "3 May 2027 to 9 May 2028"],
  ])("%s to %s is %s", (firstDay, lastDay, words) => {
    expect(spanWords(firstDay, lastDay)).toBe(words);
  });
});

describe("amounts", () => {
  it.each([
    [0, "0 GBP"], [0.2, "under 1 GBP"], [0.5, "1 GBP"], [812.4, "812 GBP"], [1234.5, "1235 GBP"], [12345, "12 345 GBP"], [1234567, "1 234 567 GBP"],
  ])("money %d is %s", (amount, words) => {
    expect(moneyWords(amount, "GBP")).toBe(words);
  });

  // a fifth either way, rounded outward to 50 kg; a pound is 0.45359237 kg
  it.each([
    [0, "metric", "none"], [40, "metric", "up to 50 kg"], [500, "metric", "400 to 600 kg"], [510, "metric", "400 to 650 kg"], [453.59237, "US", "800 to 1200 lb"],
  ] as const)("hay of %d kg in %s is %s", (kg, units, words) => {
    expect(hayWords(kg, units)).toBe(words);
  });

  it.each([[3, "under 5 kg N"], [14, "about 10 kg N"], [166, "about 170 kg N"]])("nitrogen of %d kg is %s", (kg, words) => {
    expect(nitrogenWords(kg)).toBe(words);
  });

  it.each([[0, "0 min"], [12, "10 min"], [13, "15 min"], [58, "1 h"], [87, "1 h 25 min"]])("%d minutes are %s", (minutes, words) => {
    expect(minutesWords(minutes)).toBe(words);
  });

  it("says tonnes to a tenth, and short tons where the farm's units are US", () => {
    expect(tonnesWords(12_340, "metric")).toBe("12.3 t");
    expect(tonnesWords(2000 * 0.45359237, "US")).toBe("1.0 short ton");
  });

  it("says shares and counts", () => {
    expect(percentWords(0.876)).toBe("88 %");
    expect([countWords(1, "day"), countWords(205, "day"), countWords(2, "box", "boxes")]).toEqual(["1 day", "205 days", "2 boxes"]);
  });
});

describe("how sure a plan is", () => {
  // two weeks are days 1 to 14, six weeks days 1 to 42
  it("is firm for two weeks, likely to six, then an outline", () => {
    expect(surenessWords("2027-04-10", "2027-10-31")).toBe(
      "Firm to 23 Apr, likely to 21 May, an outline from then on: plan again as the grass shows itself.",
    );
  });

  it("says no more than the season has", () => {
    expect(surenessWords("2027-04-10", "2027-04-23")).toBe("All of it is firm.");
    expect(surenessWords("2027-04-10", "2027-05-21")).toBe("Firm to 23 Apr, likely from then on.");
  });
});
