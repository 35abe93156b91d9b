import type { Worth } from "../decide/feed/worth.js";
import type { Scenario } from "../farm/scenario.js";
import { monthName } from "../sheets/day-words.js";
import { UNITS } from "../quantity/units.js";
import type { FeedSeen } from "./feed-answer.js";
import { aboutPrice } from "./words.js";

/** Money under which something is worth nothing: no budget is that exact. */
const NOTHING = 1;

/** What one more of each is worth, in sentences. */
export function worthRows({ scenario, feed }: FeedSeen): readonly string[] {
  const rows = feed.worths.map((worth) => worthWords(scenario, worth)).filter((row) => row !== "");
  return rows.length === 0 ? [] : [...rows, "Found by reckoning the whole season once more with one more of each; rent, buying and selling are not in it."];
}

function worthWords(scenario: Scenario, { of, month, group, money }: Worth): string {
  const { currency, hayPerKg } = scenario.prices;
  const us = scenario.units === "US";
  const [tonne, perTonne] = us ? ["short ton", UNITS.weight["short ton"]! / 1000] : ["tonne", 1];
  const about = (amount: number): string => aboutPrice(amount, currency);
  switch (of) {
    case "hay to feed":
      return `One more ${tonne} of hay to feed in ${monthName(month!)} is worth ${money < NOTHING ? "next to nothing" : about(money * perTonne)} (it costs ${about(hayPerKg * 1000 * perTonne)}).`;
    case "hay in store":
      return money < NOTHING ? `One more ${tonne} of hay for the winter is worth nothing: there will be enough.` : `One more ${tonne} of hay for the winter is worth ${about(money * perTonne)}.`;
    case "hectare": {
      const one = us ? "acre" : "hectare";
      const scaled = us ? money * UNITS.area["ac"]! : money;
      return scaled < NOTHING ? `One more ${one} like the rest is worth nothing as feed: it would only grow long.` : `One more ${one} like the rest is worth ${about(scaled)}.`;
    }
    case "head":
      return money > -NOTHING ? `One head more in ${group} costs nothing in feed: the grass is there.` : `One head more in ${group} costs ${about(-money)} in feed and yard.`;
  }
}
