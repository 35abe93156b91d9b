import { useOf } from "../farm/scenario.js";
import { figures } from "../programme/half.js";
import type { PathTables } from "../programme/path-tables.js";
import { ruleOf } from "../rules/index.js";
import type { RuleId } from "../rules/rule.js";
import type { Season } from "../season/season.js";
import type { ProgrammeBuilder } from "./programme-builder.js";

/** The programme while it is written: columns by group, place (the yard first) and day; -1 where there is none. */
export interface Writing {
  readonly season: Season;
  readonly tables: PathTables;
  readonly b: ProgrammeBuilder;
  /** 1 when the group stands in the place on the day. */
  stand(group: number, place: number, day: number): number;
  /** 1 when it begins to. */
  start(group: number, place: number, day: number): number;
}

/** A rule's price in a cell for a group; nothing where the rule is off, or forbids what it would charge. */
export function priceOf(season: Season, rule: RuleId, key: string): (cell: number, group: number) => number {
  const price = figures(season, rule, key);
  return (cell, group) => {
    const use = useOf(season.scenario, rule, season.scenario.cells[cell].field, group < 0 ? null : season.groups[group].name);
    return use === "off" || (use === "hard" && ruleOf(rule).use === "charged") ? 0 : price(cell, group);
  };
}
