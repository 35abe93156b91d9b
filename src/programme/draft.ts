import { AWAY, YARD, type Season } from "../season/season.js";
import type { CellState } from "./cell-state.js";
import type { CellSimulator } from "./cell-simulator.js";
import type { Half } from "./half.js";
import { pathTables, type PathTables } from "./path-tables.js";
import { HALVES } from "./rules/index.js";

/** Days of one group that go to a place. */
export interface Run {
  readonly group: number;
  readonly from: number;
  readonly to: number;
  readonly place: number;
}

/** The planner's own cuts of one cell, as they shall be. */
export interface CutChange {
  readonly cell: number;
  readonly cuts: readonly number[];
}

/** A plan to stay close to: money for each group-day that differs. */
export interface Keep {
  readonly place: readonly Int16Array[];
  readonly price: number;
}

interface Sums {
  pathMoney: number;
  pathOver: number;
  rowOver: number;
  hayFed: number;
  changed: number;
  cost: number;
  over: number;
}

/**
 * A plan in the making: every group's place on every day, held against all rules at once and changed run by run.
 * Mutable on purpose, and never seen outside the programme.
 */
export class Draft {
  /** By group and day: cell index, YARD or AWAY. */
  readonly place: Int16Array[];
  /** By cell x days + day: the group there, or -1. */
  readonly occupant: Int8Array;
  readonly cuts: (readonly number[])[];
  readonly states: CellState[];
  readonly tables: PathTables;
  /** What rows use, by row and day. */
  readonly used: Float64Array[];
  private readonly spare: CellState[];
  private readonly grass: Float64Array;
  private readonly nitrogenByYear = new Float64Array(3);
  private readonly cutArea = new Map<number, number>();
  private cellMoney = 0;
  private cellOver = 0;
  private hayMade = 0;
  private sums: Sums = { pathMoney: 0, pathOver: 0, rowOver: 0, hayFed: 0, changed: 0, cost: 0, over: 0 };

  constructor(readonly season: Season, readonly simulator: CellSimulator, halves: readonly Half[] = HALVES, readonly keep: Keep | null = null) {
    const { days, cells, groups } = season;
    this.tables = pathTables(season, halves);
    this.place = groups.map((group) => Int16Array.from(group.present, (present) => (present ? YARD : AWAY)));
    this.occupant = new Int8Array(cells.length * days).fill(-1);
    this.cuts = cells.map(() => []);
    this.states = cells.map((_, c) => simulator.fresh(c));
    this.spare = cells.map((_, c) => simulator.fresh(c));
    this.used = this.tables.rows.map(() => new Float64Array(days));
    this.grass = new Float64Array(season.walks.length);
    this.refresh();
  }

  /** Money of the plan, the price of changes from the base plan included. */
  get cost(): number {
    return this.sums.cost;
  }

  /** By how much hard rules are broken; 0 for a valid plan. */
  get over(): number {
    return this.sums.over;
  }

  get changed(): number {
    return this.sums.changed;
  }

  /** Takes another plan's places and cuts. */
  load(place: readonly Int16Array[], cuts: readonly (readonly number[])[]): void {
    this.occupant.fill(-1);
    place.forEach((days, g) => {
      this.place[g].set(days);
      days.forEach((p, t) => {
        if (p >= 0) this.occupant[p * this.season.days + t] = g;
      });
    });
    cuts.forEach((own, c) => {
      this.cuts[c] = own;
    });
    this.refresh();
  }

