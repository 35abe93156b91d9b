import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { loadCatalogue } from "../../src/files/words.js";
import { englishWords } from "../fixtures/planned-farm.js";
import { wordsOf } from "../../src/words/words.js";

const SRC = resolve(import.meta.dirname, "../../src");
const english = loadCatalogue();
const words = englishWords();

function source(): string {
  const files = readdirSync(SRC, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile() && entry.name.endsWith(".ts"));
  return files.map((entry) => readFileSync(join(entry.parentPath, entry.name), "utf8")).join("\n");
}

describe("the catalogue", () => {
  const code = source();
  const said = [...code.matchAll(/\bwords\.(?:say|pieces)\(\s*"([^"]+)"/g)].map((match) => match[1]!);
  // A key put together, as in say(`caution.${topic}`), stands for all keys that begin like it.
  const beginnings = [...code.matchAll(/\bwords\.(?:say|pieces)\(\s*`([a-z][a-z.-]*\.)\$\{/g)].map((match) => match[1]!);

  it("has every text that is said", () => {
    expect(said.filter((key) => !(key in english.texts))).toEqual([]);
  });

  it("has no text that nothing says", () => {
    const unsaid = Object.keys(english.texts).filter((key) => !code.includes(`"${key}"`) && !beginnings.some((beginning) => key.startsWith(beginning)));
    expect(unsaid).toEqual([]);
  });

  it("names no argument as marks are named, which would take its place", () => {
    expect(Object.values(english.texts).filter((text) => /\{\s*(?:b|box|tick|line)\s*[,}]/.test(text))).toEqual([]);
  });

  it("has texts that can be read, each with its marks closed", () => {
    for (const text of Object.values(english.texts)) {
      const once = wordsOf({ locale: english.locale, texts: { text } });
      const values = Object.fromEntries([...text.matchAll(/\{\s*(\w+)/g)].map((match) => [match[1]!, 2]));
      expect(once.pieces("text", values).length).toBeGreaterThan(0);
    }
  });
});

describe("texts", () => {
  const some = wordsOf({ locale: "en-GB", texts: { hens: "{n, plural, one {# hen} other {# hens}}", strong: "Energiser <b>OFF</b>, {who}", plain: "{who}" } });

  it("know one from many", () => {
    expect([some.say("hens", { n: 1 }), some.say("hens", { n: 1200 })]).toEqual(["1 hen", "1,200 hens"]);
  });

  it("keep apart what is strong, and take what is put in as it is", () => {
    expect(some.pieces("strong", { who: "<b>x</b>" })).toEqual([
      { text: "Energiser ", strong: false }, { text: "OFF", strong: true }, { text: ", <b>x</b>", strong: false },
    ]);
    expect(some.say("plain", { who: "{x} <script>" })).toBe("{x} <script>");
  });

  it("throw on a key that is not there", () => {
    expect(() => some.say("none")).toThrow("no text none");
  });

  it("tell days and figures in the catalogue's locale, whatever the machine's zone", () => {
    const day = "2027-06-23";
    expect([words.longDay(day), words.weekdayDay(day), words.dayMonth(day), words.weekday(day), words.monthYear(day), words.fullDay(day)])
      .toEqual(["Wednesday 23 June", "Wed 23 Jun", "23 Jun", "Wed", "June 2027", "23 June 2027"]);
    expect([words.figure(1234.56), words.figure(12345.6, 1), words.list(["a", "b", "c"])]).toEqual(["1235", "12,345.6", "a, b and c"]);
    expect(wordsOf({ locale: "de", texts: {} }).longDay(day)).toBe("Mittwoch 23. Juni");
  });
});
