import { isGrazer, type Group } from "../../farm/scenario.js";
import type { Place } from "../../work/job.js";
import { cellOf, groupOf, type Day } from "./context.js";
import { step } from "./draft.js";
import type { Step } from "./model.js";

/** Whether a live fence holds a group where it stands: grazers and pigs in cells, birds in nets. */
export function isFenced(group: Group, place: Place | null): boolean {
  return place !== null && !place.yard && (isGrazer(group.kind) || group.kind === "pigs" || (group.strip?.nets ?? 0) > 0);
}

/** The fence read and written down. */
export function readingStep(day: Day, name: string): Step {
  const { usual, wool } = day.scenario.handover.leastKv;
  const kind = groupOf(day, name).kind;
  return step("reading", day.words.pieces("day.fence.reading", { kv: day.words.figure(kind === "sheep" || kind === "goats" ? wool : usual, 1) }));
}

export function onSteps(day: Day, name: string): readonly Step[] {
  return [step("on", day.words.pieces("day.fence.on")), readingStep(day, name)];
}

/** A fence that should be live: is it still? */
export function stillOnSteps(day: Day, group: string, place: Place): readonly Step[] {
  return isFenced(groupOf(day, group), place) ? [step("on", day.words.pieces("day.fence.still-on")), readingStep(day, group)] : [];
}

export function offStep({ words }: Day): Step {
  return step("off", words.pieces("day.fence.off"));
}

/** Reels that a cell's movable fence takes. */
export function reelsOf({ scenario }: Day, cell: string): { readonly reels: number; readonly fenceM: number; readonly reelM: number } {
  const fenceM = cellOf({ scenario }, cell)?.fenceM ?? 0;
  const { reelM } = scenario.kit;
  return { reels: Math.max(1, Math.ceil(fenceM / reelM - 1e-9)), fenceM: Math.round(fenceM), reelM };
}

/** Square metres inside a group's nets, each laid as a square: (length / 4) squared. */
export function netAreaM2({ strip }: Group): number {
  return strip === null || strip.nets === 0 ? 0 : strip.areaHa * 10_000;
}
