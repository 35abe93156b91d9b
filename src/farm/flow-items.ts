import { isScalar, type Node, type Pair } from "yaml";
import type { Finding } from "./finding.js";
import { keyAndValue } from "./missing-colons.js";
import type { Entry, Place } from "./tree.js";

/** One item inside braces that has no colon, and what stands before it. */
export interface Leftover {
  readonly text: string;
  readonly at: Place;
  /** The entry before it, if any. */
  readonly before: Entry | undefined;
  /** Nothing but a comma stands between the two. */
  readonly touching: boolean;
}

/** The text of an item that braces split off at a comma and that has no colon; undefined for any other item. */
export function leftoverText(pair: Pair<Node, Node | null>): string | undefined {
  return pair.value === null && isScalar(pair.key) && pair.key.type === "PLAIN" ? String(pair.key.value ?? "").trim() : undefined;
}

const ENDS_IN_NUMBER = /(^|\s)-?\d+$/;

/**
 * Braces split "0,25 ha" at its comma. Joined again it is read as typed, and the reader of amounts says what is wrong
 * with it. Any other item without a colon is said here, and read where key and value can be told apart.
 *
 * @returns what takes the place of the entry before it, or stands after it
 */
export function leftoverEntry(leftover: Leftover, findings: Finding[]): { readonly instead?: Entry; readonly after?: Entry } {
  const { text, at, before, touching } = leftover;
  const say = (code: string, found: string, allowed: string, next: string): void => void findings.push({ ...at, code, found, allowed, next });
  const cut = before?.value.kind === "text" && before.value.plain && ENDS_IN_NUMBER.test(before.value.text) && /^\d/.test(text) ? before.value : null;
  if (before && cut && touching) return { instead: { ...before, value: { ...cut, text: `${cut.text},${text}` } } };
  if (before && cut) {
    const meant = `${cut.text}.${text}`;
    say("comma", `${text} stands without a key after ${before.key}: ${cut.text}`, "a point stands before the decimals, and in braces every value has its key", `write ${before.key}: ${meant}, or the key of ${text}`);
    return { instead: { ...before, value: { ...cut, text: meant } } };
  }
  const parts = keyAndValue(text);
  say("colon-missing", `there is no colon in ${text}`, "in braces stand keys with their values, a comma between them", parts ? `write ${parts.key}: ${parts.value}` : `write ${text}: and what it is, or take it out`);
  return parts ? { after: { key: parts.key, at, value: { kind: "text", text: parts.value, plain: true, ...at } } } : {};
}
