import type { Scenario } from "../../farm/scenario.js";
import type { GroundPlan, PlannedName, PlanRoom, Point } from "./planned-ground.js";
import { roomInside } from "./room-inside.js";

/** White round the ground for numbers and names at its edge, mm. */
const EDGE = 4;
/** Ground is drawn no larger, so that a small croft does not fill a page. */
const LARGEST_MM_PER_M = 0.5;

/** Ground as the farm's map has it, north up. */
export function shapePlan(scenario: Scenario, { w, h }: PlanRoom): GroundPlan {
  const { gates, yardAt } = scenario.handover;
  const rings = scenario.cells.map(({ boundary }) => boundary!.rings);
  const all: readonly Point[] = [...rings.flat(2), ...Object.values(gates), yardAt!];
  const [west, east] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const [south, north] = [Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
  const mmPerM = Math.min(LARGEST_MM_PER_M, (w - 2 * EDGE) / (east - west), (h - 2 * EDGE) / (north - south));
  const onPaper = ([x, y]: Point): Point => [EDGE + (x - west) * mmPerM, EDGE + (north - y) * mmPerM];
  const cells = scenario.cells.map(({ name }, i) => {
    const drawn = rings[i]!.map((ring) => ring.map(onPaper));
    const { at, w: wide, h: high } = roomInside(drawn);
    return { name, rings: drawn, at, room: { w: wide, h: high } };
  });
  return {
    w: (east - west) * mmPerM + 2 * EDGE, h: (north - south) * mmPerM + 2 * EDGE, mmPerM, cells, fields: namesOf(scenario, cells), yard: { at: onPaper(yardAt!), w: 24, h: 6, from: "middle" },
    gates: Object.fromEntries(Object.entries(gates).map(([name, at]) => [name, onPaper(at)])),
  };
}

/** Fields' names above their ground. */
function namesOf({ fields }: Scenario, cells: GroundPlan["cells"]): readonly PlannedName[] {
  return fields.flatMap(({ name, cells: own }) => {
    const corners = cells.filter((cell) => own.includes(cell.name)).flatMap(({ rings }) => rings[0]!);
    if (corners.length === 0) return [];
    const [left, right] = [Math.min(...corners.map(([x]) => x)), Math.max(...corners.map(([x]) => x))];
    const top = Math.min(...corners.map(([, y]) => y));
    return [{ name, at: [(left + right) / 2, top - 0.8], anchor: "middle", room: right - left }];
  });
}
