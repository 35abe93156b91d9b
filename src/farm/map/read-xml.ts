import { DOMParser, onErrorStopParsing, ParseError, type Element } from "@xmldom/xmldom";
import type { Position } from "../../science/distance.js";
import type { Place } from "../tree.js";
import { refused, type MapRead } from "./map-feature.js";

/** Reads XML whose outermost element has a name, whatever its prefix; or says why not. */
export function rootOf(text: string, file: string, name: "gpx" | "kml"): Element | MapRead {
  const kind = name.toUpperCase();
  const broken = (found: string, place: Partial<Place>): MapRead => refused(file, place, "xml-form", `the map is not well-formed XML: ${found}`, `a .${name} file is XML from end to end`, "save it again from the program that drew it");
  if (text.trim() === "") return broken("the file is empty", {});
  try {
    const root = new DOMParser({ onError: onErrorStopParsing }).parseFromString(text, "text/xml").documentElement;
    if (root?.localName === name) return root;
    return refused(file, root ? placeOf(root, file) : {}, "map-form", `the outermost element is ${root?.localName ?? "missing"}`, `a .${name} file is ${kind} and begins with <${name}>`, `save the map as ${kind}`);
  } catch (error) {
    if (!(error instanceof ParseError)) throw error;
    const { lineNumber, columnNumber } = (error.locator ?? {}) as { lineNumber?: number; columnNumber?: number };
    return broken(wordsOf(error.message), { line: Math.max(1, lineNumber ?? 1), column: Math.max(1, columnNumber ?? 1) });
  }
}

/** The parser's own words, without what only its makers need, and on one line. */
function wordsOf(message: string): string {
  return message.replace(/^Reporting error "(.*)" caused onErrorStopParsing$/s, "$1").replace(/^.*: HierarchyRequestError: /s, "").split("\n")[0]!.trim().slice(0, 120);
}

/** Elements of some names among those directly within, in order. */
export function within(element: Element, ...names: readonly string[]): readonly Element[] {
  return [...element.childNodes].filter((node): node is Element => node.nodeType === 1 && names.includes((node as Element).localName ?? ""));
}

/** Elements of some names anywhere below, in order. */
export function below(element: Element, ...names: readonly string[]): readonly Element[] {
  const found: Element[] = [];
  const waiting: Element[] = [element];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    if (next !== element && names.includes(next.localName ?? "")) found.push(next);
    waiting.push(...[...next.childNodes].filter((node): node is Element => node.nodeType === 1).reverse());
  }
  return found;
}

export function textIn(element: Element, name: string): string {
  return within(element, name)[0]?.textContent?.trim() ?? "";
}

export function placeOf(element: Element, file: string): Place {
  return { file, line: element.lineNumber ?? 1, column: element.columnNumber ?? 1 };
}

/** Longitude and latitude as typed; null where one is no number. */
export function positionFrom(longitude: string | null | undefined, latitude: string | null | undefined): Position | null {
  const [x, y] = [numberFrom(longitude), numberFrom(latitude)];
  return x === null || y === null ? null : [x, y];
}

function numberFrom(text: string | null | undefined): number | null {
  return text && /^\s*[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?\s*$/.test(text) ? Number(text) : null;
}
