import type { Breach } from "../rules/rule.js";

const FIGURE = /(\d+(?:\.\d+)?) (kg DM\/ha|kg N\/ha|pig-days\/ha|kg\/ha|ha|days?|min|m|%|L|nets?|reels?|energisers?|head|people|person)(?![a-z/])/;

/** By how much a stay breaks a rule, with its unit, from the figures that the check tells: "6 days short", "0.02 ha too much"; null where there are none to compare. */
export function shortBy({ found, allowed }: Pick<Breach, "found" | "allowed">): string | null {
  const least = allowed.startsWith("at least ");
  if (!least && !allowed.startsWith("at most ")) return null;
  const [there, limit] = [FIGURE.exec(found), FIGURE.exec(allowed)];
  if (!there || !limit || one(there[2]!) !== one(limit[2]!)) return null;
  const off = Math.round((Number(limit[1]) - Number(there[1])) * (least ? 1 : -1) * 1000) / 1000;
  return off > 0 ? `${off} ${one(limit[2]!)}${off !== 1 && COUNTED.includes(one(limit[2]!)) ? "s" : ""} ${least ? "short" : "too much"}` : null;
}

const COUNTED = ["day", "net", "reel", "energiser"];

/** A unit without its plural. */
function one(unit: string): string {
  return unit.replace(/^(day|net|reel|energiser)s$/, "$1");
}
