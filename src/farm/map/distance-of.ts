import type { Corner } from "../../science/boundary.js";
import { between, isInside, toRingM } from "../../science/rings.js";
import type { PlacedCell } from "../across-ground.js";
import { AMOUNT_KEYS } from "../amount-keys.js";
import { say, take, type Desk } from "../desk.js";
import { OWN, takeOwn } from "../own-defaults.js";
import type { Ground } from "../read-ground.js";
import type { Entry } from "../tree.js";

/** A field's distance from the yard that nobody typed: straight on the map to its gate, else to its nearest boundary, else as usual. */
export function distanceOf(desk: Desk, field: Entry, ground: Ground, cells: readonly PlacedCell[]): number {
  const usual = (): number => takeOwn(desk, "distance", field.key, OWN.distanceM, `${OWN.distanceM} m`);
  const { map } = desk;
  if (!map?.yard) return usual();
  const yard = map.yard.at;
  const gates = [map.gates.get(field.key) ?? cells.map(({ cell }) => map.gates.get(cell.name))].flat().flatMap((gate) => (gate ? [between(yard, gate.at)] : []));
  if (gates.length > 0) return onMap(desk, field, Math.min(...gates), "to the gate");
  const drawn = [ground, ...cells.map((cell) => cell.ground)].filter(({ mapped, boundary }) => mapped && boundary !== null);
  return drawn.length === 0 ? usual() : onMap(desk, field, Math.min(...drawn.map(({ boundary }) => toGroundM(boundary!.rings[0]!, yard))), "to the nearest of its boundary");
}

function toGroundM(ring: readonly Corner[], point: Corner): number {
  return isInside(ring, point) ? 0 : toRingM(ring, point);
}

/** Whole metres, as they are told. */
function onMap(desk: Desk, field: Entry, metres: number, to: string): number {
  const distanceM = Math.round(metres);
  const { most, reach } = AMOUNT_KEYS.distance;
  take(desk, "distance", field.key, `${distanceM} m`, `a straight line on the map, from the yard ${to}`, "judgement");
  if (distanceM > most) say(desk, field.at, { code: "out-of-reach", found: `${field.key} lies ${distanceM} m from the yard on the map`, allowed: `it may be ${reach}`, next: "look at the points, or write its distance" });
  return distanceM;
}
