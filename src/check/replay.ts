import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { CellSeason } from "./cell-record.js";
import { cellSeason } from "./cell-season.js";
import { plannedCuts } from "./cuts.js";
import { labourOf, type Labour } from "./labour.js";
import { joinedParties, partyOf } from "./parties.js";
import { placingOf, type PlacingFault } from "./placing.js";
import type { GroupSeason } from "./group-season.js";
import { seasonDays, type SeasonDays } from "./season-days.js";
import { cellStays, type CellStay } from "./stays.js";

/** Mass that may be lost to rounding in a cell's season, kg DM. */
const LOST_KG = 0.001;

/** A plan laid on the calendar, day by day: what every rule's check reads. */
export interface Replay {
  readonly days: SeasonDays;
  readonly yards: readonly string[];
  readonly groups: readonly GroupSeason[];
  readonly cells: readonly CellSeason[];
  /** All stays in cells, by first day, then group in the farm's order. */
  readonly stays: readonly CellStay[];
  readonly placingFaults: readonly PlacingFault[];
  readonly labour: Labour;
}

/**
 * Replays a plan day by day, by the order of a day on the farm: back fences down, strips taken, grazing, growth, cut.
 * Never throws on what a plan says; throws when a cell's mass does not close, which would be a fault of this code.
 */
export function replayPlan(scenario: Scenario, plan: Plan): Replay {
  const days = seasonDays(scenario.season);
  const placing = placingOf(scenario, plan, days);
  const stays = cellStays(scenario, placing);
  const alone = scenario.groups.map((group) => partyOf(group, days));
  const parties = joinedParties(scenario, alone, placing.hosts, days);
  const cuts = plannedCuts(scenario, plan, days);
  const cells = scenario.cells.map((cell, c) =>
    cellSeason({
      scenario, days, parties, cell, cuts: cuts[c]!, occupants: placing.occupants[c]!, stays: stays.filter((stay) => stay.cell === c),
    }),
  );
  cells.forEach(closes);
  const groups = scenario.groups.map((group, g) => ({
    group, here: placing.here[g]!, places: placing.places[g]!, hosts: placing.hosts[g]!, alone: alone[g]!, party: parties[g]!,
    stays: stays.filter((stay) => stay.group === g),
  }));
  const labour = labourOf(scenario, days, groups);
  return { days, yards: placing.yards, groups, cells, stays, placingFaults: placing.faults, labour };
}

function closes({ cell, balance }: CellSeason): void {
  const { start, grown, eaten, trodden, cut, end } = balance;
  const off = start + grown - eaten - trodden - cut - end;
  if (!(Math.abs(off) <= LOST_KG)) throw new Error(`the grass of ${cell.name} does not close: ${off} kg DM`);
}
