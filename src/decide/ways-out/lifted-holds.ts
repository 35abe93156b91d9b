import type { Scenario } from "../../farm/scenario.js";
import type { Prober } from "./prober.js";
import { changeText, keyText, type Sort, type Way } from "./way.js";

/** Holds that cannot all stand: without any one of them a plan was found, with all of them none. Names as the owner wrote them. */
export interface Clash {
  readonly holds: readonly string[];
}

/** More holds than this are not taken apart. */
const MOST_HOLDS = 16;

/**
 * Which holds stand in each other's way, or alone in a rule's: one after the other is left out, and stays out where no
 * plan is found even so. Null where no plan is found without any hold, or there is none.
 */
export async function clashingHolds(scenario: Scenario, prober: Prober): Promise<Clash | null> {
  if (scenario.holds.length === 0 || scenario.holds.length > MOST_HOLDS) return null;
  const works = async (names: readonly string[]): Promise<boolean> => (await prober.validPlan(holding(scenario, names), true)) !== null;
  let kept = scenario.holds.map((hold) => hold.name);
  if (!(await works([]))) return null;
  for (const name of [...kept]) {
    if (prober.stopped) return null;
    const without = kept.filter((other) => other !== name);
    if (!(await works(without))) kept = without;
  }
  return { holds: kept };
}

function holding(scenario: Scenario, names: readonly string[]): Scenario {
  return { ...scenario, holds: scenario.holds.filter((hold) => names.includes(hold.name)) };
}

/** Each of the clashing holds lifted alone. */
export function liftedHolds(scenario: Scenario, clash: Clash | null): readonly Sort[] {
  return (clash?.holds ?? []).map((name) => [lifting(scenario, [name])]);
}

/** All of the clashing holds lifted, where one is not enough. */
export function allLifted(scenario: Scenario, { holds }: Clash): Way {
  return lifting(scenario, holds);
}

function lifting(scenario: Scenario, names: readonly string[]): Way {
  const words = `${names.length === 1 ? "hold" : "holds"} ${names.join(" and ")} lifted`;
  return {
    words,
    scenario: holding(scenario, scenario.holds.map((hold) => hold.name).filter((name) => !names.includes(name))),
    change: changeText(words, [`holds: { ${names.map((name) => `${keyText(name)}: null`).join(", ")} }`]),
  };
}
