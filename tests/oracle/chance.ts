import { seededRandom } from "../../src/programme/random.js";

/** Seeded draws in the words of a generator of farms. */
export interface Chance {
  unit(): number;
  /** Whole number from least to most, both counted. */
  whole(least: number, most: number): number;
  between(least: number, most: number): number;
  /** True with this share of chance. */
  luck(share: number): boolean;
  pick<T>(from: readonly T[]): T;
  /** Each entry with this share of chance. */
  some<T>(from: readonly T[], share: number): T[];
}

export function chanceOf(seed: number): Chance {
  const random = seededRandom(seed);
  // The first draws of small seeds are much alike.
  for (let i = 0; i < 20; i++) random.unit();
  const luck = (share: number): boolean => random.unit() < share;
  return {
    unit: () => random.unit(),
    whole: (least, most) => least + random.below(most - least + 1),
    between: (least, most) => least + random.unit() * (most - least),
    luck,
    pick: (from) => from[random.below(from.length)],
    some: (from, share) => from.filter(() => luck(share)),
  };
}
