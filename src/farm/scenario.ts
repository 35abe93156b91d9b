/**
 * The farm as resolved plain data: every figure is present, in the units named here, and whatever the owner left
 * out is listed in `assumed` with its source. Nothing later reaches for a table.
 */
import type { IsoDate, Span } from "../quantity/calendar.js";
import type { RuleId, Use } from "../rules/rule.js";
import type { Boundary } from "../science/boundary.js";
import type { Handover } from "./handover.js";
import type { Footprint } from "./footprint.js";
import type { Kind } from "./kinds.js";
import type { Weather } from "./weather.js";
import type { Young } from "./young.js";

export { BIRDS, isBird, isGrazer, KINDS, type Kind } from "./kinds.js";
export type { Young } from "./young.js";

/** A figure nobody typed: what was taken, and why. */
export interface Assumed { readonly key: string; readonly value: string; readonly source: string; readonly status: string }

/** Ground that a kind, a hay cut or litter used before the season. */
export interface PastUse {
  readonly by: Kind | "hay" | "litter";
  readonly lastDay: IsoDate;
  /** Share of the cell used, 0 to 1. */
  readonly share: number;
}

export interface Closure extends Span { readonly reason: string }

export const WANTS = ["fertility", "scratching", "opening"] as const;
export type Want = (typeof WANTS)[number];

export interface Field {
  readonly name: string;
  /** Metres from the yard. */
  readonly distanceM: number;
  readonly cells: readonly string[];
}

export interface Cell {
  readonly name: string;
  readonly field: string;
  readonly areaHa: number;
  /** Standing cover on the morning of `coverDate`, kg DM/ha above ground. */
  readonly coverKgPerHa: number;
  readonly coverDate: IsoDate;
  /** Growth in kg DM/ha/day, January to December, already scaled to this ground. */
  readonly growthByMonth: readonly number[];
  readonly water: "trough" | "stream" | "pond" | "carted" | "none";
  readonly waterWalkM: number;
  readonly shade: boolean;
  readonly wetGround: boolean;
  /** May be cut for hay or topped. */
  readonly mow: boolean;
  readonly slopePercent: number;
  /** Movable fence that a group of grazers needs here, m. */
  readonly fenceM: number;
  /** Its corners in metres from one point of the whole farm, or from one of its own where only it was measured; null where no corners are known. */
  readonly boundary: Boundary | null;
  /** Groups that may never stand here. */
  readonly notFor: readonly string[];
  readonly wants: readonly Want[];
  readonly closed: readonly Closure[];
  readonly past: readonly PastUse[];
  /** Nitrogen laid down before the season: day and kg N/ha. */
  readonly pastNitrogen: readonly { readonly day: IsoDate; readonly kgPerHa: number }[];
  /** Days on which the ground is in hand (rented fields). */
  readonly ours: Span;
}

/** How a group takes ground: a pen's footprint, a net's inside, the pigs' strip. */
export interface Strip {
  /** Ground of one position, all pens or nets of the group together, ha. */
  readonly areaHa: number;
  /** Days on one position. */
  readonly days: number;
  readonly movedBy: "tow" | "hand";
  /** Minutes of one step, all pens together. */
  readonly stepMinutes: number;
  /** Nets in use at once; 0 for a floorless pen without net. */
  readonly nets: number;
  /** Ground inside its net that each laying hen needs, m2; left out where there is no net or no figure. */
  readonly needM2PerHead?: number;
  /** Name in `pens`, and its sides; null and left out for pigs' strips, which are ground alone. */
  readonly pen: string | null;
  readonly each?: Footprint;
}

export interface Group {
  readonly name: string;
  /** One capital, or capital and small letter. */
  readonly letter: string;
  readonly kind: Kind;
  readonly animalClass: string;
  readonly head: number;
  /** Live weight of one on its first day on the farm, and gain, kg and kg/day. */
  readonly weightKg: number;
  readonly gainKgPerDay: number;
  readonly young: Young | null;
  /** Herbage eaten: a share of live weight, or kg DM a head and day; of young: share of their weight. */
  readonly intake:
    | { readonly shareOfWeight: number; readonly youngShareOfWeight: number }
    | { readonly kgDmPerHeadDay: number };
  /** Kg N a head and day as excreted; young ones with their mothers apart. */
  readonly nitrogenKgPerHeadDay: number;
  readonly youngNitrogenKgPerHeadDay: number;
  readonly waterLPerHeadDay: number;
  /** Spans on the farm, in order, not touching. */
  readonly here: readonly Span[];
  /** Earliest and latest day out on ground; outside them the group stands in its yard. */
  readonly out: Span;
  readonly strip: Strip | null;
  /** Group that this one follows onto ground. */
  readonly follows: string | null;
  /** Runs in the same place as `with` on the days of `days`. */
  readonly runsWith: { readonly with: string; readonly days: readonly Span[] } | null;
  readonly yard: string;
  /** Cells this group may enter, by name, in walk order. */
  readonly mayEnter: readonly string[];
  /** Minutes to move to the next place and to set it ahead. */
  readonly moveMinutes: number;
  readonly setMinutes: number;
  /** Moves between cells need this many people at home. */
  readonly peopleToMove: number;
  /** Moves need somebody who tows. */
  readonly needsTow: boolean;
}

