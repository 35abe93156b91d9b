import { describe, expect, it } from "vitest";
import { KINDS } from "../../src/farm/scenario.js";
import { orderedPlan } from "../../src/plan/standings.js";
import { addDays, weekdayOf } from "../../src/quantity/calendar.js";
import { seasonGridHtml } from "../../src/sheets/season-grid-html.js";
import { pushedApart } from "../../src/sheets/grid/group-rows.js";
import { daySpans, wholeParts } from "../../src/sheets/grid/parts.js";
import { bar } from "../../src/sheets/grid/bars.js";
import { footOf } from "../../src/sheets/grid/foot.js";
import { keyRows } from "../../src/sheets/grid/key.js";
import { canvasOf, frameOf, layoutOf, type Frame, type Layout } from "../../src/sheets/grid/layout.js";
import { restOf } from "../../src/sheets/grid/stay-facts.js";
import { wire } from "../../src/sheets/grid/wire.js";
import { notesOf } from "../../src/sheets/notes.js";
import { shutGround } from "../../src/sheets/shut-ground.js";
import { markOf, MARKS } from "../../src/sheets/marks.js";
import { madeDates, type Sheet } from "../../src/sheets/made.js";
import { seasonDays } from "../../src/sheets/season-days.js";
import { lifelike } from "../fixtures/lifelike.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { expectGolden } from "../golden/golden.js";
import { TINY, TINY_MADE, TINY_PLAN, TINY_REPORT } from "../golden/tiny-season.js";
import { busySeason } from "./busy-season.js";
import { faultsOf } from "./well-formed.js";
import { englishWords } from "../fixtures/planned-farm.js";

const words = englishWords();

const { scenario, plan, report, made } = lifelike();
const html = seasonGridHtml(scenario, plan, report, made, words);
const busy = busySeason();
const busyPage = seasonGridHtml(busy.scenario, busy.plan, busy.report, busy.made, words);
const A4 = canvasOf("a4");
const frameWithRows = (frame: Frame): Layout => layoutOf(frame, 30);
const tiny = seasonGridHtml(TINY, TINY_PLAN, TINY_REPORT, TINY_MADE, words);

/** Every kind at once, 42 cells, US units, names that try to break out of the page. */
function crowded(): string {
  const cells = Array.from({ length: 42 }, (_, i) => cell(`${"ABCDEF"[Math.floor(i / 7)]!}${(i % 7) + 1}`, { field: `Field ${"ABCDEF"[Math.floor(i / 7)]!} & "co" <b>` }));
  const groups = KINDS.map((kind) => group(`${kind} <i>`, { kind, letter: MARKS[kind].letter, animalClass: "" }));
  const farm = tinyFarm({ days: 189, firstDay: "2027-04-25", cells, groups, more: { units: "US", farm: "A & B <script>" } });
  const stays = groups.flatMap((one, i) => Array.from({ length: 27 }, (_, k) => ({
    group: one.name, cell: cells[(i * 4 + k * 5) % 42]!.name, yard: null, firstDay: addDays("2027-04-25", 7 * k), lastDay: addDays("2027-04-25", 7 * k + 6),
  })));
  const breaches = [{ rule: "rest-period" as const, group: "cattle <i>", cell: "A1", firstDay: "2027-06-01", lastDay: "2027-06-01", found: "10 d", allowed: "18 d" }];
  return seasonGridHtml(farm, orderedPlan(stays, [], farm), { ...TINY_REPORT, cells: [], breaches }, { ...TINY_MADE, ...madeDates("2027-06-21") }, words);
}

