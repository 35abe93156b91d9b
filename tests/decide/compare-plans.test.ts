/** Two plans compared: figures close, and counted a second way they are the same. */
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import { comparePlans, type PlannedFarm } from "../../src/decide/compare-plans.js";
import { FIGURES } from "../../src/decide/season-figures.js";
import type { Scenario } from "../../src/farm/scenario.js";
import type { Plan, Stay } from "../../src/plan/plan.js";
import { addDays } from "../../src/quantity/calendar.js";
import { RULE_IDS } from "../../src/rules/rule.js";
import { movesOf } from "../../src/sheets/season-days.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";

const FIRST = "2027-05-01";
const DAYS = 21;

function farm(more: Partial<Scenario> = {}, names: readonly string[] = ["Cows"]): Scenario {
  const base = tinyFarm({ days: DAYS, firstDay: FIRST, cells: ["A1", "A2", "A3", "A4"].map((name) => cell(name)), groups: names.map((name) => group(name)) });
  return { ...base, ...more };
}

/** Stays of one group from "A1x3 Yardx2 ...". */
function stays(name: string, text: string): Stay[] {
  let t = 0;
  return text.split(" ").map((part) => {
    const [place, days] = part.split("x") as [string, string];
    const stay = { group: name, cell: place === "Yard" ? null : place, yard: place === "Yard" ? "Yard" : null, firstDay: addDays(FIRST, t), lastDay: addDays(FIRST, t + Number(days) - 1) };
    t += Number(days);
    return stay;
  });
}

function planned(scenario: Scenario, ...own: readonly (readonly Stay[])[]): PlannedFarm {
  const plan: Plan = { stays: own.flat(), cuts: [] };
  return { scenario, plan, report: checkPlan(scenario, plan) };
}

const BASE = planned(farm(), stays("Cows", "A1x3 A2x3 A3x3 A4x3 Yardx9"));
const OTHER = planned(farm(), stays("Cows", "A1x3 A3x3 A2x3 A4x3 Yardx6 A1x3"));

describe("comparePlans", () => {
  const found = comparePlans(BASE, OTHER);

  it.each(FIGURES)("closes: as it is + difference = with the change, for %s", (key) => {
    const { base, change, difference } = found.figures[key];
    expect(base + difference).toBeCloseTo(change, 9);
    expect([base, change].every(Number.isFinite)).toBe(true);
  });

  it("has charges by rule that sum to each plan's cost, and their differences to the cost's", () => {
    const sum = (side: "base" | "change" | "difference") => RULE_IDS.reduce((total, id) => total + found.charges[id][side], 0);
    expect(sum("base")).toBeCloseTo(BASE.report.cost, 9);
    expect(sum("change")).toBeCloseTo(OTHER.report.cost, 9);
    expect(sum("difference")).toBeCloseTo(found.figures.cost.difference, 9);
  });

  it("counts moves as the sheets do, and yard days as written", () => {
    expect([found.figures.moves.base, found.figures.moves.change]).toEqual([BASE, OTHER].map(({ scenario, plan }) => movesOf(scenario, plan).length));
    expect(found.figures["hay-days"]).toEqual({ base: 9, change: 6, difference: -3 });
    // four moves in three weeks: days 3, 6, 9 and 12, of which two fall in the first week
    expect([found.figures["moves-a-week"].base, found.figures["moves-worst-week"].base, found.base.movesWorstWeek]).toEqual([4 / 3, 2, FIRST]);
  });

  it("counts days that stand otherwise, in all and by week, by hand: six of A2 and A3, three of the yard", () => {
    expect(found.groups).toEqual([{ group: "Cows", on: "both", days: 9, of: 21, byWeek: [4, 2, 3] }]);
  });

  it("finds nothing otherwise between a plan and itself", () => {
    const same = comparePlans(BASE, BASE);
    expect(FIGURES.filter((key) => same.figures[key].difference !== 0)).toEqual([]);
    expect(same.groups).toMatchObject([{ days: 0, byWeek: [0, 0, 0] }]);
    expect([same.newlyBroken, same.newlyKept, same.newlyPaid, same.noLongerPaid]).toEqual([[], [], [], []]);
  });

  it("turns round: with the two the other way about, all differences change their sign", () => {
    const back = comparePlans(OTHER, BASE);
    for (const key of FIGURES) expect(back.figures[key].difference).toBeCloseTo(-found.figures[key].difference, 9);
    expect([back.newlyPaid, back.noLongerPaid]).toEqual([found.noLongerPaid, found.newlyPaid]);
  });

  it("tells a group that is new or gone apart from those that stand elsewhere", () => {
    const two = planned(farm({}, ["Cows", "Ewes"]), stays("Cows", "A1x3 A2x3 A3x3 A4x3 Yardx9"), stays("Ewes", "Yardx21"));
    expect(comparePlans(BASE, two).groups.map(({ group: name, on, days }) => [name, on, days])).toEqual([["Cows", "both", 0], ["Ewes", "change", 21]]);
    expect(comparePlans(two, BASE).groups.map(({ group: name, on }) => [name, on])).toEqual([["Cows", "both"], ["Ewes", "base"]]);
  });

  it("tells rules newly broken and newly kept", () => {
    const long = planned(farm(), stays("Cows", "A1x9 A2x3 Yardx9"));
    expect(comparePlans(BASE, long).newlyBroken).toContain("stay-limit");
    expect(comparePlans(long, BASE).newlyKept).toContain("stay-limit");
  });

  it("counts rests cut short with what they cost: nine days' rest where eighteen are the least is one", () => {
    const again = planned(farm(), stays("Cows", "A1x3 Yardx9 A1x3 Yardx6"));
    const compared = comparePlans(BASE, again);
    expect(compared.figures["rests-short"]).toEqual({ base: 0, change: 1, difference: 1 });
    expect(compared.figures["rests-short-cost"].change).toBeCloseTo(again.report.chargesByRule["rest-period"], 9);
  });

  it("reckons hay to buy: winter's need and what is fed, less the store, never below nothing", () => {
    const hay = { inStoreKg: 500, winterNeedKg: 900, dryMatter: 0.88, feedOutLoss: 0.1, storeLoss: 0.05 };
    const short = planned(farm({ hay }), stays("Cows", "A1x3 A2x3 A3x3 A4x3 Yardx9"));
    const { figures } = comparePlans(BASE, short);
    expect(figures["hay-to-buy-kg"].base).toBe(0); // 3 t in store, no winter's need
    expect(figures["hay-to-buy-kg"].change).toBeCloseTo(900 + short.report.measures.hayFedKg - 500, 6);
  });
});
