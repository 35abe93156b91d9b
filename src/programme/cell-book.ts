import type { Season } from "../season/season.js";
import { copyState, type CellState } from "./cell-state.js";
import type { CellSimulator } from "./cell-simulator.js";
import type { Totals } from "./half.js";

/** What all cells' seasons come to. */
export interface CellSums {
  money: number;
  over: number;
  hayMade: number;
}

/** What a cell's season may be worth at most: its money, and what is over at a price. */
export interface Most {
  readonly worth: number;
  readonly penalty: number;
}

const ANY: Most = { worth: Infinity, penalty: 1 };

/** Seasons of a cell lived so far, each set aside after a stay, by day; only the first `size` hold for the plan as it is. */
interface Marks {
  readonly states: CellState[];
  size: number;
}

/** Every cell's lived season, a spare of each to try another, and their sums. */
export class CellBook {
  readonly states: CellState[];
  readonly cuts: (readonly number[])[];
  readonly totals: Totals & { hayFed: number; hayMade: number };
  sums: CellSums = { money: 0, over: 0, hayMade: 0 };
  private readonly cutArea = new Map<number, number>();
  private readonly spare: CellState[];
  private readonly marks: Marks[];
  private readonly before: { sums: CellSums; grass: Float64Array; nitrogen: Float64Array };

  constructor(private readonly season: Season, private readonly simulator: CellSimulator, private readonly occupant: Int8Array) {
    this.states = season.cells.map((_, c) => simulator.fresh(c));
    this.spare = season.cells.map((_, c) => simulator.fresh(c));
    this.marks = season.cells.map(() => ({ states: [], size: 0 }));
    this.cuts = season.cells.map(() => []);
    this.totals = { grass: new Float64Array(season.walks.length), nitrogenByYear: new Float64Array(3), hayFed: 0, hayMade: 0, cutArea: this.cutArea };
    this.before = { sums: { ...this.sums }, grass: this.totals.grass.slice(), nitrogen: this.totals.nitrogenByYear.slice() };
  }

  refresh(): void {
    for (const marks of this.marks) marks.size = 0;
    this.season.cells.forEach((_, c) => this.live(this.states[c], ANY, Infinity));
    this.totals.grass.fill(0);
    this.totals.nitrogenByYear.fill(0);
    this.sums = { money: 0, over: 0, hayMade: 0 };
    for (const s of this.states) this.add(s, 1);
    this.addCuts();
    this.totals.hayMade = this.sums.hayMade;
  }

  /** Lives a cell anew from a day on, beside its present season; false as soon as it is sure to be worth more than `most`. */
  tryCell(c: number, most: Most, from: number): boolean {
    return this.live(this.spare[c], most, from);
  }

  /** What the tried season of a cell is worth, money and broken rules at a price. */
  triedWorth(c: number, penalty: number): number {
    return this.spare[c].money + penalty * this.spare[c].over;
  }

  /** Puts tried seasons, that differ from a day on, in place of the present ones; `untake` takes back the latest. */
  take(touched: readonly number[], from: Int32Array): void {
    const { before, totals, sums } = this;
    before.sums.money = sums.money;
    before.sums.over = sums.over;
    before.sums.hayMade = sums.hayMade;
    before.grass.set(totals.grass);
    before.nitrogen.set(totals.nitrogenByYear);
    for (const c of touched) {
      this.add(this.states[c], -1);
      this.add(this.spare[c], 1);
      this.swap(c);
      this.holdUntil(this.marks[c], from[c]);
    }
    this.settle(touched);
  }

  untake(touched: readonly number[]): void {
    const { before, totals, sums } = this;
    for (const c of touched) this.swap(c);
    sums.money = before.sums.money;
    sums.over = before.sums.over;
    sums.hayMade = before.sums.hayMade;
    totals.grass.set(before.grass);
    totals.nitrogenByYear.set(before.nitrogen);
    this.settle(touched);
  }

  private settle(touched: readonly number[]): void {
    this.totals.hayMade = this.sums.hayMade;
    if (touched.some((c) => this.states[c].cuts.length > 0 || this.spare[c].cuts.length > 0)) this.addCuts();
  }

  /** A mark holds while nothing changes up to the morning it was set on: who stands there then ends the stay before. */
  private holdUntil(marks: Marks, day: number): void {
    while (marks.size > 0 && marks.states[marks.size - 1].day >= day) marks.size--;
  }

  private swap(c: number): void {
    [this.states[c], this.spare[c]] = [this.spare[c], this.states[c]];
  }

  private add(s: CellState, sign: number): void {
    const { totals: { grass, nitrogenByYear }, sums } = this;
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

  /** Lives a cell's season from the occupants' days, cuts between them; up to a day it is as it was. */
  private live(s: CellState, most: Most, from: number): boolean {
    const { simulator, season, occupant } = this;
    const { days, groups } = season;
    const base = s.cell * days;
    for (let t = this.start(s, from); t < days; ) {
      const g = occupant[base + t];
      let end = t + 1;
      while (end < days && occupant[base + end] === g) {
        if (g >= 0 && groups[g].arrives[end]) break;
        end++;
      }
      if (g >= 0) {
        this.cutBefore(s, t);
        simulator.stay(s, g, t, end - 1);
        if (s.money + most.penalty * s.over > most.worth) return false;
        if (end < from) this.mark(s);
      }
      t = end;
    }
    this.cutBefore(s, days);
    simulator.finish(s);
    return s.money + most.penalty * s.over <= most.worth;
  }

  /** Takes a state to the latest mark before a day, or to the first morning; answers its day. */
  private start(s: CellState, from: number): number {
    const { states, size } = this.marks[s.cell];
    let at = size - 1;
    while (at >= 0 && states[at].day >= from) at--;
    if (at < 0) this.simulator.reset(s);
    else copyState(s, states[at]);
    return s.day;
  }

  private mark(s: CellState): void {
    const marks = this.marks[s.cell];
    if (marks.size > 0 && marks.states[marks.size - 1].day >= s.day) return;
    if (marks.size === marks.states.length) marks.states.push(this.simulator.fresh(s.cell));
    copyState(marks.states[marks.size++], s);
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
