import type { Assumed, Scenario } from "../farm/scenario.js";
import { showMoney } from "../quantity/show-amount.js";

/** A price that plans were weighed with, and whether anybody typed it. */
interface PriceUsed {
  readonly what: string;
  readonly price: string;
  readonly assumed: boolean;
}

/** Every price of bought, sold and paid things on a farm; only those that differ where another farm is given. */
export function pricesOf(scenario: Scenario, other: Scenario | null): PriceUsed[] {
  const known = new Set((other ? everyPrice(other) : []).map((one) => JSON.stringify(one)));
  return everyPrice(scenario).filter((one) => !known.has(JSON.stringify(one)));
}

function everyPrice({ prices, yards, units, assumed }: Scenario): PriceUsed[] {
  const { currency } = prices;
  const taken = (key: string): boolean => assumed.some((row) => row.key === key);
  return [
    { what: "hay", price: showMoney(prices.hayPerKg, currency, "money-per-weight", units), assumed: taken("price of hay") },
    { what: "labour", price: showMoney(prices.labourPerHour, currency, "money-per-hour", units), assumed: taken("price of labour") },
    { what: "mowing", price: showMoney(prices.mowingPerHa, currency, "money-per-area", units), assumed: taken("price of mowing") },
    { what: "a haul, besides its minutes", price: showMoney(prices.haul, currency), assumed: taken("price of haul") },
    ...yards.map(({ name, costPerDay }) => ({ what: `a group's day in ${name}`, price: showMoney(costPerDay, currency, "money-per-day", units), assumed: assumed.some((row) => costOf(row, name)) })),
  ];
}

/** "cost of Barn lot, Hen barn" names both. */
function costOf({ key }: Assumed, yard: string): boolean {
  return key.startsWith("cost of ") && key.slice("cost of ".length).split(", ").includes(yard);
}
