import { say, type Desk } from "../desk.js";
import { child, itemsOf, textOf, type MapNode, type TextNode } from "../tree.js";
import { readGeoJson } from "./geojson.js";
import { readGpx } from "./gpx.js";
import { readKml } from "./kml.js";
import type { MapRead, MapText } from "./map-feature.js";

/** A map file that the farm names; null for one that could not be read. */
export interface NamedMap {
  readonly file: string;
  readonly read: MapRead | null;
}

const READERS: Readonly<Record<string, (text: string, file: string) => MapRead>> = { geojson: readGeoJson, json: readGeoJson, gpx: readGpx, kml: readKml };

/** Names of map files as written under `map`; names alone, for they lie beside the farm file. */
export function mapFilesOf(root: MapNode): readonly TextNode[] {
  return itemsOf(child(root, "map")).filter((node): node is TextNode => textOf(node) !== undefined);
}

/** True for a name that can be asked of the folder of the farm file. */
export function isFileName(name: string): boolean {
  return !/[\\/\u0000]/.test(name) && Object.hasOwn(READERS, endOf(name));
}

function endOf(name: string): string {
  return /\.([^.]+)$/.exec(name)?.[1]?.toLowerCase() ?? "";
}

/** Reads all files that the farm names; null where it names none. */
export function readMaps(desk: Desk, root: MapNode, maps: readonly MapText[]): readonly NamedMap[] | null {
  const nodes = mapFilesOf(root);
  if (nodes.length === 0) return null;
  return nodes.map((node, i): NamedMap => {
    const file = node.text;
    if (nodes.findIndex(({ text }) => text === file) < i) {
      say(desk, node, { code: "name-twice", found: `${file} is named twice`, allowed: "one file, one name", next: "take one of them out" });
      return { file, read: null };
    }
    return { file, read: readMap(desk, node, maps.find((map) => map.file === file)) };
  });
}

function readMap(desk: Desk, node: TextNode, map: MapText | undefined): MapRead | null {
  const file = node.text;
  const refuse = (code: string, found: string, allowed: string, next: string): null => {
    say(desk, node, { code, found, allowed, next });
    return null;
  };
  if (/[\\/\u0000]/.test(file)) return refuse("map-kind", `map: ${file} names a folder`, "map files lie beside the farm file", "write the file's name alone");
  if (!isFileName(file)) return refuse("map-kind", `map: ${file} is no map that is read here`, "maps are GeoJSON (.geojson), GPX (.gpx) or KML (.kml; unpack a .kmz)", "save the map as one of them");
  if (map === undefined) return refuse("no-file", `map: there is no ${file} beside the farm file`, "map files lie beside the farm file", "look at its name and folder");
  if (map.text === null) {
    desk.findings.push(...map.findings);
    return null;
  }
  const read = READERS[endOf(file)]!(map.text, file);
  desk.findings.push(...read.findings);
  return read;
}
