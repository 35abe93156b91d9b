/** What somebody does with a plan in a year that is not as planned, day by day. */
import { describe, expect, it } from "vitest";
import { grownFarm } from "../../../src/decide/weather/grown.js";
import { walkYear, WHY } from "../../../src/decide/weather/walk.js";
import { walkedPlan } from "../../../src/decide/weather/walked-plan.js";
import { steadyYear, type Year } from "../../../src/decide/weather/year.js";
import type { Scenario } from "../../../src/farm/scenario.js";
import type { Plan } from "../../../src/plan/plan.js";
import { cell, group, tinyFarm } from "../../fixtures/tiny-farm.js";
import { daysOf } from "./plans.js";

/** Nothing grows: cover is what the start says, less what is eaten, so that each case can be worked out by hand. */
const bare = (name: string, coverKgPerHa: number, more = {}) => cell(name, { coverKgPerHa, growthByMonth: Array<number>(12).fill(0), ...more });

/** Five cows of 600 kg eat 75 kg a day and tread 15 % more, 86.25 kg: on 0.3 ha 287.5 kg/ha a day. */
const cows = group("Cows");

interface Walked {
  readonly days: string;
  readonly why: readonly string[];
  readonly cuts: readonly (readonly number[])[];
}

function walked(farm: Scenario, plan: Plan, year: (usual: Year) => Year = (usual) => usual): Walked {
  const laid = walkedPlan(farm, plan);
  const own = year(steadyYear(laid.season, 1));
  const { place, why, cuts } = walkYear(laid, grownFarm(farm, own), own);
  return { days: [...place[0]!].map((at) => (at >= 0 ? laid.season.cells[at]!.name : "yard")).join(" "), why: [...why[0]!].map((one) => WHY[one]!), cuts };
}

const late = (day: number, days: number) => (usual: Year): Year => ({ ...usual, slips: usual.slips.map((own) => own.map((_, t) => (t === day ? days : 0))) });

describe("walkYear", () => {
  const farm = tinyFarm({ days: 8, cells: [bare("A1", 2500), bare("A2", 2500), bare("A3", 2500)], groups: [cows] });
  const plan = daysOf(farm, "Cows", "A1 A1 A2 A2 A2 A3 A3 yard");

  it("keeps to the plan where its rules hold", () => {
    expect(walked(farm, plan)).toMatchObject({ days: "A1 A1 A2 A2 A2 A3 A3 yard", why: Array(8).fill("plan") });
  });

  // 2,500 less 287.5 a day: three days leave 1,637, a fourth 1,350, below the 1,500 that must be left
  it("leaves when the grass is down, for the next ground of the plan that is ready", () => {
    expect(walked(farm, daysOf(farm, "Cows", "A1 A1 A1 A1 A2 A2 A3 A3"))).toMatchObject({ days: "A1 A1 A1 A2 A2 A2 A3 A3", why: ["plan", "plan", "plan", "ground", "plan", "plan", "plan", "plan"] });
  });

  // 2,100 is below the 2,200 that must stand (no first pass: 0 days); A1 lasts three days
  const noFirstPass = { "entry-cover": { figures: { "first-pass-days": 0 } } } as const;
  it("waits where it is while the next ground is not ready, then takes other ground of the plan, then the yard", () => {
    const short = tinyFarm({ days: 8, cells: [bare("A1", 2500), bare("A2", 2100), bare("A3", 2300)], groups: [cows], rules: noFirstPass });
    // A3 has 2,300: two days leave 1,725, a third 1,437
    expect(walked(short, daysOf(short, "Cows", "A1 A1 A2 A2 A2 A2 A3 A3"))).toMatchObject({
      days: "A1 A1 A1 A3 A3 yard yard yard", why: ["plan", "plan", "ground", "ground", "ground", "ground", "ground", "ground"],
    });
  });

  it("goes back to the plan on the day its ground is ready", () => {
    // A2 grows by just under 50 a day from 2,050: 2,197 three mornings on, 2,246 four mornings on
    const slow = tinyFarm({ days: 6, cells: [bare("A1", 2500), cell("A2", { coverKgPerHa: 2050 })], groups: [cows], rules: noFirstPass });
    expect(walked(slow, daysOf(slow, "Cows", "A1 A2 A2 A2 A2 A2"))).toEqual({
      days: "A1 A1 A1 yard A2 A2", why: ["plan", "ground", "ground", "ground", "plan", "plan"], cuts: [[], []],
    });
  });

  it("stands a day or two longer when a move is late, whatever it eats, and makes up for it by the plan's days", () => {
    expect(walked(farm, plan, late(2, 2))).toMatchObject({ days: "A1 A1 A1 A1 A2 A3 A3 yard", why: ["plan", "plan", "late", "late", "plan", "plan", "plan", "plan"] });
    expect(walked(farm, plan, late(3, 2)).days).toBe("A1 A1 A2 A2 A2 A3 A3 yard");
  });

  it("stays for the week with nobody where the ground lasts it, else stands in the yard from its first day to its last", () => {
    // on 1 ha 86.25 kg/ha a day: from 2,500 seven days leave 1,896; A3 lasts three days
    const wide = tinyFarm({ days: 12, cells: [bare("A1", 2500, { areaHa: 1 }), bare("A2", 2500), bare("A3", 2500)], groups: [cows] });
    const away = (day: number) => (usual: Year): Year => ({ ...usual, away: day });
    const large = daysOf(wide, "Cows", "A1 A1 A1 A2 A2 A2 A3 A3 A3 yard yard yard");
    expect(walked(wide, large, away(1)).days).toBe("A1 A1 A1 A1 A1 A1 A1 A1 A3 yard yard yard");
    const small = daysOf(wide, "Cows", "A2 A2 A2 A1 A1 A1 A1 A3 A3 A3 yard yard");
    expect(walked(wide, small, away(1))).toMatchObject({
      days: "A2 yard yard yard yard yard yard yard A3 A3 yard yard", why: ["plan", ...Array<string>(7).fill("away"), "plan", "plan", "plan", "plan"],
    });
  });

  it("goes where the owner has fixed it, come what may", () => {
    const held = tinyFarm({ days: 8, cells: [bare("A1", 2500), bare("A2", 1600)], groups: [cows], more: {
      holds: [{ name: "show", days: { firstDay: "2027-05-03", lastDay: "2027-05-04" }, group: "Cows", cell: "A2", yard: null, cut: null }],
    } });
    expect(walked(held, daysOf(held, "Cows", "A1 A1 A2 A2 yard yard yard yard")).days).toBe("A1 A1 A2 A2 yard yard yard yard");
  });

  // cut-from 3,500: 3,400 grows past it in a few days
  it("makes a cut as soon as it is worth making, within a fortnight, and not at all where it never is", () => {
    const cut = (name: string) => [{ cell: name, cut: "hay" as const, day: "2027-05-02" }];
    const meadow = tinyFarm({ days: 21, cells: [cell("A1", { coverKgPerHa: 3400 }), bare("A2", 3400), bare("A3", 3600)], groups: [cows] });
    const yard = Array(21).fill("yard").join(" ");
    expect(walked(meadow, daysOf(meadow, "Cows", yard, cut("A3"))).cuts).toEqual([[], [], [1]]);
    expect(walked(meadow, daysOf(meadow, "Cows", yard, cut("A2"))).cuts).toEqual([[], [], []]);
    const [[day]] = walked(meadow, daysOf(meadow, "Cows", yard, cut("A1"))).cuts as [[number], number[], number[]];
    expect(day).toBeGreaterThan(1);
    expect(day).toBeLessThan(15);
  });
});
