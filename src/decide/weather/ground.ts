import type { CellSimulator } from "../../programme/cell-simulator.js";
import { copyState, type CellState } from "../../programme/cell-state.js";

/** Small change of rounding in what rules are broken by. */
const NEAR = 1e-9;

/** Every cell of one year as far as it was lived, day by day. Mutable on purpose, and never seen outside the walk. */
export class Ground {
  /** Lived to this morning, the stay under way included. */
  private readonly lived: CellState[];
  /** As it was before the latest stay: that is lived anew with every day it lasts. */
  private readonly before: CellState[];
  private readonly tried: CellState[];
  private readonly stays: { group: number; first: number; last: number }[];

  constructor(private readonly simulator: CellSimulator) {
    const fresh = (): CellState[] => simulator.season.cells.map((_, c) => simulator.fresh(c));
    [this.lived, this.before, this.tried] = [fresh(), fresh(), fresh()];
    this.stays = this.lived.map(() => ({ group: -1, first: -1, last: -2 }));
  }

  /** True when a group may stand in a cell from `day` to `to` without breaking a rule of the ground. */
  fits(cell: number, group: number, day: number, to = day): boolean {
    return this.try(cell, group, day, to).over <= this.lived[cell].over + NEAR;
  }

  /** A group stands in a cell on a day. */
  stand(cell: number, group: number, day: number): void {
    const stay = this.stays[cell];
    const goesOn = this.goesOn(cell, group, day);
    const now = this.try(cell, group, day, day);
    if (!goesOn) copyState(this.before[cell], this.lived[cell]);
    [this.tried[cell], this.lived[cell]] = [this.lived[cell], now];
    if (!goesOn) Object.assign(stay, { group, first: day });
    stay.last = day;
  }

  /** First day of the stay that a group would go on with; the day itself where it would begin one. */
  firstDay(cell: number, group: number, day: number): number {
    return this.goesOn(cell, group, day) ? this.stays[cell].first : day;
  }

  /** Mows an empty cell on the evening of a day, where that breaks no rule or the owner has fixed it. */
  mow(cell: number, day: number, byOwner: boolean, makesHay: boolean): boolean {
    if (this.lived[cell].day > day) return false;
    const tried = this.tried[cell];
    copyState(tried, this.lived[cell]);
    this.simulator.cut(tried, day, byOwner, makesHay);
    if (!byOwner && tried.over > this.lived[cell].over + NEAR) return false;
    [this.tried[cell], this.lived[cell]] = [this.lived[cell], tried];
    return true;
  }

  private goesOn(cell: number, group: number, day: number): boolean {
    const stay = this.stays[cell];
    return stay.group === group && stay.last === day - 1 && this.simulator.season.groups[group].arrives[day] === 0;
  }

  private try(cell: number, group: number, day: number, to: number): CellState {
    const goesOn = this.goesOn(cell, group, day);
    const tried = this.tried[cell];
    copyState(tried, goesOn ? this.before[cell] : this.lived[cell]);
    this.simulator.stay(tried, group, goesOn ? this.stays[cell].first : day, to);
    return tried;
  }
}
