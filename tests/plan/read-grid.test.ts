import { test, fc } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../src/plan/plan.js";
import { readGrid, GRID_FORMS } from "../../src/plan/read-grid.js";
import { planOfStandings, type Standing } from "../../src/plan/standings.js";
import { gridCsv } from "../../src/sheets/grid-csv.js";
import { LOW_ACRE } from "../farm/read-text.js";
import { DAYS, SMALL } from "./small-farm.js";

const read = (text: string) => readGrid(text, SMALL, "grid.csv");

function planOf(text: string): Plan {
  const result = read(text);
  if (!result.ok) throw new Error(JSON.stringify(result.findings, null, 1));
  return result.value;
}

function findingsOf(text: string) {
  const result = read(text);
  return result.ok ? [] : result.findings;
}

const codes = (text: string): string[] => findingsOf(text).map((finding) => finding.code);

/** Days down; the columns after the day as given. */
const byDay = (head: string, rows: readonly string[]): string => [head, ...rows].join("\n");
const stay = (group: string, cell: string | null, yard: string | null, first: number, last: number) => ({
  group, cell, yard, firstDay: DAYS[first - 1]!, lastDay: DAYS[last - 1]!,
});

const TYPED = byDay("day,Cows,Cy,Layers,cut", [
  "2027-05-01,H1,yard,away,", "2027-05-02,,Barn lot,,", "2027-05-03,H1>H2,H1,Hen barn,F3 hay", "2027-05-04,,,yard,F3 topping; 10 hay",
  "2027-05-05,10,,yard>H1,", "2027-05-06,,,,", "2027-05-07,,,,", "2027-05-08,,,,", "2027-05-09,,,,", "2027-05-10,,away,,",
]);

const TYPED_PLAN: Plan = {
  stays: [
    stay("Cows", "H1", null, 1, 2), stay("Young cows", null, "Barn lot", 1, 2),
    stay("Cows", "H2", null, 3, 4), stay("Young cows", "H1", null, 3, 9), stay("Layers", null, "Hen barn", 3, 4),
    stay("Cows", "10", null, 5, 10), stay("Layers", "H1", null, 5, 10),
  ],
  cuts: [{ cell: "F3", cut: "hay", day: DAYS[2]! }, { cell: "10", cut: "hay", day: DAYS[3]! }, { cell: "F3", cut: "topping", day: DAYS[3]! }],
};

describe("reading a grid by days", () => {
  it("reads places, moves, yards, away, cuts and carries empty boxes on", () => {
    expect(planOf(TYPED)).toEqual(TYPED_PLAN);
  });

  it("says how many empty boxes it read as the day before", () => {
    const result = read(TYPED);
    expect(result.ok && result.notes.map((note) => [note.code, note.found])).toEqual([
      ["as-before", "box B1: Cows has 7 empty boxes"], ["as-before", "box C1: Young cows has 6 empty boxes"], ["as-before", "box D1: Layers has 6 empty boxes"],
    ]);
  });

  it("takes semicolons, a byte order mark, and lines ended as Windows ends them", () => {
    const text = TYPED.replaceAll("F3 topping; 10 hay", "F3 topping + 10 hay").replaceAll(",", ";").replaceAll("\n", "\r\n");
    expect(planOf(`\uFEFF${text}\r\n`)).toEqual(TYPED_PLAN);
  });

  it("takes the days in any order", () => {
    const [head, ...rows] = TYPED.split("\n");
    expect(planOf([head, ...rows.reverse()].join("\n"))).toEqual(TYPED_PLAN);
  });

  it("takes empty rows and columns that a spreadsheet leaves at the end", () => {
    expect(planOf(`${TYPED.split("\n").map((row) => `${row},,`).join("\n")}\n,,,,,,\n,,,,,,\n`)).toEqual(TYPED_PLAN);
  });
});

