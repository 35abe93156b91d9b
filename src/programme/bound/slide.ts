/**
 * Least of offered values by level, while days go back: mornings are offered ever earlier, and the last one that still
 * counts moves back too. Each offer is looked at a few times in all.
 */
export class Slide {
  private readonly ends: Int16Array;
  private readonly values: Float64Array;
  private readonly head: Int16Array;
  private readonly tail: Int16Array;
  /** The morning of the least value asked for last. */
  at = -1;

  constructor(levels: number, private readonly room: number) {
    this.ends = new Int16Array(levels * room);
    this.values = new Float64Array(levels * room);
    this.head = new Int16Array(levels);
    this.tail = new Int16Array(levels);
  }

  clear(): void {
    this.head.fill(0);
    this.tail.fill(0);
  }

  offer(level: number, end: number, value: number): void {
    const base = level * this.room;
    const head = this.head[level];
    let tail = this.tail[level];
    while (tail > head && value <= this.values[base + tail - 1]) tail--;
    this.ends[base + tail] = end;
    this.values[base + tail] = value;
    this.tail[level] = tail + 1;
  }

  /** Least value of a level up to a morning; Infinity where none is left. */
  least(level: number, last: number): number {
    const base = level * this.room;
    const tail = this.tail[level];
    let head = this.head[level];
    while (head < tail && this.ends[base + head] > last) head++;
    this.head[level] = head;
    if (head === tail) return Infinity;
    this.at = this.ends[base + head];
    return this.values[base + head];
  }
}
