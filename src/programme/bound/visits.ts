import type { Season } from "../../season/season.js";
import type { PathTables } from "../path-tables.js";
import { fieldRest, type FieldRest } from "./field-rest.js";
import type { RouteGround, RoutePrices } from "./route.js";

/** A grazing group's cheapest way at given prices: by day its field, YARD, or -2 where it is away; and the days on which a stay begins. */
export interface Visits {
  readonly value: number;
  readonly place: Int16Array;
  readonly begins: Uint8Array;
  /** By field: full charge of rests cut short that the way cannot avoid. */
  readonly short: Float64Array;
}

const NOWHERE = -2;

/** Prices of a grazing group: besides those of any way, of beginning a stay in a field, by field x days + day. */
export interface VisitPrices extends RoutePrices {
  readonly starts: Float64Array;
  /** By field: share of charges for short rests that the ways bear, and not the cells. */
  readonly rest: Float64Array;
}

/**
 * States of a day: the yard; and in each field the stays of the visit so far and the days since it began. After as many
 * stays as the field has cells one cell comes again, and that not before its rest: the visit then begins anew.
 */
interface States {
  readonly count: number;
  readonly field: Int16Array;
  readonly first: Int32Array;
  /** One day on, in the same stay. */
  readonly stay: Int32Array;
  /** One day on, in a new stay; -1 where none can be. */
  readonly again: Int32Array;
  /** Where that new stay must come again to a cell: days since the visit began; 0 where it need not. */
  readonly since: Int16Array;
}

function statesOf(cells: readonly number[], rests: readonly FieldRest[]): States {
  const first = new Int32Array(cells.length);
  let count = 1;
  cells.forEach((n, f) => {
    first[f] = count;
    count += n * (rests[f].recovered + 2);
  });
  const field = new Int16Array(count).fill(-1);
  const stay = new Int32Array(count);
  const again = new Int32Array(count).fill(-1);
  const since = new Int16Array(count);
  cells.forEach((n, f) => {
    const { floor, recovered } = rests[f];
    const width = recovered + 2;
    for (let k = 0; k < n; k++) {
      for (let d = 0; d < width; d++) {
        const at = first[f] + k * width + d;
        const later = Math.min(d + 1, width - 1);
        field[at] = f;
        stay[at] = first[f] + k * width + later;
        if (k + 1 < n) again[at] = first[f] + (k + 1) * width + later;
        else if (later > floor) {
          again[at] = first[f];
          since[at] = later;
        }
      }
    }
  });
  return { count, field, first, stay, again, since };
}

/** All ways of one grazing group, by dynamic programme over days backward. Built once; its tables are used again. */
export class GrazerVisits {
  private readonly states: States;
  private readonly value: Float64Array;
  private readonly next: Int32Array;
  private readonly fields: number;
  private readonly rests: readonly FieldRest[];

  constructor(private readonly season: Season, private readonly tables: PathTables, private readonly ground: RouteGround) {
    this.fields = season.scenario.fields.length;
    const { mayEnter } = season.groups[ground.group];
    const cells = season.scenario.fields.map((_, f) => season.cells.filter((cell, c) => cell.field === f && mayEnter[c]).length);
    this.rests = cells.map((_, f) => fieldRest(season, f));
    this.states = statesOf(cells, this.rests);
    this.value = new Float64Array((season.days + 1) * this.states.count);
    this.next = new Int32Array(season.days * this.states.count);
  }

  cheapest(prices: VisitPrices): Visits {
    const { season, states, value } = this;
    const { present, arrives } = season.groups[this.ground.group];
    const entering = new Float64Array(this.fields + 1);
    for (let t = season.days - 1; t >= 0; t--) {
      if (!present[t]) continue;
      const on = t + 1 < season.days && present[t + 1] === 1 && !arrives[t + 1];
      for (let k = 0; on && k <= this.fields; k++) entering[k] = this.enter(prices, t + 1, k) + value[(t + 1) * states.count + this.stateOf(k)];
      this.fillDay(prices, t, on ? entering : null, on ? 0 : this.freshValue(prices, t + 1));
    }
    return { value: this.freshValue(prices, 0), ...this.walkOn(prices) };
  }

  private stateOf(place: number): number {
    return place === 0 ? 0 : this.states.first[place - 1];
  }

