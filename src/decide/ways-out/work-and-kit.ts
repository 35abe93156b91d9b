import type { Kit, Scenario } from "../../farm/scenario.js";
import type { Breach } from "../../rules/rule.js";
import type { Sort } from "./way.js";

const MINUTES = [15, 30, 60, 120] as const;
const PIECES = [1, 2, 3, 4] as const;

/** Where minutes or fence kit are short: more of them. */
export function moreHands(scenario: Scenario, breaches: readonly Breach[]): readonly Sort[] {
  const broken = (rule: Breach["rule"]) => breaches.some((breach) => breach.rule === rule);
  return [...(broken("people") ? [moreMinutes(scenario)] : []), ...(broken("fence-kit") ? moreKit(scenario) : [])];
}

function moreMinutes(scenario: Scenario): Sort {
  const [first, ...others] = scenario.people;
  if (!first) return [];
  return MINUTES.map((more) => ({
    words: `${more} min more of ${first.name} on every day at home`,
    scenario: {
      ...scenario,
      people: [{
        ...first,
        minutesByWeekday: first.minutesByWeekday.map((minutes) => minutes + more),
        minutesByDay: Object.fromEntries(Object.entries(first.minutesByDay).map(([day, minutes]) => [day, minutes + more])),
      }, ...others],
    },
    change: null,
  }));
}

function moreKit(scenario: Scenario): readonly Sort[] {
  const kinds = (["nets", "reels", "energisers"] as const satisfies readonly (keyof Kit)[]).filter((kind) => scenario.kit[kind] !== null);
  return kinds.map((kind) => PIECES.map((more) => ({
    words: `${more} more ${more === 1 ? kind.slice(0, -1) : kind}`,
    scenario: { ...scenario, kit: { ...scenario.kit, [kind]: (scenario.kit[kind] ?? 0) + more } },
    change: null,
  })));
}
