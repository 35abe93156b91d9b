import type { Season } from "../season/season.js";
import type { Race } from "./race.js";

/** What re-doing the plan stretch by stretch has proven of it: a sentence, or none where it was not done to the end. */
export function redoneWords(season: Season, { mended, proven }: Pick<Race, "mended" | "proven">): readonly string[] {
  if (!mended?.settled || proven || mended.proven.length === 0) return [];
  const stretches = mended.proven.map(({ groups, days }) => `${days} days of ${groups.map((g) => season.groups[g].name).join(" and ")}`);
  return [`With all else as it is, no cheaper way is left in any of these, stretch by stretch through the season, each half over the one before: ${stretches.join(", ")}.`];
}
