/** What spreadsheets do to a grid: what is clear is read, what is not is said. */
import { describe, expect, it } from "vitest";
import { readGrid } from "../../src/plan/read-grid.js";
import { planOfStandings } from "../../src/plan/standings.js";
import { gridCsv } from "../../src/sheets/grid-csv.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { boxesOf } from "./dialects.js";
import { DAYS, SMALL } from "./small-farm.js";

const read = (text: string, farm = SMALL) => readGrid(text, farm, "grid.csv");
const findingsOf = (text: string, farm = SMALL) => {
  const result = read(text, farm);
  return result.ok ? [] : result.findings;
};

describe("days that may be two", () => {
  const days = ["06/05/2027", "06/06/2027"];
  const farm = tinyFarm({ firstDay: "2027-05-06", days: 32, cells: [cell("H1")], groups: [group("Cows")] });
  it("are not guessed: 6 May and 6 June, or 5 and 6 June", () => {
    expect(findingsOf(`cell,${days.join(",")}\nH1,C,C\n`, farm)).toMatchObject([
      { code: "day-form", column: 6, found: 'box B1: "06/05/2027" may be 2027-05-06 or 2027-06-05, and so with others in this row or column' },
    ]);
  });
});

describe("names that a spreadsheet spoilt", () => {
  const farm = tinyFarm({ firstDay: DAYS[0]!, days: 10, cells: ["007", "MAR1", "1-2", "3/4", "10"].map((name) => cell(name)), groups: [group("Cows")] });
  const rows = (head: string): string => `cell,${DAYS.join(",")}\n${head},C,C,C,C,C,C,C,C,C,C\n`;

  it.each(["7", "01/03/2027", "2-Jan", "0.75", "1.00E+03", "#NAME?"])("are asked for, not guessed: %s", (head) => {
    expect(findingsOf(rows(head), farm)).toMatchObject([{ line: 2, column: 1, code: "name-unknown", found: `box A2: "${head}" is no cell of this farm`, next: expect.stringMatching(/^007, MAR1 or 1-2 or another\?.*apostrophe before it, '007$/) }]);
  });

  it("are read with their apostrophe and without", () => {
    const heads = ["'007", "007", "'MAR1", "3/4", "10"];
    expect(heads.map((head) => read(rows(head), farm)).map((result) => result.ok && result.value.stays[0]!.cell)).toEqual(["007", "007", "MAR1", "3/4", "10"]);
  });

  it("are read with it inside a box too", () => {
    const boxes = ["10", "10>'007", "'MAR1", "'MAR1>3/4", ...Array<string>(6).fill("")];
    const result = read(`group,${DAYS.join(",")}\nCows,${boxes.join(",")}\ncut,'007 hay;'MAR1 topping,,,,,,,,,\n`, farm);
    expect(result.ok && result.value.stays.map((stay) => stay.cell)).toEqual(["10", "007", "MAR1", "3/4"]);
    expect(result.ok && result.value.cuts.map((cut) => cut.cell)).toEqual(["007", "MAR1"]);
  });

  it("are no concern of other farms", () => {
    expect(findingsOf(`cell,${DAYS.join(",")}\n7,,,,,,,,,,\n`)).toMatchObject([{ code: "name-unknown", next: expect.not.stringContaining("apostrophe") }]);
  });
});

describe("a file that a spreadsheet took for another character set", () => {
  it.each(["ï»¿", "п»ї", "Ôªø"])("is known by its mark %s", (mark) => {
    expect(findingsOf(`${mark}cell,${DAYS.join(",")}\nH1,,,,,,,,,,\n`)).toMatchObject([{ code: "letters-garbled", next: expect.stringContaining("Unicode (UTF-8)") }]);
  });

  it("has a mark only where there are letters beyond ASCII", () => {
    const plan = { stays: [], cuts: [] };
    expect(gridCsv(SMALL, plan).startsWith("cell")).toBe(true);
    expect(gridCsv(tinyFarm({ cells: [cell("Ж1")], groups: [group("Cows")] }), plan).startsWith("\uFEFFcell")).toBe(true);
  });
});

describe("a grid that was not seen whole", () => {
  it("says that columns are too narrow for their days", () => {
    expect(findingsOf(`cell,${DAYS.map(() => "########").join(",")}\nH1,,,,,,,,,,\n`)).toMatchObject([{ code: "day-form", next: expect.stringContaining("wide enough") }]);
  });

  it("says that rows stand in one box each", () => {
    expect(findingsOf(`"cell,${DAYS.join(",")}"\n"H1,C,,,,,,,,,"\n`)).toMatchObject([{ code: "one-box", found: "box A1: the whole row stands in one box" }]);
  });
});

describe("rows that lost their last empty columns sixteen at a time", () => {
  const farm = tinyFarm({ days: 40, cells: [cell("H1"), cell("H2")], groups: [group("Cows")] });
  const plan = planOfStandings(Array.from({ length: 40 }, (_, i) => ({ group: "Cows", cell: i % 2 ? "H1" : "H2", yard: null, day: boxesOf(gridCsv(farm, { stays: [], cuts: [] }, "day"))[i + 1]![0]! })), [], farm);
  const lines = gridCsv(farm, plan, "day").split("\r\n").slice(0, 41);
  const cutShort = (from: number, to: number): string => lines.map((line, i) => (i >= from && i < to ? line.replace(/,$/, "") : line)).join("\r\n");

  it("are read", () => {
    for (const text of [cutShort(16, 32), cutShort(32, 41), cutShort(16, 41)]) {
      const result = read(text, farm);
      expect(result.ok && result.value).toEqual(plan);
    }
  });

  it("are no row that lost a box, nor rows with the head", () => {
    expect(findingsOf(cutShort(20, 21), farm).map(({ code, line }) => [code, line])).toEqual([["row-length", 21]]);
    expect(findingsOf(cutShort(1, 16), farm)).toHaveLength(15);
    expect(findingsOf([...lines.slice(0, 33)].join("\r\n").replace(/,$/, ""), farm).map(({ code }) => code)).toContain("row-length");
  });
});

describe("what is written", () => {
  const twice = tinyFarm({ cells: [cell("H1"), cell("+2")], groups: [group("L", { letter: "C" }), group("C L", { letter: "L" })] });
  const day = twice.season.firstDay;

  it("is read by letters where a letter is another group's name, and a cut of +2 is one", () => {
    const plan = planOfStandings([{ group: "L", cell: "H1", yard: null, day }, { group: "C L", cell: "H1", yard: null, day }], [{ cell: "H1", cut: "hay", day }, { cell: "+2", cut: "topping", day }], twice);
    for (const form of ["cell", "group", "day"] as const) {
      const result = read(gridCsv(twice, plan, form), twice);
      expect(result.ok ? result.value : result.findings).toEqual(plan);
    }
  });

  it("does not depend on the order of stays and cuts", () => {
    const stays = [{ group: "L", cell: "H1", yard: null, firstDay: day, lastDay: day }, { group: "C L", cell: "+2", yard: null, firstDay: day, lastDay: day }];
    const cuts = [{ cell: "H1", cut: "hay", day }, { cell: "H1", cut: "topping", day }, { cell: "+2", cut: "hay", day }] as const;
    for (const form of ["cell", "group"] as const) expect(gridCsv(twice, { stays: [...stays].reverse(), cuts: [...cuts].reverse() }, form)).toBe(gridCsv(twice, { stays, cuts }, form));
  });
});