  /** Price of coming to the yard (0) or into a field on a day. */
  private enter({ yardStart, haul, starts }: VisitPrices, t: number, place: number): number {
    const { ground, tables, season, fields } = this;
    if (!ground.start[t * (fields + 1) + place]) return Infinity;
    if (place === 0) return tables.startMoney[ground.group][t * tables.width] + yardStart[t];
    const at = (place - 1) * season.days + t;
    return tables.haulMoney[ground.group][place - 1] + haul[at] + starts[at];
  }

  private fillDay(prices: VisitPrices, t: number, entering: Float64Array | null, fresh: number): void {
    const { season, states, ground, tables, value, next, fields } = this;
    const base = t * states.count;
    const after = base + states.count;
    const leave = entering ? this.cheapestLeave(entering) : null;
    for (let s = 0; s < states.count; s++) {
      const f = states.field[s];
      if (!ground.stand[t * (fields + 1) + f + 1]) {
        value[base + s] = Infinity;
        continue;
      }
      const day = f < 0 ? tables.standMoney[ground.group][t * tables.width] + prices.yardStand[t] : prices.presence[f * season.days + t];
      let best = fresh;
      let to = states.stay[s];
      if (leave && entering) {
        best = value[after + to];
        const again = this.again(prices, s, t + 1);
        if (again < best) {
          best = again;
          to = states.again[s];
        }
        const place = leave.first === f + 1 ? leave.second : leave.first;
        if (place >= 0 && entering[place] < best) {
          best = entering[place];
          to = this.stateOf(place);
        }
      }
      value[base + s] = day + best;
      next[base + s] = to;
    }
  }

  /** Value of a new stay in the same field on a day, from a state of the day before. */
  private again({ starts, rest }: VisitPrices, s: number, t: number): number {
    const { season, states, ground, value, fields, rests } = this;
    const [again, f, since] = [states.again[s], states.field[s], states.since[s]];
    if (again < 0 || !ground.start[t * (fields + 1) + f + 1]) return Infinity;
    const short = since > 0 && rest[f] > 0 ? rest[f] * rests[f].money(t, since) : 0;
    return value[t * states.count + again] + starts[f * season.days + t] + short;
  }

  /** The two cheapest places to come to: nobody leaves a place for itself. */
  private cheapestLeave(entering: Float64Array): { first: number; second: number } {
    let first = -1;
    let second = -1;
    for (let k = 0; k < entering.length; k++) {
      if (first < 0 || entering[k] < entering[first]) [first, second] = [k, first];
      else if (second < 0 || entering[k] < entering[second]) second = k;
    }
    return { first, second };
  }

  /** Value of the first presence on or after a day, its start paid. */
  private freshValue(prices: VisitPrices, from: number): number {
    const { season, states, value } = this;
    const { present } = season.groups[this.ground.group];
    let t = from;
    while (t < season.days && !present[t]) t++;
    if (t >= season.days) return 0;
    let best = Infinity;
    for (let k = 0; k <= this.fields; k++) best = Math.min(best, this.enter(prices, t, k) + value[t * states.count + this.stateOf(k)]);
    return best;
  }

  private walkOn(prices: VisitPrices): Omit<Visits, "value"> {
    const { season, states, value, next } = this;
    const { present, arrives } = season.groups[this.ground.group];
    const place = new Int16Array(season.days).fill(NOWHERE);
    const begins = new Uint8Array(season.days);
    const short = new Float64Array(this.fields);
    let state = -1;
    let stays = -1;
    for (let t = 0; t < season.days; t++) {
      if (!present[t]) {
        state = stays = -1;
        continue;
      }
      if (state < 0 || arrives[t]) {
        let best = Infinity;
        for (let k = 0; k <= this.fields; k++) {
          const own = this.enter(prices, t, k) + value[t * states.count + this.stateOf(k)];
          if (own >= best) continue;
          best = own;
          state = this.stateOf(k);
        }
        stays = -1;
      }
      place[t] = states.field[state];
      begins[t] = state === stays ? 0 : 1;
      stays = states.stay[state];
      const to = next[t * states.count + state];
      if (to === states.again[state] && states.since[state] > 0 && t + 1 < season.days) short[place[t]] += this.rests[place[t]].money(t + 1, states.since[state]);
      state = to;
    }
    return { place, begins, short };
  }
}
