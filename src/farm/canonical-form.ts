import { plainOf, type MapNode, type Plain } from "./tree.js";

/** Keys that are read order-blind, so that layout and remarks do not change a farm's print; `note` is no figure. */
export function canonicalForm(long: MapNode): string {
  return canonical(withoutNotes(orderKept(plainOf(long))));
}

type Json = Plain;

/** JSON with keys in the order of their code units (RFC 8785); all values here are texts, lists and maps. */
export function canonical(value: Json): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (isList(value)) return `[${value.map(canonical).join(",")}]`;
  const keys = Object.keys(value).sort();
  return `{${keys.map((key) => `${JSON.stringify(key)}:${canonical(value[key]!)}`).join(",")}}`;
}

function withoutNotes(value: Json): Json {
  if (typeof value === "string") return value;
  if (isList(value)) return value.map(withoutNotes);
  return Object.fromEntries(Object.entries(value).filter(([key, inner]) => key !== "note" || typeof inner !== "string").map(([key, inner]) => [key, withoutNotes(inner)]));
}

/** Order of groups is the farm's order in every sheet, so it counts: the names go in as a list. Cells' is in `walk`. */
function orderKept(value: Json): Json {
  if (typeof value === "string" || isList(value)) return value;
  const groups = value["groups"];
  return typeof groups === "object" && !isList(groups) ? { ...value, "groups in order": Object.keys(groups) } : value;
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
