import { describe, expect, it } from "vitest";
import { onFoot } from "../../src/work/on-foot.js";
import type { Place } from "../../src/work/job.js";
import { plannedFarm } from "../fixtures/planned-farm.js";

const cell = (name: string): Place => ({ name, yard: false });
const YARD: Place = { name: "Barn lot", yard: true };

describe("how far it is on foot", () => {
  const { scenario } = plannedFarm("withy-end");
  const metres = onFoot(scenario);
  const side = (name: string): number => Math.sqrt(scenario.cells.find((one) => one.name === name)!.areaHa * 10_000);

  it("goes by the yard where the farm file names no path", () => {
    expect(metres(cell("H1"), cell("W1"))).toBeCloseTo(side("H1") / 2 + 60 + 150 + side("W1") / 2, 6);
  });

  it("takes a path where it is shorter", () => {
    expect(metres(cell("K1"), cell("F1"))).toBeCloseTo(side("K1") / 2 + 150 + side("F1") / 2, 6);
    expect(metres(YARD, cell("F1"))).toBeCloseTo(320 + side("F1") / 2, 6);
  });

  it("takes several paths one after the other", () => {
    const paths = [{ from: "Home field", to: "Water meadow", metres: 10 }, { from: "Water meadow", to: "Far field", metres: 15 }];
    const more = onFoot({ ...scenario, handover: { ...scenario.handover, paths } });
    expect(more(cell("H1"), cell("F1"))).toBeCloseTo(side("H1") / 2 + 25 + side("F1") / 2, 6);
    expect(more(YARD, cell("F1"))).toBeCloseTo(60 + 25 + side("F1") / 2, 6);
  });

  it("takes cells without a map for squares in a row from the gate", () => {
    expect(metres(cell("H1"), cell("H3"))).toBeCloseTo(side("H1") / 2 + side("H2") + side("H3") / 2, 6);
    expect(metres(YARD, cell("H2"))).toBeCloseTo(60 + side("H1") + side("H2") / 2, 6);
  });

  it("is nothing inside a cell and between yards, and the same there and back", () => {
    expect(metres(cell("H1"), cell("H1"))).toBe(0);
    expect(metres(YARD, { name: "Hen barn", yard: true })).toBe(0);
    for (const a of scenario.cells) for (const b of scenario.cells) expect(metres(cell(a.name), cell(b.name))).toBeCloseTo(metres(cell(b.name), cell(a.name)), 6);
  });

  it("measures between gates and middles where the farm has a map", () => {
    const mapped = plannedFarm("rushy-leys").scenario;
    const { gates, yardAt } = mapped.handover;
    const straight = (a: readonly [number, number], b: readonly [number, number]): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
    const far = onFoot(mapped);
    const farTo = mapped.fields.find(({ name }) => name === "Mill croft")!.distanceM;
    expect(straight(gates["Long leys"]!, yardAt!)).toBeLessThan(140);
    expect(far(YARD, cell("M2"))).toBeGreaterThanOrEqual(farTo);
    const [l1, l4] = ["L1", "L4"].map((name) => mapped.cells.find((one) => one.name === name)!.boundary!.rings[0]!);
    // Two of the strips are four-cornered, so that their middle is found from two triangles.
    const middle = (ring: readonly (readonly [number, number])[]): readonly [number, number] => {
      const triangle = (a: readonly [number, number], b: readonly [number, number], c: readonly [number, number]) =>
        ({ area: Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2, at: [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3] as const });
      const [one, other] = [triangle(ring[0]!, ring[1]!, ring[2]!), triangle(ring[0]!, ring[2]!, ring[3]!)];
      const sum = one.area + other.area;
      return [(one.at[0] * one.area + other.at[0] * other.area) / sum, (one.at[1] * one.area + other.at[1] * other.area) / sum];
    };
    expect(far(cell("L1"), cell("L4"))).toBeCloseTo(straight(middle(l1!), middle(l4!)), 4);
  });
});
