import { askedIn } from "../half.js";
import type { CellState } from "../cell-state.js";
import type { Draft } from "../draft.js";
import type { CardStay } from "../window/cards.js";
import type { CellPrices } from "./cell-prices.js";
import type { Completion, Standing } from "./completion.js";
import { StateStack } from "./state-stack.js";

/** A way for a cell to live its whole season, and what it costs at the prices it was listed at. */
export interface WholeCard {
  readonly cell: number;
  readonly stays: readonly CardStay[];
  /** Evenings of cuts of the planner's own. */
  readonly cuts: readonly number[];
  readonly reduced: number;
  /** What the season comes to, all charges of its end with it. */
  readonly totals: Pick<CellState, "money" | "grass" | "nitrogenByYear" | "hayMade" | "cuts">;
}

/** Counted limits of a listing. */
export interface ListLimits {
  /** Most cards of the cell. */
  readonly cards: number;
  /** Steps left, over all cells: stays and cuts lived. */
  readonly budget: { left: number };
}

export interface Listed {
  readonly cards: readonly WholeCard[];
  /** False when a limit ended the listing: there may be others. */
  readonly all: boolean;
}

/** A season as far as it is lived. */
interface Node {
  readonly state: CellState;
  readonly depth: number;
  readonly stays: readonly CardStay[];
  readonly cuts: readonly number[];
  /** Reduced money besides the state's own, and the lines that stand for what the season's end will charge. */
  readonly paid: number;
  readonly lines: number;
  readonly standing: Standing;
}

/** Lists all seasons of a cell that cost no more than `most` at given prices, by exact replay, depth first. */
export class CardLister {
  private readonly stack: StateStack;
  private readonly found: WholeCard[] = [];
  private readonly grazers: readonly number[];
  private readonly movers: readonly number[];
  private readonly mowable: boolean;

  constructor(private readonly draft: Draft, private readonly cell: number, private readonly prices: CellPrices, private readonly completion: Completion) {
    const { season } = draft;
    this.stack = new StateStack(draft.simulator, cell);
    const may = season.groups.map((_, g) => g).filter((g) => season.groups[g].mayEnter[cell] === 1);
    this.grazers = may.filter((g) => season.groups[g].grazer);
    this.movers = may.filter((g) => !season.groups[g].grazer);
    this.mowable = season.cells[cell].mow || !askedIn(season, "hay-stock", cell, -1);
  }

  list(most: number, limits: ListLimits): Listed {
    this.found.length = 0;
    this.most = most;
    this.limits = limits;
    this.full = false;
    const state = this.stack.fresh();
    if (state.over === 0) this.walk({ state, depth: 0, stays: [], cuts: [], paid: 0, lines: 0, standing: this.completion.standing(state, { worked: false, mown: false }) });
    return { cards: [...this.found], all: !this.full };
  }

  private most = 0;
  private limits: ListLimits = { cards: 0, budget: { left: 0 } };
  private full = false;

  /** Money of all that is lived, the lines with it. */
  private spent({ state, paid, lines }: Node): number {
    return state.money - state.hayMade * this.prices.hay + paid + lines + this.prices.constant;
  }

  private walk(node: Node): void {
    const { season } = this.draft;
    const { state } = node;
    const owners = season.cells[this.cell].ownerCuts.find((cut) => cut.day >= state.day);
    const until = owners?.day ?? season.days;
    const room = this.most - this.spent(node);
    for (const g of this.grazers) for (let first = state.day; first < until && !this.full; first++) this.graze(node, g, first, until, room);
    for (const g of this.movers) for (let first = state.day; first < until && !this.full; first++) this.move(node, g, first, until, room);
    if (this.mowable) for (let day = state.day; day < until && !this.full; day++) this.mow(node, day, room);
    if (this.full) return;
    if (!owners) return this.end(node, room);
    const next = this.live(node);
    if (!next) return;
    this.draft.simulator.cut(next, owners.day, true, owners.makesHay);
    this.visit({ ...node, state: next, depth: node.depth + 1 }, node.standing);
  }

  /** A copy of the node's state to live on with; null, and all is over, when steps are spent. */
  private live({ state, depth }: Node): CellState | null {
    if (this.limits.budget.left-- <= 0) {
      this.full = true;
      return null;
    }
    return this.stack.copy(state, depth + 1);
  }

  /** Goes on from a state that has just been lived, unless a rule is broken or it is too dear already. */
  private visit(node: Omit<Node, "standing">, known: Pick<Standing, "worked" | "mown">): void {
    if (node.state.over > 0) return;
    const standing = this.completion.standing(node.state, known);
    const own = { ...node, standing };
    if (this.spent(own) + this.completion.after(node.state.day, standing) <= this.most) this.walk(own);
  }

  private graze(node: Node, g: number, first: number, until: number, room: number): void {
    if (!mayBegin(this.draft, this.cell, g, first, node.stays)) return;
    const most = this.completion.bound.levels.most;
    for (let days = 1; days <= most && first + days <= until; days++) {
      const last = first + days - 1;
      if (!mayStand(this.draft, this.cell, g, first, last)) return;
      if (!mayEnd(this.draft, this.cell, g, last)) continue;
      if (this.completion.grazing(g, first, days, node.state.day, node.standing) > room) continue;
      if (!this.stay(node, g, first, last, node.standing) || this.full) return;
    }
  }

