import type { Season } from "../season/season.js";
import { CellBook } from "./cell-book.js";
import type { CellState } from "./cell-state.js";
import type { CellSimulator } from "./cell-simulator.js";
import type { Half } from "./half.js";
import { PathBook, type Keep, type Run, type Span } from "./path-book.js";
import { pathTables, type PathTables } from "./path-tables.js";
import { HALVES } from "./rules/index.js";

export type { Keep, Run } from "./path-book.js";

/** The planner's own cuts of one cell, as they shall be. */
export interface CutChange {
  readonly cell: number;
  readonly cuts: readonly number[];
}

/** How much worse a change may make the plan before it is not worth living to the end. */
export interface Patience {
  readonly penalty: number;
  readonly worse: number;
}

const PATIENT: Patience = { penalty: 1, worse: Infinity };

/**
 * A plan in the making: every group's place on every day, held against all rules at once and changed run by run.
 * Mutable on purpose, and never seen outside the programme.
 */
export class Draft {
  readonly tables: PathTables;
  private readonly paths: PathBook;
  private readonly cellBook: CellBook;
  private sums = { cost: 0, over: 0 };

  constructor(readonly season: Season, readonly simulator: CellSimulator, halves: readonly Half[] = HALVES, readonly keep: Keep | null = null) {
    this.tables = pathTables(season, halves);
    this.paths = new PathBook(season, this.tables, keep);
    this.cellBook = new CellBook(season, simulator, this.paths.occupant);
    this.refresh();
  }

  /** By group and day: cell index, YARD or AWAY. */
  get place(): readonly Int16Array[] {
    return this.paths.place;
  }

  /** By cell x days + day: the group there, or -1. */
  get occupant(): Int8Array {
    return this.paths.occupant;
  }

  /** The planner's own cuts, by cell. */
  get cuts(): readonly (readonly number[])[] {
    return this.cellBook.cuts;
  }

  get states(): readonly CellState[] {
    return this.cellBook.states;
  }

  /** What rows use, by row and day. */
  get used(): readonly Float64Array[] {
    return this.paths.used;
  }

  /** Money of the plan, the price of changes from the base plan included. */
  get cost(): number {
    return this.sums.cost;
  }

  /** By how much hard rules are broken; 0 for a valid plan. */
  get over(): number {
    return this.sums.over;
  }

  /** Group-days that differ from the base plan. */
  get changed(): number {
    return this.paths.sums.changed;
  }

  /** Hay fed in yards, kg. */
  get hayFed(): number {
    return this.paths.sums.hayFed;
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
    cuts.forEach((own, c) => (this.cellBook.cuts[c] = own));
    this.refresh();
  }

  /** Judges everything anew. */
  refresh(): void {
    this.paths.refresh();
    this.cellBook.refresh();
    this.settle();
  }

  free(run: Run): boolean {
    return this.paths.free(run);
  }

  /** Puts runs and cuts in place and judges what they touch. The answer takes it all back. */
  apply(runs: readonly Run[], cut: CutChange | null = null): () => void {
    const undo = this.attempt(runs, cut, PATIENT);
    if (!undo) throw new Error("a change without a limit was given up");
    return undo;
  }

  /** Like `apply`, but gives up, the draft as it was, when the change is sure to be too much worse. */
  attempt(runs: readonly Run[], cut: CutChange | null, patience: Patience): (() => void) | null {
    const { paths, cellBook } = this;
    const spans = paths.spansOf(runs);
    const before = { paths: { ...paths.sums }, own: { ...this.sums } };
    const kept = this.setAside(runs, spans, cut);
    const touched = this.put(runs, spans, cut);
    let room = patience.worse - (paths.sums.money - before.paths.money) - patience.penalty * (paths.sums.over + paths.sums.rowOver - before.paths.over - before.paths.rowOver);
    for (const c of touched) room += this.states[c].money + patience.penalty * this.states[c].over;
    room -= this.farmWorse(before.paths.hayFed, touched, patience.penalty);
    const back = (): void => {
      kept();
      paths.sums = before.paths;
      this.sums = before.own;
    };
    for (const c of touched) {
      // Money is never negative: what a cell is over must fit into what could still be won.
      if (room < 0 || !cellBook.tryCell(c, room / patience.penalty)) {
        back();
        return null;
      }
      const gain = cellBook.gainOf(c);
      room -= gain.money + this.states[c].money + patience.penalty * (gain.over + this.states[c].over);
    }
    const untake = cellBook.take(touched);
    this.settle();
    return () => {
      untake();
      back();
    };
  }

