import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import type { Finding, Result } from "../farm/finding.js";
import { listOr } from "../farm/near-names.js";
import { differences } from "../words/compare.js";
import type { Catalogue } from "../words/words.js";

const CATALOGUE = z.strictObject({ locale: z.string().refine(isLocale, "not a language tag (BCP 47)"), texts: z.record(z.string(), z.string().min(1)) });

/** The language that the others are held against. */
const WHOLE = "en";

/** Folder of the package's own catalogues, a file a language. */
const OWN = fileURLToPath(new URL("../../shared/words/", import.meta.url));

/** The English texts. Throws where the package's own file is no catalogue. */
export function loadCatalogue(folder = OWN): Catalogue {
  const parsed = CATALOGUE.safeParse(JSON.parse(readFileSync(pathOf(folder, WHOLE), "utf8")));
  if (!parsed.success) throw new Error(`${WHOLE}.json: ${z.prettifyError(parsed.error)}`);
  return parsed.data;
}

/** Languages that have a catalogue, by the names of their files. */
function languages(folder = OWN): readonly string[] {
  return readdirSync(folder).filter((name) => name.endsWith(".json")).map((name) => name.slice(0, -".json".length)).sort();
}

/** A language's texts: findings where there is no such language, or where its catalogue says less, more or other than the English one. */
export function openCatalogue(language: string, folder = OWN): Result<Catalogue> {
  const there = languages(folder);
  if (!there.includes(language)) {
    return refused([{ file: "command line", line: 1, column: 1, code: "no-language", found: `there are no sheets in ${language}`, allowed: `languages that there are: ${listOr(there, "and")}`, next: `write --language ${WHOLE}` }]);
  }
  const file = `${language}.json`;
  const read = asJson(readFileSync(pathOf(folder, language), "utf8"));
  if (read === null) return refused([{ file, line: 1, column: 1, code: "not-json", found: "it is not JSON", allowed: `a catalogue as in ${WHOLE}.json`, next: "look for a comma or a quotation mark that is missing" }]);
  const parsed = CATALOGUE.safeParse(read.value);
  if (!parsed.success) {
    return refused(parsed.error.issues.map(({ path, message }) => ({ ...at(file), code: "catalogue-form", found: `${path.join(".") || "the file"}: ${message}`, allowed: `a catalogue as in ${WHOLE}.json`, next: `write it as in ${WHOLE}.json` })));
  }
  const findings = findingsOf(file, parsed.data, loadCatalogue(folder));
  return findings.length > 0 ? refused(findings) : { ok: true, value: parsed.data, notes: [] };
}

function findingsOf(file: string, own: Catalogue, whole: Catalogue): readonly Finding[] {
  const { missing, unknown, unreadable, otherArguments } = differences(own, whole);
  const told = (code: string, keys: readonly string[], what: string, allowed: string, next: string): readonly Finding[] =>
    (keys.length === 0 ? [] : [{ ...at(file), code, found: `${what}: ${keys.join(", ")}`, allowed, next }]);
  return [
    ...told("texts-missing", missing, "texts are missing", `every text of ${WHOLE}.json`, "write them"),
    ...told("texts-unknown", unknown, "nothing says these texts", `the keys of ${WHOLE}.json`, "look for a key that is spelt otherwise, or take them out"),
    ...told("texts-unreadable", unreadable, "these texts cannot be read", "ICU messages: braces and marks closed, plural and select with other", `compare them with ${WHOLE}.json`),
    ...told("texts-arguments", otherArguments, "these texts have other arguments or marks than the English ones", `the same names between { } and < > as in ${WHOLE}.json, in any order`, "write the names as they are there"),
  ];
}

const at = (file: string): Pick<Finding, "file" | "line" | "column"> => ({ file, line: 1, column: 1 });

function refused(findings: readonly Finding[]): Result<never> {
  return { ok: false, findings };
}

function pathOf(folder: string, language: string): string {
  return `${folder}/${language}.json`;
}

function asJson(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return null;
  }
}

function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
