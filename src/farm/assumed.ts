import type { Taken } from "./desk.js";
import type { Assumed, Scenario } from "./scenario.js";

/** Rows of defaults taken, one for each key and value: "shade of every cell", "distance of Knoll, Far field". */
export function gatherAssumed(taken: readonly Taken[], scenario: Scenario): readonly Assumed[] {
  const rows = new Map<string, { readonly first: Taken; readonly subjects: string[] }>();
  for (const row of taken) {
    const key = JSON.stringify([row.key, row.value, row.source]);
    const known = rows.get(key);
    if (!known) rows.set(key, { first: row, subjects: [row.subject] });
    else if (!known.subjects.includes(row.subject)) known.subjects.push(row.subject);
  }
  const every: readonly (readonly [string, readonly string[]])[] = [
    ["every cell", scenario.cells.map((cell) => cell.name)],
    ["every field", scenario.fields.map((field) => field.name)],
    ["every group", scenario.groups.map((group) => group.name)],
  ];
  return [...rows.values()].map(({ first, subjects }) => ({ key: keyOf(first.key, subjects, every), value: first.value, source: first.source, status: first.status }));
}

function keyOf(key: string, subjects: readonly string[], every: readonly (readonly [string, readonly string[]])[]): string {
  const named = subjects.filter((subject) => subject !== "");
  if (named.length === 0) return key;
  const all = every.find(([, names]) => names.length > 1 && names.length === named.length && names.every((name) => named.includes(name)));
  return `${key} of ${all ? all[0] : named.join(", ")}`;
}
