import { figureOf, useOf } from "../farm/scenario.js";
import { ruleOf } from "../rules/index.js";
import type { RuleId } from "../rules/rule.js";
import type { Season } from "../season/season.js";
import { ruleIndex, type CellState } from "./cell-state.js";

/** What a rule asks of one cell's season, moment by moment. Each hook adds to `over` (hard) or `charges`. */
export interface CellHooks {
  /** Any stay, on its first morning. */
  enter?(s: CellState, group: number, first: number, last: number): void;
  /** A grazing stay, on its first morning. */
  graze?(s: CellState, group: number, first: number, last: number): void;
  /** A grazing day, after the eating. */
  bite?(s: CellState, group: number, day: number): void;
  /** A stay of birds or pigs, on its first morning; area is all the strips it wants. */
  work?(s: CellState, group: number, first: number, last: number, area: number): void;
  /** A week's lot, before it is split off; area is what it wants, taken what birds take per ha of it. */
  lot?(s: CellState, group: number, day: number, area: number, takenKg: number): void;
  /** The weekly walk. */
  walk?(s: CellState, day: number): void;
  /** A cut, on its evening, before the mower. */
  mow?(s: CellState, day: number, byOwner: boolean, makesHay: boolean): void;
  /** The season's end. */
  close?(s: CellState): void;
}

/** Money and use on days, of one group: what a rule across cells adds up by day. */
export interface DayRow {
  readonly rule: RuleId;
  readonly name: string;
  readonly unit: string;
  /** Most on each day. */
  readonly limit: Float64Array;
  /** How much one unit over weighs beside other broken rules. */
  readonly weight: number;
  /** Used by a group that stands in a place (cell index or YARD) on a day. */
  stand?(group: number, place: number, day: number): number;
  /** Used on the first day of a stay in a place; `arrives` when the group was nowhere before. */
  start?(group: number, place: number, day: number, arrives: boolean): number;
  /** Used on a day of entering a field from elsewhere. */
  haul?(group: number, field: number, day: number): number;
  /** Used by a pen's step inside a cell. */
  step?(group: number, place: number, day: number): number;
}

/** Money of one group's own days. */
export interface PathMoney {
  readonly rule: RuleId;
  stand?(group: number, place: number, day: number): number;
  start?(group: number, place: number, day: number, arrives: boolean): number;
  haul?(group: number, field: number, day: number): number;
}

/** What a rule forbids of one group's days, whatever the cells. Amounts over, 0 where kept. */
export interface PathRule {
  readonly rule: RuleId;
  stand?(group: number, place: number, day: number): number;
  start?(group: number, place: number, day: number, arrives: boolean): number;
  step?(group: number, place: number, day: number): number;
}

/** Totals of a whole plan, over all cells and groups. */
export interface Totals {
  /** Grass ahead on each walk, kg DM. */
  readonly grass: Float64Array;
  readonly nitrogenByYear: Float64Array;
  readonly hayFed: number;
  readonly hayMade: number;
  /** Area cut by day; days without a cut are absent. */
  readonly cutArea: ReadonlyMap<number, number>;
}

/** A rule of the whole farm: money, and how much it is over, from totals. */
export interface FarmRule {
  readonly rule: RuleId;
  judge(totals: Totals): { readonly money: number; readonly over: number };
}

/** A rule's part in the programme. At least one of its hooks is bound, unless the rule is off for this farm. */
export interface Half {
  readonly id: RuleId;
  bindCell?(season: Season): CellHooks | null;
  bindRows?(season: Season): readonly DayRow[];
  bindMoney?(season: Season): readonly PathMoney[];
  bindPath?(season: Season): readonly PathRule[];
  bindFarm?(season: Season): readonly FarmRule[];
}

/** Figures of a rule by cell and group; the group index -1 asks for no group. */
export function figures(season: Season, rule: RuleId, key: string): (cell: number, group: number) => number {
  const { scenario } = season;
  const width = season.groups.length + 1;
  const table = new Float64Array(season.cells.length * width);
  scenario.cells.forEach((cell, c) => {
    for (let g = 0; g < width; g++) {
      const group = g === 0 ? null : season.groups[g - 1].name;
      table[c * width + g] = figureOf(scenario, rule, key, cell.field, group) ?? Infinity;
    }
  });
  return (cell, group) => table[cell * width + group + 1];
}

/** A farm-wide figure; Infinity where there is no limit. */
export function farmFigure(season: Season, rule: RuleId, key: string): number {
  return figureOf(season.scenario, rule, key, null, null) ?? Infinity;
}

const USES = { off: 0, charged: 1, hard: 2 } as const;

/** How a rule speaks in a cell: `breach` for what is never allowed, `charge` for what costs. */
export interface Voice {
  breach(s: CellState, group: number, over: number): void;
  charge(s: CellState, group: number, money: number): void;
}

export function voice(season: Season, rule: RuleId): Voice {
  const { scenario } = season;
  const width = season.groups.length + 1;
  const uses = new Uint8Array(season.cells.length * width);
  scenario.cells.forEach((cell, c) => {
    for (let g = 0; g < width; g++) uses[c * width + g] = USES[useOf(scenario, rule, cell.field, g === 0 ? null : season.groups[g - 1].name)];
  });
  const index = ruleIndex(rule);
  // A rule that is hard from the start may still charge; one made hard by the owner may not.
  const madeHard = ruleOf(rule).use === "charged";
  return {
    breach(s, group, over) {
      if (uses[s.cell * width + group + 1] !== USES.off) s.over += over;
    },
    charge(s, group, money) {
      if (money <= 0) return;
      const use = uses[s.cell * width + group + 1];
      if (use === USES.charged || (use === USES.hard && !madeHard)) {
        s.charges[index] += money;
        s.money += money;
      } else if (use === USES.hard && money > 1e-9) s.over += 1 + money;
    },
  };
}

/** True when a rule is asked of a group in a cell; the group index -1 asks for no group. */
export function askedIn({ scenario, groups, cells }: Season, rule: RuleId, cell: number, group: number): boolean {
  return useOf(scenario, rule, scenario.fields[cells[cell].field].name, group < 0 ? null : groups[group].name) !== "off";
}

/** True when a rule's charges are money in a cell: not where it is off, nor where the owner made it hard. */
export function chargedIn({ scenario, groups, cells }: Season, rule: RuleId, cell: number, group: number): boolean {
  const use = useOf(scenario, rule, scenario.fields[cells[cell].field].name, group < 0 ? null : groups[group].name);
  return use === "charged" || (use === "hard" && ruleOf(rule).use !== "charged");
}

/** True when what a rule asks of the farm as a whole is asked. */
export function farmWide(season: Season, rule: RuleId): boolean {
  return useOf(season.scenario, rule, null, null) !== "off";
}

/** True when the rule is off everywhere on this farm. */
export function isOff(season: Season, rule: RuleId): boolean {
  return useOf(season.scenario, rule, null, null) === "off" && !Object.values(season.scenario.rules.fields).some((f) => f[rule]?.use) && !Object.values(season.scenario.rules.groups).some((g) => g[rule]?.use);
}
