import type { IsoDate } from "../quantity/calendar.js";
import type { Group } from "./scenario.js";

/** Young with their mothers. */
export interface Young {
  readonly head: number;
  readonly weightKg: number;
  readonly gainKgPerDay: number;
  /** Last day with their mothers, where they are weaned within the season. */
  readonly lastDay?: IsoDate;
}

/** A group's young on a day; none once they are weaned. */
export function youngOn(group: Group, day: IsoDate): Young | null {
  const young = group.young;
  return young?.lastDay !== undefined && day > young.lastDay ? null : young;
}
