import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Group } from "../../src/farm/scenario.js";
import { cautionsFor } from "../../src/plan/cautions.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { lifelikeScenario, lifelikePlan } from "../fixtures/lifelike.js";

/** Cautions of groups that stand in H1 for three weeks from a day. */
function topics(groups: readonly Group[], firstDay = "2027-05-01", water: "trough" | "pond" = "trough"): readonly string[] {
  const farm = tinyFarm({ firstDay, cells: [cell("H1", { water })], groups });
  const stays = groups.map((one) => ({ group: one.name, cell: "H1", yard: null, ...farm.season }));
  return cautionsFor(farm, { stays, cuts: [] }).map((caution) => caution.topic);
}
const cows = group("Cows", { young: { head: 5, weightKg: 80, gainKgPerDay: 1 } });
const strip = { areaHa: 0.01, days: 3, movedBy: "tow" as const, stepMinutes: 40, nets: 1, pen: "House" };
const hens = group("Hens", { kind: "layers", animalClass: "", strip });
const pigs = group("Pigs", { kind: "pigs", animalClass: "weaner" });
const sheep = group("Sheep", { kind: "sheep", animalClass: "ewe dry" });

describe("cautions", () => {
  it("are always at least: follow local codes, the vet and licensed practice", () => {
    const farm = tinyFarm({ cells: [cell("H1")], groups: [cows] });
    expect(cautionsFor(farm, { stays: [], cuts: [] })).toMatchObject([{ text: "Follow local codes, the vet and licensed practice." }]);
    expect(topics([cows]).at(-1)).toBe("codes");
  });

  it("apply to animals that the plan places, and to no others", () => {
    expect(topics([cows])).toEqual(["cow with calf", "fence", "tetany", "bloat", "plants", "codes"]);
    expect(topics([sheep])).not.toContain("cow with calf");
    expect(topics([group("Bull", { animalClass: "bull" })])).toContain("bull");
    expect(topics([group("Sow", { kind: "pigs", animalClass: "sow" })])).toContain("sow");
  });

  it("speak of feed, litter, copper and ionophores only where both kinds are there", () => {
    expect(topics([hens])).not.toContain("feed ban");
    expect(topics([cows, hens])).toEqual(expect.arrayContaining(["feed ban", "dead birds", "bird flu", "tow", "dusk", "hands"]));
    expect(topics([sheep])).not.toContain("copper");
    expect(topics([sheep, pigs])).toContain("copper");
    expect(topics([cows, pigs])).not.toContain("copper");
    expect(topics([group("Ponies", { kind: "horses", letter: "H", animalClass: "pony" }), hens])).toContain("ionophores");
    expect(topics([group("Turkeys", { kind: "turkeys", strip }), hens])).toContain("blackhead");
  });

  it("apply on their dates: tetany in spring, heat in the hot months", () => {
    expect(topics([cows], "2027-05-01")).not.toContain("heat");
    expect(topics([cows], "2027-07-01")).toContain("heat");
    expect(topics([cows], "2027-07-01")).not.toContain("tetany");
    expect(topics([pigs], "2027-07-01")).toContain("pigs in heat");
  });

  it("look at where birds drink, and at who comes and goes", () => {
    expect(topics([hens], "2027-05-01", "pond")).toContain("open water");
    expect(topics([hens])).not.toContain("open water");
    expect(topics([{ ...pigs, here: [{ firstDay: "2027-05-05", lastDay: "2027-05-21" }] }])).toContain("papers");
    expect(topics([pigs])).not.toContain("papers");
  });

  it("name a row of the published tables, a page, memory or common practice", () => {
    const read = (name: string): string[] => (JSON.parse(readFileSync(new URL(`../../shared/${name}.json`, import.meta.url), "utf8")) as { key: string }[]).map((row) => row.key);
    const keys = [...read("cautions"), ...read("planner-defaults")];
    const scenario = lifelikeScenario();
    for (const { source } of cautionsFor(scenario, lifelikePlan(scenario))) {
      for (const part of /^[a-z-]+\.[a-z-]+(, |$)/.test(source) ? source.split(", ") : []) {
        if (!part.startsWith("extension.")) expect(keys).toContain(part);
      }
    }
  });

  it("are short sentences, each said once", () => {
    const scenario = lifelikeScenario();
    const cautions = cautionsFor(scenario, lifelikePlan(scenario));
    expect(new Set(cautions.map((caution) => caution.topic)).size).toBe(cautions.length);
    for (const { text } of cautions) expect(Math.max(...text.split(". ").map((sentence) => sentence.length))).toBeLessThan(90);
  });
});