  private move(node: Node, g: number, first: number, until: number, room: number): void {
    if (!mayBegin(this.draft, this.cell, g, first, node.stays)) return;
    const { terms } = this.completion.bound;
    const { grazed, level, mown } = node.standing;
    let money = terms.start(g, first, grazed === null ? null : first - grazed);
    for (let last = first; last < until; last++) {
      if (!mayStand(this.draft, this.cell, g, first, last)) return;
      money += terms.day(g, last);
      if (!mayEnd(this.draft, this.cell, g, last)) continue;
      const morning = last + 1;
      if (money + this.completion.after(morning, { level: this.completion.clamp(level, morning), grazed, worked: true, mown }) > room) continue;
      const kept = this.stay(node, g, first, last, { worked: true, mown });
      // Birds and pigs may lack ground for three days and have it for four, until a week of the stay is full.
      if (this.full || (!kept && (last - first + 1) % 7 === 0)) return;
    }
  }

  /** Lives a stay and all that may follow; false where a rule is broken. */
  private stay(node: Node, group: number, first: number, last: number, known: Pick<Standing, "worked" | "mown">): boolean {
    const state = this.live(node);
    if (!state) return false;
    this.draft.simulator.stay(state, group, first, last);
    if (state.over > 0) return false;
    const paid = node.paid + this.prices.stay(group, first, last);
    const lines = node.lines + this.prices.lines(group, first, last);
    this.visit({ state, depth: node.depth + 1, stays: [...node.stays, { group, first, last }], cuts: node.cuts, paid, lines }, known);
    return true;
  }

  private mow(node: Node, day: number, room: number): void {
    const { levels, cuts } = this.completion.bound;
    const { level: before, grazed, worked } = node.standing;
    if (before >= cuts.tall[day] || this.prices.mowing(day) === Infinity) return;
    // Ground that is shut stays as long as it was.
    const low = node.state.lots.length > 0 ? before : Math.max(before, cuts.stubble[day]);
    const level = this.completion.clamp(low, day + 1);
    const least = this.prices.mowing(day) - cuts.kg[day * levels.count + before] * this.prices.hay;
    if (least + this.completion.after(day + 1, { level, grazed, worked, mown: true }) > room) return;
    const state = this.live(node);
    if (!state) return;
    this.draft.simulator.cut(state, day, false, true);
    const paid = node.paid + this.prices.mowing(day);
    this.visit({ ...node, state, depth: node.depth + 1, cuts: [...node.cuts, day], paid }, { worked, mown: true });
  }

  /** Nobody comes any more. */
  private end(node: Node, room: number): void {
    if (room < 0) return;
    const state = this.live(node);
    if (!state) return;
    this.draft.simulator.finish(state);
    const reduced = state.money - state.hayMade * this.prices.hay + node.paid;
    if (state.over > 0 || reduced > this.most) return;
    if (this.found.length >= this.limits.cards) {
      this.full = true;
      return;
    }
    const { money, hayMade } = state;
    const totals = { money, hayMade, grass: state.grass.slice(), nitrogenByYear: state.nitrogenByYear.slice(), cuts: state.cuts.slice() };
    this.found.push({ cell: this.cell, stays: node.stays, cuts: node.cuts, reduced, totals });
  }
}

/** A stay may begin where its start is allowed, and never so that it runs together with the stay before. */
function mayBegin({ season, tables }: Draft, cell: number, g: number, first: number, stays: readonly CardStay[]): boolean {
  const at = first * tables.width + cell + 1;
  if (!season.groups[g].present[first] || tables.startOver[g][at] > 0) return false;
  const before = stays[stays.length - 1];
  return !(before?.group === g && before.last === first - 1 && !season.groups[g].arrives[first]);
}

/** Whether a stay that began on `first` may hold its day `last`. */
function mayStand({ season, tables }: Draft, cell: number, g: number, first: number, last: number): boolean {
  const { present, arrives } = season.groups[g];
  if (!present[last] || tables.standOver[g][last * tables.width + cell + 1] > 0) return false;
  if (last === first) return true;
  const strip = season.scenario.groups[g].strip;
  return !arrives[last] && (!strip || (last - first) % strip.days !== 0 || tables.stepOver[g][last] <= 0);
}

/** After its last day the group must be able to go on: away, or to another place. */
function mayEnd({ season, tables }: Draft, cell: number, g: number, last: number): boolean {
  const next = last + 1;
  const { present, arrives } = season.groups[g];
  if (next >= season.days || !present[next] || arrives[next]) return true;
  for (let p = 0; p < tables.width; p++) {
    const at = next * tables.width + p;
    if (p !== cell + 1 && tables.startOver[g][at] <= 0 && tables.standOver[g][at] <= 0) return true;
  }
  return false;
}
