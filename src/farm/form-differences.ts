/** One figure that two forms of a farm file say otherwise. */
export interface FormDifference {
  /** Keys from the outermost in, with blanks between; without the names of the file's own parts where a name alone tells. */
  readonly where: string;
  /** As written; null where it is not there. */
  readonly then: string | null;
  readonly now: string | null;
}

/** What two farm files in long form, each as one line of JSON, say otherwise, in order of their keys. */
export function formDifferences(then: string, now: string): readonly FormDifference[] {
  return differences([], withOrders(then, now), withOrders(now, then));
}

/** A form without the orders of names that are not the same names in the other: those are told one by one. */
function withOrders(form: string, other: string): unknown {
  const [own, against] = [form, other].map((text) => JSON.parse(text) as Record<string, unknown>) as [Record<string, unknown>, Record<string, unknown>];
  const same = (key: string) => names(own[key]) === names(against[key]);
  return Object.fromEntries(Object.entries(own).filter(([key]) => key === "farm" || same(key)));
}

function names(list: unknown): string {
  return Array.isArray(list) ? JSON.stringify([...(list as string[])].sort()) : "";
}

function differences(path: readonly string[], then: unknown, now: unknown): FormDifference[] {
  if (isMap(then) && isMap(now)) {
    const keys = [...new Set([...Object.keys(then), ...Object.keys(now)])].sort();
    return keys.flatMap((key) => differences([...path, key], then[key], now[key]));
  }
  const [before, after] = [written(then), written(now)];
  return before === after ? [] : [{ where: whereOf(path), then: before, now: after }];
}

/** Names tell more than the parts of the file that hold them; "farm" alone is the farm's name. */
function whereOf(path: readonly string[]): string {
  if (path[0] === "map") return ["on the map", ...path.slice(1)].join(" ");
  const inFile = path[0] === "farm" ? path.slice(1) : ["order of", ...path];
  return inFile.filter((key, i) => !(i === 0 && ["fields", "groups"].includes(key)) && !(i === 2 && inFile[0] === "fields" && key === "cells")).join(" ");
}

function written(value: unknown): string | null {
  if (value === undefined) return null;
  if (typeof value === "string") return value;
  if (Array.isArray(value)) return value.map(written).join(", ");
  return Object.entries(value as object).map(([key, inner]) => `${key} ${written(inner)}`).join(", ");
}

function isMap(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
