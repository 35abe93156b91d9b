import type { Point } from "./planned-ground.js";

/** Room for words inside a piece of ground, mm. */
export interface RoomInside {
  readonly at: Point;
  readonly w: number;
  readonly h: number;
}

/** Heights of rooms that are tried: of one line of marks up to three; and how wide a room need be at most. */
const HIGH = [9, 7, 5.6, 4, 3, 2.4];
const WIDEST = 22;
/** Points tried across the ground, and steps along a room's edge, mm. */
const ACROSS = 14;
const STEP = 0.5;

/** The largest level room inside the ground, holes left out; the middle of the ground, without room, where it is too small for a line. */
export function roomInside(rings: readonly (readonly Point[])[]): RoomInside {
  const ring = rings[0]!;
  const [left, right] = [Math.min(...ring.map(([x]) => x)), Math.max(...ring.map(([x]) => x))];
  const [top, bottom] = [Math.min(...ring.map(([, y]) => y)), Math.max(...ring.map(([, y]) => y))];
  let best: RoomInside = { at: [(left + right) / 2, (top + bottom) / 2], w: 0, h: 0 };
  for (const h of HIGH.filter((one) => one <= bottom - top)) {
    for (let i = 0; i <= ACROSS; i += 1) {
      for (let j = 0; j <= ACROSS; j += 1) {
        const room = widened(rings, [left + ((right - left) * i) / ACROSS, top + h / 2 + ((bottom - top - h) * j) / ACROSS], h);
        if (room.w * room.h > best.w * best.h + 1e-9) best = room;
      }
    }
  }
  return best;
}

/** As far to both sides of a point as a room of some height stays on the ground. */
function widened(rings: readonly (readonly Point[])[], [x, y]: Point, h: number): RoomInside {
  const upright = Array.from({ length: Math.ceil(h / STEP) + 1 }, (_, i) => y - h / 2 + (i * h) / Math.ceil(h / STEP));
  const free = (at: number): boolean => upright.every((level) => isInside(rings, at, level));
  if (!free(x)) return { at: [x, y], w: 0, h };
  const reach = (side: -1 | 1): number => {
    let far = 0;
    while (far < WIDEST / 2 && free(x + side * (far + STEP))) far += STEP;
    return far;
  };
  const [before, after] = [reach(-1), reach(1)];
  return { at: [x + (after - before) / 2, y], w: before + after, h };
}

function isInside(rings: readonly (readonly Point[])[], x: number, y: number): boolean {
  let inside = false;
  for (const ring of rings) {
    ring.forEach(([x1, y1], i) => {
      const [x2, y2] = ring[(i + 1) % ring.length]!;
      if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
    });
  }
  return inside;
}
