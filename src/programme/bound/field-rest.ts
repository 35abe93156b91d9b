import type { Season } from "../../season/season.js";
import { askedIn, chargedIn, figures } from "../half.js";
import { usualRest } from "../rules/rest-period.js";

/** Rests between grazings in the cells of a field, at the least that any of its cells and groups ask. */
export interface FieldRest {
  /** Fewest days of rest. */
  readonly floor: number;
  /** Days after which no rest is charged. */
  readonly recovered: number;
  /** Charge of a cell that is grazed again on a day, at least, when all its visit began so many days before. */
  money(day: number, since: number): number;
}

export function fieldRest(season: Season, field: number): FieldRest {
  const asking: (readonly [number, number])[] = [];
  let all = true;
  season.cells.forEach((cell, c) => season.groups.forEach((group, g) => {
    if (cell.field !== field || !group.grazer || !group.mayEnter[c]) return;
    asking.push([c, g]);
    if (!askedIn(season, "rest-period", c, g)) all = false;
  }));
  if (!all || asking.length === 0) return { floor: 0, recovered: 0, money: () => 0 };
  const of = (key: string): number[] => asking.map(([c, g]) => figures(season, "rest-period", key)(c, g));
  const usual = usualRest(season);
  const price = asking.every(([c, g]) => chargedIn(season, "rest-period", c, g)) ? Math.min(...of("price")) : 0;
  const floor = Math.min(season.days, Math.ceil(Math.min(...of("floor"))));
  const recovered = Math.min(season.days, Math.ceil(Math.max(floor, ...of("flush"), ...of("midsummer"))));
  const byDay = Float64Array.from({ length: season.days }, (_, t) => Math.min(...asking.map(([c, g]) => usual(c, g, t))));
  // The usual rest on the day that is charged, somewhere since the visit began: rests only grow from spring to midsummer.
  const least = Float64Array.from({ length: season.days }, (_, t) => Math.min(...byDay.subarray(t)));
  return { floor, recovered, money: (day, since) => (since > recovered ? 0 : Math.max(0, least[Math.max(0, day - since)] - (since - 1)) * price) };
}
