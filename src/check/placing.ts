import type { Scenario } from "../farm/scenario.js";
import { isIsoDate } from "../quantity/calendar.js";
import type { Cut, Plan, Stay } from "../plan/plan.js";
import { daysIn, positionOf, type SeasonDays } from "./season-days.js";

/** No place is known on that day. */
export const NOWHERE = -1;

/** A place as one number: a cell's position in the farm's list from 0 up, yards from -2 down. */
export function yardPlace(yard: number): number {
  return -2 - yard;
}
export function isYard(place: number): boolean {
  return place <= -2;
}
export function yardOf(place: number): number {
  return -2 - place;
}

/** What a plan says wrongly about places, before any grass is looked at. */
export interface PlacingFault {
  readonly rule: "every-day-placed" | "one-group-per-cell";
  /** Positions in the farm's lists; null where the farm has no such group. */
  readonly group: number | null;
  readonly cell: number | null;
  readonly first: number;
  readonly last: number;
  readonly found: string;
  readonly allowed: string;
}

export interface Placing {
  /** Yards by name: those of the farm, then groups' own that it does not list. */
  readonly yards: readonly string[];
  /** Where each group stands, by group and day; a companion where its host stands. */
  readonly places: readonly Int16Array[];
  readonly here: readonly Uint8Array[];
  /** The group it runs with that day, or -1. */
  readonly hosts: readonly Int16Array[];
  /** The group that counts in each cell and day, or -1: others typed there take nothing in the replay. */
  readonly occupants: readonly Int16Array[];
  readonly faults: readonly PlacingFault[];
}

/** Reads a plan onto the calendar. Never throws: whatever cannot stand is left out and told. */
export function placingOf(scenario: Scenario, plan: Plan, days: SeasonDays): Placing {
  const yards = [...new Set([...scenario.yards.map((y) => y.name), ...scenario.groups.map((g) => g.yard)])];
  const faults: PlacingFault[] = [];
  const here = scenario.groups.map((group) => daysIn(days, group.here));
  const hosts = hostsOf(scenario, here, days);
  const typed = typedPlaces(scenario, plan, days, yards, faults);
  const names = (place: number) => placeText(scenario, yards, place);
  const places = scenario.groups.map((_, g) => ownPlaces(g, typed[g]!, here[g]!, hosts[g]!, names, faults));
  scenario.groups.forEach((_, g) => runWithHost(scenario, g, typed[g]!, places, hosts[g]!, names, faults));
  const occupants = occupy(scenario, places, hosts, days, faults);
  return { yards, places, here, hosts, occupants, faults };
}

export function placeText(scenario: Scenario, yards: readonly string[], place: number): string {
  if (place === NOWHERE) return "no place";
  return isYard(place) ? `in the yard ${yards[yardOf(place)]!}` : `in ${scenario.cells[place]!.name}`;
}

/** The group each group runs with, by day: both must be here, and a ring of groups runs with nobody. */
function hostsOf(scenario: Scenario, here: readonly Uint8Array[], days: SeasonDays): Int16Array[] {
  const at = new Map(scenario.groups.map((group, g) => [group.name, g]));
  const asked = scenario.groups.map((group) => (group.runsWith ? daysIn(days, group.runsWith.days) : null));
  const next = (g: number, t: number): number => {
    const host = at.get(scenario.groups[g]!.runsWith?.with ?? "") ?? -1;
    return host >= 0 && asked[g]![t] && here[g]![t] && here[host]![t] ? host : -1;
  };
  const root = (g: number, t: number): number => {
    let host = next(g, t);
    for (let steps = 0; host >= 0 && steps < scenario.groups.length; steps++) {
      const further = next(host, t);
      if (further < 0) return host;
      host = further;
    }
    return -1;
  };
  return scenario.groups.map((group, g) => {
    const hosts = new Int16Array(days.count).fill(-1);
    if (group.runsWith) for (let t = 0; t < days.count; t++) hosts[t] = root(g, t);
    return hosts;
  });
}

/** Places typed for one group: the first one of each day, and days on which there is more than one. */
interface Typed {
  readonly place: Int16Array;
  readonly more: Map<number, number[]>;
}

function typedPlaces(scenario: Scenario, plan: Plan, days: SeasonDays, yards: readonly string[], faults: PlacingFault[]): Typed[] {
  const typed = scenario.groups.map(() => ({ place: new Int16Array(days.count).fill(NOWHERE), more: new Map<number, number[]>() }));
  const groups = new Map(scenario.groups.map((group, g) => [group.name, g]));
  const cells = new Map(scenario.cells.map((cell, c) => [cell.name, c]));
  const fault = (group: number | null, range: { first: number; last: number }, found: string, allowed: string) =>
    faults.push({ rule: "every-day-placed", group, cell: null, ...range, found, allowed });
  for (const stay of [...plan.stays].sort(byDayThenPlace)) {
    const range = daysOfLine(days, stay.firstDay, stay.lastDay);
    const group = groups.get(stay.group) ?? null;
    if (range.fault) fault(group, range, range.fault, "days of the season, first to last");
    if (group === null) fault(null, range, `group "${stay.group}"`, "a group of the farm");
    const place = placeOfLine(stay, cells, yards);
    if (place === NOWHERE) fault(group, range, `place "${stay.cell ?? stay.yard ?? ""}"`, "one cell or yard of the farm");
    if (group !== null && place !== NOWHERE && range.counts) layDown(typed[group]!, place, range.first, range.last);
  }
  for (const cut of [...plan.cuts].sort(byDayThenCell)) {
    const range = daysOfLine(days, cut.day, cut.day);
    if (range.fault) fault(null, range, range.fault, "days of the season, first to last");
    if (!cells.has(cut.cell)) fault(null, range, `a cut of "${cut.cell}"`, "a cell of the farm");
  }
  return typed;
}

