/** Every sheet in a language that nobody speaks: what it still says in English is not in the catalogue. */
import { describe, expect, it } from "vitest";
import { pensFound } from "../../src/cli/pens.js";
import type { Screen } from "../../src/cli/screen.js";
import { SHEET_KINDS } from "../../src/cli/sheets-table.js";
import { NO_CALLS } from "../../src/farm/calls.js";
import { differences } from "../../src/words/compare.js";
import { loadCatalogue } from "../../src/files/words.js";
import type { Sheet } from "../../src/sheets/made.js";
import { wordsOf } from "../../src/words/words.js";
import { plannedFarm } from "../fixtures/planned-farm.js";
import { BROWSER, usePress } from "../sheets/print-checks.js";
import { pseudoLanguage, wordsSaid } from "./pseudo.js";

const english = loadCatalogue();
const pseudo = pseudoLanguage(english);
const SAID = wordsSaid(english);

const SCREEN: Screen = { say: () => undefined, aside: () => undefined, columns: null, live: false, heading: (text) => text, soft: (text) => text };

/** Names of English days and months that German does not have. */
const ENGLISH_DAYS = /\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun|\w+day|March|May|June?|July?|October|Oct|December|Dec)\b/g;

/** What stands on sheets as it is, in the language of the farm file, or of the rules, which are English. Nothing else. */
function asItIs({ scenario, plan, report }: Sheet): readonly string[] {
  const { groups, cells, fields, yards, people, handover } = scenario;
  return [
    scenario.farm, ...[...groups, ...cells, ...fields, ...yards, ...people].map(({ name }) => name), ...cells.flatMap(({ closed }) => closed.map(({ reason }) => reason)),
    ...groups.flatMap((group) => [group.animalClass, group.strip?.pen ?? ""]),
    ...Object.values(handover.ways), ...Object.values(handover.take), ...Object.values(handover.feed).flatMap(({ what, lies }) => [what, lies ?? ""]), handover.kitLies ?? "",
    ...[...report.charges, ...report.breaches].map(({ found }) => found), ...report.breaches.map(({ allowed }) => allowed),
    // where a published figure of the pens' text comes from
    ...pensFound(scenario, plan).pens.flatMap((pen) => [pen.nitrogenSource, ...pen.cells.flatMap(({ limits }) => limits.map(({ source }) => source))]),
  ].filter((text) => text !== "").sort((a, b) => b.length - a.length);
}

/** What a page says, to the eye and to a screen reader. */
function visible(html: string): string {
  const labels = [...html.matchAll(/ aria-label="([^"]*)"/g)].map((match) => match[1]!);
  const text = html.replaceAll(/<style>[^]*?<\/style>/g, " ").replaceAll(/<[^>]+>/g, "\n");
  return [text, ...labels].join("\n").replaceAll("&quot;", '"').replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");
}

/** A text wherever it stands as words of its own, broken into lines or not. */
function anywhere(text: string): RegExp {
  const escaped = text.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&").replaceAll(" ", "\\s+");
  return new RegExp(`(?<![A-Za-z])${escaped}(?![A-Za-z])`, "gi");
}

function englishIn(text: string, sheet: Sheet): readonly string[] {
  const rest = asItIs(sheet).reduce((left, one) => left.replaceAll(anywhere(one), " "), text);
  const said = (rest.match(/(?<![\p{L}])[A-Za-z]{3,}(?![\p{L}])/gu) ?? []).filter((word) => SAID.has(word.toLowerCase()));
  return [...new Set([...said, ...(rest.match(ENGLISH_DAYS) ?? [])])];
}

describe("sheets in a language that nobody speaks", () => {
  const press = usePress();
  const words = wordsOf(pseudo);
  const farms = (["withy-end", "rushy-leys"] as const).map((name) => ({ name, sheet: plannedFarm(name) }));
  const days = { season: "2027-06-01", month: "2027-06-01", week: "2027-06-14", day: "2027-06-16", pens: "2027-06-01" };
  const input = (sheet: Sheet, day: string) => ({ ...sheet, words, paper: "a4" as const, printedOn: "2027-05-01", calls: NO_CALLS, day });
  const asked = farms.flatMap(({ name, sheet }) => Object.entries(days).map(([kind, day]) => ({ kind, name, day, sheet })));

  it("take the arguments and marks of the English texts", () => {
    expect(differences(pseudo, english)).toEqual({ missing: [], unknown: [], unreadable: [], otherArguments: [] });
    expect(pseudo.texts["week.counted"]).toBe("Çôüñtêddd");
    expect(Object.keys(SHEET_KINDS).sort()).toEqual(Object.keys(days).sort());
  });

  it.each(asked)("say nothing in English: $kind of $name", ({ kind, day, sheet }) => {
    const of = SHEET_KINDS[kind]!;
    const pages = of.html(input(sheet, day));
    expect(pages.length).toBeGreaterThan(0);
    for (const page of pages) {
      expect(page).toContain('<html lang="de" dir="ltr">');
      expect(englishIn(visible(page), sheet)).toEqual([]);
    }
    expect(englishIn(of.txt(input(sheet, day), SCREEN, 100), sheet)).toEqual([]);
  });

  // One farm is enough on paper; day sheets may take a sheet more.
  const printed = asked.filter(({ kind, name }) => kind !== "day" && name === "rushy-leys").flatMap(({ kind, name, day, sheet }) => SHEET_KINDS[kind]!.html(input(sheet, day)).map((page, i) => ({ kind, name, page, number: i + 1 })));

  it.skipIf(!BROWSER).each(printed)("are whole and readable on paper: $kind of $name, $number", async ({ page }) => {
    // how many pages it takes hangs on the sans
    const faults = await press.faults(page, "a4", { pages: 0 });
    expect(faults.filter((fault) => !fault.endsWith("0 expected"))).toEqual([]);
  });
});
