import { RULE_IDS, type RuleId } from "../rules/rule.js";
import { addDays, spanHolds } from "../quantity/calendar.js";
import type { Cut, Plan, Stay } from "../plan/plan.js";
import { AWAY, YARD, type Season } from "../season/season.js";
import type { Draft } from "./draft.js";
import type { Snapshot } from "./snapshot.js";

/** Money by rule of a draft, every rule named: of cells, paths and farm together. */
export function chargesOf(draft: Draft): Record<RuleId, number> {
  const sums = Object.fromEntries(RULE_IDS.map((id) => [id, 0])) as Record<RuleId, number>;
  for (const state of draft.states) RULE_IDS.forEach((id, i) => (sums[id] += state.charges[i]));
  for (const money of draft.tables.money) {
    draft.season.groups.forEach((group, g) => draft.eachDay(g, (t, place, starts, hauls) => {
      sums[money.rule] += money.stand?.(g, place, t) ?? 0;
      if (starts) sums[money.rule] += money.start?.(g, place, t, group.arrives[t] === 1) ?? 0;
      if (hauls >= 0) sums[money.rule] += money.haul?.(g, hauls, t) ?? 0;
    }));
  }
  draft.tables.farm.forEach((rule, i) => (sums[rule.rule] += draft.ofFarm[i].money));
  return sums;
}

/** The plan of a draft's places, by names and dates: stays by first day, then group; companions beside their hosts. */
export function planOf(season: Season, { place, cuts }: Pick<Snapshot, "place" | "cuts">): Plan {
  const date = (day: number): string => addDays(season.scenario.season.firstDay, day);
  const nameOf = (g: number, t: number): string | null => {
    const at = place[g][t];
    if (at === AWAY) return null;
    return at === YARD ? `yard ${yardOn(season, g, date(t))}` : `cell ${season.cells[at].name}`;
  };
  const days = season.scenario.groups.map((group, g) =>
    Array.from({ length: season.days }, (_, t) => {
      const along = group.runsWith;
      if (!along?.days.some((span) => spanHolds(span, date(t))) || !group.here.some((span) => spanHolds(span, date(t)))) return nameOf(g, t);
      return nameOf(season.groups.findIndex((other) => other.name === along.with), t);
    }),
  );
  const stays = season.scenario.groups.flatMap((group, g) => staysOfDays(group.name, days[g], season.groups[g].arrives, date));
  return { stays: stays.sort((a, b) => (a.firstDay < b.firstDay ? -1 : a.firstDay > b.firstDay ? 1 : 0)), cuts: allCuts(season, cuts, date) };
}

/** A held yard is stood in under its own name. */
function yardOn(season: Season, g: number, date: string): string {
  const hold = season.scenario.holds.find((h) => h.group === season.groups[g].name && h.yard !== null && spanHolds(h.days, date));
  return hold?.yard ?? season.scenario.groups[g].yard;
}

function staysOfDays(group: string, places: readonly (string | null)[], arrives: Uint8Array, date: (day: number) => string): Stay[] {
  const stays: Stay[] = [];
  for (let t = 0; t < places.length; ) {
    const at = places[t];
    let end = t + 1;
    while (end < places.length && places[end] === at && !arrives[end]) end++;
    if (at !== null) {
      const [kind, name] = [at.slice(0, at.indexOf(" ")), at.slice(at.indexOf(" ") + 1)];
      stays.push({ group, cell: kind === "cell" ? name : null, yard: kind === "yard" ? name : null, firstDay: date(t), lastDay: date(end - 1) });
    }
    t = end;
  }
  return stays;
}

function allCuts(season: Season, own: readonly (readonly number[])[], date: (day: number) => string): Cut[] {
  return season.cells
    .flatMap((cell, c) => [
      ...cell.ownerCuts.map((cut) => ({ cell: cell.name, cut: cut.makesHay ? ("hay" as const) : ("topping" as const), day: date(cut.day) })),
      ...own[c].map((day) => ({ cell: cell.name, cut: "hay" as const, day: date(day) })),
    ])
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}
