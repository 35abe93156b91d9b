import type { PathTables } from "../../programme/path-tables.js";
import { AWAY, YARD, type Season } from "../../season/season.js";

/** A group's step from yesterday's place to today's; `first` is the first day of the stay. */
export interface Going {
  readonly group: number;
  readonly day: number;
  readonly before: number;
  readonly place: number;
  readonly first: number;
}

/** What a day's places use of minutes, nets, carted water and the like, and whether they may be at all. */
export class DaysWork {
  private readonly used: Float64Array;

  constructor(private readonly season: Season, private readonly tables: PathTables) {
    this.used = new Float64Array(tables.rows.length);
  }

  begin(): void {
    this.used.fill(0);
  }

  /** True when the group may go there, and what is left of the day's limits is enough. */
  fits(going: Going): boolean {
    return this.allowed(going) && this.tables.rows.every(({ row }, r) => this.used[r] + this.uses(going, r) <= row.limit[going.day] + 1e-6);
  }

  add(going: Going): void {
    for (let r = 0; r < this.used.length; r++) this.used[r] += this.uses(going, r);
  }

  /** True when people, dates and yards allow it, whatever else is done that day. */
  allowed({ group, day, before, place, first }: Going): boolean {
    const { tables } = this;
    const at = day * tables.width + place + 1;
    if (tables.standOver[group][at] > 0 || (place !== before && tables.startOver[group][at] > 0)) return false;
    return !this.steps(group, day, place, first) || tables.stepOver[group][day] === 0;
  }

  /** True when a pen, net or pigs' fence is moved on that day. */
  steps(group: number, day: number, place: number, first: number): boolean {
    const days = this.season.scenario.groups[group].strip?.days ?? 0;
    return days > 0 && place >= 0 && day > first && (day - first) % days === 0;
  }

  private uses({ group, day, before, place, first }: Going, r: number): number {
    const { stand, start, haul, step } = this.tables.rows[r];
    const at = day * this.tables.width + place + 1;
    let sum = stand ? stand[group][at] : 0;
    if (place !== before) {
      if (start) sum += start[group][at];
      const field = hauledTo(this.season, before, place);
      if (haul && field >= 0) sum += haul[group][field];
    } else if (step && this.steps(group, day, place, first)) sum += step[group][day];
    return sum;
  }
}

/** The field entered from elsewhere, or -1 where no haul is. */
function hauledTo({ cells }: Season, before: number, place: number): number {
  if (place === YARD || place === AWAY) return -1;
  return before >= 0 && cells[before].field === cells[place].field ? -1 : cells[place].field;
}
