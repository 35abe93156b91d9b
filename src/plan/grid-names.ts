import type { Finding } from "../farm/finding.js";
import { listOr, nearNames } from "../farm/near-names.js";
import type { Group, Scenario } from "../farm/scenario.js";
import type { Box } from "./grid-table.js";
import { guardBox, takenForOther } from "./guarded-box.js";
import type { Cut } from "./plan.js";

/** Where a group stands one night; null is not on the farm. */
export type Night = { readonly cell: string | null; readonly yard: string | null } | null;

/** Makes a finding about a box. */
export function boxFinding(file: string, box: Box, code: string, found: string, allowed: string, next: string): Finding {
  return { file, line: box.line, column: box.column, code, found: `box ${box.name}: ${found}`, allowed, next };
}

/** A name that the farm does not know. */
export function unknownName(file: string, box: Box, typed: string, what: string, names: readonly string[]): Finding {
  const near = nearNames(typed, names);
  const next = keptAsTyped(typed, names) ?? (near.length ? `${listOr(near)}?` : `a ${what} from the farm file`);
  return boxFinding(file, box, "name-unknown", `"${typed}" is no ${what} of this farm`, `${what}: ${names.join(", ")}`, next);
}

/** Names told at most of those that a spreadsheet may have taken for something else. */
const MOST_TOLD = 3;

/** What to do where a spreadsheet may have made a number, a day or a formula's result of a name; null where there is no such name. */
function keptAsTyped(typed: string, names: readonly string[]): string | null {
  const taken = names.filter(takenForOther);
  const figures = /^[\d\s.,:/%()\p{Sc}+E-]+$/u.test(typed) || takenForOther(typed) || /^#/.test(typed);
  if (!figures || taken.length === 0) return null;
  const [named, more] = [taken.slice(0, MOST_TOLD), taken.length > MOST_TOLD ? " or another" : ""];
  return `${listOr(named)}${more}? A spreadsheet takes such a name for a number, a day or a sum: write it with an apostrophe before it, ${guardBox(named[0]!)}`;
}

/** The group that a name or a letter means; letters tell C from c. Of a name and a letter that are one the name counts. */
export function groupNamed(scenario: Scenario, text: string): Group | undefined {
  return scenario.groups.find((group) => group.name === text) ?? groupLettered(scenario, text);
}

/** The group of a letter. */
export function groupLettered(scenario: Scenario, text: string): Group | undefined {
  return scenario.groups.find((group) => group.letter === text);
}

/** The place that a box names for a group, or undefined when there is none of that name. */
export function nightNamed(scenario: Scenario, group: Group, text: string): Night | undefined {
  if (scenario.cells.some((cell) => cell.name === text)) return { cell: text, yard: null };
  if (scenario.yards.some((yard) => yard.name === text)) return { cell: null, yard: text };
  const word = text.toLowerCase();
  if (word === "yard") return { cell: null, yard: group.yard };
  return word === "away" ? null : undefined;
}

/** Names a place may have in a box, for findings. */
export function placeNames(scenario: Scenario): readonly string[] {
  return [...scenario.cells.map((cell) => cell.name), ...scenario.yards.map((yard) => yard.name), "yard", "away"];
}

const CUT_WORDS: Readonly<Record<string, Cut["cut"]>> = { cut: "hay", hay: "hay", topping: "topping" };

/** The kind of cut that a word means. */
export function cutNamed(word: string): Cut["cut"] | undefined {
  return CUT_WORDS[word.toLowerCase()];
}

/**
 * Splits a box into names that may hold blanks: the longest run of words that `known` accepts, again and again;
 * a word that begins no name comes back as it is.
 */
export function namesIn(text: string, known: (name: string) => boolean): readonly string[] {
  const words = text.split(/[\s+;,]+/).filter((word) => word !== "");
  const names: string[] = [];
  for (let i = 0; i < words.length; ) {
    let length = words.length - i;
    while (length > 1 && !known(words.slice(i, i + length).join(" "))) length -= 1;
    names.push(words.slice(i, i + length).join(" "));
    i += length;
  }
  return names;
}
