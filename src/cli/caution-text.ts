import type { Caution } from "../plan/cautions.js";
import { cautionText } from "../sheets/caution-words.js";
import { spanWords } from "../sheets/day-words.js";
import { english } from "./english.js";

/** A caution as the terminal tells it, with its days where it is of some only. */
export function datedCaution(caution: Caution): string {
  const text = cautionText(english(), caution);
  return caution.days ? `${text} (${spanWords(caution.days.firstDay, caution.days.lastDay)})` : text;
}
