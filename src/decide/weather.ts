import type { Scenario } from "../farm/scenario.js";
import { cellSimulator } from "../programme/cell-simulator.js";
import { Draft, type Run } from "../programme/draft.js";
import type { Snapshot } from "../programme/snapshot.js";
import { buildSeason } from "../season/build-season.js";
import { AWAY, YARD, type Season } from "../season/season.js";

/** Days in the yard by group, when the plan is kept as far as the year's grass allows. */
export type YardDays = Readonly<Record<string, number>>;

/** Yard days of a plan as made, and when growth turns out dry or wet all season. */
export function weatherYardDays(scenario: Scenario, plan: Pick<Snapshot, "place" | "cuts">): { dry: YardDays; usual: YardDays; wet: YardDays } {
  return {
    dry: keptIn(withGrowth(scenario, scenario.weather.dry), plan),
    usual: yardDaysOf(buildSeason(scenario), plan.place),
    wet: keptIn(withGrowth(scenario, scenario.weather.wet), plan),
  };
}

/** The farm in a year that grows so many times the usual. Long grass is topped for birds then, not the birds shut in. */
function withGrowth(scenario: Scenario, factor: number): Scenario {
  const farm = { ...scenario.rules.farm, "upper-cover": { ...scenario.rules.farm["upper-cover"], use: "off" as const } };
  return { ...scenario, rules: { ...scenario.rules, farm }, cells: scenario.cells.map((cell) => ({ ...cell, growthByMonth: cell.growthByMonth.map((g) => g * factor) })) };
}

/** Keeps each stay in date order as long as its cell's rules hold, later or shorter if need be; otherwise the yard. */
function keptIn(scenario: Scenario, plan: Pick<Snapshot, "place" | "cuts">): YardDays {
  const season = buildSeason(scenario);
  const draft = new Draft(season, cellSimulator(season));
  draft.load(draft.place.map((days) => days.slice()), plan.cuts);
  for (const stay of plannedStays(season, plan.place)) {
    const kept = longestKept(draft, stay);
    if (kept) draft.apply([kept]);
  }
  return yardDaysOf(season, draft.place);
}

function yardDaysOf(season: Season, place: readonly Int16Array[]): YardDays {
  return Object.fromEntries(season.groups.map((group, g) => [group.name, place[g].filter((at) => at === YARD).length]));
}

function plannedStays(season: Season, place: readonly Int16Array[]): Run[] {
  const stays: Run[] = [];
  place.forEach((days, group) => {
    for (let t = 0; t < season.days; ) {
      let end = t + 1;
      while (end < season.days && days[end] === days[t] && !season.groups[group].arrives[end]) end++;
      if (days[t] !== AWAY && days[t] !== YARD) stays.push({ group, from: t, to: end - 1, place: days[t] });
      t = end;
    }
  });
  return stays.sort((a, b) => a.from - b.from);
}

function longestKept(draft: Draft, stay: Run): Run | null {
  const days = stay.to - stay.from + 1;
  for (let length = days; length >= 1; length--) {
    for (let late = 0; late + length <= days; late++) {
      const run = { ...stay, from: stay.from + late, to: stay.from + late + length - 1 };
      const before = draft.states[stay.place].over;
      const undo = draft.apply([run]);
      const kept = draft.states[stay.place].over <= before + 1e-9;
      undo();
      if (kept) return run;
    }
  }
  return null;
}
