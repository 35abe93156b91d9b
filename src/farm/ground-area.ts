const M2_PER_HA = 10_000;

/**
 * Area inside a line through corners, by the shoelace sum.
 *
 * @param corners metres east and north of any point, in order round the ground
 * @returns ha; 0 for fewer than three corners
 */
export function boundaryHa(corners: readonly (readonly [number, number])[]): number {
  const twice = corners.reduce((sum, [x, y], i) => {
    const [u, v] = corners[(i + 1) % corners.length]!;
    return sum + x * v - u * y;
  }, 0);
  return Math.abs(twice) / 2 / M2_PER_HA;
}

/**
 * Area of a triangle of three sides, or of four sides in order round with the diagonal that joins the start of the
 * first to the end of the second (Heron's formula).
 *
 * @returns ha; NaN when such sides do not close
 */
export function sidesHa(sides: readonly number[], diagonal: number | undefined): number {
  const [a, b, c, d] = sides;
  if (sides.length === 3) return triangleM2(a!, b!, c!) / M2_PER_HA;
  if (sides.length !== 4 || diagonal === undefined) return Number.NaN;
  return (triangleM2(a!, b!, diagonal) + triangleM2(c!, d!, diagonal)) / M2_PER_HA;
}

function triangleM2(a: number, b: number, c: number): number {
  const s = (a + b + c) / 2;
  const square = s * (s - a) * (s - b) * (s - c);
  return square > 0 ? Math.sqrt(square) : Number.NaN;
}
