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
  const money = on.flatMap((half) => half.bindMoney?.(season) ?? []);
  const rules = on.flatMap((half) => half.bindPath?.(season) ?? []);
  const rows = on.flatMap((half) => half.bindRows?.(season) ?? []);
  return {
    width: season.cells.length + 1,
    standMoney: placeTables(season, money.map((m) => m.stand)),
    standOver: placeTables(season, rules.map((r) => r.stand)),
    startMoney: placeTables(season, money.map((m) => m.start)),
    startOver: placeTables(season, rules.map((r) => r.start)),
    haulMoney: fieldTables(season, money.map((m) => m.haul)),
    stepOver: season.groups.map((_, g) => Float64Array.from({ length: season.days }, (_d, t) => sumStep(rules, g, t))),
    rows: rows.map((row) => rowTables(season, row)),
    money,
    farm: on.flatMap((half) => half.bindFarm?.(season) ?? []),
  };
}

function sumStep(rules: readonly PathRule[], group: number, day: number): number {
  return rules.reduce((sum, rule) => sum + (rule.step?.(group, 0, day) ?? 0), 0);
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
