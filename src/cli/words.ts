/** Figures as people read them: no finer than they are known. */
import type { IsoDate } from "../quantity/calendar.js";
import type { UnitSystem } from "../quantity/show-amount.js";
import { UNITS } from "../quantity/units.js";
import { dayMonth } from "../sheets/day-words.js";
import { aboutMoney } from "../sheets/figure-words.js";

/** Money rounded as it is shown, to five from a hundred up, so that shown figures can be taken from each other. */
export function shownMoney(money: number): number {
  return money < 100 ? money : Math.round(money / 5) * 5;
}

/** "about £1,610", "under £1", "nothing". */
export function aboutPrice(money: number, currency: string): string {
  return money <= 0 ? "nothing" : aboutMoney(money, currency);
}

/** Nitrogen to 10 kg. */
export function nitrogenWords(kg: number): string {
  return kg > 0 && kg < 5 ? "under 5 kg N" : `about ${thousands(Math.round(kg / 10) * 10)} kg N`;
}

/** Minutes to 5: "1 h 25 min". */
export function minutesWords(minutes: number): string {
  const whole = Math.round(minutes / 5) * 5;
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** Tonnes (short tons for farms in US units) to a tenth, from kg. */
export function tonnesWords(kg: number, units: UnitSystem): string {
  return units === "US" ? `${(kg / UNITS.weight["short ton"]!).toFixed(1)} short tons` : `${(kg / 1000).toFixed(1)} t`;
}

/** Weight of stock to 10 kg or 10 lb. */
export function weightWords(kg: number, units: UnitSystem): string {
  const unit = units === "US" ? "lb" : "kg";
  return `${thousands(Math.round(kg / UNITS.weight[unit]! / 10) * 10)} ${unit}`;
}

/** A week's grass: tenths of a tonne, or hundreds of pounds; the head of the column has the unit. */
export function grassFigure(kg: number, units: UnitSystem): string {
  if (units === "US") return thousands(Math.round(kg / UNITS.weight["lb"]! / 100) * 100);
  return (kg / 1000).toFixed(1);
}

/** The unit of `grassFigure`. */
export function grassUnit(units: UnitSystem): string {
  return units === "US" ? "lb" : "t";
}

/** Dry matter of a week to 10 kg or 10 lb, no unit: the head of the table has it. */
export function weightFigure(kg: number, units: UnitSystem): string {
  return String(Math.round(kg / UNITS.weight[weightUnit(units)]! / 10) * 10 || 0);
}

/** The unit of `weightFigure`. */
export function weightUnit(units: UnitSystem): "kg" | "lb" {
  return units === "US" ? "lb" : "kg";
}

/** Whole per cent of a share. */
export function percentWords(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/** "1 day", "5 days". */
export function countWords(count: number, one: string, many = `${one}s`): string {
  return `${thousands(count)} ${count === 1 ? one : many}`;
}

/** How sure a plan is: firm two weeks, likely six, the rest an outline. */
export function surenessWords(firmTo: IsoDate, likelyTo: IsoDate, lastDay: IsoDate): string {
  if (lastDay <= firmTo) return "All of it is firm.";
  const start = `Firm to ${dayMonth(firmTo)}`;
  if (lastDay <= likelyTo) return `${start}, likely from then on.`;
  return `${start}, likely to ${dayMonth(likelyTo)}, an outline from then on: walk the grass and plan again.`;
}

/** "1 234"; a narrow figure stays as it is. */
function thousands(count: number): string {
  return count >= 10_000 ? String(count).replace(/\B(?=(\d{3})+$)/g, " ") : String(count);
}
