/** Days as the terminal tells them; sheets have their catalogue's, see Words. */
import { monthOf, weekdayOf, type IsoDate } from "../quantity/calendar.js";

const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

/** Day of the month: 14. */
export function dayFigure(day: IsoDate): number {
  return Number(day.slice(8));
}

/** "14 Jun". */
export function dayMonth(day: IsoDate): string {
  return `${dayFigure(day)} ${MONTHS[monthOf(day)]!.slice(0, 3)}`;
}

/** "Mon 14 Jun". */
export function weekdayMonth(day: IsoDate): string {
  return `${WEEKDAYS[weekdayOf(day)]} ${dayMonth(day)}`;
}

/** "Mon 14 Jun 2027". */
export function fullDay(day: IsoDate): string {
  return `${weekdayMonth(day)} ${day.slice(0, 4)}`;
}

/** "June", 0 for January. */
export function monthName(month: number): string {
  return MONTHS[month]!;
}

export function isWeekend(day: IsoDate): boolean {
  return weekdayOf(day) > 4;
}

/** "14 Jun to 2 Jul", or one day alone. */
export function spanWords(firstDay: IsoDate, lastDay: IsoDate): string {
  return firstDay === lastDay ? dayMonth(firstDay) : `${dayMonth(firstDay)} to ${dayMonth(lastDay)}`;
}
