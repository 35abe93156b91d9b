import type { Caution } from "../plan/cautions.js";
import type { Words } from "../words/words.js";

/** A caution in a sentence or two. */
export function cautionText(words: Words, { topic }: Pick<Caution, "topic">): string {
  return words.say(`caution.${topic}`);
}
