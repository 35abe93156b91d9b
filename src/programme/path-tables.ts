import { useOf } from "../farm/scenario.js";
import type { RuleId } from "../rules/rule.js";
import { YARD, type Season } from "../season/season.js";
import { isOff, type DayRow, type FarmRule, type Half, type PathMoney, type PathRule } from "./half.js";

/** What a group's days cost and use, by day and place, added up over the rules once. */
export interface PathTables {
  /** Cells + 1: places are laid out as place + 1, the yard first. */
  readonly width: number;
  /** By group, [day x width + place + 1]: money and broken rules of standing and of starting a stay. */
  readonly standMoney: readonly Float64Array[];
  readonly standOver: readonly Float64Array[];
  readonly startMoney: readonly Float64Array[];
  readonly startOver: readonly Float64Array[];
  /** By group, by field; by group, by day. */
  readonly haulMoney: readonly Float64Array[];
  readonly stepOver: readonly Float64Array[];
  readonly rows: readonly RowTables[];
  readonly money: readonly PathMoney[];
  readonly farm: readonly FarmRule[];
}

/** One kind of row, for every day: what stands, starts, hauls and steps use of it. Null where it uses nothing. */
export interface RowTables {
  readonly row: DayRow;
  readonly stand: readonly Float64Array[] | null;
  readonly start: readonly Float64Array[] | null;
  readonly haul: readonly Float64Array[] | null;
  readonly step: readonly Float64Array[] | null;
}

/** Adds up all halves that speak of groups' days. */
export function pathTables(season: Season, halves: readonly Half[]): PathTables {
  const on = halves.filter((half) => !isOff(season, half.id));
  const money = on.flatMap((half) => half.bindMoney?.(season) ?? []).map((m) => askedMoney(season, m));
  const rules = on.flatMap((half) => half.bindPath?.(season) ?? []);
  const rows = on.flatMap((half) => half.bindRows?.(season) ?? []);
  return {
    width: season.cells.length + 1,
    standMoney: placeTables(season, money.map((m) => m.stand)),
    standOver: placeTables(season, rules.map((r) => askedOf(season, r.rule, r.stand))),
    startMoney: placeTables(season, money.map((m) => m.start)),
    startOver: placeTables(season, rules.map((r) => askedOf(season, r.rule, r.start))),
    haulMoney: fieldTables(season, money.map((m) => m.haul)),
    stepOver: season.groups.map((_, g) => Float64Array.from({ length: season.days }, (_d, t) => sumStep(season, rules, g, t))),
    rows: rows.map((row) => rowTables(season, row)),
    money,
    farm: on.flatMap((half) => half.bindFarm?.(season) ?? []),
  };
}

function sumStep(season: Season, rules: readonly PathRule[], group: number, day: number): number {
  return rules.reduce((sum, rule) => sum + (askedOf(season, rule.rule, rule.step)?.(group, 0, day, false) ?? 0), 0);
}

/** Whether a rule is asked of a group: in a field, or (null) wherever it stands. */
function asked({ scenario }: Season, rule: RuleId, field: number | null, group: number): boolean {
  return useOf(scenario, rule, field === null ? null : scenario.fields[field].name, scenario.groups[group].name) !== "off";
}

/** Money that is silent for groups, and in fields, of which its rule is not asked. */
function askedMoney(season: Season, { rule, stand, start, haul }: PathMoney): PathMoney {
  const at = (group: number, place: number): boolean => asked(season, rule, place >= 0 ? season.cells[place].field : null, group);
  return {
    rule,
    ...(stand && { stand: (g, place, t) => (at(g, place) ? stand(g, place, t) : 0) }),
    ...(start && { start: (g, place, t, arrives) => (at(g, place) ? start(g, place, t, arrives) : 0) }),
    ...(haul && { haul: (g, field, t) => (asked(season, rule, field, g) ? haul(g, field, t) : 0) }),
  };
}

/** A condition that is silent for groups of which its rule is not asked. */
function askedOf(season: Season, rule: RuleId, hook: PlaceHook): PlaceHook {
  return hook && ((g, place, t, arrives) => (asked(season, rule, null, g) ? hook(g, place, t, arrives) : 0));
}

function rowTables(season: Season, row: DayRow): RowTables {
  return {
    row,
    stand: row.stand ? placeTables(season, [row.stand]) : null,
    start: row.start ? placeTables(season, [row.start]) : null,
    haul: row.haul ? fieldTables(season, [row.haul]) : null,
    step: row.step ? season.groups.map((_, g) => Float64Array.from({ length: season.days }, (_d, t) => row.step?.(g, 0, t) ?? 0)) : null,
  };
}

type PlaceHook = ((group: number, place: number, day: number, arrives: boolean) => number) | undefined;

function placeTables(season: Season, hooks: readonly PlaceHook[]): Float64Array[] {
  const width = season.cells.length + 1;
  const on = hooks.filter((hook) => hook !== undefined);
  return season.groups.map((group, g) => {
    const table = new Float64Array(season.days * width);
    for (let t = 0; t < season.days; t++) {
      if (!group.present[t]) continue;
      for (let place = YARD; place < season.cells.length; place++) for (const hook of on) table[t * width + place + 1] += hook(g, place, t, group.arrives[t] === 1);
    }
    return table;
  });
}

function fieldTables(season: Season, hooks: readonly (((group: number, field: number, day: number) => number) | undefined)[]): Float64Array[] {
  const on = hooks.filter((hook) => hook !== undefined);
  return season.groups.map((_, g) => Float64Array.from(season.scenario.fields, (_f, field) => on.reduce((sum, hook) => sum + hook(g, field, 0), 0)));
}
