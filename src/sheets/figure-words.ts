import { UNITS } from "../quantity/units.js";
import type { Scenario } from "../farm/scenario.js";
import type { Made } from "./made.js";

const SIGNS: Readonly<Record<string, string>> = { GBP: "£", USD: "$", EUR: "€" };

/** Money no closer than it is known: "£8", "under £1", "20 CHF". */
export function moneyWords(money: number, currency: string): string {
  const sign = SIGNS[currency];
  const figure = (amount: number): string => (sign ? `${sign}${amount}` : `${amount} ${currency}`);
  if (money > 0 && money < 0.5) return `under ${figure(1)}`;
  return figure(Math.round(money));
}

/** "about £8", "under £1". */
export function aboutMoney(money: number, currency: string): string {
  const words = moneyWords(money, currency);
  return words.startsWith("under") ? words : `about ${words}`;
}

/** "0.28 ha", or acres on a US farm. */
export function areaWords(areaHa: number, units: Scenario["units"]): string {
  return units === "US" ? `${(areaHa / UNITS.area["ac"]!).toFixed(2)} ac` : `${areaHa.toFixed(2)} ha`;
}

/** Nitrogen to the nearest ten, no unit: the head of the column has it. */
export function nitrogenFigure(kgPerHa: number, units: Scenario["units"]): number {
  const figure = units === "US" ? kgPerHa / UNITS.cover["lb/ac"]! : kgPerHa;
  return Math.round(figure / 10) * 10;
}

export function nitrogenUnit(units: Scenario["units"]): string {
  return units === "US" ? "lb N/ac" : "kg N/ha";
}

/** Hay in tenths of a tonne, or of a short ton. */
export function hayWords(kg: number, units: Scenario["units"]): string {
  const [unit, size] = units === "US" ? ["short tons", UNITS.weight["short ton"]!] as const : ["t", 1000] as const;
  return `${(kg / size).toFixed(1)} ${unit}`;
}

/** Days some groups stand in the yard: "11 days", with the range "(5 to 25)" where the kinds of year are known. */
export function yardDaysWords(groups: readonly string[], planned: number, made: Made): string {
  if (!made.hay) return `${planned} ${planned === 1 ? "day" : "days"}`;
  const of = (days: Readonly<Record<string, number>>): number => groups.reduce((sum, group) => sum + (days[group] ?? 0), 0);
  const [dry, usual, wet] = [of(made.hay.dry.yardDays), of(made.hay.usual.yardDays), of(made.hay.wet.yardDays)];
  const range = [Math.min(dry, usual, wet), Math.max(dry, usual, wet)];
  return `${usual} ${usual === 1 ? "day" : "days"}${range[0] === range[1] ? "" : ` (${range[0]} to ${range[1]})`}`;
}