  /** What days of some groups use of each row: by row, by day. */
  usedBy(spans: readonly { readonly group: number; readonly from: number; readonly to: number }[]): Float64Array[] {
    const { paths } = this;
    const before = paths.used.map((used) => used.slice());
    const sums = { ...paths.sums };
    for (const { group, from, to } of spans) paths.addDays(group, from, Math.min(to, this.season.days - 1), -1);
    const own = before.map((used, r) => used.map((amount, t) => amount - paths.used[r][t]));
    before.forEach((used, r) => paths.used[r].set(used));
    paths.sums = sums;
    return own;
  }

  /** Money by rule, in the order of `charges`, of cells, paths and farm together. */
  chargesByRule(index: (rule: string) => number, size: number): Float64Array {
    const sum = new Float64Array(size);
    for (const state of this.states) state.charges.forEach((money, i) => (sum[i] += money));
    for (const money of this.tables.money) {
      this.season.groups.forEach((group, g) => this.paths.eachDay(g, (t, place, starts, hauls) => {
        let own = money.stand?.(g, place, t) ?? 0;
        if (starts) own += money.start?.(g, place, t, group.arrives[t] === 1) ?? 0;
        if (hauls >= 0) own += money.haul?.(g, hauls, t) ?? 0;
        sum[index(money.rule)] += own;
      }));
    }
    const totals = this.cellBook.totals(this.hayFed);
    for (const rule of this.tables.farm) sum[index(rule.rule)] += rule.judge(totals).money;
    return sum;
  }

  /** Remembers what a change will overwrite. */
  private setAside(runs: readonly Run[], spans: readonly Span[], cut: CutChange | null): () => void {
    const { paths, cellBook } = this;
    const lo = Math.min(...spans.map((span) => span.lo));
    const hi = Math.max(...spans.map((span) => span.hi));
    const used = spans.length ? paths.used.map((own) => own.slice(lo, hi + 1)) : [];
    const places = runs.map((run) => paths.place[run.group].slice(run.from, run.to + 1));
    const cuts = cut ? cellBook.cuts[cut.cell] : [];
    return () => {
      paths.putBack(runs, places);
      used.forEach((slice, r) => paths.used[r].set(slice, lo));
      if (cut) cellBook.cuts[cut.cell] = cuts;
    };
  }

  /** Puts runs and cuts in place; answers the cells they touch. */
  private put(runs: readonly Run[], spans: readonly Span[], cut: CutChange | null): number[] {
    const { paths } = this;
    const touched: number[] = [];
    const touch = (c: number): void => {
      if (c >= 0 && !touched.includes(c)) touched.push(c);
    };
    const lo = Math.min(...spans.map((span) => span.lo));
    const hi = Math.max(...spans.map((span) => span.hi));
    if (spans.length) paths.sums.rowOver -= paths.rowsOver(lo, hi);
    for (const span of spans) paths.addDays(span.group, span.lo, span.hi, -1);
    for (const run of runs) {
      for (let t = run.from; t <= run.to; t++) {
        touch(paths.place[run.group][t]);
        paths.put(run.group, t, run.place);
      }
      touch(run.place);
    }
    for (const span of spans) paths.addDays(span.group, span.lo, span.hi, 1);
    if (spans.length) paths.sums.rowOver += paths.rowsOver(lo, hi);
    if (cut) {
      this.cellBook.cuts[cut.cell] = cut.cuts;
      touch(cut.cell);
    }
    return touched;
  }

  /** How much worse the whole farm's rules are sure to be by a change of days: its hay, less all its cells could still win. */
  private farmWorse(hayFedBefore: number, touched: readonly number[], penalty: number): number {
    const { cellBook } = this;
    const [before, now] = [cellBook.totals(hayFedBefore), cellBook.totals(this.hayFed)];
    const mown = touched.some((c) => this.states[c].cuts.length > 0 || cellBook.cuts[c].length > 0);
    let worse = 0;
    for (const rule of this.tables.farm) {
      const [old, own] = [rule.judge(before), rule.judge(now)];
      worse += own.money - old.money + penalty * (own.over - old.over);
      // Hay in store turns on the cells only where they are mown.
      if (rule.rule !== "hay-stock" || mown) worse -= own.money + penalty * own.over;
    }
    return worse;
  }

  private settle(): void {
    const { paths, cellBook } = this;
    let cost = paths.sums.money + cellBook.sums.money;
    let over = paths.sums.over + paths.sums.rowOver + cellBook.sums.over;
    const totals = cellBook.totals(this.hayFed);
    for (const rule of this.tables.farm) {
      const { money, over: more } = rule.judge(totals);
      cost += money;
      over += more;
    }
    this.sums = { cost, over: over < 1e-7 ? 0 : over };
  }
}
