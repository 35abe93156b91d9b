/** Which figure a season hangs on: figures turned, and the season planned again. */
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../../src/check/check-plan.js";
import { FIGURES } from "../../../src/decide/weather/figures.js";
import { whatFlips } from "../../../src/decide/weather/what-flips.js";
import { highsSolver } from "../../../src/solvers/highs.js";
import { inThisThread } from "../in-this-thread.js";
import { cell, group, tinyFarm } from "../../fixtures/tiny-farm.js";
import { LOW_ACRE, scenarioOf } from "../../farm/read-text.js";
import { byEye } from "./plans.js";

const farm = tinyFarm({
  days: 14, cells: [cell("A1"), cell("A2"), cell("A3")], groups: [group("Cows")],
  more: { assumed: [{ key: "price of hay", value: "150 GBP/t", source: "judgement", status: "judgement" }] },
});
const plan = byEye(farm);
const NOBODY = { asked: false };
const asked = { seed: 1, steps: 1500 };

describe("figures", () => {
  it.each(FIGURES.map((figure) => [figure.key, figure] as const))("%s is turned both ways, back to where it was, and nothing else is", (_, figure) => {
    const half = figure.turned(farm, 0.5)!.scenario;
    const again = figure.turned(half, 2)!;
    if (figure.turned(farm, 0.5)!.turn === "halved" && again.turn === "doubled") expect(again.scenario).toEqual(farm);
    expect(half).not.toEqual(farm);
    expect(figure.turned(farm, 2)!.scenario).not.toEqual(farm);
  });

  it("go no farther than they may be written", () => {
    const residual = FIGURES.find(({ key }) => key === "residual-cover")!;
    // 750 and 3,000 are out of 1,000 to 2,500 kg/ha (src/rules/residual-cover.ts)
    const [low, high] = [residual.turned(farm, 0.5)!, residual.turned(farm, 2)!];
    expect([low.turn, low.scenario.rules.farm["residual-cover"].figures["grazers"]]).toEqual(["least", 1000]);
    expect([high.turn, high.scenario.rules.farm["residual-cover"].figures["grazers"]]).toEqual(["most", 2500]);
  });

  it("are left alone where nothing is paid or the rule is off", () => {
    const free = { ...farm, prices: { ...farm.prices, mowingPerHa: 0 } };
    expect(FIGURES.find(({ key }) => key === "mowing-price")!.turned(free, 2)).toBeNull();
    const off = tinyFarm({ cells: [cell("A1")], groups: [group("Cows")], rules: { "residual-cover": { use: "off" } } });
    expect(FIGURES.find(({ key }) => key === "residual-cover")!.turned(off, 2)).toBeNull();
  });

  it("each know the rows of a farm file that says none of them", () => {
    const keys = scenarioOf(LOW_ACRE.replace(/^people:[\s\S]*/m, "")).assumed.map(({ key }) => key);
    expect(FIGURES.filter(({ assumed }) => !keys.some((key) => assumed.test(key))).map(({ key }) => key)).toEqual([]);
  });
});

describe("whatFlips", () => {
  it("plans again for each figure, marks what was assumed, and puts what matters most first", async () => {
    const figures = (await whatFlips(farm, plan, inThisThread(highsSolver()), asked, NOBODY))!;
    expect(new Set(figures.map(({ key }) => key))).toEqual(new Set(FIGURES.map(({ key }) => key)));
    expect(figures.filter(({ assumed }) => assumed).map(({ key }) => key)).toEqual(["hay-price"]);
    const weight = figures.map(({ flips }) => Math.max(...flips.map((flip) => (flip.planned ? Math.max(Math.abs(flip.costMore), flip.keptCostsMore ?? 0) : Infinity))));
    expect(weight).toEqual([...weight].sort((a, b) => b - a));
    expect(figures.flatMap(({ flips }) => flips).every(({ days }) => days === 14)).toBe(true);
  });

  // With one place only there is nothing to decide: money follows the price, and nobody moves
  it("tells the price alone where no plan could be another", async () => {
    const shut = tinyFarm({ days: 7, cells: [cell("A1", { coverKgPerHa: 400, growthByMonth: Array<number>(12).fill(0) })], groups: [group("Cows")] });
    const stays = byEye(shut);
    const hay = checkPlan(shut, stays).measures.hayFedKg * shut.prices.hayPerKg;
    const figures = (await whatFlips(shut, stays, inThisThread(highsSolver()), asked, NOBODY))!;
    const price = figures.find(({ key }) => key === "hay-price")!;
    expect(price.flips.map(({ turn, costMore, daysElsewhere, keptCostsMore }) => [turn, Math.round(100 * costMore), daysElsewhere, keptCostsMore])).toEqual([
      ["halved", -Math.round(50 * hay), 0, 0], ["doubled", Math.round(100 * hay), 0, 0],
    ]);
  });

  it("is the same whichever thread is first", async () => {
    const [first, last] = await Promise.all((["at once", "last first"] as const).map((order) => whatFlips(farm, plan, inThisThread(highsSolver(), order), asked, NOBODY)));
    expect(first).toEqual(last);
  });

  it("is left out when the owner stops it", async () => {
    expect(await whatFlips(farm, plan, inThisThread(highsSolver()), asked, { asked: true })).toBeNull();
  });
});
