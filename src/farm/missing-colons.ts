import { farmShape, INNER_KEYS } from "./shape.js";

const KNOWN_KEYS: readonly string[] = [...Object.keys(farmShape.shape), ...Object.values(INNER_KEYS).flat()];

/** True for a word that is a key somewhere in a farm file. */
export function isKnownKey(word: string): boolean {
  return KNOWN_KEYS.includes(word);
}

/** "cover 2200 kg/ha" and "L1 0.5 ha" as key and value; null for a name that has nothing after it. */
export function keyAndValue(typed: string): { readonly key: string; readonly value: string } | null {
  const match = /^(\S+)\s+(\S.*)$/.exec(typed);
  return match && (isKnownKey(match[1]!) || /^\d/.test(match[2]!)) ? { key: match[1]!, value: match[2]! } : null;
}

/** A text with the colon put where a line lacks it. */
export interface ColonPut {
  readonly text: string;
  readonly name: string;
  /** The line as it should stand. */
  readonly next: string;
}

/**
 * YAML reads a line without a colon together with the next as one key. The line that begins at `offset` gets its
 * colon: after the name, or before the value where the next line is not set in below it. Null for a line that has one.
 */
export function colonPut(text: string, offset: number): ColonPut | null {
  const start = text.lastIndexOf("\n", offset - 1) + 1;
  const end = text.indexOf("\n", offset) < 0 ? text.length : text.indexOf("\n", offset);
  const typed = text.slice(offset, end).replace(/\s+#.*$/, "").trimEnd();
  if (text.slice(start, offset).trim() !== "" || typed === "" || /:(\s|$)|^[-?{}[\]"'#&*!|>%@`]/.test(typed)) return null;
  const below = /^(?:\s*(?:#.*)?\n)*([ ]*)\S/.exec(text.slice(end + 1));
  const parts = below && below[1]!.length > offset - start ? null : keyAndValue(typed);
  const next = parts ? `${parts.key}: ${parts.value}` : `${typed}:`;
  return { text: text.slice(0, offset) + next + text.slice(offset + typed.length), name: parts?.key ?? typed, next };
}
