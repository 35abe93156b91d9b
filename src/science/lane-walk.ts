/** Positions in a row: the first begins at x, all of them lie from y up. In the lanes' frame, m. */
export interface Run {
  readonly x: number;
  readonly y: number;
  readonly count: number;
}

/** A run as it is walked. */
export interface Lane extends Run {
  /** Walked towards larger x, or back. */
  readonly forward: boolean;
  /** How the pen comes here from the lane before: a shift to the lane beside it, or brought there round what is in the way. */
  readonly by: "start" | "shift" | "brought";
}

/** A stretch of ground that is walked to and fro without leaving it: runs that lie one beside the other. */
type Piece = readonly Run[];

interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * Lanes to and fro: through one piece of ground to its end, then on to the nearest other. A piece ends where a hole or a corner of the
 * boundary parts the lanes.
 *
 * @param strips runs of each lane, lowest first
 */
export function walked(strips: readonly (readonly Run[])[], alongM: number, acrossM: number): readonly Lane[] {
  const left = piecesOf(strips, alongM, acrossM);
  const lanes: Lane[] = [];
  let stands: Point | null = null;
  while (left.length > 0) {
    const { piece, index, forward } = nearest(left, stands, alongM);
    left.splice(index, 1);
    const here = toAndFro(piece, forward, lanes.at(-1) ?? null, alongM, acrossM);
    lanes.push(...here);
    stands = endOf(here.at(-1)!, alongM);
  }
  return lanes;
}

/** A run goes on with the piece of the one beneath it when neither has another neighbour there. */
function piecesOf(strips: readonly (readonly Run[])[], alongM: number, acrossM: number): Piece[] {
  const pieces: Run[][] = [];
  let below: { readonly run: Run; readonly piece: Run[] }[] = [];
  for (const strip of strips) {
    const here: typeof below = [];
    for (const run of strip) {
      const under = below.filter((one) => beside(one.run, run, alongM, acrossM));
      const only = under.length === 1 && strip.filter((other) => beside(under[0]!.run, other, alongM, acrossM)).length === 1;
      const piece = only ? under[0]!.piece : [];
      if (!only) pieces.push(piece);
      piece.push(run);
      here.push({ run, piece });
    }
    below = here;
  }
  return pieces;
}

/** Two runs touch along more than a corner, or nearly. */
function beside(a: Run, b: Run, alongM: number, acrossM: number): boolean {
  const overlap = Math.min(a.x + a.count * alongM, b.x + b.count * alongM) - Math.max(a.x, b.x);
  return Math.abs(Math.abs(a.y - b.y) - acrossM) < acrossM / 2 && overlap > alongM / 1000;
}

/** The piece, and the corner of it, that is nearest to where the pen stands; the very first begins lowest, at its lower end. */
function nearest(pieces: readonly Piece[], stands: Point | null, alongM: number): { readonly piece: Piece; readonly index: number; readonly forward: boolean } {
  let best = { piece: pieces[0]!, index: 0, forward: true, far: Infinity };
  if (stands === null) return best;
  for (const [index, piece] of pieces.entries()) {
    for (const ordered of [piece, [...piece].reverse()]) {
      for (const forward of [true, false]) {
        const first = startOf({ ...ordered[0]!, forward }, alongM);
        const far = Math.hypot(first.x - stands.x, first.y - stands.y);
        if (far < best.far - 1e-6) best = { piece: ordered, index, forward, far };
      }
    }
  }
  return best;
}

/** Each lane from the end that is nearer to where the one before ended; the other way round where both are as near. */
function toAndFro(piece: Piece, first: boolean, before: Run | null, alongM: number, acrossM: number): Lane[] {
  const lanes: Lane[] = [];
  for (const run of piece) {
    const last = lanes.at(-1);
    lanes.push({ ...run, forward: last ? nearerForward(last, run, alongM) : first, by: howReached(last ?? before, run, alongM, acrossM) });
  }
  return lanes;
}

function nearerForward(last: Walked, run: Run, alongM: number): boolean {
  const { x } = endOf(last, alongM);
  const [lower, upper] = [Math.abs(run.x - x), Math.abs(run.x + run.count * alongM - x)];
  return Math.abs(lower - upper) < 1e-6 ? !last.forward : lower < upper;
}

function howReached(before: Run | null, run: Run, alongM: number, acrossM: number): Lane["by"] {
  if (before === null) return "start";
  return beside(before, run, alongM, acrossM) ? "shift" : "brought";
}

type Walked = Run & { readonly forward: boolean };

function startOf({ x, y, count, forward }: Walked, alongM: number): Point {
  return { x: forward ? x : x + count * alongM, y };
}

function endOf({ x, y, count, forward }: Walked, alongM: number): Point {
  return { x: forward ? x + count * alongM : x, y };
}