describe("reading a grid by groups and by cells", () => {
  const head = DAYS.join(",");
  it("reads groups down", () => {
    const rows = ["Cows,H1,,H2,,10,,,,,", "Cy,yard,,H1,,,,,,,away", "L,away,,Hen barn,,H1,,,,,", "cut,,,F3 hay,F3 topping + 10 hay,,,,,,"];
    expect(planOf([`group,${head}`, ...rows].join("\n"))).toEqual(TYPED_PLAN);
  });

  it("reads cells down, several letters or names in one box", () => {
    const rows = ["H1,C,C,Cy,Young cows,Cy Layers,Young cows L,Cy L,L Cy,L Cy,L", "H2,,,C,C,nobody,,,,,", "10,,,,hay,C,C,C,C,C,C", "F3,,,cut,topping,,,,,,",
      "Long 1,,,,,,,,,,", "yard: Barn lot,Cy,Cy,,,,,,,,", "yard,,,L,L,,,,,,"];
    expect(planOf([`cell,${head}`, ...rows].join("\n"))).toEqual(TYPED_PLAN);
  });

  it("holds a group in two places, and one in none: the check judges that", () => {
    const rows = ["H1,C,,,,,,,,,", "H2,C,,,,,,,,,"];
    expect(planOf([`cell,${head}`, ...rows].join("\n")).stays).toEqual([stay("Cows", "H1", null, 1, 1), stay("Cows", "H2", null, 1, 1)]);
  });

  it("says which cells have no row", () => {
    const result = read([`cell,${head}`, "H1,C,,,,,,,,,"].join("\n"));
    expect(result.ok && result.notes.map((note) => note.found)).toEqual(["no row for H2, 10, Long 1, F3"]);
  });
});

