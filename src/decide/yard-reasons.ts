import { figureOf, isGrazer, useOf } from "../farm/scenario.js";
import type { Snapshot } from "../programme/snapshot.js";
import { grownCover } from "../science/growth.js";
import { YARD, type Season, type SeasonGroup } from "../season/season.js";

/** For each group that a plan keeps in its yard all its days, a plain sentence: what stands in the way, and what would help. */
export function yardReasons(season: Season, { place }: Pick<Snapshot, "place">): readonly string[] {
  return season.groups.flatMap((group, g) => {
    const days = place[g]!;
    if (!days.includes(YARD) || days.some((at) => at >= 0)) return [];
    return [`${group.name} stay in the yard all season: ${reasonOf(season, group, g)}.`];
  });
}

function reasonOf(season: Season, group: SeasonGroup, g: number): string {
  const daysOut = dayIndices(season).filter((t) => group.present[t] && group.out[t]);
  if (daysOut.length === 0) return "no day on the farm lies between turnout and housing";
  const open = daysOut.filter((t) => season.cells.some((cell, c) => group.mayEnter[c] && cell.open[t]));
  if (open.length === 0) return "no cell that they may enter is open on a day when they may be out";
  const movable = open.filter((t) => group.moveOk[t]);
  if (movable.length === 0) return "on no such day are the people at home whom a move needs";
  const known = minutesReason(season, group, g, movable) ?? kitReason(season, group, g) ?? coverReason(season, group, g, movable) ?? mouthsReason(season, group, g, movable);
  return known ?? "every place found for them cost more than the yard, or broke a rule";
}

/** The way out of the yard takes longer than anybody has, whatever the day and the cell. */
function minutesReason(season: Season, group: SeasonGroup, g: number, days: readonly number[]): string | null {
  if (useOf(season.scenario, "people", null, null) === "off") return null;
  const { moveMinutes, setMinutes } = season.scenario.groups[g]!;
  const nearest = Math.min(...season.cells.map((cell, c) => (group.mayEnter[c] ? season.haulMinutes[g]![cell.field]! : Infinity)));
  const needed = moveMinutes + setMinutes + nearest;
  const most = days.reduce((best, t) => Math.max(best, season.minutesAtHome[t]! - season.chores[t]!), 0);
  if (needed <= most) return null;
  return `moving them out takes ${Math.ceil(needed)} min beside the day's chores, and never more than ${Math.floor(most)} min are left; give people more minutes, or write move-takes and set-takes if it goes faster`;
}

/** Grass never reaches what must stand before grazers go in. */
function coverReason(season: Season, group: SeasonGroup, g: number, days: readonly number[]): string | null {
  const { scenario } = season;
  if (!group.grazer || useOf(scenario, "entry-cover", null, null) === "off") return null;
  const ready = season.cells.some((cell, c) => group.mayEnter[c] && days.some((t) => {
    const wanted = figureOf(scenario, "entry-cover", "first-pass", scenario.cells[c]!.field, scenario.groups[g]!.name) ?? 0;
    return cell.open[t] && grownCover(cell.startCover, cell.rates[t]!, season.ceiling) >= wanted;
  }));
  return ready ? null : "grass never reaches what must stand before they go in; walk it again, or look at growth-scale";
}

/** The nearest thing to a fence for them takes more kit than there is; on the day of a move the next one is set ahead. */
function kitReason({ scenario, cells }: Season, { mayEnter }: SeasonGroup, g: number): string | null {
  if (useOf(scenario, "fence-kit", null, null) === "off") return null;
  const { kit } = scenario;
  const { kind, name, strip } = scenario.groups[g]!;
  const own = scenario.cells.filter((_, c) => mayEnter[c]);
  const nets = strip?.nets ?? 0;
  const fenced = isGrazer(kind) || kind === "pigs" || nets > 0;
  const reels = isGrazer(kind) ? 2 * Math.min(...own.map((cell) => Math.ceil(cell.fenceM / kit.reelM))) : 0;
  const energisers = fenced ? Math.min(...own.map(({ field }) => figureOf(scenario, "fence-kit", "energisers-each", field, name) ?? 0)) : 0;
  const short = ([["nets", nets], ["reels", reels], ["energisers", energisers]] as const).find(([pieces, needed]) => needed > (kit[pieces] ?? Infinity));
  if (!short || cells.length === 0) return null;
  const [pieces, needed] = short;
  return `to move them to the cell that takes the least fence needs ${needed} ${needed === 1 ? pieces.slice(0, -1) : pieces}, and there are ${kit[pieces]}; write more kit, or leave it out where it is not to be counted`;
}

/** A single day of theirs takes more than any cell can ever give. */
function mouthsReason(season: Season, group: SeasonGroup, g: number, days: readonly number[]): string | null {
  const { scenario } = season;
  if (!group.grazer || useOf(scenario, "residual-cover", null, null) === "off") return null;
  let most = 0;
  for (const [c, cell] of season.cells.entries()) {
    if (!group.mayEnter[c]) continue;
    const residual = figureOf(scenario, "residual-cover", "grazers", scenario.cells[c]!.field, scenario.groups[g]!.name) ?? 0;
    for (const t of days.filter((day) => cell.open[day])) {
      const spare = (grownCover(cell.startCover, cell.rates[t]!, season.ceiling) - residual) * cell.areaHa;
      if (spare >= group.taken[t]!) return null;
      most = Math.max(most, spare);
    }
  }
  const least = Math.floor(days.reduce((lowest, t) => Math.min(lowest, group.taken[t]!), Infinity));
  return `they take ${least} kg of dry matter or more a day, trodden grass counted, and no cell ever has more than ${Math.ceil(most)} kg above what must be left; plan larger cells, or fewer head`;
}

function dayIndices(season: Season): readonly number[] {
  return Array.from({ length: season.days }, (_, t) => t);
}
