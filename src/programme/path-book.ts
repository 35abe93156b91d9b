import { AWAY, YARD, type Season } from "../season/season.js";
import type { PathTables } from "./path-tables.js";

/** Days of one group that go to a place. */
export interface Run {
  readonly group: number;
  readonly from: number;
  readonly to: number;
  readonly place: number;
}

/** A plan to stay close to: money for each group-day that differs. */
export interface Keep {
  readonly place: readonly Int16Array[];
  readonly price: number;
}

/** Days of a group whose cost a change can touch. */
export interface Span {
  readonly group: number;
  lo: number;
  hi: number;
}

/** What all groups' days come to. */
export interface PathSums {
  money: number;
  over: number;
  rowOver: number;
  hayFed: number;
  changed: number;
}

/** Every group's place on every day, and what that costs and uses besides the cells: moves, hauls, yards, rows by day. */
export class PathBook {
  /** By group and day: cell index, YARD or AWAY. */
  readonly place: Int16Array[];
  /** By cell x days + day: the group there, or -1. */
  readonly occupant: Int8Array;
  /** What rows use, by row and day. */
  readonly used: Float64Array[];
  sums: PathSums = { money: 0, over: 0, rowOver: 0, hayFed: 0, changed: 0 };

  constructor(readonly season: Season, readonly tables: PathTables, readonly keep: Keep | null) {
    this.place = season.groups.map((group) => Int16Array.from(group.present, (present) => (present ? YARD : AWAY)));
    this.occupant = new Int8Array(season.cells.length * season.days).fill(-1);
    this.used = tables.rows.map(() => new Float64Array(season.days));
  }

  refresh(): void {
    this.sums = { money: 0, over: 0, rowOver: 0, hayFed: 0, changed: 0 };
    for (const used of this.used) used.fill(0);
    this.season.groups.forEach((_, g) => this.addDays(g, 0, this.season.days - 1, 1));
    this.sums.rowOver = this.rowsOver(0, this.season.days - 1);
  }

  /** True when the run's days are days of the group's own, and nobody else stands in the cell. */
  free(run: Run): boolean {
    const { days } = this.season;
    const own = this.place[run.group];
    for (let t = run.from; t <= run.to; t++) {
      if (own[t] === AWAY) return false;
      if (run.place < 0) continue;
      const other = this.occupant[run.place * days + t];
      if (other >= 0 && other !== run.group) return false;
    }
    return true;
  }

  put(g: number, t: number, place: number): void {
    const { days } = this.season;
    const old = this.place[g][t];
    if (old >= 0 && this.occupant[old * days + t] === g) this.occupant[old * days + t] = -1;
    this.place[g][t] = place;
    if (place >= 0) this.occupant[place * days + t] = g;
  }

  /** Takes places back to what they were before runs were put; later runs first. */
  putBack(runs: readonly Run[], old: readonly Int16Array[]): void {
    for (let i = runs.length - 1; i >= 0; i--) for (let k = 0; k < old[i].length; k++) this.put(runs[i].group, runs[i].from + k, old[i][k]);
    for (const run of runs) {
      for (let t = run.from; t <= run.to; t++) {
        const place = this.place[run.group][t];
        if (place >= 0) this.occupant[place * this.season.days + t] = run.group;
      }
    }
  }

  /** The runs' days and on to the end of the stay after them, by group. */
  spansOf(runs: readonly Run[]): Span[] {
    const spans: Span[] = [];
    for (const run of runs) {
      const span = spans.find((s) => s.group === run.group);
      if (!span) spans.push({ group: run.group, lo: run.from, hi: run.to });
      else {
        span.lo = Math.min(span.lo, run.from);
        span.hi = Math.max(span.hi, run.to);
      }
    }
    for (const span of spans) {
      const own = this.place[span.group];
      span.hi = Math.min(span.hi + 1, this.season.days - 1);
      if (this.season.scenario.groups[span.group].strip) while (span.hi + 1 < this.season.days && own[span.hi + 1] === own[span.hi]) span.hi++;
    }
    return spans;
  }

