import { hectares } from "../read-area.js";
import type { FarmMap } from "./farm-map.js";

/**
 * What a map says of a farm, a text for each name: a farm's print is taken of it. Areas stand in full, so that people see what changed;
 * of the corners a print does.
 */
export function figuresOnMap(map: FarmMap, hash: (text: string) => string): Readonly<Record<string, string>> {
  const ground = [...map.ground].flatMap(([name, drawn]) => {
    if (drawn === null) return [];
    const corners = drawn.boundary.rings.reduce((sum, ring) => sum + ring.length, 0);
    return [[name, `${hectares(drawn.areaHa)} ha, ${corners} corners ${hash(drawn.drawn).slice(0, 12)}`] as const];
  });
  const gates = [...map.gates].map(([name, drawn]) => [drawn === map.yard ? "yard" : `gate ${name}`, drawn.drawn] as const);
  return Object.fromEntries([...ground, ...gates]);
}