describe("season grid as a page", () => {
  it("is the one that was looked at", () => expectGolden("tiny/season-grid.html", tiny));

  it.each([["lifelike", html], ["busy", busyPage], ["tiny", tiny], ["crowded", crowded()]])("is well-formed, ids once: %s", (_, page) => {
    expect(faultsOf(page)).toEqual([]);
  });

  it("fits the window: no width of its own on a screen, the paper's in print", () => {
    const [screen, print] = html.split("@media print");
    expect(screen).toContain(".sheet svg{width:100%;");
    expect(print).toMatch(/\.sheet svg\{width:281mm;min-width:0/);
    expect(html).not.toMatch(/<svg[^>]* width=/);
  });

  it("tells cautions without keys of tables", () => {
    expect(tiny.slice(tiny.indexOf('id="cautions"'))).not.toMatch(/energiser\.|heat\.|from memory|common practice|\([a-z]+\.[a-z]/);
    expect(tiny).toContain("No hauls on hot, close days (THI 79 or more)");
  });

  it("needs nothing from outside", () => {
    expect(html).not.toMatch(/https?:|\/\/[a-z]|url\(|@import|<script|<link|<img|src=/i);
  });

  it("draws nothing outside its paper", () => {
    for (const page of [html, busyPage, tiny, crowded()]) {
      for (const [, x, y, w, h] of page.matchAll(/<rect x="([-\d.]+)" y="([-\d.]+)" width="([\d.]+)" height="([\d.]+)"/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(0.5);
        expect(Number(x) + Number(w)).toBeLessThanOrEqual(A4.width - 0.5);
        expect(Number(y) + Number(h)).toBeLessThanOrEqual(A4.height);
      }
      for (const [, x, y] of page.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)"/g)) {
        expect(Number(x)).toBeLessThanOrEqual(A4.width);
        expect(Number(y)).toBeLessThanOrEqual(A4.height);
      }
    }
  });

  it("has a table twin: every stay with cell, days, group and how sure", () => {
    const twin = html.slice(html.indexOf('class="twin"'));
    expect([...twin.matchAll(/<tr><th scope="row">/g)].length).toBeGreaterThanOrEqual(plan.stays.length + plan.cuts.length + scenario.cells.length);
    expect(twin).toContain('<th scope="row">K4</th><td>Mon 3 May</td><td>Sun 27 Jun</td><td>56</td><td>Pigs</td><td>done</td>');
    expect(twin).toContain('<th scope="row">F3</th><td>Sun 4 Jul</td><td>Sun 4 Jul</td><td>1</td><td>cut for hay</td><td>firm</td>');
  });

  it("gives a note one number in grid, foot and twin", () => {
    expect(tiny).toContain("Allowed at a price, number 2. Wed 19 May: Cows in F2, 2 days of rest, 21 usual. About £3.");
    const numbers = [...tiny.matchAll(/<path class="box"[^>]*\/><text[^>]*>(\d+)<\/text>/g)].map((match) => match[1]);
    // in the row of notes, in the foot's list, and the sample of the key
    expect(numbers.filter((number) => number === "2").length).toBe(2);
    expect(numbers.filter((number) => number === "1").length).toBe(3);
  });

  it("marks what must be put right in black, and only that", () => {
    expect(crowded()).toContain("To put right, number");
    expect(html).not.toContain("To put right");
  });

  it("says how sure: three frames, and no figure of rest for outline days", () => {
    const rests = (page: string): number => [...page.matchAll(/class="rim"[^>]*>\d+<\/text>/g)].length;
    const early = seasonGridHtml(scenario, plan, report, { ...made, ...madeDates("2027-04-10") }, words);
    expect(rests(html)).toBeGreaterThan(rests(early));
    for (const words of ["done, as written down", "firm to 4 Jul", "likely to 1 Aug", "outline: days and cells will still change"]) expect(html).toContain(words);
  });

  it("numbers the pigs' strips and counts days rested", () => {
    for (const strip of ["P 1", "P 8"]) expect(html).toContain(`>${strip}</text>`);
    // Cows left H2 on 6 May, heifers enter on 15 May: 7, 8, ... 14 May are eight days of rest
    expect(tiny).toMatch(/class="rim"[^>]*>8<\/text>/);
  });
});

describe("the key", () => {
  const wordsOf = (from: Sheet): string[] => {
    const key = keyRows(frameOf(from, wholeParts(from)[0]!, A4, words), notesOf(from, words).numbered);
    return key.flat().map((entry) => entry.words);
  };
  const tinySheet: Sheet = { scenario: TINY, plan: TINY_PLAN, report: TINY_REPORT, made: TINY_MADE };

  it("shows what the sheet shows", () => {
    expect(wordsOf(tinySheet)).toEqual([
      "done or firm", "likely", "young cows", "hens", "pigs, by strips (P 1)", "closed, and why", "shut in part", "cut", "days rested", "hens follow", "allowed at a price",
    ]);
    expect(wordsOf(busy)).toContain("C+Cb together");
  });

  it("and nothing else", () => {
    const cows = { ...TINY_PLAN, stays: TINY_PLAN.stays.filter((stay) => stay.group === "Cows"), cuts: [] };
    const open = { ...TINY, cells: TINY.cells.map((one) => ({ ...one, closed: [] })) };
    const unpaid = { ...TINY_REPORT, charges: [], cells: [] };
    expect(wordsOf({ scenario: open, plan: cows, report: unpaid, made: { ...TINY_MADE, ...madeDates("2027-05-20") } })).toEqual(["done or firm", "days rested"]);
  });
});

describe("narrow bars", () => {
  const drawn = (labels: readonly (readonly string[])[], w: number): string =>
    bar({ kind: "pigs", mark: markOf(group("Pigs", { kind: "pigs", letter: "P" })), sure: "firm", labels, box: { x: 10, y: 10, w, h: 4 } });

  it("say nothing where a strip's number does not fit, and never press it together", () => {
    expect(drawn([["P 11"]], 15)).toContain(">P 11</text>");
    expect(drawn([["P 11"]], 2.1)).not.toContain("<text");
    expect(drawn([["P 11"]], 2.1) + drawn([["C+Cb"], ["C", "Cb"]], 3)).not.toContain("textLength");
  });

  it("set the letters of two groups one under the other", () => {
    expect(drawn([["C+Cb"], ["C", "Cb"]], 12)).toContain(">C+Cb</text>");
    expect([...drawn([["C+Cb"], ["C", "Cb"]], 3.4).matchAll(/<text[^>]*>(\w+)<\/text>/g)].map((match) => match[1])).toEqual(["C", "Cb"]);
  });

  it("call a yard that does not fit its day a yard", () => {
    const plan_ = { ...TINY_PLAN, stays: TINY_PLAN.stays.map((stay) => (stay.yard === null ? stay : { ...stay, yard: "Long barn yard", lastDay: stay.firstDay })) };
    const farm = { ...TINY, yards: TINY.yards.map((yard) => ({ ...yard, name: "Long barn yard" })) };
    expect(seasonGridHtml(farm, plan_, TINY_REPORT, TINY_MADE, words)).toMatch(/rotate\(-90[^>]*>yard<\/text>/);
  });
});

describe("a figure of rest", () => {
  it("has its room: the wire of worked ground ends before it", () => {
    const cows = TINY_PLAN.stays.map((stay) => (stay.cell === "F2" && stay.firstDay === "2027-05-19" ? { ...stay, cell: "H1", firstDay: "2027-05-24" } : stay));
    const busyH1: Sheet = { scenario: TINY, plan: { ...TINY_PLAN, stays: cows }, report: TINY_REPORT, made: TINY_MADE };
    const frame = frameOf(busyH1, wholeParts(busyH1)[0]!, A4, words);
    const here = cows.filter((stay) => stay.cell === "H1");
    const shut = shutGround(busyH1, TINY.cells[0]!, words);
    expect(shut.map((span) => [span.firstDay, span.lastDay])).toEqual([["2027-05-13", "2027-05-23"]]);
    const rest = restOf(frame, here.at(-1)!, here, shut)!;
    expect(rest.days).toBe(20);
    const ends = [...wire(frameWithRows(frame), { of: TINY.cells[0]!, y: 50, h: 5 }, shut[0]!, [rest]).matchAll(/L([\d.]+) /g)].map(([, x]) => Number(x));
    expect(Math.max(...ends)).toBeLessThan(rest.from);
    // ground that is closed to its last day keeps its whole wire, and the figure stays away
    expect(restOf(frame, here.at(-1)!, here, shut.map((span) => ({ ...span, openShare: 0 })))).toBeNull();
  });
});

describe("triangles", () => {
  it("stand over their days, and apart where two would overlap, also at the end of the sheet", () => {
    expect(pushedApart([10, 50], 2, 98, 4)).toEqual([10, 50]);
    expect(pushedApart([0, 1, 50, 51], 2, 98, 4)).toEqual([2, 6, 50, 54]);
    expect(pushedApart([97, 99, 99], 2, 98, 4)).toEqual([90, 94, 98]);
  });
});

describe("sheets", () => {
  it("hold up to 110 days, break on a Monday, and repeat the last week", () => {
    const days = seasonDays(scenario);
    const [first, second] = daySpans(days);
    expect(first!.days.length + second!.days.length).toBe(205 + 7);
    expect(weekdayOf(second!.days[0]!)).toBe(0);
    expect(second!.repeatedTo).toBe(first!.days.at(-1));
    for (const length of [7, 110, 111, 205, 300, 400]) {
      const spans = daySpans(Array.from({ length }, (_, i) => addDays("2027-01-01", i)));
      expect(Math.max(...spans.map((span) => span.days.length))).toBeLessThanOrEqual(110);
      expect(new Set(spans.flatMap((span) => span.days)).size).toBe(length);
    }
  });

  it("say that a week is on both", () => {
    expect(html).toContain("Mon 19 Jul to Sun 31 Oct. 19 Jul to 25 Jul is on both sheets.");
    expect(html).toContain("Throw older sheets away.");
  });

  it("hold 18 cells, five groups, three yards and many notes in two, however full the foot", () => {
    expect(busyPage).toContain("Sheet 2 of 2");
    expect(busyPage).not.toContain("Sheet 1 of 4");
    // rows shrink to 4.6 mm and no further: cell codes stand one row apart
    const codes = [...busyPage.matchAll(/<text x="5\.6" y="([\d.]+)"/g)].map(([, y]) => Number(y));
    const apart = codes.slice(1).map((y, i) => y - codes[i]!).filter((step) => step > 0);
    expect(Math.min(...apart)).toBeGreaterThanOrEqual(4.59);
    expect(codes.length).toBe(36);
  });

  it("keep only the yards that are used on their days", () => {
    const yardRows = (name: string): number => [...busyPage.matchAll(new RegExp(`font-size="3"[^>]*>${name}</text>`, "g"))].length;
    expect(busy.scenario.yards.map((yard) => [yard.name, yardRows(yard.name)])).toEqual([["Barn lot", 1], ["Hen barn", 2], ["Bull pen", 2]]);
  });

  it("tell in the foot the dearest notes that fit, and how many more there are", () => {
    const notes = notesOf(busy, words);
    const foot = footOf(frameOf(busy, wholeParts(busy)[0]!, A4, words), notes, { noteRows: 1, lines: 3 });
    const [block] = foot.notes;
    const left = notes.numbered.filter((note) => wholeParts(busy)[0]!.days.includes(note.day) && !block!.notes.includes(note));
    expect(block!.more).toBe(left.length);
    expect(left.length).toBeGreaterThan(0);
    expect(Math.max(...left.map((note) => note.money))).toBeLessThanOrEqual(Math.min(...block!.notes.map((note) => note.money)));
    expect(block!.notes.map((note) => note.number)).toEqual(block!.notes.map((note) => note.number).sort((a, b) => a - b));
  });
});
