/** The cells that a change touches, in the order in which they are to be lived, and the first day it touches each. */
export class Touched {
  cells: number[] = [];
  /** By cell; meaningless for a cell that is not touched. */
  readonly from: Int32Array;

  constructor(cells: number) {
    this.from = new Int32Array(cells);
  }

  clear(): void {
    this.cells = [];
  }

  /** Touches a cell, or nothing for a place that is none; a `first` one is lived before the others. */
  add(c: number, day: number, first: boolean): void {
    if (c < 0) return;
    if (this.cells.includes(c)) this.from[c] = Math.min(this.from[c], day);
    else {
      this.from[c] = day;
      if (first) this.cells.unshift(c);
      else this.cells.push(c);
    }
  }

  /** Touches a cell from the first day that only one of two lists of cuts has. */
  addCuts(c: number, a: readonly number[], b: readonly number[]): void {
    this.add(c, Math.min(...a.filter((day) => !b.includes(day)), ...b.filter((day) => !a.includes(day))), true);
  }
}
