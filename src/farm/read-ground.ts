import type { Boundary } from "../science/boundary.js";
import { note, say, type Desk, type Thing } from "./desk.js";
import { boundaryName, nameOnMap } from "./map/used-names.js";
import type { MappedGround } from "./map/farm-map.js";
import { listOr, nearNames } from "./near-names.js";
import { hectares, typedGround, withinReach } from "./read-area.js";
import { child } from "./tree.js";

/** How large a field or cell is, and where. */
export interface Ground {
  /** Undefined where nothing says, NaN where it is refused. */
  readonly areaHa: number | undefined;
  readonly boundary: Boundary | null;
  /** Its boundary is the map's, in metres from one point of the whole farm. */
  readonly mapped: boolean;
  /** Something is amiss with it, and said. */
  readonly refused: boolean;
}

/** Share of its area by which a typed area may differ from the map's. */
const NEAR_ENOUGH = 0.05;

/** The ground of a field or cell as typed, and as the map has it; a typed area goes before the map's. */
export function groundOf(desk: Desk, thing: Thing): Ground {
  const typed = typedGround(desk, thing);
  const mapped = mappedOf(desk, thing);
  if (mapped === null) return { areaHa: Number.NaN, boundary: null, mapped: false, refused: true };
  if (mapped === undefined) return { ...typed, mapped: false, refused: Number.isNaN(typed.areaHa) };
  const areaHa = typed.areaHa ?? withinReach(desk, thing.name, mapped, mapped.areaHa);
  if (Math.abs(areaHa - mapped.areaHa) > NEAR_ENOUGH * mapped.areaHa) {
    note(desk, child(thing.map, "area") ?? mapped, { code: "area-differs", found: `${thing.name} is ${hectares(areaHa)} ha as typed, ${hectares(mapped.areaHa)} ha on the map`, allowed: "the typed area is taken", next: "take it out if the map is right" });
  }
  return { areaHa, boundary: mapped.boundary, mapped: true, refused: Number.isNaN(areaHa) };
}

/** The map's ground under the name that the thing looks for; undefined where it has none there and needs none, null where that is a fault. */
function mappedOf(desk: Desk, thing: Thing): MappedGround | null | undefined {
  if (thing.map === undefined) return undefined;
  const [name] = nameOnMap({ key: thing.name, value: thing.map });
  if (name === undefined) return undefined;
  const asked = boundaryName(child(thing.map, "boundary"));
  if (desk.map?.ground.has(name)) return desk.map.ground.get(name);
  if (!asked) return undefined;
  if (desk.map === null) {
    say(desk, asked, { code: "not-on-map", found: `${thing.name}: boundary is ${name}, and the farm has no map`, allowed: "a boundary is a name on the map, or corners in order: 0 m x 0 m, 60 m x 0 m, 60 m x 45 m", next: "write map: and the name of its file beside farm:" });
  } else if (desk.map.whole) say(desk, asked, { code: "not-on-map", found: `${thing.name}: ${name} is not on the map`, ...namesOnMap(desk, name) });
  return null;
}

/** What the map has under other names, nearest first. */
export function namesOnMap(desk: Desk, name: string): { readonly allowed: string; readonly next: string } {
  const { names, lines } = desk.map!;
  const near = nearNames(name, names);
  if (lines.includes(name)) return { allowed: `${name} is drawn as a line, which holds no ground`, next: "draw it as a polygon, or walk round it as a track" };
  const some = names.length === 0 ? "the map has no ground with a name" : `on the map: ${names.slice(0, 8).join(", ")}${names.length > 8 ? ", ..." : ""}`;
  return { allowed: some, next: near.length > 0 ? `${listOr(near)}?` : "write its name as it stands there" };
}
