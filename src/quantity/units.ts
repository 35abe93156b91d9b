/** What an amount measures. Each has one base unit, in which `readAmount` answers. */
export const QUANTITIES = [
  "area", "length", "weight", "cover", "growth", "rate", "time", "days", "share", "volume", "volume-rate", "pace", "pig-pressure", "voltage",
  "count", "money", "money-per-weight", "money-per-hour", "money-per-day", "money-per-area",
] as const;
export type QuantityName = (typeof QUANTITIES)[number];

/** Exact by agreement of 1959: the international pound, foot and inch; the acre is 43,560 square feet. */
export const KG_PER_LB = 0.45359237;
export const M2_PER_ACRE = 4046.8564224;
const M_PER_FOOT = 0.3048;
const M_PER_INCH = 0.0254;
const KG_PER_SHORT_TON = 2000 * KG_PER_LB;
/** Exact: 231 cubic inches, and 4.54609 L. */
const L_PER_US_GAL = 3.785411784;
const L_PER_IMP_GAL = 4.54609;
const HA_PER_ACRE = M2_PER_ACRE / 10_000;

/** Units by quantity: how many base units one is. The first is the base unit, or the one to recommend. */
export const UNITS: Readonly<Record<QuantityName, Readonly<Record<string, number>>>> = {
  area: { ha: 1, ac: HA_PER_ACRE, m2: 0.0001 },
  length: { m: 1, cm: 0.01, mm: 0.001, km: 1000, ft: M_PER_FOOT, in: M_PER_INCH },
  weight: { kg: 1, g: 0.001, t: 1000, lb: KG_PER_LB, "short ton": KG_PER_SHORT_TON },
  cover: { "kg/ha": 1, "lb/ac": KG_PER_LB / HA_PER_ACRE },
  growth: { "kg/ha/d": 1, "lb/ac/d": KG_PER_LB / HA_PER_ACRE },
  rate: { "kg/d": 1, "g/d": 0.001, "lb/d": KG_PER_LB },
  time: { min: 1, h: 60 },
  days: { d: 1, wk: 7, yr: 365 },
  share: { "%": 0.01 },
  volume: { L: 1, "US gal": L_PER_US_GAL, "imp gal": L_PER_IMP_GAL },
  "volume-rate": { "L/d": 1, "US gal/d": L_PER_US_GAL, "imp gal/d": L_PER_IMP_GAL },
  pace: { "m/min": 1, "ft/min": M_PER_FOOT },
  "pig-pressure": { "pig-days/ha": 1, "pig-days/ac": 1 / HA_PER_ACRE },
  voltage: { kV: 1, V: 0.001 },
  count: {},
  // Money's units carry a currency, so these are what stands below the stroke; the base is money for one kg, h, d, ha.
  money: {},
  "money-per-weight": { t: 1000, kg: 1, lb: KG_PER_LB, "short ton": KG_PER_SHORT_TON },
  "money-per-hour": { h: 1, min: 1 / 60 },
  "money-per-day": { d: 1, wk: 7 },
  "money-per-area": { ha: 1, ac: HA_PER_ACRE },
};

/** The plural that a sentence uses, and one of them: "weights", "a weight". */
export const QUANTITY_WORDS: Readonly<Record<QuantityName, readonly [many: string, one: string]>> = {
  area: ["areas", "an area"],
  length: ["lengths", "a length"],
  weight: ["weights", "a weight"],
  cover: ["covers", "a cover"],
  growth: ["growths", "a growth"],
  rate: ["daily amounts", "a daily amount"],
  time: ["times", "a time"],
  days: ["spans of days", "a span of days"],
  share: ["shares", "a share"],
  volume: ["volumes", "a volume"],
  "volume-rate": ["daily volumes", "a daily volume"],
  pace: ["paces", "a pace"],
  "pig-pressure": ["pig pressures", "a pig pressure"],
  voltage: ["voltages", "a voltage"],
  count: ["counts", "a count"],
  money: ["sums of money", "a sum of money"],
  "money-per-weight": ["prices by weight", "a price by weight"],
  "money-per-hour": ["prices of work", "a price of work"],
  "money-per-day": ["prices of a day", "a price of a day"],
  "money-per-area": ["prices of ground", "a price of ground"],
};

/** What people write, in small letters, and the unit it most likely stands for. */
export const NEAR_UNITS: Readonly<Record<string, string>> = {
  hectare: "ha", hectares: "ha", acre: "ac", acres: "ac", "m²": "m2", "m^2": "m2", sqm: "m2", "sq m": "m2",
  metre: "m", metres: "m", meter: "m", meters: "m", foot: "ft", feet: "ft", "'": "ft", inch: "in", inches: "in", '"': "in",
  kilo: "kg", kilos: "kg", kilogram: "kg", kilograms: "kg", kgs: "kg", gram: "g", grams: "g", gr: "g",
  tonne: "t", tonnes: "t", ton: "short ton", tons: "short ton", "short tons": "short ton", lbs: "lb", pound: "lb", pounds: "lb",
  hour: "h", hours: "h", hr: "h", hrs: "h", minute: "min", minutes: "min", mins: "min", m: "min",
  day: "d", days: "d", week: "wk", weeks: "wk", year: "yr", years: "yr", y: "yr", percent: "%", "per cent": "%", pc: "%",
  litre: "L", litres: "L", liter: "L", liters: "L", l: "L", gal: "US gal", gallon: "US gal", gallons: "US gal",
};

/** The unit a rule's parameter is written in, as quantity and size in base units; null for a bare figure. */
export function parameterUnit(unit: string): { readonly quantity: QuantityName; readonly size: number } | null {
  if (unit === "money") return { quantity: "money", size: 1 };
  if (unit.startsWith("money/")) {
    const under = unit.slice("money/".length);
    for (const quantity of QUANTITIES) {
      const size = quantity.startsWith("money-") ? UNITS[quantity][under] : undefined;
      if (size !== undefined) return { quantity, size: 1 / size };
    }
    return null;
  }
  for (const quantity of QUANTITIES) {
    const size = quantity.startsWith("money") ? undefined : UNITS[quantity][unit];
    if (size !== undefined) return { quantity, size };
  }
  return null;
}
