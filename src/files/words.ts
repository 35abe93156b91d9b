import { readFileSync } from "node:fs";
import { z } from "zod";
import type { Catalogue } from "../words/words.js";

const CATALOGUE = z.strictObject({ locale: z.string().min(2), texts: z.record(z.string(), z.string().min(1)) });

/** Reads a language's texts from the package's own `shared/words/` folder: "en". Throws where the file is not a catalogue. */
export function loadCatalogue(language = "en"): Catalogue {
  const text = readFileSync(new URL(`../../shared/words/${language}.json`, import.meta.url), "utf8");
  const parsed = CATALOGUE.safeParse(JSON.parse(text));
  if (!parsed.success) throw new Error(`shared/words/${language}.json: ${z.prettifyError(parsed.error)}`);
  return parsed.data;
}
