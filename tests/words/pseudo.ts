import type { MessageFormatElement } from "@formatjs/icu-messageformat-parser";
import { isLiteralElement, isPluralElement, isSelectElement, isTagElement, parse } from "@formatjs/icu-messageformat-parser";
import { printAST } from "@formatjs/icu-messageformat-parser/printer.js";
import type { Catalogue } from "../../src/words/words.js";

const ACCENTED: Readonly<Record<string, string>> = {
  a: "ä", e: "ê", i: "î", o: "ô", u: "ü", y: "ÿ", c: "ç", n: "ñ", A: "Ä", E: "Ê", I: "Î", O: "Ô", U: "Ü", Y: "Ÿ", C: "Ç", N: "Ñ",
};

/** By how much German and French run longer than English, common practice of typesetters. */
const LONGER = 0.3;

/** A language that nobody speaks: every word of every message accented and a third longer, arguments and marks kept; days and figures German. */
export function pseudoLanguage({ texts }: Catalogue): Catalogue {
  return { locale: "de", texts: Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, printAST(parse(text).map(foreign))])) };
}

function foreign(element: MessageFormatElement): MessageFormatElement {
  if (isLiteralElement(element)) return { ...element, value: element.value.replaceAll(/[A-Za-z]+/g, foreignWord) };
  if (isTagElement(element)) return { ...element, children: element.children.map(foreign) };
  if (!isPluralElement(element) && !isSelectElement(element)) return element;
  const options = Object.fromEntries(Object.entries(element.options).map(([name, option]) => [name, { ...option, value: option.value.map(foreign) }]));
  return { ...element, options } as MessageFormatElement;
}

/** Units and short words keep their length. */
function foreignWord(word: string): string {
  const accented = [...word].map((letter) => ACCENTED[letter] ?? letter).join("");
  return word.length < 3 ? accented : accented + [...accented].at(-1)!.repeat(Math.round(word.length * LONGER));
}

/** Every word of three letters and more that a catalogue's messages say, in small letters. */
export function wordsSaid({ texts }: Catalogue): ReadonlySet<string> {
  return new Set(Object.values(texts).flatMap((text) => parse(text).flatMap(literals)).flatMap((text) => text.toLowerCase().match(/[a-z]{3,}/g) ?? []));
}

function literals(element: MessageFormatElement): readonly string[] {
  if (isLiteralElement(element)) return [element.value];
  if (isTagElement(element)) return element.children.flatMap(literals);
  return isPluralElement(element) || isSelectElement(element) ? Object.values(element.options).flatMap((option) => option.value.flatMap(literals)) : [];
}
