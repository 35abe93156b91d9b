import type { Group } from "../../farm/scenario.js";
import type { Place } from "../../work/job.js";
import type { Day } from "./context.js";
import { step } from "./draft.js";
import type { Step } from "./model.js";

/** Ground that a flock needs inside its net, m2; null where no figure says so. */
export function layerNeedM2({ strip, head }: Group): number | null {
  return strip?.needM2PerHead === undefined ? null : strip.needM2PerHead * head;
}

/** ", by the lane": empty where the farm file does not say which way. */
export function wayWords(_day: Day, _from: Place | null, _to: Place): string {
  return "";
}

/** Where spare fence kit lies; a line to write on where the farm file does not say. */
export function kitLiesStep({ words }: Day): Step {
  return step(null, words.pieces("day.take.lies"));
}
