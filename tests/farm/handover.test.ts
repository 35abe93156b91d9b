/** What helpers' sheets tell beside the plan, read from the farm file. */
import { describe, expect, it } from "vitest";
import { readScenario } from "../../src/farm/read-scenario.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { sha256 } from "../../src/files/read.js";
import { loadTables } from "../../src/files/tables.js";

const tables = loadTables();

const FARM = (more: { readonly field?: string; readonly cell?: string; readonly group?: string; readonly farm?: string } = {}): string => `farm: Low Acre
season: 2027-04-20 to 2027-09-30
fields:
  Long Croft:
    cover: 2300 kg/ha
${more.field ?? ""}    cells:
      L1: { area: 0.5 ha${more.cell ?? ""} }
      L2: 0.5 ha
  Top:
    cover: 2300 kg/ha
    cells: { T1: 0.5 ha, T2: 0.5 ha, T3: 0.5 ha }
groups:
  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg${more.group ?? ""} }
yards: { Byre: { cost: 2 GBP/d } }
${more.farm ?? ""}`;

function read(more: Parameters<typeof FARM>[0]): Scenario {
  const result = readScenario(FARM(more), "low-acre.yaml", tables, sha256);
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function found(more: Parameters<typeof FARM>[0]): readonly string[] {
  const result = readScenario(FARM(more), "low-acre.yaml", tables, sha256);
  return result.ok ? [] : result.findings.map(({ line, code }) => `${line} ${code}`);
}

describe("handover", () => {
  it("guesses nothing that is not written", () => {
    expect(read({}).handover).toMatchObject({ ways: {}, paths: [], gates: {}, yardAt: null, feed: {}, take: {}, births: {}, kitLies: null, publicPaths: [] });
    expect(read({}).assumed.find(({ key }) => key.startsWith("least voltage of a fence"))).toMatchObject({ value: "3 kV", status: "from memory" });
  });

  it("reads ways, feed in any unit, what to take, births, kit, paths and public paths", () => {
    const { handover } = read({
      field: "    way: by the lane, oak gate\n    public-path: yes\n", cell: ", public-path: no",
      group: ", feed: { what: cake, each: 2 lb/d, lies: byre }, take: a stick, births: { first: 2027-04-20 to 2027-05-01 }",
      farm: "kit: { energisers: 2, lies: on the cart }\npaths: { Long Croft to Top: 90 m, Top to Byre: 40 m }\n",
    });
    expect(handover).toMatchObject({
      ways: { "Long Croft": "by the lane, oak gate" }, publicPaths: ["L2"], take: { Cows: "a stick" }, kitLies: "on the cart",
      births: { Cows: [{ firstDay: "2027-04-20", lastDay: "2027-05-01" }] },
      paths: [{ from: "Long Croft", to: "Top", metres: 90 }, { from: "Top", to: "Byre", metres: 40 }],
    });
    // a pound is 0.45359237 kg by agreement of 1959
    expect(handover.feed["Cows"]).toMatchObject({ what: "cake", lies: "byre", kgPerHeadDay: expect.closeTo(0.90718474, 8) as number });
  });

  it("leaves the farm's print as it is: a plan stays this farm's when such a thing is written", () => {
    const bare = read({});
    const told = read({ field: "    way: by the lane\n    public-path: yes\n", group: ", feed: { what: cake, each: 1 kg/d }, take: a stick, births: from 2027-09-01", farm: "kit: { lies: shed }\npaths: { Top to Byre: 40 m }\n" });
    expect(told.print).toBe(bare.print);
    expect(read({ farm: "kit: { energisers: 2 }\n" }).print).not.toBe(bare.print);
    expect(read({ group: ", stay-limit: 5 d" }).print).not.toBe(bare.print);
  });

  it("finds what is wrong, all at once", () => {
    expect(found({ farm: "paths: { Top to Byr: 40 m }\n" })).toEqual(["15 name-unknown"]);
    expect(found({ farm: "paths: { Top: 40 m }\n" })).toEqual(["15 path-form"]);
    expect(found({ farm: "paths: { Top to Byre: 40 kg }\n" })).toEqual(["15 unit-wrong"]);
    expect(found({ group: ", feed: { what: cake, each: 50 kg/d, lise: byre }" })).toEqual(["13 out-of-reach", "13 key-unknown"]);
    expect(found({ field: "    public-path: maybe\n", group: ", births: 2027-05-05 to 2027-04-25" })).toEqual(["6 word-unknown", "14 days-reversed"]);
  });
});