describe("what a grid gets wrong", () => {
  it("names a group and a cell that the farm does not know, with near names, line and character", () => {
    const text = TYPED.replace("Cows,Cy", "Cow,Cy").replace("2027-05-05,10", "2027-05-05,H9");
    const [cow, missing, ...others] = findingsOf(text);
    expect(cow).toMatchObject({ file: "grid.csv", line: 1, column: 5, code: "name-unknown", next: "Cows?" });
    expect(missing).toMatchObject({ code: "group-missing", found: "Cows is not in the grid" });
    expect(others).toEqual([]);
    expect(findingsOf(TYPED.replace("2027-05-05,10", "2027-05-05,H9"))).toMatchObject([{ line: 6, column: 12, code: "name-unknown", found: 'box B6: "H9" is no place of this farm', next: "H1 or H2?" }]);
  });

  it("asks which way round a day was meant", () => {
    expect(findingsOf(TYPED.replace("2027-05-04", "4/5/2027"))).toMatchObject([{ line: 5, code: "day-form", next: "2027-05-04 or 2027-04-05" }]);
    expect(findingsOf(TYPED.replace("2027-05-10", "2027-05-32"))).toMatchObject([{ line: 11, code: "day-form" }]);
  });

  it("finds days that are missing, doubled or out of season", () => {
    expect(findingsOf(TYPED.replace("2027-05-10,,away,,", ""))).toMatchObject([{ code: "day-missing", found: "2027-05-10: no box" }]);
    expect(codes(TYPED.replace("2027-05-10", "2027-05-09"))).toEqual(["day-missing", "day-twice"]);
    expect(codes(`${TYPED}\n2027-05-11,,,,`)).toEqual(["day-outside"]);
  });

  const written = (form: (year: string, month: string, day: string) => string, text = TYPED): string =>
    text.replaceAll(/(\d{4})-(\d\d)-(\d\d)/g, (_, year: string, month: string, day: string) => form(year, month, day));

  it.each([
    ["day, month, year", written((y, m, d) => `${d}/${m}/${y}`), "01/05/2027 is 2027-05-01"],
    ["day, month, year", written((y, m, d) => `${d}.${m}.${y.slice(2)}`), "01.05.27 is 2027-05-01"],
    ["month, day, year", written((y, m, d) => `${Number(m)}/${Number(d)}/${y}`), "5/1/2027 is 2027-05-01"],
    ["year, month, day", written((y, m, d) => `${y}/${m}/${d}`), "2027/05/01 is 2027-05-01"],
    ["day and the month's name", written((_y, _m, d) => `${d}-May`), "01-May is 2027-05-01"],
    ["days counted from 1900", written((_y, _m, d) => String(46507 + Number(d))), "46508 is 2027-05-01"],
  ])("reads days that a spreadsheet turned to %s, and says so once", (form, text, example) => {
    const result = read(text);
    expect(result.ok && result.value).toEqual(TYPED_PLAN);
    const notes = result.ok ? result.notes.filter(({ code }) => code === "days-read") : [];
    expect(notes.map(({ found }) => found)).toEqual([`box A2: 10 days are read as ${form}: ${example}`]);
  });

  it("reads days of another form across as well, and some among ISO days", () => {
    const across = ["group,1/5/2027,2/5/2027," + DAYS.slice(2).join(","), "Cows,H1,,H2,,10,,,,,", "Cy,yard,,H1,,,,,,,away", "L,away,,Hen barn,,H1,,,,,", "cut,,,F3 hay,F3 topping + 10 hay,,,,,,"];
    expect(planOf(across.join("\n"))).toEqual(TYPED_PLAN);
  });

  it.each([
    ["in no order that fits the season", written((y, m, d) => `${d}/${m}/${y}`, TYPED.replaceAll("2027-", "2026-"))],
    ["in two forms", written((y, m, d) => (Number(d) % 2 ? `${d}/${m}/${y}` : `${m}/${d}/${y}`))],
    ["out of order", written((y, m, d) => `${d}/${m}/${y}`, TYPED.replace("2027-05-02", "2027-05-09").replace("2027-05-09,,,,", "2027-05-02,,,,"))],
    ["numbers", written((_y, _m, d) => String(46500 + Number(d)))],
    ["without their year, and doubled", written((_y, _m, d) => `${Number(d) % 9}-May`)],
  ])("says once for the whole column that its days are %s", (_name, text) => {
    const found = findingsOf(text);
    expect(found).toMatchObject([{ code: "day-form", line: 2 }]);
    expect(found[0]!.found).toMatch(/nor are 9 more/);
  });

  it("says once that days lie outside the season, and each unknown name once", () => {
    expect(findingsOf(`${TYPED}\n2027-05-11,,,,\n2027-05-12,,,,`)).toMatchObject([{ code: "day-outside", found: "box A12: 2027-05-11 is not in the season, nor is 1 more day" }]);
    const twice = TYPED.replace("2027-05-06,,", "2027-05-06,H9,").replace("2027-05-05,10", "2027-05-05,H9");
    expect(findingsOf(twice)).toMatchObject([{ code: "name-unknown", found: 'box B6: "H9" is no place of this farm, nor in 1 more box' }]);
  });

  it("knows a farm file and a change by sight", () => {
    expect(findingsOf(LOW_ACRE)).toMatchObject([{ code: "not-a-plan", found: "this is a farm file, not a plan" }]);
    expect(findingsOf("change: x\ngroups: { Cows: { head: 3 } }\n")).toMatchObject([{ code: "not-a-plan", found: "this is a change to a farm, not a plan" }]);
  });

  it.each([["2027-05-05,10,,yard>H1", "add 1 empty box where it is missing"], ["2027-05-05,10,,yard>H1,,", "take 1 box out"], ["2027-05-05,10,,yard>H1,,,", "take 2 boxes out"]])("counts boxes: %s", (row, next) => {
    expect(findingsOf(TYPED.replace("2027-05-05,10,,yard>H1,", row))).toMatchObject([{ code: "row-length", next }]);
  });

  it("finds rows of another length and goes on reading", () => {
    expect(findingsOf(TYPED.replace("2027-05-05,10,,yard>H1,", "2027-05-05,H9"))).toMatchObject([
      { line: 6, code: "row-length", found: 'the row "2027-05-05" has 2 boxes, the head has 5' }, { line: 6, code: "name-unknown" },
    ]);
  });

  it("finds a group, a cell or a day named twice", () => {
    expect(codes(TYPED.replace("Cows,Cy,Layers", "Cows,C,Layers"))).toEqual(["group-missing", "name-twice"]);
    expect(codes(["cell," + DAYS.join(","), "H1,C,,,,,,,,,", "H1,,,,,,,,,,"].join("\n"))).toEqual(["name-twice"]);
  });

  it("refuses a move from where the group did not stand", () => {
    expect(findingsOf(TYPED.replace("H1>H2", "10>H2"))).toMatchObject([{ code: "move-from", next: "H1>H2" }]);
    expect(codes(TYPED.replace("H1>H2", "H1>10>H2"))).toEqual(["move-form"]);
  });

  it("does not guess where a group began", () => {
    expect(findingsOf(TYPED.replace("2027-05-01,H1,", "2027-05-01,,"))).toMatchObject([{ code: "nothing-there", line: 2 }, { code: "move-from", line: 4 }]);
  });

  it("refuses a cut without its kind, or in a yard", () => {
    expect(codes(TYPED.replace("F3 hay", "F3"))).toEqual(["cut-form"]);
    expect(codes(["cell," + DAYS.join(","), "yard,cut,,,,,,,,,"].join("\n"))).toEqual(["cut-form"]);
  });

  it("says what the first box may hold, and that a file is empty", () => {
    expect(findingsOf("when,Cows\n")).toMatchObject([{ code: "grid-form", found: 'the first box says "when"' }]);
    expect(findingsOf("")).toMatchObject([{ code: "grid-form", found: "the file is empty" }]);
    expect(codes('day,Cows\n2027-05-01,"H1\n')).toContain("quote-open");
  });

  test.prop([fc.string({ maxLength: 200 }), fc.constantFrom("day,", "group;", "cell,", "")])("never throws", (text, start) => {
    expect(typeof read(start + text).ok).toBe("boolean");
  });
});

