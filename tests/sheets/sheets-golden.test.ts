/** Month, week, day and pen sheets of two planned farms as they were looked at, on the paper of each: a printer that takes only A4, and one that takes only letter. */
import { describe, it } from "vitest";
import { SHEET_KINDS, type SheetInput } from "../../src/cli/sheets-table.js";
import { NO_CALLS } from "../../src/farm/calls.js";
import { expectGolden } from "../golden/golden.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";

const words = englishWords();

/** By farm the sheets that are kept: a day with a tow on two sheets, a day with a move, the evening before the season, a week and a month with cuts. */
const KEPT: Readonly<Record<"withy-end" | "rushy-leys", Readonly<Record<string, readonly string[]>>>> = {
  "withy-end": { day: ["2027-06-16", "2027-05-20", "2027-04-09"], week: ["2027-06-28"], month: ["2027-07-01"] },
  "rushy-leys": { day: ["2027-06-13", "2027-06-15"], week: ["2027-06-07"], month: ["2027-06-01"], pens: ["2027-04-20"] },
};

describe.each(Object.entries(KEPT))("sheets of %s", (farm, kinds) => {
  const sheet = plannedFarm(farm as keyof typeof KEPT);

  it.each(Object.entries(kinds).flatMap(([kind, days]) => days.flatMap((day) => (kind === "pens" ? (["a4"] as const) : (["a4", "letter"] as const)).map((paper) => [kind, day, paper] as const))))(
    "%s of %s on %s is as it was looked at", (kind, day, paper) => {
      const input: SheetInput = { ...sheet, words, paper, printedOn: "2027-04-01", calls: NO_CALLS, day };
      // Of the pens the first: their drawings are large.
      expectGolden(`${farm}/${kind}-${day}-${paper}.html`, SHEET_KINDS[kind]!.html(input)[0]!);
    });
});
