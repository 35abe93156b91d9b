import type { Season } from "../season/season.js";
import { CellBook } from "./cell-book.js";
import type { CellState } from "./cell-state.js";
import type { CellSimulator } from "./cell-simulator.js";
import { FarmBook, type Judged } from "./farm-book.js";
import type { Half } from "./half.js";
import { PathBook, type Keep, type PathSums } from "./path-book.js";
import { pathTables, type PathTables } from "./path-tables.js";
import { HALVES } from "./rules/index.js";
import { spansOf, type Run } from "./spans.js";
import { Touched } from "./touched.js";

export type { Keep } from "./path-book.js";
export type { Run } from "./spans.js";

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
  private readonly sums = { cost: 0, over: 0 };
  /** What the latest change found, for its undo. */
  private readonly before: { paths: PathSums; cost: number; over: number; cut: CutChange | null; farm: readonly Judged[] };
  /** Cells that the latest change touches. */
  private readonly touched: Touched;
  private readonly farm: FarmBook;
  private changes = 0;

  constructor(readonly season: Season, readonly simulator: CellSimulator, halves: readonly Half[] = HALVES, readonly keep: Keep | null = null) {
    this.tables = pathTables(season, halves);
    this.paths = new PathBook(season, this.tables, keep);
    this.cellBook = new CellBook(season, simulator, this.paths.occupant);
    this.before = { paths: { ...this.paths.sums }, cost: 0, over: 0, cut: null, farm: [] };
    this.farm = new FarmBook(this.tables.farm);
    this.touched = new Touched(season.cells.length);
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

  /** Money and broken rules of each rule of the whole farm, in the order of the tables. */
  get ofFarm(): readonly Judged[] {
    return this.farm.judged;
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

  /** Puts runs and cuts in place and judges what they touch. The answer takes it all back, until the next change. */
  apply(runs: readonly Run[], cut: CutChange | null = null): () => void {
    const undo = this.attempt(runs, cut, PATIENT);
    if (!undo) throw new Error("a change without a limit was given up");
    return undo;
  }

  /** Like `apply`, but gives up, the draft as it was, when the change is sure to be too much worse. */
  attempt(runs: readonly Run[], cut: CutChange | null, patience: Patience): (() => void) | null {
    const { cellBook } = this;
    const change = this.begin(cut);
    this.put(runs, cut);
    if (!this.liveTouched(patience)) {
      this.putBack();
      return null;
    }
    const { cells, from } = this.touched;
    cellBook.take(cells, from);
    this.settle();
    return () => {
      if (this.changes !== change) throw new Error("only the latest change can be taken back");
      cellBook.untake(cells);
      this.putBack();
    };
  }

  /** Lives the touched cells beside their present seasons; false as soon as the change is sure to be too much worse. */
  private liveTouched({ penalty, worse }: Patience): boolean {
    const { paths, before, touched: { cells, from }, cellBook } = this;
    let room = worse - (paths.sums.money - before.paths.money) - penalty * (paths.sums.over + paths.sums.rowOver - before.paths.over - before.paths.rowOver);
    for (const c of cells) room += this.states[c].money + penalty * this.states[c].over;
    room -= this.farmWorse(penalty);
    for (const c of cells) {
      // Money is never negative: what a cell is worth must fit into what could still be won.
      if (room < 0 || !cellBook.tryCell(c, { worth: room, penalty }, from[c])) return false;
      room -= cellBook.triedWorth(c, penalty);
    }
    return true;
  }

  /** What days of some groups use of each row: by row, by day. */
  usedBy(spans: readonly { readonly group: number; readonly from: number; readonly to: number }[]): Float64Array[] {
    const { paths } = this;
    const own = paths.used.map((used) => used.slice());
    this.begin(null);
    for (const { group, from, to } of spans) paths.addDays(group, from, Math.min(to, this.season.days - 1), -1);
    own.forEach((used, r) => used.forEach((amount, t) => (used[t] = amount - paths.used[r][t])));
    this.putBack();
    return own;
  }

  /** Walks a group's days: place, whether a stay starts, and the field entered or -1. */
  eachDay(g: number, visit: (t: number, place: number, starts: boolean, hauls: number) => void): void {
    this.paths.eachDay(g, visit);
  }

  /** Remembers what a change will overwrite. */
  private begin(cut: CutChange | null): number {
    const { paths, before } = this;
    paths.begin();
    Object.assign(before.paths, paths.sums);
    before.cost = this.sums.cost;
    before.over = this.sums.over;
    before.farm = this.farm.judged;
    before.cut = cut && { cell: cut.cell, cuts: this.cellBook.cuts[cut.cell] };
    return ++this.changes;
  }

  private putBack(): void {
    const { paths, before } = this;
    paths.takeBack();
    Object.assign(paths.sums, before.paths);
    if (before.cut) this.cellBook.cuts[before.cut.cell] = before.cut.cuts;
    this.farm.judged = before.farm;
    this.sums.cost = before.cost;
    this.sums.over = before.over;
  }

  /** Puts runs and cuts in place, and notes the cells they touch. */
  private put(runs: readonly Run[], cut: CutChange | null): void {
    const { paths } = this;
    const spans = spansOf(this.season, paths.place, runs);
    this.touched.clear();
    for (const span of spans) paths.addSpan(span, -1);
    for (const { group, from, to, place } of runs) {
      const own = paths.place[group];
      for (let t = from; t <= to; t++) {
        if (own[t] === place) continue;
        // Where a group comes breaks more rules than where it leaves: first to be lived.
        this.touched.add(place, t, true);
        this.touched.add(own[t], t, false);
        paths.put(group, t, place);
      }
    }
    for (const span of spans) paths.addSpan(span, 1);
    if (!cut) return;
    this.touched.addCuts(cut.cell, this.cellBook.cuts[cut.cell], cut.cuts);
    this.cellBook.cuts[cut.cell] = cut.cuts;
  }

  /** How much worse the whole farm's rules are sure to be by a change of days. */
  private farmWorse(penalty: number): number {
    const { cellBook, touched } = this;
    const mown = touched.cells.some((c) => this.states[c].cuts.length > 0 || cellBook.cuts[c].length > 0);
    cellBook.totals.hayFed = this.hayFed;
    return this.farm.sureWorse(cellBook.totals, mown, this.hayFed === this.before.paths.hayFed, penalty);
  }

  private settle(): void {
    const { paths, cellBook } = this;
    let cost = paths.sums.money + cellBook.sums.money;
    let over = paths.sums.over + paths.sums.rowOver + cellBook.sums.over;
    cellBook.totals.hayFed = this.hayFed;
    this.farm.settle(cellBook.totals);
    for (const judged of this.farm.judged) {
      cost += judged.money;
      over += judged.over;
    }
    this.sums.cost = cost;
    this.sums.over = over < 1e-7 ? 0 : over;
  }
}
