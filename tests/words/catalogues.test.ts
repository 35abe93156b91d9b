import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { loadCatalogue, openCatalogue } from "../../src/files/words.js";
import { directionOf } from "../../src/sheets/printed-page.js";

const folder = mkdtempSync(join(tmpdir(), "words-"));
afterAll(() => rmSync(folder, { recursive: true }));

const english = loadCatalogue();

/** Writes a second language beside the English one, and reads it. */
function opened(text: string) {
  writeFileSync(join(folder, "en.json"), JSON.stringify(english));
  writeFileSync(join(folder, "de.json"), text);
  return openCatalogue("de", folder);
}

function said(texts: Readonly<Record<string, string>>, locale = "de"): readonly string[] {
  const read = opened(JSON.stringify({ locale, texts }));
  return read.ok ? [] : read.findings.map(({ code, found }) => `${code}: ${found}`);
}

describe("a second language", () => {
  it("is taken where it says all that the English one says, in its own order", () => {
    expect(opened(JSON.stringify({ ...english, locale: "de" }))).toMatchObject({ ok: true, value: { locale: "de" } });
    expect(said({ ...english.texts, span: "{to} nach {from}", "day.fence.off": "<b>AUS</b>: Zaun" })).toEqual([]);
    // a language without plurals names the figure alone
    expect(said({ ...english.texts, days: "{days} Tage" })).toEqual([]);
  });

  it("is refused with all keys that are missing or that nothing says", () => {
    const { "week.note": _note, span: _span, ...less } = english.texts;
    expect(said({ ...less, "week.notes": "Notes" })).toEqual(["texts-missing: texts are missing: span, week.note", "texts-unknown: nothing says these texts: week.notes"]);
  });

  it("is refused with all texts whose arguments or marks differ, or that cannot be read", () => {
    expect(said({ ...english.texts, span: "{von} bis {to}", days: "Tage", "day.fence.off": "AUS", "week.counted": "{n", "week.of": "von {count, plural, one {#}}" })).toEqual([
      "texts-unreadable: these texts cannot be read: week.counted, week.of",
      "texts-arguments: these texts have other arguments or marks than the English ones: day.fence.off, days, span",
    ]);
  });

  it("is refused where it is no catalogue, and where there is none", () => {
    expect(opened("{").ok).toBe(false);
    expect(said(english.texts, "not a tag")).toEqual(["catalogue-form: locale: not a language tag (BCP 47)"]);
    expect(openCatalogue("cy", folder)).toMatchObject({ ok: false, findings: [{ code: "no-language", allowed: "languages that there are: de and en" }] });
    expect(openCatalogue("../package", folder)).toMatchObject({ ok: false, findings: [{ code: "no-language" }] });
  });

  // Unicode CLDR, likely subtags and script metadata: Arabic and Hebrew run from right to left
  it("is written the way its script runs", () => {
    expect(["en-GB", "de", "ar", "he", "ja"].map(directionOf)).toEqual(["ltr", "ltr", "rtl", "rtl", "ltr"]);
  });
});
