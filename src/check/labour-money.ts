import type { Group, Scenario } from "../farm/scenario.js";
import type { Move } from "./labour.js";

/** Groups in a pen or net; their hauls are charged apart. */
export function hasPen({ strip }: Group): boolean {
  return strip !== null && strip.pen !== null;
}

export function labourMoney({ prices }: Scenario, minutes: number): number {
  return (minutes * prices.labourPerHour) / 60;
}

/** A haul's minutes and its own price. */
export function haulMoney(scenario: Scenario, move: Move): number {
  return move.hauled ? labourMoney(scenario, move.haulMinutes) + scenario.prices.haul : 0;
}
