import type { Season } from "../season/season.js";

/** Days of one group that go to a place. */
export interface Run {
  readonly group: number;
  readonly from: number;
  readonly to: number;
  readonly place: number;
}

/** Days of a group whose cost a change can touch. */
export interface Span {
  readonly group: number;
  lo: number;
  hi: number;
  /** Last day after those on which only steps inside the cell can change. */
  stepsTo: number;
}

/** The days that runs change and the day after them, and on to the end of the stay there, by group. */
export function spansOf(season: Season, places: readonly Int16Array[], runs: readonly Run[]): Span[] {
  const spans: Span[] = [];
  for (const { group, from, to, place } of runs) {
    const own = places[group];
    let [lo, hi] = [from, to];
    while (lo <= hi && own[lo] === place) lo++;
    while (hi >= lo && own[hi] === place) hi--;
    if (lo > hi) continue;
    const span = spans.find((s) => s.group === group);
    if (!span) spans.push({ group, lo, hi, stepsTo: hi });
    else {
      span.lo = Math.min(span.lo, lo);
      span.hi = Math.max(span.hi, hi);
    }
  }
  for (const span of spans) {
    const own = places[span.group];
    span.stepsTo = span.hi = Math.min(span.hi + 1, season.days - 1);
    const moving = season.scenario.groups[span.group].strip && own[span.hi] >= 0;
    if (moving) while (span.stepsTo + 1 < season.days && own[span.stepsTo + 1] === own[span.hi]) span.stepsTo++;
  }
  return spans;
}
