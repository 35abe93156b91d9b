import type { Worth } from "../decide/feed/worth.js";
import type { Scenario } from "../farm/scenario.js";
import { listOr } from "../farm/near-names.js";
import { UNITS } from "../quantity/units.js";
import { monthName } from "../sheets/day-words.js";
import type { FeedSeen } from "./feed-answer.js";
import { aboutPrice } from "./words.js";

/** Money under which something is worth nothing: no budget is that exact. */
const NOTHING = 1;

/** What one more of each is worth, in sentences. */
export function worthRows({ scenario, feed }: FeedSeen): readonly string[] {
  const fed = feed.worths.filter(({ of }) => of === "hay to feed");
  const rest = feed.worths.filter(({ of }) => of !== "hay to feed").map((worth) => worthWords(scenario, worth));
  const rows = [...hayRows(scenario, fed), ...rest];
  return rows.length === 0 ? [] : [...rows, "Found by reckoning the whole season again with one more of each; rent, buying and selling are not in it."];
}

/** Hay to feed, months of the same worth together. */
function hayRows(scenario: Scenario, worths: readonly Worth[]): readonly string[] {
  const { tonne, perTonne, about } = wordsFor(scenario);
  const told = worths.map(({ month, money }) => ({ month: monthName(month!), words: money < NOTHING ? "next to nothing" : about(money * perTonne) }));
  const price = about(scenario.prices.hayPerKg * 1000 * perTonne);
  return [...new Set(told.map(({ words }) => words))].map((words) => {
    const months = told.filter((one) => one.words === words).map(({ month }) => month);
    return `One more ${tonne} of hay to feed in ${listOr(months)} is worth ${words}; to buy, it is ${price}.`;
  });
}

function wordsFor({ units, prices }: Scenario): { tonne: string; perTonne: number; about: (money: number) => string } {
  const us = units === "US";
  return { tonne: us ? "short ton" : "tonne", perTonne: us ? UNITS.weight["short ton"]! / 1000 : 1, about: (money) => aboutPrice(money, prices.currency) };
}

function worthWords(scenario: Scenario, { of, group, money }: Worth): string {
  const { tonne, perTonne, about } = wordsFor(scenario);
  if (of === "hay in store") {
    return money < NOTHING ? `One more ${tonne} of hay for the winter is worth nothing: there will be enough.` : `One more ${tonne} of hay for the winter is worth ${about(money * perTonne)}.`;
  }
  if (of === "head") return money > -NOTHING ? `One head more in ${group} costs nothing in feed: the grass is there.` : `One head more in ${group} costs ${about(-money)} in feed and yard.`;
  const us = scenario.units === "US";
  const ground = us ? "acre" : "hectare";
  const worth = us ? money * UNITS.area["ac"]! : money;
  return worth < NOTHING ? `One more ${ground} like the rest is worth nothing as feed: it would only grow long.` : `One more ${ground} like the rest is worth ${about(worth)}.`;
}