  rowsOver(from: number, to: number): number {
    let over = 0;
    const { rows } = this.tables;
    for (let r = 0; r < rows.length; r++) {
      const { limit, weight } = rows[r].row;
      const used = this.used[r];
      for (let t = from; t <= to; t++) {
        const more = used[t] - limit[t];
        if (more > 1e-6) over += more * weight;
      }
    }
    return over;
  }

  /** Adds a group's days to the sums and rows, or takes them out; the day after `to` must not depend on them. */
  addDays(g: number, from: number, to: number, sign: number): void {
    const { tables, sums, keep, season } = this;
    const { width } = tables;
    const own = this.place[g];
    const { arrives, hayKg } = season.groups[g];
    const steps = season.scenario.groups[g].strip?.days ?? 0;
    const [standMoney, standOver, startMoney, startOver] = [tables.standMoney[g], tables.standOver[g], tables.startMoney[g], tables.startOver[g]];
    let first = steps > 0 ? this.stayStart(g, from) : from;
    let money = 0;
    let over = 0;
    for (let t = from; t <= to; t++) {
      const place = own[t];
      if (place === AWAY) continue;
      const before = t > 0 && !arrives[t] ? own[t - 1] : AWAY;
      const starts = place !== before;
      if (starts) first = t;
      const at = t * width + place + 1;
      money += standMoney[at];
      over += standOver[at];
      const hauls = starts ? this.hauledTo(before, place) : -1;
      if (starts) {
        money += startMoney[at];
        over += startOver[at];
        if (hauls >= 0) money += tables.haulMoney[g][hauls];
      }
      const step = steps > 0 && !starts && place >= 0 && (t - first) % steps === 0;
      if (step) over += tables.stepOver[g][t];
      if (place === YARD) sums.hayFed += sign * hayKg[t];
      if (keep && keep.place[g][t] !== place) {
        sums.changed += sign;
        money += keep.price;
      }
      this.addRows(g, t, at, sign, starts, hauls, step);
    }
    sums.money += sign * money;
    sums.over += sign * over;
  }

  /** First day of the stay that holds a day. */
  private stayStart(g: number, day: number): number {
    const own = this.place[g];
    const { arrives } = this.season.groups[g];
    let first = day;
    while (first > 0 && own[first] === own[first - 1] && !arrives[first]) first--;
    return first;
  }

  /** The field entered by going from one place to another, or -1 where no haul is. */
  private hauledTo(before: number, place: number): number {
    const { cells } = this.season;
    return place >= 0 && !(before >= 0 && cells[before].field === cells[place].field) ? cells[place].field : -1;
  }

  private addRows(g: number, t: number, at: number, sign: number, starts: boolean, hauls: number, step: boolean): void {
    const { rows } = this.tables;
    for (let r = 0; r < rows.length; r++) {
      const row = rows[r];
      let amount = row.stand ? row.stand[g][at] : 0;
      if (starts && row.start) amount += row.start[g][at];
      if (hauls >= 0 && row.haul) amount += row.haul[g][hauls];
      if (step && row.step) amount += row.step[g][t];
      if (amount !== 0) this.used[r][t] += sign * amount;
    }
  }

  /** Walks a group's days: place, whether a stay starts, and the field entered or -1. */
  eachDay(g: number, visit: (t: number, place: number, starts: boolean, hauls: number) => void): void {
    const { groups, days } = this.season;
    const own = this.place[g];
    const { arrives } = groups[g];
    for (let t = 0; t < days; t++) {
      const place = own[t];
      if (place === AWAY) continue;
      const before = t > 0 && !arrives[t] ? own[t - 1] : AWAY;
      const starts = place !== before;
      visit(t, place, starts, starts ? this.hauledTo(before, place) : -1);
    }
  }
}