  /** Judges everything anew. */
  refresh(): void {
    this.sums = { pathMoney: 0, pathOver: 0, rowOver: 0, hayFed: 0, changed: 0, cost: 0, over: 0 };
    for (const used of this.used) used.fill(0);
    this.season.groups.forEach((_, g) => this.addDays(g, 0, this.season.days - 1, 1));
    this.sums.rowOver = this.rowsOver(0, this.season.days - 1);
    this.season.cells.forEach((_, c) => this.live(c, this.states[c]));
    this.addTotals();
    this.settle();
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

  /** Puts runs and cuts in place and judges what they touch. The answer takes it all back. */
  apply(runs: readonly Run[], cut: CutChange | null = null): () => void {
    const spans = this.spansOf(runs);
    const before = { ...this.sums };
    const touched: number[] = [];
    const touch = (c: number): void => {
      if (c >= 0 && !touched.includes(c)) touched.push(c);
    };
    const lo = Math.min(...spans.map((span) => span.lo));
    const hi = Math.max(...spans.map((span) => span.hi));
    const oldUsed = spans.length ? this.used.map((used) => used.slice(lo, hi + 1)) : [];
    const oldPlaces = runs.map((run) => this.place[run.group].slice(run.from, run.to + 1));
    const oldCuts = cut ? this.cuts[cut.cell] : [];
    if (spans.length) this.sums.rowOver -= this.rowsOver(lo, hi);
    for (const { group, lo: from, hi: to } of spans) this.addDays(group, from, to, -1);
    for (const run of runs) for (let t = run.from; t <= run.to; t++) {
      touch(this.place[run.group][t]);
      this.put(run.group, t, run.place);
      touch(run.place);
    }
    for (const { group, lo: from, hi: to } of spans) this.addDays(group, from, to, 1);
    if (spans.length) this.sums.rowOver += this.rowsOver(lo, hi);
    if (cut) {
      this.cuts[cut.cell] = cut.cuts;
      touch(cut.cell);
    }
    const oldGrass = this.grass.slice();
    const oldNitrogen = this.nitrogenByYear.slice();
    const oldCells = [this.cellMoney, this.cellOver, this.hayMade] as const;
    let cutsTouched = false;
    for (const c of touched) {
      this.live(c, this.spare[c]);
      cutsTouched ||= this.states[c].cuts.length > 0 || this.spare[c].cuts.length > 0;
      this.addState(this.states[c], -1);
      this.addState(this.spare[c], 1);
      this.swap(c);
    }
    if (cutsTouched) this.addCuts();
    this.settle();
    return () => {
      for (let i = runs.length - 1; i >= 0; i--) oldPlaces[i].forEach((p, k) => this.put(runs[i].group, runs[i].from + k, p));
      for (let i = runs.length - 1; i >= 0; i--) this.claim(runs[i]);
      if (cut) this.cuts[cut.cell] = oldCuts;
      oldUsed.forEach((slice, r) => this.used[r].set(slice, lo));
      for (const c of touched) this.swap(c);
      this.grass.set(oldGrass);
      this.nitrogenByYear.set(oldNitrogen);
      [this.cellMoney, this.cellOver, this.hayMade] = oldCells;
      if (cutsTouched) this.addCuts();
      this.sums = before;
    };
  }

  /** What days of some groups use of each row: by row, by day. */
  usedBy(spans: readonly { readonly group: number; readonly from: number; readonly to: number }[]): Float64Array[] {
    const before = this.used.map((used) => used.slice());
    const sums = { ...this.sums };
    for (const { group, from, to } of spans) this.addDays(group, from, Math.min(to, this.season.days - 1), -1);
    const own = before.map((used, r) => used.map((amount, t) => amount - this.used[r][t]));
    before.forEach((used, r) => this.used[r].set(used));
    this.sums = sums;
    return own;
  }

  /** Hay fed in yards, kg. */
  get hayFed(): number {
    return this.sums.hayFed;
  }

  /** Money by rule, in the order of `charges`, of cells, paths and farm together. */
  chargesByRule(index: (rule: string) => number, size: number): Float64Array {
    const sum = new Float64Array(size);
    for (const state of this.states) state.charges.forEach((money, i) => (sum[i] += money));
    this.tables.money.forEach((money) => {
      this.season.groups.forEach((_, g) => this.eachDay(g, 0, this.season.days - 1, (t, place, starts, hauls) => {
        let own = money.stand?.(g, place, t) ?? 0;
        if (starts) own += money.start?.(g, place, t, this.season.groups[g].arrives[t] === 1) ?? 0;
        if (hauls >= 0) own += money.haul?.(g, hauls, t) ?? 0;
        sum[index(money.rule)] += own;
      }));
    });
    this.addTotals();
    for (const rule of this.tables.farm) sum[index(rule.rule)] += rule.judge(this.totals()).money;
    return sum;
  }

  /** Lives one cell's season from the occupants' days. */
  private live(c: number, s: CellState): void {
    const { simulator, season } = this;
    const { days } = season;
    simulator.reset(s);
    const base = c * days;
    const owner = season.cells[c].ownerCuts;
    const own = this.cuts[c];
    let nextOwner = 0;
    let nextOwn = 0;
    const cutsBefore = (day: number): void => {
      for (;;) {
        const a = nextOwner < owner.length ? owner[nextOwner].day : days;
        const b = nextOwn < own.length ? own[nextOwn] : days;
        if (Math.min(a, b) >= day) return;
        if (a <= b) simulator.cut(s, a, true, owner[nextOwner++].makesHay);
        else simulator.cut(s, b, false, true);
        if (b < a || b === a) nextOwn++;
      }
    };
    for (let t = 0; t < days; ) {
      const g = this.occupant[base + t];
      let end = t + 1;
      while (end < days && this.occupant[base + end] === g && !(g >= 0 && season.groups[g].arrives[end])) end++;
      if (g >= 0) {
        cutsBefore(t);
        simulator.stay(s, g, t, end - 1);
      }
      t = end;
    }
    cutsBefore(days);
    simulator.finish(s);
  }

  /** Adds a group's days to the sums and rows, or takes them out; the day after `to` must not depend on them. */
  private addDays(g: number, from: number, to: number, sign: number): void {
    const { tables, sums, keep, season } = this;
    const { width } = tables;
    const { cells } = season;
    const own = this.place[g];
    const { arrives, hayKg } = season.groups[g];
    const steps = season.scenario.groups[g].strip?.days ?? 0;
    const [standMoney, standOver, startMoney, startOver] = [tables.standMoney[g], tables.standOver[g], tables.startMoney[g], tables.startOver[g]];
    let first = from;
    if (steps > 0) while (first > 0 && own[first] === own[first - 1] && !arrives[first]) first--;
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
      let hauls = -1;
      if (starts) {
        money += startMoney[at];
        over += startOver[at];
        if (place >= 0 && !(before >= 0 && cells[before].field === cells[place].field)) {
          hauls = cells[place].field;
          money += tables.haulMoney[g][hauls];
        }
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
    sums.pathMoney += sign * money;
    sums.pathOver += sign * over;
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

  /** Walks a group's days: place, whether a stay starts, the field entered or -1, whether a strip steps. */
  private eachDay(g: number, from: number, to: number, visit: (t: number, place: number, starts: boolean, hauls: number, step: boolean) => void): void {
    const { cells, groups, scenario } = this.season;
    const own = this.place[g];
    const { arrives } = groups[g];
    const strip = scenario.groups[g].strip;
    let first = from;
    while (first > 0 && own[first] === own[first - 1] && !arrives[first]) first--;
    for (let t = from; t <= to; t++) {
      const place = own[t];
      if (place === AWAY) continue;
      const before = t > 0 && !arrives[t] ? own[t - 1] : AWAY;
      const starts = place !== before;
      if (starts) first = t;
      const hauls = starts && place >= 0 && !(before >= 0 && cells[before].field === cells[place].field) ? cells[place].field : -1;
      visit(t, place, starts, hauls, !starts && place >= 0 && strip !== null && (t - first) % strip.days === 0);
    }
  }

  /** Days of each group whose cost a change can touch: the run, and on to the end of the stay after it. */
  private spansOf(runs: readonly Run[]): { group: number; lo: number; hi: number }[] {
    const spans: { group: number; lo: number; hi: number }[] = [];
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

  private rowsOver(from: number, to: number): number {
    let over = 0;
    this.tables.rows.forEach(({ row }, r) => {
      for (let t = from; t <= to; t++) {
        const more = this.used[r][t] - row.limit[t];
        if (more > 1e-6) over += more * row.weight;
      }
    });
    return over;
  }

  private put(g: number, t: number, place: number): void {
    const { days } = this.season;
    const old = this.place[g][t];
    if (old >= 0 && this.occupant[old * days + t] === g) this.occupant[old * days + t] = -1;
    this.place[g][t] = place;
    if (place >= 0) this.occupant[place * days + t] = g;
  }

  private claim(run: Run): void {
    for (let t = run.from; t <= run.to; t++) {
      const place = this.place[run.group][t];
      if (place >= 0) this.occupant[place * this.season.days + t] = run.group;
    }
  }

  private swap(c: number): void {
    [this.states[c], this.spare[c]] = [this.spare[c], this.states[c]];
  }

  private totals(): { grass: Float64Array; nitrogenByYear: Float64Array; hayFed: number; hayMade: number; cutArea: Map<number, number> } {
    return { grass: this.grass, nitrogenByYear: this.nitrogenByYear, hayFed: this.sums.hayFed, hayMade: this.hayMade, cutArea: this.cutArea };
  }

  private addTotals(): void {
    this.grass.fill(0);
    this.nitrogenByYear.fill(0);
    this.cellMoney = this.cellOver = this.hayMade = 0;
    for (const s of this.states) this.addState(s, 1);
    this.addCuts();
  }

  private addState(s: CellState, sign: number): void {
    this.cellMoney += sign * s.money;
    this.cellOver += sign * s.over;
    this.hayMade += sign * s.hayMade;
    const { grass, nitrogenByYear } = this;
    for (let w = 0; w < grass.length; w++) grass[w] += sign * s.grass[w];
    for (let y = 0; y < nitrogenByYear.length; y++) nitrogenByYear[y] += sign * s.nitrogenByYear[y];
  }

  private addCuts(): void {
    this.cutArea.clear();
    for (const s of this.states) for (let i = 0; i < s.cuts.length; i += 2) this.cutArea.set(s.cuts[i], (this.cutArea.get(s.cuts[i]) ?? 0) + s.cuts[i + 1]);
  }

  private settle(): void {
    let cost = this.sums.pathMoney + this.cellMoney;
    let over = this.sums.pathOver + this.sums.rowOver + this.cellOver;
    const totals = this.totals();
    for (const rule of this.tables.farm) {
      const { money, over: more } = rule.judge(totals);
      cost += money;
      over += more;
    }
    this.sums.cost = cost;
    this.sums.over = over < 1e-7 ? 0 : over;
  }
}
