import { say, take, type Desk } from "./desk.js";
import { KIND_LETTERS } from "./own-defaults.js";
import type { Kind } from "./scenario.js";
import { child, entriesOf, textOf, type MapNode } from "./tree.js";

/** A letter for each group: the owner's, or the kind's; a second group of a kind gets a small letter more. */
export function lettersOf(desk: Desk, root: MapNode, kinds: Readonly<Record<string, Kind>>): Readonly<Record<string, string>> {
  const letters = writtenLetters(desk, root);
  for (const { key: name } of entriesOf(child(root, "groups"))) {
    const kind = kinds[name];
    if (letters.has(name) || kind === undefined) continue;
    const letter = freeLetter(name, kind, [...letters.values()]);
    letters.set(name, letter);
    take(desk, "letter", name, letter, "judgement", "judgement");
  }
  return Object.fromEntries(letters);
}

function writtenLetters(desk: Desk, root: MapNode): Map<string, string> {
  const letters = new Map<string, string>();
  for (const { key: name, value } of entriesOf(child(root, "groups"))) {
    const node = child(value, "letter");
    const letter = textOf(node);
    if (node === undefined || letter === undefined) continue;
    const twin = [...letters].find(([, other]) => other === letter)?.[0];
    if (!/^[A-Z][a-z]?$/.test(letter)) {
      say(desk, node, { code: "letter-form", found: `${name}: ${letter} is no letter of the grid`, allowed: "a capital, or a capital and a small letter", next: `write ${letter.slice(0, 1).toUpperCase().replace(/[^A-Z]/, "A")}` });
    } else if (twin) {
      say(desk, node, { code: "letter-twice", found: `${name} and ${twin} both have the letter ${letter}`, allowed: "each group has its own", next: `give one of them a small letter more, such as ${letter.slice(0, 1)}${name.slice(1, 2).toLowerCase() || "b"}` });
    }
    letters.set(name, letter);
  }
  return letters;
}

function freeLetter(name: string, kind: Kind, used: readonly string[]): string {
  const usual = KIND_LETTERS[kind];
  const small = [...name.toLowerCase().replace(/[^a-z]/g, ""), ..."abcdefghijklmnopqrstuvwxyz"];
  const rest = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].flatMap((c) => [..."abcdefghijklmnopqrstuvwxyz"].map((s) => c + s));
  return [usual, ...small.map((c) => usual.slice(0, 1) + c), ...rest].find((letter) => !used.includes(letter))!;
}
