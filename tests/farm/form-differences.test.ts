/** What two farm files say otherwise, figure by figure. */
import { describe, expect, it } from "vitest";
import { formDifferences } from "../../src/farm/form-differences.js";
import { scenarioOf } from "./read-text.js";

const FARM = [
  "farm: Low Acre", "season: 2027-04-20 to 2027-09-30", "fields:", "  Long Croft:", "    cover: 2300 kg/ha", "    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: 0.4 ha, L4: 0.6 ha, L5: 0.5 ha }",
  "groups:", "  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }", "people:", "  Owner: { minutes: 2 h }", "",
].join("\n");

function formOf(text: string): string {
  return scenarioOf(text).form!;
}

function told(text: string): string[] {
  return formDifferences(formOf(FARM), formOf(text)).map(({ where, then, now }) => `${where}: ${then} > ${now}`);
}

describe("formDifferences", () => {
  it("is empty for the same farm in another layout and with remarks", () => {
    expect(told(`# walked today\n${FARM.replace("{ minutes: 2 h }", "\n    minutes: 2 h # an hour each end")}`)).toEqual([]);
  });

  it("names a figure by its group", () => {
    expect(told(FARM.replace("head: 2", "head: 3"))).toEqual(["Cows head: 2 > 3"]);
  });

  it("names a cell's figure by field and cell, and one that is new or gone", () => {
    expect(told(FARM.replace("L1: 0.5 ha", "L1: { area: 0.45 ha, slope: 3 % }"))).toEqual(["Long Croft L1 area: 0.5 ha > 0.45 ha", "Long Croft L1 slope: null > 3 %"]);
    expect(told(FARM.replace(", L5: 0.5 ha", ""))).toEqual(["Long Croft L5: area 0.5 ha > null"]);
  });

  it("names a new order of the same cells, and no order when the cells are others", () => {
    expect(told(FARM.replace("L1: 0.5 ha, L2: 0.5 ha", "L2: 0.5 ha, L1: 0.5 ha"))).toEqual(["order of cells: L1, L2, L3, L4, L5 > L2, L1, L3, L4, L5"]);
    expect(told(FARM.replace("L5:", "L6:"))).toEqual(["Long Croft L5: area 0.5 ha > null", "Long Croft L6: null > area 0.5 ha"]);
  });

  it("tells the same figures back to front when asked the other way", () => {
    const other = FARM.replace("550 kg", "600 kg").replace("2 h", "3 h");
    const there = formDifferences(formOf(FARM), formOf(other));
    expect(formDifferences(formOf(other), formOf(FARM))).toEqual(there.map(({ where, then, now }) => ({ where, then: now, now: then })));
    expect(there).toHaveLength(2);
  });
});
