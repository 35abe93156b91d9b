/** Amounts as the terminal tells them; sheets have amounts.ts, in the language of their catalogue. */
import { UNITS } from "../quantity/units.js";
import type { Scenario } from "../farm/scenario.js";

const SIGNS: Readonly<Record<string, string>> = { GBP: "£", USD: "$", EUR: "€" };

/** Money no closer than it is known: "£8", "under £1", "20 CHF". */
export function moneyWords(money: number, currency: string): string {
  const sign = SIGNS[currency];
  const figure = (amount: number): string => (sign ? `${sign}${amount}` : `${amount} ${currency}`);
  if (money > 0 && money < 0.5) return `under ${figure(1)}`;
  return figure(Math.round(money));
}

/** From so much up, money is told in steps: nobody knows a season's cost to the pound. */
const COARSE = 100;
const COARSE_STEP = 5;

/** Money to the nearest five from a hundred up. */
export function stepped(money: number): number {
  return money < COARSE ? money : Math.round(money / COARSE_STEP) * COARSE_STEP;
}

/** Money to the nearest five from a hundred up: "£8", "£285", "£1,610". */
export function priceWords(money: number, currency: string): string {
  return moneyWords(stepped(money), currency).replaceAll(/\B(?=(\d{3})+(?!\d))/g, ",");
}

/** "about £8", "under £1". */
export function aboutMoney(money: number, currency: string): string {
  const words = priceWords(money, currency);
  return words.startsWith("under") ? words : `about ${words}`;
}

/** "0.28 ha", or acres on a US farm. */
export function areaWords(areaHa: number, units: Scenario["units"]): string {
  return units === "US" ? `${(areaHa / UNITS.area["ac"]!).toFixed(2)} ac` : `${areaHa.toFixed(2)} ha`;
}

/** "185 m", or feet on a US farm. */
export function lengthWords(metres: number, units: Scenario["units"]): string {
  return units === "US" ? `${Math.round(metres / UNITS.length["ft"]!)} ft` : `${Math.round(metres)} m`;
}

/** Nitrogen to the nearest ten, no unit: the head of the column has it. */
export function nitrogenFigure(kgPerHa: number, units: Scenario["units"]): number {
  const figure = units === "US" ? kgPerHa / UNITS.cover["lb/ac"]! : kgPerHa;
  return Math.round(figure / 10) * 10;
}

export function nitrogenUnit(units: Scenario["units"]): string {
  return units === "US" ? "lb N/ac" : "kg N/ha";
}

/** Growth varies by a fifth and more from year to year, and hay with it. */
const HAY_SPREAD = 0.2;

/**
 * Hay as a range over the kinds of year, at least a fifth either way, rounded outward to 50 kg or 100 lb: "350 to 600 kg".
 *
 * @param usualKg kg in a usual year
 * @param others kg in other kinds of year
 */
export function hayWords(usualKg: number, units: Scenario["units"], others: readonly number[] = []): string {
  const bounds = hayBounds(usualKg, units, others);
  if (bounds === null) return "none";
  const { low, high, unit } = bounds;
  return low === 0 ? `up to ${spaced(high)} ${unit}` : `${spaced(low)} to ${spaced(high)} ${unit}`;
}

/** The ends of that range in the farm's unit; null for none. */
export function hayBounds(usualKg: number, units: Scenario["units"], others: readonly number[]): { readonly low: number; readonly high: number; readonly unit: "kg" | "lb" } | null {
  const [unit, step] = units === "US" ? ["lb", 100] as const : ["kg", 50] as const;
  const least = Math.min(usualKg * (1 - HAY_SPREAD), ...others) / UNITS.weight[unit]!;
  const most = Math.max(usualKg * (1 + HAY_SPREAD), ...others) / UNITS.weight[unit]!;
  return most < 1 ? null : { low: Math.floor(least / step) * step, high: Math.ceil(most / step) * step, unit };
}

/** An amount of hay, to 50 kg or 100 lb, from there up: "1150 kg", "none"; a little is not none. */
export function hayFigure(kg: number, units: Scenario["units"]): string {
  const [unit, step] = units === "US" ? ["lb", 100] as const : ["kg", 50] as const;
  const amount = Math.ceil(kg / UNITS.weight[unit]! / step - 1e-6) * step;
  return amount <= 0 ? "none" : `${spaced(amount)} ${unit}`;
}

/** Hay between two amounts, rounded outward to 50 kg or 100 lb: "900 to 1300 kg", "up to 350 kg"; without an end where `high` is null. */
export function hayRange(low: number, high: number | null, units: Scenario["units"]): string {
  const [unit, step] = units === "US" ? ["lb", 100] as const : ["kg", 50] as const;
  const from = Math.floor(low / UNITS.weight[unit]! / step + 1e-6) * step;
  if (high === null) return from === 0 ? "not to be told" : `${spaced(from)} ${unit} or more`;
  const to = hayFigure(high, units);
  return from === 0 && to !== "none" ? `up to ${to}` : to === "none" ? to : `${spaced(from)} to ${to}`;
}

/** "12 500"; figures of four digits stay whole. */
function spaced(figure: number): string {
  return figure >= 10_000 ? String(figure).replaceAll(/\B(?=(\d{3})+$)/g, " ") : String(figure);
}
