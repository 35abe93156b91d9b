/** The bench's tables say what was measured: gaps and savings by hand-worked figures. */
import { describe, expect, it } from "vitest";
import { measured } from "../../src/bench/measured.js";
import { alongTable, bestBound, farmTable, growthTable, markdown, standing } from "../../src/bench/tables.js";

const hand = measured("hand rule", { cost: 200, breaches: 0, seconds: 0.1234, firstPlanSeconds: 0.1234 });
const search = measured("search alone", { cost: 125, breaches: 0, seconds: 12.34, work: "1,000 steps", memoryMb: 99.6 });
const bound = measured("bound alone", { bound: 100 });
const broken = measured("day by day, HiGHS", { cost: 90, breaches: 2, bound: 60, note: "ended after 5 s" });
const farm = { farm: "S", size: "8 cells, 2 groups, 90 days", ways: [hand, search, bound, broken] };

describe("the bench's table of a farm", () => {
  const table = farmTable(farm);
  const row = (way: string): Record<string, string> => Object.fromEntries(table.rows.find((own) => own[0] === way)!.map((box, i) => [table.head[i]!, box]));

  it("holds every way against the best bound of all", () => {
    expect(bestBound(farm.ways)).toBe(100);
    // 125 - 100 = 25, of 125 a fifth; 75 of the 100 between hand rule and bound are saved.
    expect(row("search alone")).toMatchObject({ cost: "125.0", gap: "25.0", "gap of cost": "20.0 %", "saved of (hand rule - bound)": "75.0 %", seconds: "12.3", "memory, MB": "100" });
    expect(row("hand rule")).toMatchObject({ gap: "100.0", "saved of (hand rule - bound)": "0.0 %", "first plan, s": "0.123" });
  });

  it("gives a plan that breaks rules no gap and no saving", () => {
    expect(row("day by day, HiGHS")).toMatchObject({ cost: "90.0", "broken rules": "2", bound: "60.0", gap: "-", "saved of (hand rule - bound)": "-", note: "ended after 5 s" });
  });

  it("cries out when a bound stands above a valid plan", () => {
    const wrong = farmTable({ ...farm, ways: [hand, measured("bound alone", { bound: 201 })] });
    expect(wrong.rows[0]!.at(-1)).toBe("THE BOUND IS ABOVE THIS VALID PLAN");
  });

  it("divides by nothing where hand rule and bound meet", () => {
    expect(standing(hand, 200, 200)).toEqual({ gap: 0, ofCost: 0, saved: null });
    expect(standing(measured("free", { cost: 0, breaches: 0 }), 0, 0)).toEqual({ gap: 0, ofCost: 0, saved: null });
  });
});

describe("the bench's other tables", () => {
  it("looks at the whole road at each mark until it ended", () => {
    const along = [{ seconds: 0.2, cost: 200, bound: 0 }, { seconds: 1.5, cost: 150, bound: 90 }, { seconds: 4, cost: 125, bound: 100 }];
    const { head, rows } = alongTable([{ ...farm, ways: [measured("whole road", { seconds: 4.5, along })] }]);
    expect(head).toEqual(["farm", "1 s", "2 s", "5 s"]);
    expect(rows).toEqual([["S", "200.0 (100.0 %)", "150.0 (40.0 %)", "125.0 (20.0 %), ended"]]);
  });

  it("shows growth size by size", () => {
    const { rows } = growthTable("more cells", [{ size: "8/2/90", handSeconds: 0.1, handCost: 200, cost: 125, searchSeconds: 2, bound: 100, boundSeconds: 3, columns: 12345, memoryMb: 80 }]);
    expect(rows).toEqual([["8/2/90", "200.0", "0.100", "125.0", "2.0", "100.0", "3.0", "20.0 %", "12,345", "80"]]);
  });

  it("is Markdown with a line for each row", () => {
    const lines = markdown(farmTable(farm)).split("\n");
    expect(lines[0]).toBe("## S: 8 cells, 2 groups, 90 days");
    const bars = lines.filter((line) => line.startsWith("|")).map((line) => line.split("|").length);
    expect(bars.length).toBe(2 + farm.ways.length);
    expect(new Set(bars).size).toBe(1);
  });
});
