/** The map on a day's sheet: blocks in proportion where nobody drew the ground, true shapes where the farm's map has them. */
import { describe, expect, it } from "vitest";
import { NO_CALLS } from "../../src/farm/calls.js";
import { dayOf } from "../../src/sheets/day/context.js";
import { dayMaps } from "../../src/sheets/day/day-map.js";
import { sheetOf } from "../../src/sheets/day/day-sheet.js";
import { groundPlan } from "../../src/sheets/map/ground-plan.js";
import type { PlannedCell, Point } from "../../src/sheets/map/planned-ground.js";
import { roomInside } from "../../src/sheets/map/room-inside.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { largeSeason } from "./large-season.js";

const ROOM = { w: 62, h: 36 };
const words = englishWords();

function areaOf(ring: readonly Point[]): number {
  return Math.abs(ring.reduce((sum, [x, y], i) => sum + x * ring[(i + 1) % ring.length]![1] - ring[(i + 1) % ring.length]![0] * y, 0)) / 2;
}

function drawnArea({ rings: [ring, ...holes] }: PlannedCell): number {
  return areaOf(ring!) - holes.reduce((sum, hole) => sum + areaOf(hole), 0);
}

describe("ground without a map", () => {
  it.each([["Withy End", plannedFarm("withy-end").scenario], ["forty cells", largeSeason().scenario]] as const)("is drawn as blocks of %s as large as the cells are, apart from each other, in the farm file's order", (_, scenario) => {
    const plan = groundPlan(scenario, ROOM);
    expect(plan.mmPerM).toBeNull();
    expect(plan.cells.map(({ name }) => name).sort()).toEqual(scenario.cells.map(({ name }) => name).sort());
    const perHa = plan.cells.map((cell) => drawnArea(cell) / scenario.cells.find(({ name }) => name === cell.name)!.areaHa);
    for (const one of perHa) expect(one).toBeCloseTo(perHa[0]!, 6);
    for (const { rings } of plan.cells) {
      for (const [x, y] of rings[0]!) expect(x >= -1e-9 && y >= -1e-9 && x <= ROOM.w + 1e-9 && y <= ROOM.h + 1e-9).toBe(true);
    }
    for (const field of scenario.fields) expect(plan.cells.filter(({ name }) => field.cells.includes(name)).map(({ name }) => name)).toEqual(field.cells);
    const boxes = plan.cells.map(({ rings }) => rings[0]!);
    for (const one of boxes) for (const other of boxes) if (one !== other) expect(apart(one, other)).toBe(true);
  });

  it("is blocks too where the map has only some of it", () => {
    const { scenario } = plannedFarm("rushy-leys");
    const [first, ...others] = scenario.cells;
    expect(groundPlan({ ...scenario, cells: [{ ...first!, boundary: null }, ...others] }, ROOM).mmPerM).toBeNull();
    expect(groundPlan({ ...scenario, handover: { ...scenario.handover, yardAt: null } }, ROOM).mmPerM).toBeNull();
  });
});

function apart(one: readonly Point[], other: readonly Point[]): boolean {
  const span = (ring: readonly Point[], i: 0 | 1): readonly [number, number] => [Math.min(...ring.map((p) => p[i])), Math.max(...ring.map((p) => p[i]))];
  return ([0, 1] as const).some((i) => span(one, i)[1] <= span(other, i)[0] + 1e-9 || span(other, i)[1] <= span(one, i)[0] + 1e-9);
}

describe("ground with a map", () => {
  const { scenario } = plannedFarm("rushy-leys");
  const plan = groundPlan(scenario, ROOM);

  it("is drawn to one scale, holes and all, north up", () => {
    const perM2 = plan.mmPerM! ** 2;
    for (const cell of plan.cells) expect(drawnArea(cell) / perM2 / 10_000).toBeCloseTo(scenario.cells.find(({ name }) => name === cell.name)!.areaHa, 6);
    expect(plan.cells.some(({ rings }) => rings.length > 1) || scenario.cells.every(({ boundary }) => boundary!.rings.length === 1)).toBe(true);
    const { yardAt, gates } = scenario.handover;
    for (const [name, [east, north]] of Object.entries(gates)) {
      expect((plan.gates[name]![0] - plan.yard.at[0]) / plan.mmPerM!).toBeCloseTo(east - yardAt![0], 6);
      expect((plan.yard.at[1] - plan.gates[name]![1]) / plan.mmPerM!).toBeCloseTo(north - yardAt![1], 6);
    }
  });

  it("has its names inside the ground, out of its holes", () => {
    const square = (x: number, y: number, side: number): readonly Point[] => [[x, y], [x + side, y], [x + side, y + side], [x, y + side]];
    const { at: [x, y], w, h } = roomInside([square(0, 0, 20), square(6, 6, 8)]);
    expect(w).toBeGreaterThan(10);
    const [left, right, top, bottom] = [x - w / 2, x + w / 2, y - h / 2, y + h / 2];
    expect(left >= 0 && right <= 20 && top >= 0 && bottom <= 20).toBe(true);
    expect(right <= 6 || left >= 14 || bottom <= 6 || top >= 14).toBe(true);
  });

  it("says that it has no room where ground is thinner than a line of words", () => {
    expect(roomInside([[[0, 0], [30, 0], [30, 1], [0, 1]]])).toMatchObject({ w: 0, h: 0, at: [15, 0.5] });
  });
});

describe("what stands on it", () => {
  const drawn = (farm: "withy-end" | "rushy-leys", on: string) => {
    const day = dayOf(plannedFarm(farm), words, on);
    const told = sheetOf(day, { day: on, printedOn: "2027-04-01", calls: NO_CALLS });
    const tasks = told.parts.flatMap((part) => part.tasks);
    return { day, tasks, svg: dayMaps(day, tasks, told.onFoot)[0]!.svg };
  };
  const textsOf = (svg: string): readonly string[] => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((found) => found[1]!);

  it.each([["withy-end", "2027-06-16"], ["withy-end", "2027-05-20"], ["rushy-leys", "2027-06-13"]] as const)("has each task of %s on %s once where it begins, with an arrow where it ends elsewhere", (farm, on) => {
    const { tasks, svg } = drawn(farm, on);
    const texts = textsOf(svg);
    for (const { number, from, to } of tasks.filter((task) => (task.from ?? task.to) !== null)) {
      expect(texts.filter((one) => one === String(number))).toHaveLength(1);
      const elsewhere = from !== null && to !== null && from.name !== to.name && !(from.yard && to.yard);
      expect(texts.filter((one) => one === `→${number}`)).toHaveLength(elsewhere ? 1 : 0);
    }
  });

  it("has a letter for each group where it stood in the evening", () => {
    const { day, svg } = drawn("withy-end", "2027-06-16");
    const letters = day.before!.standing.map(({ group }) => day.scenario.groups.find(({ name }) => name === group)!.letter).sort();
    expect(textsOf(svg).filter((one) => letters.includes(one)).sort()).toEqual(letters);
  });

  it("draws ways only over true shapes", () => {
    expect(drawn("rushy-leys", "2027-06-13").svg).toContain("stroke-dasharray");
    expect(drawn("withy-end", "2027-06-16").svg).not.toContain("stroke-dasharray");
  });
});
