import type { QuantityName } from "../quantity/units.js";

/** What a key measures, and how far it may reach, in the quantity's base unit and in words. */
export interface AmountKey {
  readonly quantity: QuantityName;
  readonly least: number;
  readonly most: number;
  readonly reach: string;
}

const key = (quantity: QuantityName, least: number, most: number, reach: string): AmountKey => ({ quantity, least, most, reach });

const MINUTES = key("time", 0, 480, "0 to 8 h");
const GROUND = key("length", 0, 5000, "0 to 5 km");

/** Every key of a farm file that holds an amount. The limits of sense, not of good practice. */
export const AMOUNT_KEYS = {
  area: key("area", 0.005, 50, "0.005 to 50 ha"),
  cover: key("cover", 300, 7000, "300 to 7000 kg/ha"),
  height: key("length", 0.01, 0.6, "1 to 60 cm"),
  "growth-scale": key("share", 0.1, 2, "10 to 200 %"),
  "water-walk": key("length", 0, 1000, "0 to 1000 m"),
  slope: key("share", 0, 0.45, "0 to 45 %"),
  distance: GROUND,
  fence: GROUND,
  side: key("length", 1, 3000, "1 m to 3 km"),
  corner: key("length", 0, 3000, "0 m to 3 km"),
  "past nitrogen": key("cover", 0, 500, "0 to 500 kg/ha"),
  share: key("share", 0, 1, "0 to 100 %"),
  head: key("count", 1, 20000, "1 to 20000"),
  weight: key("weight", 0.02, 1500, "0.02 to 1500 kg"),
  gain: key("rate", -1, 2.5, "-1 to 2.5 kg/d"),
  young: key("count", 0, 20000, "0 to 20000"),
  "young-weight": key("weight", 0.02, 400, "0.02 to 400 kg"),
  "young-gain": key("rate", -1, 2.5, "-1 to 2.5 kg/d"),
  "intake share": key("share", 0.001, 0.06, "0.1 to 6 % of live weight"),
  "intake rate": key("rate", 0, 40, "0 to 40 kg/d"),
  nitrogen: key("rate", 0, 0.6, "0 to 0.6 kg/d"),
  "young-nitrogen": key("rate", 0, 0.6, "0 to 0.6 kg/d"),
  "feed rate": key("rate", 0.001, 20, "1 g to 20 kg a day and head"),
  path: GROUND,
  "least-voltage": key("voltage", 1, 10, "1 to 10 kV"),
  "least-voltage-wool": key("voltage", 1, 10, "1 to 10 kV"),
  "water-need": key("volume-rate", 0, 200, "0 to 200 L/d"),
  strip: key("area", 0.0005, 5, "5 m2 to 5 ha"),
  "strip-days": key("days", 1, 14, "1 to 14 d"),
  "stay-limit": key("days", 1, 21, "1 to 21 d"),
  "move-takes": MINUTES,
  "set-takes": MINUTES,
  "people-to-move": key("count", 1, 10, "1 to 10"),
  count: key("count", 1, 100, "1 to 100"),
  net: key("length", 10, 2000, "10 m to 2 km"),
  step: key("days", 1, 7, "1 to 7 d"),
  "step-takes": MINUTES,
  cost: key("money-per-day", 0, 1000, "0 to 1000 a day"),
  room: key("count", 0, 20000, "0 to 20000"),
  minutes: key("time", 0, 960, "0 to 16 h"),
  owned: key("count", 0, 1000, "0 to 1000"),
  "kit length": key("length", 10, 2000, "10 m to 2 km"),
  "in-store": key("weight", 0, 1_000_000, "0 to 1000 t"),
  "winter-need": key("weight", 0, 1_000_000, "0 to 1000 t"),
  "dry-matter": key("share", 0.7, 0.95, "70 to 95 %"),
  "feed-out-loss": key("share", 0, 0.5, "0 to 50 %"),
  "store-loss": key("share", 0, 0.5, "0 to 50 %"),
  hay: key("money-per-weight", 0, 10, "0 to 10000 a tonne"),
  labour: key("money-per-hour", 0, 500, "0 to 500 an hour"),
  mowing: key("money-per-area", 0, 5000, "0 to 5000 a hectare"),
  haul: key("money", 0, 1000, "0 to 1000"),
  trodden: key("share", 0, 0.4, "0 to 40 %"),
  "ceiling-cover": key("cover", 3000, 10000, "3000 to 10000 kg/ha"),
  dry: key("share", 0.1, 1, "10 to 100 %"),
  wet: key("share", 1, 3, "100 to 300 %"),
  month: key("share", 0, 0.8, "0 to 80 %"),
  spring: key("days", 0, 42, "0 to 42 d"),
  "late-moves": key("share", 0, 0.5, "0 to 50 %"),
  "week-away": key("share", 0, 1, "0 to 100 %"),
} as const satisfies Readonly<Record<string, AmountKey>>;

export type AmountName = keyof typeof AMOUNT_KEYS;
