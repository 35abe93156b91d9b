import { YARD, type Season } from "../../season/season.js";
import type { Draft } from "../draft.js";
import { snapshot, type Snapshot } from "../snapshot.js";
import type { PricingSolver } from "../solver.js";
import { CardLister, type WholeCard } from "./all-cards.js";
import { cellPrices } from "./cell-prices.js";
import { climb, type Climbed } from "./climb.js";
import { Completion } from "./completion.js";
import type { Told, WholeBound } from "./whole-bound.js";
import { wholeModel } from "./whole-model.js";
import type { WholePrices } from "./whole-prices.js";

/** Some of all plans: those in which groups stand where they are told to. No plan of them costs less than the bound. */
interface Part {
  readonly told: readonly Told[];
  readonly climbed: Climbed;
}

/** Counted limits of a proof. */
export interface ProofLimits {
  /** Steps of the bound's ascent, over all parts. */
  readonly steps: number;
  /** Cards of a cell, and steps of listing them; a part with more is split. */
  readonly cards: number;
  readonly listing: number;
  /** Cards x days that the solver is asked to choose from. */
  readonly choice: number;
  readonly nodes: number;
  readonly guardSeconds: number;
}

export interface ProofWatch {
  stop(): boolean;
  better(plan: Snapshot): void;
  bound(value: number): void;
}

/** What came of it: no plan costs less than `bound`, which is the best plan's cost, less what solvers round, where `proven`. */
export interface Proof {
  readonly bound: number;
  readonly proven: boolean;
  readonly parts: number;
  readonly cards: number;
}

/** Money less than which two plans cost the same; and slack for sums made in another order. */
const SAME = 0.005;
const HAIR = 1e-6;

/**
 * Looks at every plan there is that could be better than the draft's: all plans are split by where groups stand on some
 * day, the part with the lowest bound first; a part is done when its bound is no lower than the best plan, or when all
 * cards that a better plan could have are listed and the solver has chosen. The draft holds the best plan afterwards.
 */
export class ProofTree {
  private left: number;
  private parts = 0;
  private listed = 0;
  /** Lowest bound of parts that were given up. */
  private givenUp = Infinity;

  constructor(
    private readonly draft: Draft, private readonly whole: WholeBound, private readonly solver: PricingSolver,
    private readonly limits: ProofLimits, private readonly watch: ProofWatch,
  ) {
    this.left = limits.steps;
  }

  async prove(from: WholePrices): Promise<Proof> {
    const open: Part[] = [{ told: [], climbed: this.climb([], from, Math.min(ROOT_STEPS, this.limits.steps), { first: 0.3, last: 0.003 }) }];
    while (open.length > 0 && this.left > 0 && !this.watch.stop()) {
      open.sort((a, b) => b.climbed.value - a.climbed.value);
      const part = open.pop()!;
      if (part.climbed.value >= this.draft.cost - SAME) continue;
      this.watch.bound(Math.min(part.climbed.value, this.givenUp));
      if (await this.choose(part, 1)) continue;
      const split = this.split(part);
      if (split.length === 0 && !(await this.choose(part, LAST_PATIENCE))) this.givenUp = Math.min(this.givenUp, part.climbed.value);
      for (const child of split) if (child.climbed.value < this.draft.cost - SAME) open.push(child);
    }
    const least = Math.min(this.givenUp, ...open.map((part) => part.climbed.value));
    const proven = least >= this.draft.cost - SAME;
    return { bound: proven ? this.draft.cost - 2 * SAME : least, proven, parts: this.parts, cards: this.listed };
  }

  private climb(told: readonly Told[], from: WholePrices, steps: number, rates: { first: number; last: number }): Climbed {
    this.whole.narrow(told);
    this.parts++;
    const climbed = climb(this.whole, from, steps, rates, this.draft.cost - SAME, () => this.watch.stop());
    this.left -= climbed.steps;
    return climbed;
  }

  /** One part for each place of the group and day that the part's plans agree on least. */
  private split({ told, climbed }: Part): Part[] {
    const at = mostOpen(this.draft.season, this.whole, climbed, told);
    if (!at) return [];
    return at.places.map((place) => {
      const own = [...told, { group: at.group, day: at.day, place }];
      const child = this.climb(own, climbed.prices, CHILD_STEPS, { first: 0.2, last: 0.005 });
      return { told: own, climbed: child.value >= climbed.value ? child : { ...child, value: climbed.value } };
    });
  }

