import type { Group } from "../farm/scenario.js";
import { youngOn } from "../farm/young.js";
import type { IsoDate } from "../quantity/calendar.js";

/** Heads to count on a day, young with their mothers apart: "5 + 5", "60". */
export function headCount(group: Group, day: IsoDate): string {
  const young = youngOn(group, day)?.head ?? 0;
  return young > 0 ? `${group.head} + ${young}` : String(group.head);
}
