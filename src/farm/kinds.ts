const GRAZERS = ["cattle", "sheep", "goats", "horses"] as const;
export const BIRDS = ["layers", "broilers", "turkeys", "ducks", "geese"] as const;
export const KINDS = [...GRAZERS, "pigs", ...BIRDS] as const;
export type Kind = (typeof KINDS)[number];

/** Grazers eat the open ground of a cell; birds and pigs work it strip by strip. */
export function isGrazer(kind: Kind): boolean {
  return (GRAZERS as readonly string[]).includes(kind);
}
export function isBird(kind: Kind): boolean {
  return (BIRDS as readonly string[]).includes(kind);
}
