/** The farm is walked once a week, first when a week has gone. */
export function isWalkDay(day: number): boolean {
  return day > 0 && day % 7 === 0;
}
