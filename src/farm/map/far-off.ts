import { metresOnGround, type Position } from "../../science/distance.js";
import { say, type Desk } from "../desk.js";
import { latitudeFirst } from "./check-ground.js";
import type { MapFeature } from "./map-feature.js";

/** No farm that is walked reaches so far. */
const FAR_M = 30_000;

/** Says which drawings lie far from the rest, and whether turning their coordinates would mend it; gives the others. */
export function sayFar(desk: Desk, ground: readonly MapFeature[], points: readonly MapFeature[]): readonly MapFeature[] {
  const all = [...ground, ...points];
  const near = (one: Position, other: Position): boolean => metresBetween(one, other) < FAR_M;
  const company = all.map((feature) => all.filter((other) => near(middle(feature), middle(other))).length);
  const home = all[company.indexOf(Math.max(...company))];
  return all.filter((feature) => {
    const at = middle(feature);
    if (near(at, middle(home!))) return true;
    const km = Math.round(metresBetween(at, middle(home!)) / 1000);
    const turned = Math.abs(at[0]) <= 90 && near([at[1], at[0]], middle(home!));
    if (turned) say(desk, feature, latitudeFirst(feature.name, `it lies ${km} km from ${home!.name}, and beside it with its coordinates turned round`));
    else say(desk, feature, { code: "far-off", found: `${feature.name} lies ${km} km from ${home!.name}`, allowed: "the ground of a farm lies together", next: "look at its coordinates, or whether it is of another farm" });
    return false;
  });
}

function middle({ drawn }: MapFeature): Position {
  return drawn.kind === "ground" ? drawn.parts[0]![0]![0]! : drawn.kind === "point" ? drawn.position : [0, 0];
}

/** By the chord, which is long enough for what is far. */
function metresBetween(one: Position, other: Position): number {
  if (Math.abs(one[0] - other[0]) > 5 || Math.abs(one[1] - other[1]) > 5) return chordM(one, other);
  const [a, b] = metresOnGround([one, other]);
  return Math.hypot(a![0] - b![0], a![1] - b![1]);
}

const EARTH_M = 6_371_000;

function chordM(one: Position, other: Position): number {
  const [a, b] = [one, other].map(([longitude, latitude]) => {
    const [x, y] = [(longitude * Math.PI) / 180, (latitude * Math.PI) / 180];
    return [Math.cos(y) * Math.cos(x), Math.cos(y) * Math.sin(x), Math.sin(y)] as const;
  }) as [readonly [number, number, number], readonly [number, number, number]];
  return EARTH_M * Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
