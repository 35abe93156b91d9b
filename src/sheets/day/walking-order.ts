import type { Place } from "../../work/job.js";
import type { Day } from "./context.js";
import type { Draft } from "./draft.js";

const PARTS = ["morning", "evening", "dusk"];

/** Morning, evening, dusk; in each as the ground is walked, whatever must come first first. */
export function inWalkingOrder(day: Day, drafts: readonly Draft[]): readonly Draft[] {
  return PARTS.flatMap((part) => ordered(day, withGround(drafts.filter((one) => one.part === part))));
}

/** Who leaves ground comes before who enters it. */
function withGround(drafts: readonly Draft[]): readonly Draft[] {
  const leaves = (draft: Draft, place: Place | null): boolean =>
    place !== null && !place.yard && draft.from?.name === place.name && draft.to?.name !== place.name && draft.to !== null;
  return drafts.map((draft) => {
    const enters = draft.from?.name !== draft.to?.name ? draft.to : null;
    const before = drafts.filter((other) => other !== draft && leaves(other, enters)).map(({ key }) => key);
    return { ...draft, after: [...draft.after, ...before] };
  });
}

/** Next the first along the walk of those that wait for nothing; two that wait for each other go as they lie. */
function ordered(day: Day, drafts: readonly Draft[]): readonly Draft[] {
  const left = [...drafts].sort((a, b) => along(day, a) - along(day, b));
  const done: Draft[] = [];
  const has = (key: string): boolean => done.some((one) => one.key === key) || !drafts.some((one) => one.key === key);
  while (left.length > 0) {
    const next = left.find((one) => one.rightAfter !== null && one.rightAfter === done.at(-1)?.key) ?? left.find((one) => one.after.every(has)) ?? left[0]!;
    left.splice(left.indexOf(next), 1);
    done.push(next);
  }
  return done;
}

/** Place along the walk of the farm's cells: yards first, work without a place last. */
function along({ scenario }: Day, { from, to }: Draft): number {
  const place = from ?? to;
  if (place === null) return scenario.cells.length;
  return scenario.cells.findIndex(({ name }) => name === place.name);
}