function byDayThenPlace(a: Stay, b: Stay): number {
  const key = (stay: Stay) => [stay.firstDay, stay.lastDay, stay.group, stay.cell ?? "", stay.yard ?? ""].join("|");
  return key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0;
}

function byDayThenCell(a: Cut, b: Cut): number {
  const key = (cut: Cut) => [cut.day, cut.cell, cut.cut].join("|");
  return key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0;
}

/** The days of a typed line inside the season; a line that cannot be read is told on the season's nearest day. */
function daysOfLine(days: SeasonDays, firstDay: string, lastDay: string) {
  const end = days.count - 1;
  const inside = (t: number) => Math.min(end, Math.max(0, t));
  if (!isIsoDate(firstDay) || !isIsoDate(lastDay)) return { first: 0, last: 0, counts: false, fault: `from "${firstDay}" to "${lastDay}"` };
  const first = positionOf(days, firstDay);
  const last = positionOf(days, lastDay);
  const fault = last < first || first < 0 || last > end ? `${firstDay} to ${lastDay}` : null;
  return { first: inside(first), last: Math.max(inside(first), inside(last)), counts: last >= first && last >= 0 && first <= end, fault };
}

function placeOfLine(stay: Stay, cells: ReadonlyMap<string, number>, yards: readonly string[]): number {
  if ((stay.cell === null) === (stay.yard === null)) return NOWHERE;
  if (stay.cell !== null) return cells.get(stay.cell) ?? NOWHERE;
  const yard = yards.indexOf(stay.yard!);
  return yard < 0 ? NOWHERE : yardPlace(yard);
}

function layDown({ place, more }: Typed, at: number, first: number, last: number): void {
  for (let t = first; t <= last; t++) {
    if (place[t] === NOWHERE) place[t] = at;
    else if (place[t] !== at && !more.get(t)?.includes(at)) more.set(t, [...(more.get(t) ?? []), at]);
  }
}

function ownPlaces(
  group: number, typed: Typed, here: Uint8Array, hosts: Int16Array, names: (place: number) => string, faults: PlacingFault[],
): Int16Array {
  const places = new Int16Array(typed.place);
  for (let t = 0; t < places.length; t++) {
    const several = [places[t]!, ...(typed.more.get(t) ?? [])];
    const fault = (found: string, allowed: string) =>
      faults.push({ rule: "every-day-placed", group, cell: null, first: t, last: t, found, allowed });
    if (!here[t]) {
      if (places[t] !== NOWHERE) fault(`${names(places[t]!)} while away`, "no place while away");
      places[t] = NOWHERE;
    } else if (several.length > 1) fault(`${several.length} places: ${several.map(names).join(", ")}`, "1 place");
    else if (places[t] === NOWHERE && hosts[t]! < 0) fault("no place", "1 place");
  }
  return places;
}

/** A companion stands where its host stands, whatever the plan says; what it says must be the same. */
function runWithHost(
  scenario: Scenario, group: number, typed: Typed, places: readonly Int16Array[], hosts: Int16Array,
  names: (place: number) => string, faults: PlacingFault[],
): void {
  const own = places[group]!;
  for (let t = 0; t < own.length; t++) {
    const host = hosts[t]!;
    if (host < 0) continue;
    const place = places[host]![t]!;
    if (typed.place[t] !== place) {
      faults.push({
        rule: "one-group-per-cell", group, cell: place >= 0 ? place : null, first: t, last: t,
        found: names(typed.place[t]!), allowed: `runs with ${scenario.groups[host]!.name}`,
      });
    }
    own[t] = place;
  }
}

/** Gives each cell its group of the day: the first in the farm's order. Others there are left out of the replay. */
function occupy(scenario: Scenario, places: readonly Int16Array[], hosts: readonly Int16Array[], days: SeasonDays, faults: PlacingFault[]): Int16Array[] {
  const occupants = scenario.cells.map(() => new Int16Array(days.count).fill(-1));
  for (let g = 0; g < places.length; g++) {
    for (let t = 0; t < days.count; t++) {
      const cell = places[g]![t]!;
      if (cell < 0 || hosts[g]![t]! >= 0) continue;
      const first = occupants[cell]![t]!;
      if (first < 0) occupants[cell]![t] = g;
      else {
        const found = `shares with ${scenario.groups[first]!.name}`;
        faults.push({ rule: "one-group-per-cell", group: g, cell, first: t, last: t, found, allowed: "1 group" });
      }
    }
  }
  return occupants;
}