  /** Lists all cards that a better plan of the part could have, and chooses from them; false where they are too many. */
  private async choose({ told, climbed }: Part, patience: number): Promise<boolean> {
    const cards = this.list(told, climbed, patience);
    if (!cards) return false;
    if (cards.length === 0) return true;
    const { draft, solver, limits } = this;
    const { model } = wholeModel(draft.season, draft.tables, cards);
    const relaxed = await solver.relax(model, limits.guardSeconds);
    if (relaxed.kind !== "optimal") return false;
    const room = draft.cost - relaxed.value;
    if (room < SAME / 2) return true;
    const few = cards.filter((_, i) => relaxed.reducedCosts[i] <= room + HAIR);
    if (few.length * draft.season.days > limits.choice * patience) return false;
    const small = wholeModel(draft.season, draft.tables, few);
    const solved = await solver.solve(small.model, { nodes: limits.nodes, gap: SAME / 4, start: null, guardSeconds: limits.guardSeconds });
    if (solved.kind === "infeasible") return true;
    if (solved.kind !== "optimal") return false;
    if (solved.value < draft.cost - SAME) this.take(few.filter((_, i) => solved.columns[i] > 0.5), solved.value);
    return true;
  }

  /** Cards of all cells that a better plan of a part could have; empty where there can be none, null where they are too many. */
  private list(told: readonly Told[], { value, prices }: Climbed, patience: number): WholeCard[] | null {
    const { draft, whole, limits } = this;
    whole.narrow(told);
    let bound = whole.judge(prices).value;
    if (bound < value - 1e-6) throw new Error("the same prices gave another bound");
    const budget = { left: limits.listing * patience };
    const found: { cards: readonly WholeCard[]; least: number }[] = [];
    for (let cell = 0; cell < draft.season.cells.length; cell++) {
      const own = cellPrices(whole, cell, prices);
      const lister = new CardLister(draft, cell, own, new Completion(whole.bound.cells[cell]));
      const { cards, all } = lister.list(own.least + draft.cost - bound + HAIR, { cards: limits.cards * patience, budget });
      if (!all) return null;
      this.listed += cards.length;
      if (cards.length === 0) return [];
      const least = cards.reduce((low, { reduced }) => Math.min(low, reduced), Infinity);
      bound += Math.max(0, least - own.least);
      found.push({ cards, least });
    }
    const room = draft.cost - bound;
    if (room < SAME / 2) return [];
    return found.flatMap(({ cards, least }) => cards.filter(({ reduced }) => reduced <= least + room + HAIR));
  }

  /** Puts a choice of cards into the draft, and holds the programme's word against it. */
  private take(cards: readonly WholeCard[], cost: number): void {
    const { draft } = this;
    const { groups, cells } = draft.season;
    const place = groups.map((group) => Int16Array.from(group.present, (present) => (present ? YARD : -2)));
    const cuts: (readonly number[])[] = cells.map(() => []);
    for (const card of cards) {
      cuts[card.cell] = card.cuts;
      for (const { group, first, last } of card.stays) place[group].fill(card.cell, first, last + 1);
    }
    const before = snapshot(draft);
    draft.load(place, cuts);
    if (draft.over > 0 || Math.abs(draft.cost - cost) > 0.01) throw new Error(`the whole season's programme says ${cost} of a plan that costs ${draft.cost} and breaks ${draft.over}; the plan before cost ${before.cost}`);
    this.watch.better(snapshot(draft));
  }
}

/** How much more is listed and chosen from where a part cannot be split. */
const LAST_PATIENCE = 8;

/** Steps of the ascent from nothing, and in a part just split off. */
const ROOT_STEPS = 300;
const CHILD_STEPS = 80;

/** The group and day on which ways differ most, long stays first; and the places where they may stand. */
function mostOpen(season: Season, whole: WholeBound, { stood, steps }: Climbed, told: readonly Told[]): { group: number; day: number; places: number[] } | null {
  let best: { group: number; day: number; worth: number } | null = null;
  const width = season.cells.length + 1;
  season.groups.forEach((group, g) => {
    const moved = stood.moves[g] > 0 ? stood.days[g] / stood.moves[g] : season.days;
    for (let t = 0; t < season.days; t++) {
      if (!group.present[t] || told.some((own) => own.group === g && own.day === t)) continue;
      let most = 0;
      for (let p = 0; p < width; p++) most = Math.max(most, stood.share[(g * season.days + t) * width + p]);
      const worth = (1 - most) * moved;
      if (steps > 0 && most < 0.97 && (!best || worth > best.worth + 1e-9)) best = { group: g, day: t, worth };
    }
  });
  if (!best) return null;
  const { group, day }: { group: number; day: number } = best;
  const places: number[] = [];
  for (let p = YARD; p < season.cells.length; p++) {
    const at = day * width + p + 1;
    if (p >= 0 && (season.groups[group].mayEnter[p] !== 1 || season.cells[p].open[day] !== 1)) continue;
    if (whole.bound.tables.standOver[group][at] <= 0) places.push(p);
  }
  return { group, day, places };
}
