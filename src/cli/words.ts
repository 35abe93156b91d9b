/** Figures as people read them: no finer than they are known. */
import { addDays, type IsoDate } from "../quantity/calendar.js";
import type { UnitSystem } from "../quantity/show-amount.js";
import { UNITS } from "../quantity/units.js";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** Growth varies by a fifth and more from year to year, and hay with it. */
const HAY_SPREAD = 0.2;

/** "23 Jun". */
export function dayWords(date: IsoDate): string {
  return `${Number(date.slice(8, 10))} ${MONTHS[Number(date.slice(5, 7)) - 1]}`;
}

/** "3 to 9 May", "28 Apr to 3 May", or one day; with years only where there are two. */
export function spanWords(firstDay: IsoDate, lastDay: IsoDate): string {
  if (firstDay === lastDay) return dayWords(firstDay);
  const [year, lastYear] = [firstDay.slice(0, 4), lastDay.slice(0, 4)];
  if (year !== lastYear) return `${dayWords(firstDay)} ${year} to ${dayWords(lastDay)} ${lastYear}`;
  const sameMonth = firstDay.slice(0, 7) === lastDay.slice(0, 7);
  return `${sameMonth ? String(Number(firstDay.slice(8, 10))) : dayWords(firstDay)} to ${dayWords(lastDay)}`;
}

/** Whole units of money: "812 GBP". */
export function moneyWords(amount: number, currency: string): string {
  if (amount > 0 && amount < 0.5) return `under 1 ${currency}`;
  return `${thousands(Math.round(amount))} ${currency}`;
}

/** Hay as a range, rounded outward to 50 kg (100 lb): "350 to 600 kg". */
export function hayWords(kg: number, units: UnitSystem): string {
  if (kg < 1) return "none";
  const [unit, step] = units === "US" ? (["lb", 100] as const) : (["kg", 50] as const);
  const amount = kg / UNITS.weight[unit]!;
  const low = Math.floor((amount * (1 - HAY_SPREAD)) / step) * step;
  const high = Math.ceil((amount * (1 + HAY_SPREAD)) / step) * step;
  return low === 0 ? `up to ${thousands(high)} ${unit}` : `${thousands(low)} to ${thousands(high)} ${unit}`;
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
  const unit = units === "US" ? "short ton" : "t";
  return `${(kg / UNITS.weight[unit]!).toFixed(1)} ${unit}`;
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
export function surenessWords(firstDay: IsoDate, lastDay: IsoDate): string {
  const firm = addDays(firstDay, 13);
  const likely = addDays(firstDay, 41);
  if (lastDay <= firm) return "All of it is firm.";
  const start = `Firm to ${dayWords(firm)}`;
  if (lastDay <= likely) return `${start}, likely from then on.`;
  return `${start}, likely to ${dayWords(likely)}, an outline from then on: plan again as the grass shows itself.`;
}

/** "1 234"; a narrow figure stays as it is. */
function thousands(count: number): string {
  return count >= 10_000 ? String(count).replace(/\B(?=(\d{3})+$)/g, " ") : String(count);
}
