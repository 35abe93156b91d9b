import { IntlMessageFormat } from "intl-messageformat";
import type { Catalogue } from "./words.js";

/** Keys with which a catalogue differs from another, in the order of its own file. */
export interface Differences {
  readonly missing: readonly string[];
  /** Keys that nothing says. */
  readonly unknown: readonly string[];
  /** Messages that cannot be read. */
  readonly unreadable: readonly string[];
  /** Messages that take other arguments, or mark other stretches. */
  readonly otherArguments: readonly string[];
}

type Element = ReturnType<IntlMessageFormat["getAst"]>[number];

/** Holds a catalogue against one that is known to be whole: the same keys, and in each message the same arguments and marks. */
export function differences(own: Catalogue, whole: Catalogue): Differences {
  const keys = Object.keys(own.texts);
  const shared = keys.filter((key) => key in whole.texts);
  const unreadable = shared.filter((key) => argumentsOf(own, key) === null);
  return {
    missing: Object.keys(whole.texts).filter((key) => !(key in own.texts)),
    unknown: keys.filter((key) => !(key in whole.texts)),
    unreadable,
    otherArguments: shared.filter((key) => !unreadable.includes(key) && argumentsOf(own, key) !== argumentsOf(whole, key)),
  };
}

/** Names of a message's arguments and marks, each once, in order; null where it cannot be read. */
function argumentsOf({ locale, texts }: Catalogue, key: string): string | null {
  try {
    const names = namesIn(new IntlMessageFormat(texts[key]!, locale).getAst());
    return [...new Set(names)].sort().join(" ");
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

function namesIn(elements: readonly Element[]): readonly string[] {
  return elements.flatMap((element): readonly string[] => {
    if ("children" in element) return [`<${element.value}>`, ...namesIn(element.children)];
    if ("options" in element) return [element.value, ...Object.values(element.options).flatMap((option) => namesIn(option.value))];
    // a literal and the # of a plural name nothing
    return "value" in element && element.type !== 0 ? [element.value] : [];
  });
}
