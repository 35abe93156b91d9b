import type { Caution } from "../plan/cautions.js";
import type { Words } from "../words/words.js";
import { toldSpan } from "./amounts.js";

/** A caution in a sentence or two. */
export function cautionText(words: Words, { topic }: Pick<Caution, "topic">): string {
  return words.say(`caution.${topic}`);
}

/** The same with its days, where it is of some only. */
export function datedCaution(words: Words, caution: Caution): string {
  const text = cautionText(words, caution);
  return caution.days ? words.say("pens.caution", { text, days: toldSpan(caution.days.firstDay, caution.days.lastDay, words) }) : text;
}
