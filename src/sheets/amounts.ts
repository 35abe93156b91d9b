import { UNITS } from "../quantity/units.js";
import type { Scenario } from "../farm/scenario.js";
import type { IsoDate } from "../quantity/calendar.js";
import type { Words } from "../words/words.js";
import { hayBounds, nitrogenFigure, stepped } from "./figure-words.js";

type Units = Scenario["units"];

/** Money as sheets tell it, to the nearest five from a hundred up: "£8", "£1,610", "under £1". */
export function toldMoney(money: number, currency: string, words: Words): string {
  return isUnderOne(money) ? words.say("money.under", { money: words.money(1, currency) }) : words.money(Math.round(stepped(money)), currency);
}

/** "about £8", "under £1". */
export function roughMoney(money: number, currency: string, words: Words): string {
  const told = toldMoney(money, currency, words);
  return isUnderOne(money) ? told : words.say("money.about", { money: told });
}

function isUnderOne(money: number): boolean {
  return money > 0 && money < 0.5;
}

/** "0.28 ha", or acres on a US farm. */
export function toldArea(areaHa: number, units: Units, words: Words): string {
  return units === "US" ? words.say("amount.ac", { figure: words.fixed(areaHa / UNITS.area["ac"]!, 2) }) : words.say("amount.ha", { figure: words.fixed(areaHa, 2) });
}

/** The unit in which nitrogen is told: "kg N/ha". */
export function toldNitrogenUnit(units: Units, words: Words): string {
  return units === "US" ? words.say("amount.nitrogen-us") : words.say("amount.nitrogen");
}

/** "about 40 kg N/ha", "under 10 kg N/ha". */
export function toldNitrogen(kgPerHa: number, units: Units, words: Words): string {
  const figure = nitrogenFigure(kgPerHa, units);
  const unit = toldNitrogenUnit(units, words);
  return figure < 10 ? words.say("amount.nitrogen-under", { figure: 10, unit }) : words.say("amount.nitrogen-about", { figure, unit });
}

/** Hay as a range over the kinds of year: "350 to 600 kg", "up to 350 kg", "none". */
export function toldHay(usualKg: number, units: Units, words: Words, others: readonly number[] = []): string {
  const bounds = hayBounds(usualKg, units, others);
  if (bounds === null) return words.say("hay.none");
  const weight = (value: number): string => (units === "US" ? words.say("amount.lb", { figure: words.figure(value) }) : words.say("amount.kg", { figure: words.figure(value) }));
  return bounds.low === 0 ? words.say("hay.up-to", { most: weight(bounds.high) }) : words.say("span", { from: words.figure(bounds.low), to: weight(bounds.high) });
}

/** "14 Jun to 2 Jul", or one day alone. */
export function toldSpan(firstDay: IsoDate, lastDay: IsoDate, words: Words): string {
  const [from, to] = [words.dayMonth(firstDay), words.dayMonth(lastDay)];
  return firstDay === lastDay ? from : words.say("span", { from, to });
}

/** Days that one group stands in a yard: "11 days", with the lowest and highest over the kinds of year: "11 days (5 to 25)". */
export function toldYardDays(planned: number, kindsOfYear: readonly number[], words: Words): string {
  const [low, high] = [Math.min(planned, ...kindsOfYear), Math.max(planned, ...kindsOfYear)];
  return low === high ? words.say("days", { days: planned }) : words.say("days.range", { days: planned, low, high });
}
