import { UNITS, type QuantityName } from "./units.js";

export type UnitSystem = "metric" | "US";

/** Unit and decimals in which sheets print a quantity. */
type Shown = readonly [unit: string, digits: number];

const SHOWN: Readonly<Record<UnitSystem, Readonly<Partial<Record<QuantityName, Shown>>>>> = {
  metric: {
    area: ["ha", 2], length: ["m", 0], weight: ["kg", 0], cover: ["kg/ha", 0], growth: ["kg/ha/d", 1], rate: ["kg/d", 2], days: ["d", 0],
    share: ["%", 0], volume: ["L", 0], "volume-rate": ["L/d", 0], pace: ["m/min", 0], "pig-pressure": ["pig-days/ha", 0], voltage: ["kV", 1],
    "money-per-weight": ["t", 2], "money-per-hour": ["h", 2], "money-per-day": ["d", 2], "money-per-area": ["ha", 2],
  },
  US: {
    area: ["ac", 2], length: ["ft", 0], weight: ["lb", 0], cover: ["lb/ac", 0], growth: ["lb/ac/d", 1], rate: ["lb/d", 2], days: ["d", 0],
    share: ["%", 0], volume: ["US gal", 0], "volume-rate": ["US gal/d", 0], pace: ["ft/min", 0], "pig-pressure": ["pig-days/ac", 0], voltage: ["kV", 1],
    "money-per-weight": ["short ton", 2], "money-per-hour": ["h", 2], "money-per-day": ["d", 2], "money-per-area": ["ac", 2],
  },
};

/**
 * Prints an amount for people, with its unit, in a form that `readAmount` reads back.
 *
 * @param value in the quantity's base unit
 * @param system metric, or US: ac, ft, lb, lb/ac, US gal
 * @param digits decimals, where the quantity's usual ones do not fit
 */
export function showAmount(value: number, quantity: QuantityName, system: UnitSystem, digits?: number): string {
  if (quantity === "time") return showTime(value);
  const shown = SHOWN[system][quantity];
  if (!shown) return fixed(value, digits ?? 0);
  const [unit, usual] = smallRate(value, quantity, system) ? (["g/d", 0] as const) : shown;
  return `${fixed(value / UNITS[quantity][unit]!, digits ?? usual)} ${unit}`;
}

/**
 * Prints money, bare ("40.00 GBP") or as a price ("150.00 GBP/t").
 *
 * @param value money, or money for one kg, h, d, ha
 */
export function showMoney(value: number, currency: string, quantity: QuantityName = "money", system: UnitSystem = "metric"): string {
  const shown = SHOWN[system][quantity];
  if (quantity === "money" || !shown) return `${fixed(value, 2)} ${currency}`;
  return `${fixed(value * UNITS[quantity][shown[0]]!, shown[1])} ${currency}/${shown[0]}`;
}

/** A gain of 57 g/d would print as 0.06 kg/d. */
function smallRate(value: number, quantity: QuantityName, system: UnitSystem): boolean {
  return quantity === "rate" && system === "metric" && Math.abs(value) < 1 && value !== 0;
}

/** Whole minutes: "1 h 30 min". */
function showTime(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  if (hours === 0) return `${whole} min`;
  return whole % 60 === 0 ? `${hours} h` : `${hours} h ${whole % 60} min`;
}

function fixed(value: number, digits: number): string {
  const text = value.toFixed(digits);
  // Rounding a small negative must not print "-0".
  return Number(text) === 0 ? (0).toFixed(digits) : text;
}
