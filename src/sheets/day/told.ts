import type { Group } from "../../farm/scenario.js";
import type { Place } from "../../work/job.js";
import { fieldOf, type Day } from "./context.js";
import { step } from "./draft.js";
import type { Step } from "./model.js";

/** Ground that a flock needs inside its net, m2; null where no figure says so. */
export function layerNeedM2({ strip, head }: Group): number | null {
  return strip?.needM2PerHead === undefined ? null : strip.needM2PerHead * head;
}

/** ", by the lane": the way to other ground; empty inside a field, and where the farm file does not say. */
export function wayWords(day: Day, from: Place | null, to: Place): string {
  const [left, field] = [from === null ? null : fieldOf(day, from.name), fieldOf(day, to.name)];
  const way = field === null || left?.name === field.name ? undefined : day.scenario.handover.ways[field.name];
  return way === undefined ? "" : day.words.say("day.way", { way });
}

/** What to bring for a group, and where it lies; none where the farm file does not say. */
export function takeStep({ scenario, words }: Day, group: string): Step | null {
  const take = scenario.handover.take[group];
  return take === undefined ? null : step(null, words.pieces("day.take.bring", { take: take.charAt(0).toUpperCase() + take.slice(1) }));
}

/** Where spare fence kit lies; a line to write on where the farm file does not say. */
export function kitLiesStep({ scenario, words }: Day): Step {
  const lies = scenario.handover.kitLies;
  return step(null, lies === null ? words.pieces("day.take.lies") : words.pieces("day.take.kit-lies", { lies }));
}
