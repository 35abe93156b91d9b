import { cellSimulator } from "../programme/cell-simulator.js";
import { farmWide } from "../programme/half.js";
import { pathTables, type PathTables } from "../programme/path-tables.js";
import { HALVES } from "../programme/rules/index.js";
import type { Model } from "../programme/solver.js";
import type { RuleId } from "../rules/rule.js";
import { AWAY, FREE, YARD, type Season } from "../season/season.js";
import { groundRows } from "./day-indexed-ground.js";
import { dayRows, fieldRows, placeRows, stayRows } from "./day-indexed-groups.js";
import type { Writing } from "./day-indexed-writing.js";
import { ProgrammeBuilder } from "./programme-builder.js";

export interface DayIndexed {
  readonly model: Model;
  /** Column of a group standing in a place on a day; -1 where it may not. */
  stand(group: number, place: number, day: number): number;
  /** Where every group stands, by day, in an answer. */
  places(columns: Float64Array): Int16Array[];
}

/**
 * The season as somebody would write it down first: a whole column for every group, place and day, and the rules as
 * rows. Cover grows under tangents of the growth law and birds' and pigs' ground is not shut, both of which count too
 * much grass; long grass, hay cut by choice, worms, hay for winter and steps inside a stay are left out. Nothing in it
 * makes a plan dearer or harder than it is: no plan can cost less than what is proven of it, while its own plan may break rules.
 */
export function dayIndexed(season: Season): DayIndexed {
  const tables = pathTables(season, HALVES);
  const b = new ProgrammeBuilder();
  const [standing, starting] = [standColumns(season, tables, b), startColumns(season, tables, b)];
  const at = (columns: readonly Int32Array[]) => (group: number, place: number, day: number): number => (day < 0 ? -1 : columns[group][day * tables.width + place + 1]);
  const w: Writing = { season, tables, b, stand: at(standing), start: at(starting) };
  placeRows(w);
  stayRows(w);
  dayRows(w, fieldRows(w));
  groundRows(w);
  return { model: b.model(), stand: w.stand, places: (columns) => placesOf(season, w, columns) };
}

/** Rules of a cell that cost the same on every day of a stay, whatever the grass. */
const DAILY: readonly RuleId[] = ["water", "shade", "closing-cover", "closed-dates", "density-ceiling"];

function standColumns(season: Season, tables: PathTables, b: ProgrammeBuilder): Int32Array[] {
  const simulator = cellSimulator(season, HALVES.filter((half) => DAILY.includes(half.id)));
  const states = season.cells.map((_, c) => simulator.fresh(c));
  const held = farmWide(season, "holds");
  return season.groups.map((group, g) => {
    const columns = new Int32Array(season.days * tables.width).fill(-1);
    for (let t = 0; t < season.days; t++) {
      if (!group.present[t]) continue;
      for (let place = YARD; place < season.cells.length; place++) {
        const index = t * tables.width + place + 1;
        let { money, over } = { money: tables.standMoney[g][index], over: tables.standOver[g][index] };
        if (place >= 0) {
          simulator.reset(states[place]);
          const day = simulator.probe(states[place], g, t, t);
          money += day.money;
          over += day.over + (group.mayEnter[place] ? 0 : 1);
        }
        const must = held && group.held[t] !== FREE ? Number(group.held[t] === place) : null;
        if (must === 0 || (over > 0 && must === null)) continue;
        columns[index] = b.column(money, 1, { whole: true, lower: must ?? 0 });
      }
    }
    return columns;
  });
}

function startColumns(season: Season, tables: PathTables, b: ProgrammeBuilder): Int32Array[] {
  return season.groups.map((group, g) => {
    const columns = new Int32Array(season.days * tables.width).fill(-1);
    for (let index = 0; index < columns.length; index++) {
      if (!group.present[Math.floor(index / tables.width)]) continue;
      columns[index] = b.column(tables.startMoney[g][index], tables.startOver[g][index] > 0 ? 0 : 1);
    }
    return columns;
  });
}

function placesOf(season: Season, w: Writing, columns: Float64Array): Int16Array[] {
  return season.groups.map((group, g) =>
    Int16Array.from(group.present, (present, t) => {
      if (!present) return AWAY;
      const value = (place: number): number => columns[w.stand(g, place, t)] ?? -1;
      return season.cells.reduce((best, _, c) => (value(c) > value(best) ? c : best), YARD);
    }),
  );
}
