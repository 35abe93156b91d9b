import type { Element } from "@xmldom/xmldom";
import { metresOnGround, type Position } from "../../science/distance.js";
import { between } from "../../science/rings.js";
import type { Finding } from "../finding.js";
import { faultAt, NOWHERE, type Drawn, type MapFeature, type MapRead } from "./map-feature.js";
import { placeOf, positionFrom, rootOf, textIn, within } from "./read-xml.js";

/** Reads GPX 1.1: each track and route is walked round ground, each waypoint is a point. Source: GPX 1.1 schema, topografix.com/GPX/1/1. */
export function readGpx(text: string, file: string): MapRead {
  const root = rootOf(text, file, "gpx");
  if ("features" in root) return root;
  return { features: within(root, "wpt", "rte", "trk").map((element) => featureOf(element, file)), findings: [] };
}

function featureOf(element: Element, file: string): MapFeature {
  const place = placeOf(element, file);
  const name = textIn(element, "name");
  const faults: Finding[] = [];
  const notes: Finding[] = [];
  const positions = (points: readonly Element[]): readonly Position[] => points.flatMap((point) => pointOf(point, file, name, faults));
  if (element.localName === "wpt") {
    return { name, ...place, drawn: { kind: "point", position: positions([element])[0] ?? NOWHERE }, faults, notes };
  }
  const segments = element.localName === "rte" ? [within(element, "rtept")] : within(element, "trkseg").map((segment) => within(segment, "trkpt"));
  if (segments.length > 1) faults.push(faultAt(place, "track-broken", `${name} is walked in ${segments.length} stretches`, "a track round ground is one stretch", "join them where the track was drawn, or walk it again"));
  const walked = positions(segments.flat());
  const gap = gapOf(walked);
  if (gap !== null) notes.push(faultAt(place, "track-open", `${name}: the track ends ${Math.round(gap)} m from where it begins`, "a track is closed by a straight line", "nothing to do if that line is the boundary"));
  return { name, ...place, drawn: ringOf(walked), faults, notes };
}

function pointOf(point: Element, file: string, name: string, faults: Finding[]): readonly Position[] {
  const position = positionFrom(point.getAttribute("lon"), point.getAttribute("lat"));
  if (position) return [position];
  faults.push(faultAt(placeOf(point, file), "map-form", `${name}: a point has no longitude or latitude`, "lat and lon are numbers, in degrees", "mend it, or take the point out"));
  return [];
}

function ringOf(walked: readonly Position[]): Drawn {
  const [first, last] = [walked[0], walked.at(-1)];
  const closed = walked.length > 1 && first![0] === last![0] && first![1] === last![1];
  return { kind: "ground", parts: [[closed ? walked.slice(0, -1) : walked]] };
}

/** Gaps shorter than a receiver's error, or than this share of the way, are none. */
const LEAST_GAP_M = 20;
const GAP_SHARE = 0.1;

/** From the end of a track to its begin, m; null where that is short. */
function gapOf(walked: readonly Position[]): number | null {
  if (walked.length < 3 || walked.some(([, latitude]) => Math.abs(latitude) > 90)) return null;
  const corners = metresOnGround(walked);
  const way = corners.slice(1).reduce((sum, corner, i) => sum + between(corners[i]!, corner), 0);
  const gap = between(corners[0]!, corners.at(-1)!);
  return gap > LEAST_GAP_M && gap > GAP_SHARE * way ? gap : null;
}