const PLACES = [...SMALL.cells.map((c) => ({ cell: c.name, yard: null })), ...SMALL.yards.map((y) => ({ cell: null, yard: y.name }))];
const cutsArbitrary = fc.uniqueArray(
  fc.record({ cell: fc.constantFrom(...SMALL.cells.map((c) => c.name)), cut: fc.constantFrom("hay" as const, "topping" as const), day: fc.constantFrom(...DAYS) }),
  { maxLength: 5, selector: (cut) => JSON.stringify(cut) },
);
/** For each group and day one place or none; nobody may stand on the farm before a first box says so. */
const oneEach = fc.array(fc.option(fc.nat(PLACES.length - 1), { freq: 4 }), { minLength: 30, maxLength: 30 });
const planFrom = (places: readonly (number | null)[], cuts: Plan["cuts"]): Plan => {
  const standings = places.flatMap((place, i): Standing[] =>
    place === null ? [] : [{ group: SMALL.groups[Math.floor(i / 10)]!.name, ...PLACES[place]!, day: DAYS[i % 10]! }]);
  return planOfStandings(standings, cuts, SMALL);
};

describe("read(write(plan)) = plan", () => {
  for (const form of GRID_FORMS) {
    test.prop([oneEach, cutsArbitrary])(`in form ${form}`, (places, cuts) => {
      const plan = planFrom(places, cuts);
      expect(planOf(gridCsv(SMALL, plan, form))).toEqual(plan);
    });
  }

  test.prop([oneEach, oneEach, cutsArbitrary])("by cells also when a group stands in two places", (first, second, cuts) => {
    const one = planFrom(first, cuts);
    const standings = [...one.stays, ...planFrom(second, []).stays].flatMap((s) =>
      DAYS.filter((day) => s.firstDay <= day && day <= s.lastDay).map((day): Standing => ({ group: s.group, cell: s.cell, yard: s.yard, day })));
    const plan = planOfStandings(standings, cuts, SMALL);
    expect(planOf(gridCsv(SMALL, plan))).toEqual(plan);
  });
});
