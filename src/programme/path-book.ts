import { AWAY, YARD, type Season } from "../season/season.js";
import { Journal } from "./journal.js";
import { rowUses, type RowUses } from "./row-uses.js";
import type { PathTables } from "./path-tables.js";
import type { Run, Span } from "./spans.js";

/** A plan to stay close to: money for each group-day that differs. */
export interface Keep {
  readonly place: readonly Int16Array[];
  readonly price: number;
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
  readonly place: readonly Int16Array[];
  /** By cell x days + day: the group there, or -1. */
  readonly occupant: Int8Array;
  /** What rows use, by row and day. */
  readonly used: readonly Float64Array[];
  sums: PathSums = { money: 0, over: 0, rowOver: 0, hayFed: 0, changed: 0 };
  /** All groups' places and all rows' days, end to end; `place` and `used` are parts of them. */
  private readonly allPlaces: Int16Array;
  private readonly allUsed: Float64Array;
  private readonly uses: readonly RowUses[];
  private readonly old = { places: new Journal(), occupants: new Journal(), used: new Journal() };

  constructor(readonly season: Season, readonly tables: PathTables, readonly keep: Keep | null) {
    const { days, groups, cells } = season;
    this.allPlaces = new Int16Array(groups.length * days);
    this.place = groups.map((group, g) => {
      const own = this.allPlaces.subarray(g * days, (g + 1) * days);
      own.set(Int16Array.from(group.present, (present) => (present ? YARD : AWAY)));
      return own;
    });
    this.occupant = new Int8Array(cells.length * days).fill(-1);
    this.allUsed = new Float64Array(tables.rows.length * days);
    this.used = tables.rows.map((_, r) => this.allUsed.subarray(r * days, (r + 1) * days));
    this.uses = groups.map((_, g) => rowUses(tables, g));
  }

  refresh(): void {
    this.sums = { money: 0, over: 0, rowOver: 0, hayFed: 0, changed: 0 };
    this.allUsed.fill(0);
    this.begin();
    this.season.groups.forEach((_, g) => {
      this.addDays(g, 0, this.season.days - 1, 1);
      this.begin();
    });
    this.sums.rowOver = this.rowsOver();
  }

  /** From here on everything overwritten is noted, until `takeBack` or the next `begin`. */
  begin(): void {
    this.old.places.clear();
    this.old.occupants.clear();
    this.old.used.clear();
  }

  /** Places, occupants and rows are again what they were at `begin`. */
  takeBack(): void {
    this.old.places.takeBack(this.allPlaces);
    this.old.occupants.takeBack(this.occupant);
    this.old.used.takeBack(this.allUsed);
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
    const { places, occupants } = this.old;
    const old = this.place[g][t];
    if (old >= 0 && this.occupant[old * days + t] === g) {
      occupants.note(old * days + t, g);
      this.occupant[old * days + t] = -1;
    }
    places.note(g * days + t, old);
    this.place[g][t] = place;
    if (place >= 0) {
      occupants.note(place * days + t, this.occupant[place * days + t]);
      this.occupant[place * days + t] = g;
    }
  }

  private rowsOver(): number {
    let over = 0;
    this.tables.rows.forEach(({ row: { limit, weight } }, r) => this.used[r].forEach((used, t) => (over += rowOver(used - limit[t]) * weight)));
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

  /** Adds what a change can touch to the sums and rows, or takes it out. */
  addSpan({ group, lo, hi, stepsTo }: Span, sign: number): void {
    this.addDays(group, lo, hi, sign);
    const { arrives } = this.season.groups[group];
    if (stepsTo === hi) return;
    const first = this.stayStart(group, hi);
    const steps = this.season.scenario.groups[group].strip!.days;
    for (let t = hi + 1; t <= stepsTo && !arrives[t]; t++) {
      if ((t - first) % steps !== 0) continue;
      this.sums.over += sign * this.tables.stepOver[group][t];
      for (const { row, table } of this.uses[group].step) this.use(row, t, sign * table[t]);
    }
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
    const uses = this.uses[g];
    for (const { row, table } of uses.stand) this.use(row, t, sign * table[at]);
    if (starts) for (const { row, table } of uses.start) this.use(row, t, sign * table[at]);
    if (hauls >= 0) for (const { row, table } of uses.haul) this.use(row, t, sign * table[hauls]);
    if (step) for (const { row, table } of uses.step) this.use(row, t, sign * table[t]);
  }

  /** Uses more of a row on a day. */
  private use(r: number, t: number, amount: number): void {
    if (amount === 0) return;
    const at = r * this.season.days + t;
    const { limit, weight } = this.tables.rows[r].row;
    const before = this.allUsed[at];
    const now = before + amount;
    this.old.used.note(at, before);
    this.allUsed[at] = now;
    this.sums.rowOver += (rowOver(now - limit[t]) - rowOver(before - limit[t])) * weight;
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

/** What is used beyond a limit, small change of rounding left out. */
const rowOver = (more: number): number => (more > 1e-6 ? more : 0);
