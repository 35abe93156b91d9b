import { loadCatalogue } from "../files/words.js";
import { wordsOf, type Words } from "../words/words.js";

let read: Words | null = null;

/** The language of the terminal: English, whatever language the sheets are printed in. */
export function english(): Words {
  read ??= wordsOf(loadCatalogue());
  return read;
}
