import { describe, expect, it } from "vitest";
import { findingsOf, LOW_ACRE, lowAcre, scenarioOf } from "./read-text.js";

const cows = (name: string): string => lowAcre("  Cows:", `  ${name}:`);
const yards = (...names: string[]): string => `${LOW_ACRE}yards: { ${names.map((name) => `${name}: { cost: 4 GBP/d }`).join(", ")} }\n`;

describe("names that a written plan could not tell apart", () => {
  it.each([
    ["a group's name", cows('"Cows\\nBulls"')],
    ["a group's name", cows('"Cows\\t1"')],
    ["a group's name", cows('"Cows\\u2028Bulls"')],
    ["a group's name", cows("Cut")],
    ["a yard's name", yards('"Barn > lot"')],
    ["a yard's name", yards("away")],
    ["a yard's name", yards("Yard")],
    ["a yard's name", yards("L1")],
    ["a cell's name", lowAcre("      L1:", '      "L1\\0":')],
  ])("is refused: %s in %j", (what, text) => {
    const named = findingsOf(text).filter(({ code, found }) => code === "name-form" && found.endsWith(`cannot be ${what}`));
    expect(named).toHaveLength(1);
  });

  it.each([["7", "007"], ["10", "1E1"], ["1.5", "1.50"]])("%s and %s are one number to a spreadsheet", (one, two) => {
    const text = lowAcre("      L1:", `      ${JSON.stringify(one)}:`).replace("      L2:", `      ${JSON.stringify(two)}:`);
    expect(findingsOf(text)).toMatchObject([{ line: 8, code: "names-alike", found: `${one} and ${two} are one number` }]);
  });

  it("so are a strip and a cell", () => {
    const strips = lowAcre("fields:\n", "fields:\n  Back:\n    area: 1 ha\n    cover: 2200 kg/ha\n    strips: 1 to 4\n");
    expect(findingsOf(strips.replace("      L1:", '      "02":'))).toContainEqual(expect.objectContaining({ code: "names-alike", found: "2 and 02 are one number" }));
  });

  it.each(["Young cows", "Коровы", "🐄", "=SUM(1)", '"The \\"red\\" ones, all > 2"', "<script>", "Yard", "away", "True"])("other names are the owner's: %s", (name) => {
    expect(scenarioOf(cows(name)).groups).toHaveLength(1);
  });

  it("tells cells of figures apart", () => {
    expect(scenarioOf(lowAcre("      L1:", "      10:").replace("L2:", '"007":').replace("L3:", '"3/4":')).cells.map(({ name }) => name)).toEqual(["10", "007", "3/4", "L4", "L5"]);
  });
});
