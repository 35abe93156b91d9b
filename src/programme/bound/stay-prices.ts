import type { CellSimulator } from "../cell-simulator.js";
import type { PathTables } from "../path-tables.js";

/** Money of stays in one cell as far as cover has no say in it, and what is forbidden anyhow. */
export interface StayPrices {
  /** Grazers: [day x most + days - 1], Infinity where forbidden: usual stay, water, shade, moving in. */
  readonly grazing: ReadonlyMap<number, Float64Array>;
  /** Birds and pigs: a day in the cell, and beginning one; Infinity where forbidden. */
  readonly standing: ReadonlyMap<number, { readonly day: Float64Array; readonly start: Float64Array }>;
  /** By group: 1 on mornings on which it may have left for somewhere else. */
  readonly mayLeave: readonly Uint8Array[];
}

/** Asks the rules themselves, on ground with so much grass and rest that only the rest of them speaks. */
export function stayPrices(simulator: CellSimulator, tables: PathTables, cell: number, most: number): StayPrices {
  const { season } = simulator;
  const { width } = tables;
  const grazing = new Map<number, Float64Array>();
  const standing = new Map<number, { day: Float64Array; start: Float64Array }>();
  const probe = simulator.fresh(cell);
  const ask = (g: number, first: number, last: number): number => {
    for (let t = first; t <= last; t++) if (tables.standOver[g][t * width + cell + 1] > 0) return Infinity;
    simulator.reset(probe);
    const { money, over } = simulator.probe(probe, g, first, last);
    return over > 0 ? Infinity : money;
  };
  season.groups.forEach((group, g) => {
    if (!group.mayEnter[cell]) return;
    const at = (t: number): number => t * width + cell + 1;
    const startOf = (t: number): number => (tables.startOver[g][at(t)] > 0 ? Infinity : tables.startMoney[g][at(t)]);
    if (group.grazer) {
      const money = new Float64Array(season.days * most).fill(Infinity);
      for (let t = 0; t < season.days; t++) {
        if (!group.present[t]) continue;
        for (let n = 1; n <= most && t + n <= season.days && group.present[t + n - 1] && !(n > 1 && group.arrives[t + n - 1]); n++) {
          money[t * most + n - 1] = startOf(t) + ask(g, t, t + n - 1);
        }
      }
      grazing.set(g, money);
    } else {
      const alone = Float64Array.from({ length: season.days }, (_, t) => (group.present[t] ? ask(g, t, t) : Infinity));
      // A day on which no stay may begin can still be part of one that began before it.
      const since = (t: number): number => alone.findLastIndex((money, f) => f < t && money < Infinity);
      const day = alone.map((money, t) => (money < Infinity || since(t) < 0 ? money : ask(g, since(t), t) - ask(g, since(t), t - 1)));
      standing.set(g, { day: day.map((money) => (Number.isNaN(money) ? Infinity : money)), start: alone.map((money, t) => (money < Infinity ? startOf(t) : Infinity)) });
    }
  });
  return { grazing, standing, mayLeave: season.groups.map((_, g) => leaveDays(simulator, tables, g)) };
}

/** Mornings on which a group may have left: the season's end, its own leaving, or any allowed start elsewhere. */
function leaveDays({ season }: CellSimulator, tables: PathTables, g: number): Uint8Array {
  const group = season.groups[g];
  return Uint8Array.from({ length: season.days + 1 }, (_, t) => {
    if (t >= season.days || !group.present[t] || group.arrives[t]) return 1;
    for (let place = 0; place < tables.width; place++) if (tables.startOver[g][t * tables.width + place] <= 0 && tables.standOver[g][t * tables.width + place] <= 0) return 1;
    return 0;
  });
}
