import type { Plan, Stay } from "../plan/plan.js";
import { ruleOf } from "../rules/index.js";
import type { Breach } from "../rules/rule.js";

/** One broken rule with the unit of what was found and what is allowed. */
export interface Given extends Breach {
  readonly unit: string;
}

/** Where something has to give: a stay of a group, or days of a cell or of the whole farm; and all that is broken there. */
export interface Gives {
  readonly group: string | null;
  readonly cell: string | null;
  readonly yard: string | null;
  readonly firstDay: string;
  readonly lastDay: string;
  readonly breaches: readonly Given[];
}

/** The check's breaches of a plan, each in the stay in which it falls; by first day. None is left out, none is added. */
export function givesOf(plan: Plan, breaches: readonly Breach[]): readonly Gives[] {
  const places = new Map<string, { readonly where: Omit<Gives, "breaches">; readonly breaches: Given[] }>();
  for (const breach of breaches) {
    const where = whereOf(plan, breach);
    const key = JSON.stringify(where);
    const place = places.get(key) ?? { where, breaches: [] };
    places.set(key, place);
    place.breaches.push({ ...breach, unit: ruleOf(breach.rule).unit });
  }
  return [...places.values()].map(({ where, breaches: own }) => ({ ...where, breaches: own })).sort((a, b) => (a.firstDay < b.firstDay ? -1 : a.firstDay > b.firstDay ? 1 : 0));
}

function whereOf({ stays }: Plan, { group, cell, firstDay, lastDay }: Breach): Omit<Gives, "breaches"> {
  const holds = (stay: Stay): boolean => stay.group === group && stay.firstDay <= firstDay && lastDay <= stay.lastDay && (cell === null || stay.cell === cell);
  const stay = group === null ? undefined : stays.find(holds);
  if (!stay) return { group, cell, yard: null, firstDay, lastDay };
  return { group, cell: stay.cell, yard: stay.yard, firstDay: stay.firstDay, lastDay: stay.lastDay };
}