export interface Yard {
  readonly name: string;
  /** Money a day and group standing here, besides feed. */
  readonly costPerDay: number;
  /** Head it holds; null for no limit. */
  readonly room: number | null;
  readonly open: readonly Span[];
}

export interface Person {
  readonly name: string;
  readonly tows: boolean;
  /** Minutes by weekday, Monday first. */
  readonly minutesByWeekday: readonly number[];
  /** Days that differ from the weekday's figure. */
  readonly minutesByDay: Readonly<Record<IsoDate, number>>;
  readonly away: readonly Span[];
}

/** Fence kit owned; null where it is not counted. */
export interface Kit {
  readonly nets: number | null;
  readonly reels: number | null;
  readonly reelM: number;
  readonly energisers: number | null;
}

export interface Hay {
  readonly inStoreKg: number;
  /** Hay as stored that the coming winter needs, kg. */
  readonly winterNeedKg: number;
  readonly dryMatter: number;
  /** Shares lost in feeding out and in store. */
  readonly feedOutLoss: number;
  readonly storeLoss: number;
}

export interface Prices {
  readonly currency: string;
  readonly hayPerKg: number;
  readonly labourPerHour: number;
  readonly mowingPerHa: number;
  /** Money for one haul besides its minutes. */
  readonly haul: number;
}

export interface Hold {
  readonly name: string;
  readonly days: Span;
  /** Exactly one of: a group in a cell, a group in a yard, a cut of a cell. */
  readonly group: string | null;
  readonly cell: string | null;
  readonly yard: string | null;
  readonly cut: "hay" | "topping" | null;
}

export interface HousingOrder extends Span {
  readonly name: string;
  readonly known: IsoDate;
  readonly kinds: readonly Kind[];
}

/** One rule's figures: parameter key to value in the parameter's unit, null for "no limit". */
export interface RuleFigures {
  readonly use: Use;
  readonly figures: Readonly<Record<string, number | null>>;
}

/** Figures of all rules for the farm, and what fields and groups have of their own. */
export interface FigureSet {
  readonly farm: Readonly<Record<RuleId, RuleFigures>>;
  readonly fields: Readonly<Record<string, Partial<Record<RuleId, Partial<RuleFigures>>>>>;
  readonly groups: Readonly<Record<string, Partial<Record<RuleId, Partial<RuleFigures>>>>>;
}

export interface Scenario {
  readonly farm: string;
  readonly units: "metric" | "US";
  readonly season: Span;
  readonly fields: readonly Field[];
  /** In walk order. */
  readonly cells: readonly Cell[];
  readonly groups: readonly Group[];
  readonly yards: readonly Yard[];
  readonly people: readonly Person[];
  readonly kit: Kit;
  readonly hay: Hay;
  readonly prices: Prices;
  readonly rules: FigureSet;
  readonly holds: readonly Hold[];
  readonly housingOrders: readonly HousingOrder[];
  readonly standstills: readonly (Span & { readonly name: string })[];
  /** Cover no sward passes, kg DM/ha. */
  readonly ceilingCover: number;
  /** Trodden and soiled on top of intake, share of intake. */
  readonly troddenShare: number;
  readonly weather: Weather;
  readonly handover: Handover;
  readonly assumed: readonly Assumed[];
  /** SHA-256 of the farm file's long form; the form itself as one line of JSON, null for a farm that no file tells. */
  readonly print: string;
  readonly form: string | null;
}

/** A rule's figure as it applies to a cell's field and a group: the group's own word, then the field's, then the farm's. */
export function figureOf(scenario: Scenario, rule: RuleId, key: string, field: string | null, group: string | null): number | null {
  const own = group === null ? undefined : scenario.rules.groups[group]?.[rule]?.figures?.[key];
  if (own !== undefined) return own;
  const local = field === null ? undefined : scenario.rules.fields[field]?.[rule]?.figures?.[key];
  if (local !== undefined) return local;
  const value = scenario.rules.farm[rule].figures[key];
  if (value === undefined) throw new Error(`${rule} has no figure ${key}`);
  return value;
}

/** Whether a rule is hard, charged or off for a cell's field and a group. */
export function useOf(scenario: Scenario, rule: RuleId, field: string | null, group: string | null): Use {
  const own = group === null ? undefined : scenario.rules.groups[group]?.[rule]?.use;
  const local = field === null ? undefined : scenario.rules.fields[field]?.[rule]?.use;
  return own ?? local ?? scenario.rules.farm[rule].use;
}
