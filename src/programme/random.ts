import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** A seeded stream of chance: the same on every machine. */
export interface Random {
  /** 0 <= x < 1. */
  unit(): number;
  /** Whole number, 0 <= n < below. */
  below(below: number): number;
}

export function seededRandom(seed: number): Random {
  // Small seeds lie close together there: spread them first.
  const generator = xoroshiro128plus(Math.imul(seed + 1, 0x9e3779b1));
  const unit = (): number => (generator.next() >>> 0) / 4_294_967_296;
  return { unit, below: (below) => Math.floor(unit() * below) };
}
