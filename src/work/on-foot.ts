import type { Cell, Scenario } from "../farm/scenario.js";
import type { Place } from "./job.js";

type Point = readonly [eastM: number, northM: number];

/** Metres on foot between two places of the farm. */
export type OnFoot = (from: Place, to: Place) => number;

/**
 * How far it is on foot from place to place: from field to field along the paths of the farm file or between gates on its map, else by way of the yard;
 * inside a field between the gate and the middles of its cells. Where no map has them, cells are taken for squares that lie in a row from the gate,
 * as the farm file lists them; yards lie together.
 */
export function onFoot(scenario: Scenario): OnFoot {
  const gates = gateDistances(scenario);
  const cells = new Map(scenario.cells.map((cell) => [cell.name, cell]));
  const inside = (cell: Cell): number => insideOf(scenario, cell);
  return (from, to) => {
    const [a, b] = [cells.get(from.name), cells.get(to.name)];
    if (from.name === to.name || (!a && !b)) return 0;
    if (a && b && a.field === b.field) return acrossOf(scenario, a, b);
    return (a ? inside(a) : 0) + gates(a?.field ?? null, b?.field ?? null) + (b ? inside(b) : 0);
  };
}

/** Shortest ways between gates of fields, and the yard (null); a path to a yard is one to the yard. */
function gateDistances({ fields, handover }: Scenario): (from: string | null, to: string | null) => number {
  const names = fields.map(({ name }) => name);
  const at = (name: string | null): number => (name === null ? 0 : names.indexOf(name) + 1);
  const way = Array.from({ length: names.length + 1 }, (_, i) => Array.from({ length: names.length + 1 }, (__, j) => (i === j ? 0 : Infinity)));
  const add = (i: number, j: number, metres: number): void => {
    way[i]![j] = way[j]![i] = Math.min(way[i]![j]!, metres);
  };
  for (const { name, distanceM } of fields) add(0, at(name), distanceM);
  for (const { from, to, metres } of handover.paths) add(at(from), at(to), metres);
  for (const from of names) for (const to of names) if (handover.gates[from] && handover.gates[to]) add(at(from), at(to), between(handover.gates[from], handover.gates[to]));
  way.forEach((_, over) => way.forEach((row, i) => row.forEach((metres, j) => (row[j] = Math.min(metres, way[i]![over]! + way[over]![j]!)))));
  return (from, to) => way[at(from)]![at(to)]!;
}

/** From the field's gate to the middle of a cell; to the cell's own gate where it has one. */
function insideOf(scenario: Scenario, cell: Cell): number {
  const { gates } = scenario.handover;
  const [gate, own] = [gates[cell.field], pointOf(scenario, cell)];
  return gate && own ? between(gate, own) : rowMiddle(scenario, cell);
}

function acrossOf(scenario: Scenario, a: Cell, b: Cell): number {
  const [from, to] = [pointOf(scenario, a), pointOf(scenario, b)];
  return from && to ? between(from, to) : Math.abs(rowMiddle(scenario, a) - rowMiddle(scenario, b));
}

/** A cell's own gate on the map, else its middle there; null where no map has it. */
function pointOf({ handover }: Scenario, { name, boundary }: Cell): Point | null {
  const own = handover.gates[name];
  if (own) return own;
  return boundary?.north ? middleOfRing(boundary.rings[0]!) : null;
}

function rowMiddle({ cells }: Scenario, cell: Cell): number {
  const row = cells.filter(({ field }) => field === cell.field);
  const side = ({ areaHa }: Cell): number => Math.sqrt(areaHa * 10_000);
  return row.slice(0, row.indexOf(cell)).reduce((sum, one) => sum + side(one), 0) + side(cell) / 2;
}

/** Centre of gravity of a ring. Source: the surveyor's formula. */
export function middleOfRing(ring: readonly Point[]): Point {
  const [x0, y0] = ring[0]!;
  let [twice, east, north] = [0, 0, 0];
  ring.forEach(([x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length]!;
    const cross = (x - x0) * (v - y0) - (u - x0) * (y - y0);
    twice += cross;
    east += cross * (x + u - 2 * x0);
    north += cross * (y + v - 2 * y0);
  });
  return [x0 + east / (3 * twice), y0 + north / (3 * twice)];
}

function between([east, north]: Point, [otherEast, otherNorth]: Point): number {
  return Math.hypot(east - otherEast, north - otherNorth);
}
