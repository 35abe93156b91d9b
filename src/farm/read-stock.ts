import { amountIn, say, take, type Desk, type Thing } from "./desk.js";
import { takeDefault, takeOwn, USUAL_PRICES } from "./own-defaults.js";
import type { Hay, Prices } from "./scenario.js";
import { child, type MapNode } from "./tree.js";

/** Hay in store, wanted for the winter, and lost on the way. */
export function readHay(desk: Desk, root: MapNode): Hay {
  const thing: Thing = { map: child(root, "hay"), name: "hay" };
  return {
    inStoreKg: amountIn(desk, thing, "in-store") ?? takeOwn(desk, "hay in-store", "", 0, "0 t"),
    winterNeedKg: amountIn(desk, thing, "winter-need") ?? takeOwn(desk, "hay winter-need", "", 0, "0 t"),
    dryMatter: amountIn(desk, thing, "dry-matter") ?? takeDefault(desk, "hay.dry-matter", "", "hay dry-matter"),
    feedOutLoss: amountIn(desk, thing, "feed-out-loss") ?? takeDefault(desk, "hay.feed-out-loss", "", "hay feed-out-loss"),
    storeLoss: amountIn(desk, thing, "store-loss") ?? takeDefault(desk, "hay.store-loss", "", "hay store-loss"),
  };
}

/** Prices, all in one currency: the one written, or the country's of `units`. Read last, when every currency is met. */
export function readPrices(desk: Desk, root: MapNode, units: "metric" | "US"): Prices {
  const thing: Thing = { map: child(root, "prices"), name: "prices" };
  const written = (["hay", "labour", "mowing", "haul"] as const).map((key) => [key, amountIn(desk, thing, key)] as const);
  const currency = oneCurrency(desk) ?? (units === "US" ? "USD" : "GBP");
  if (desk.currencies.length === 0) take(desk, "currency", "", currency, "judgement", "judgement");
  const usual = USUAL_PRICES[units === "US" ? "USD" : "GBP"];
  const price = Object.fromEntries(written.map(([key, value]) => [key, value ?? takeOwn(desk, `price of ${key}`, "", usual[key], shown(key, usual[key], currency))])) as Record<keyof typeof usual, number>;
  return { currency, hayPerKg: price.hay, labourPerHour: price.labour, mowingPerHa: price.mowing, haul: price.haul };
}

function shown(key: string, value: number, currency: string): string {
  if (key === "hay") return `${Math.round(value * 1000)} ${currency}/t`;
  return `${value} ${currency}${key === "labour" ? "/h" : key === "mowing" ? "/ha" : ""}`;
}

function oneCurrency(desk: Desk): string | undefined {
  const first = desk.currencies[0];
  for (const { currency, at } of desk.currencies) {
    if (currency === first!.currency) continue;
    say(desk, at, { code: "currency-mixed", found: `${currency} stands here, ${first!.currency} before`, allowed: "a farm reckons in one currency", next: `write it in ${first!.currency}` });
  }
  return first?.currency;
}
