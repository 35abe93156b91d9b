import type { Season } from "../season/season.js";
import type { CellState } from "./cell-state.js";
import type { CellSimulator } from "./cell-simulator.js";
import type { Totals } from "./half.js";

/** What all cells' seasons come to. */
export interface CellSums {
  money: number;
  over: number;
  hayMade: number;
}

/** Every cell's lived season, a spare of each to try another, and their sums. */
export class CellBook {
  readonly states: CellState[];
  readonly cuts: (readonly number[])[];
  readonly grass: Float64Array;
  readonly nitrogenByYear = new Float64Array(3);
  readonly cutArea = new Map<number, number>();
  sums: CellSums = { money: 0, over: 0, hayMade: 0 };
  private readonly spare: CellState[];

  constructor(private readonly season: Season, private readonly simulator: CellSimulator, private readonly occupant: Int8Array) {
    this.states = season.cells.map((_, c) => simulator.fresh(c));
    this.spare = season.cells.map((_, c) => simulator.fresh(c));
    this.cuts = season.cells.map(() => []);
    this.grass = new Float64Array(season.walks.length);
  }

  refresh(): void {
    this.season.cells.forEach((_, c) => this.live(this.states[c], Infinity));
    this.grass.fill(0);
    this.nitrogenByYear.fill(0);
    this.sums = { money: 0, over: 0, hayMade: 0 };
    for (const s of this.states) this.add(s, 1);
    this.addCuts();
  }

  /** Lives a cell anew beside its present season; false as soon as it is over by more than `most`. */
  tryCell(c: number, most: number): boolean {
    return this.live(this.spare[c], most);
  }

  /** What the tried season of a cell adds to what it is over and to money. */
  gainOf(c: number): { money: number; over: number } {
    return { money: this.spare[c].money - this.states[c].money, over: this.spare[c].over - this.states[c].over };
  }

  /** Puts tried seasons in place of the present ones. The answer takes them back. */
  take(touched: readonly number[]): () => void {
    const before = { ...this.sums };
    const grass = this.grass.slice();
    const nitrogen = this.nitrogenByYear.slice();
    const cut = touched.some((c) => this.states[c].cuts.length > 0 || this.spare[c].cuts.length > 0);
    for (const c of touched) {
      this.add(this.states[c], -1);
      this.add(this.spare[c], 1);
      this.swap(c);
    }
    if (cut) this.addCuts();
    return () => {
      for (const c of touched) this.swap(c);
      this.sums = before;
      this.grass.set(grass);
      this.nitrogenByYear.set(nitrogen);
      if (cut) this.addCuts();
    };
  }

  totals(hayFed: number): Totals {
    return { grass: this.grass, nitrogenByYear: this.nitrogenByYear, hayFed, hayMade: this.sums.hayMade, cutArea: this.cutArea };
  }

  private swap(c: number): void {
    [this.states[c], this.spare[c]] = [this.spare[c], this.states[c]];
  }

  private add(s: CellState, sign: number): void {
    const { grass, nitrogenByYear, sums } = this;
    sums.money += sign * s.money;
    sums.over += sign * s.over;
    sums.hayMade += sign * s.hayMade;
    for (let w = 0; w < grass.length; w++) grass[w] += sign * s.grass[w];
    for (let y = 0; y < nitrogenByYear.length; y++) nitrogenByYear[y] += sign * s.nitrogenByYear[y];
  }

  private addCuts(): void {
    this.cutArea.clear();
    for (const s of this.states) for (let i = 0; i < s.cuts.length; i += 2) this.cutArea.set(s.cuts[i], (this.cutArea.get(s.cuts[i]) ?? 0) + s.cuts[i + 1]);
  }

  /** Lives a cell's season from the occupants' days, cuts between them. */
  private live(s: CellState, most: number): boolean {
    const { simulator, season, occupant } = this;
    const { days, groups } = season;
    simulator.reset(s);
    const base = s.cell * days;
    for (let t = 0; t < days; ) {
      const g = occupant[base + t];
      let end = t + 1;
      while (end < days && occupant[base + end] === g) {
        if (g >= 0 && groups[g].arrives[end]) break;
        end++;
      }
      if (g >= 0) {
        this.cutBefore(s, t);
        simulator.stay(s, g, t, end - 1);
        if (s.over > most) return false;
      }
      t = end;
    }
    this.cutBefore(s, days);
    simulator.finish(s);
    return s.over <= most;
  }

  /** Makes the cuts from where the state stands up to a day, the owner's and the planner's in order. */
  private cutBefore(s: CellState, day: number): void {
    const owner = this.season.cells[s.cell].ownerCuts;
    const own = this.cuts[s.cell];
    if (owner.length === 0 && own.length === 0) return;
    for (;;) {
      const made = s.cuts.length > 0 ? s.cuts[s.cuts.length - 2] : -1;
      const from = made + 1;
      const byOwner = owner.find((cut) => cut.day >= from);
      const byPlan = own.find((cut) => cut >= from) ?? Infinity;
      const next = Math.min(byOwner?.day ?? Infinity, byPlan);
      if (next >= day) return;
      this.simulator.cut(s, next, byOwner?.day === next, byOwner?.day === next ? byOwner.makesHay : true);
    }
  }
}
