import { UNITS } from "../../quantity/units.js";
import type { Day } from "./context.js";

/** Metric and US units of what a day sheet prints, each with its size in base units. */
const SHOWN = {
  metric: { weight: ["kg", 1], dose: ["g", UNITS.weight["g"]!], volume: ["l", 1], length: ["m", 1], way: ["km", UNITS.length["km"]!], ground: ["m²", UNITS.area["m2"]!] },
  US: {
    weight: ["lb", UNITS.weight["lb"]!], dose: ["lb", UNITS.weight["lb"]!], volume: ["US gal", UNITS.volume["US gal"]!], length: ["ft", UNITS.length["ft"]!], way: ["mi", 5280 * UNITS.length["ft"]!],
    ground: ["sq ft", UNITS.area["m2"]! * UNITS.length["ft"]! ** 2],
  },
} as const;

type Measure = keyof (typeof SHOWN)["metric"];

/** An amount in the farm's units: "7.5 kg", "42 US gal", "164 ft". `round` says which way whole units go. */
export function amountWords({ scenario, words }: Day, measure: Measure, base: number, digits = 0, round: (value: number) => number = (value) => value): string {
  const [unit, size] = SHOWN[scenario.units][measure];
  return `${words.figure(round(base / size), digits)} ${unit}`;
}

/** What one head gets a day: "125 g", "2.1 kg", "0.27 lb". */
export function doseWords(day: Day, kg: number): string {
  const small = day.scenario.units === "metric" && kg < 1;
  return small ? amountWords(day, "dose", kg) : amountWords(day, "weight", kg, day.scenario.units === "US" ? 2 : 1);
}

/** A way on foot: "1.3 km", "0.8 mi". */
export function wayWords(day: Day, metres: number): string {
  return amountWords(day, "way", metres, 1);
}
