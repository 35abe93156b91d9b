import type { Group, Scenario } from "../farm/scenario.js";
import type { Words } from "../words/words.js";
import { toldSpan } from "./amounts.js";
import type { Sheet } from "./made.js";
import { headWords } from "./marks.js";
import { shutGround, shutWords } from "./shut-ground.js";

/** One character for each group: its letter, or for a second group of a kind (Cy) its small letter. */
export type Glyphs = ReadonlyMap<string, string>;

/** Characters with a meaning of their own; x is closed ground. */
const TAKEN = ["x", ".", ":", "/", "&", "~"];

export function glyphsOf({ groups }: Scenario): Glyphs {
  const glyphs = new Map<string, string>();
  const used = new Set(TAKEN);
  for (const group of [...groups].sort((a, b) => a.letter.length - b.letter.length)) {
    const glyph = wishes(group).find((one) => !used.has(one))!;
    glyphs.set(group.name, glyph);
    used.add(glyph);
  }
  return glyphs;
}

/** The letter, its second letter, the name's letters, then any letter that is left. */
function wishes(group: Group): readonly string[] {
  const own = group.letter.length > 1 ? [...group.letter].slice(1) : [group.letter];
  const name = [...group.name.toLowerCase()].filter((one) => /[a-z]/.test(one));
  return [...own, ...name, ..."abcdefghijklmnopqrstuvwyzABCDEFGHIJKLMNOPQRSTUVWYZ"];
}

/** What each character means, and for which letter of the sheets it stands; and what ground is closed when. */
export function textKey(sheet: Sheet, glyphs: Glyphs, words: Words): string {
  const groups = sheet.scenario.groups.map((group) => {
    const glyph = glyphs.get(group.name)!;
    return `${glyph}${glyph === group.letter ? "" : ` ${words.say("season.text-stands-for", { letter: group.letter })}`} ${group.name} (${headWords(group, words)})`;
  });
  return `${words.say("season.text-key", { groups: groups.join(", ") })} ${shutList(sheet, words)}`.trim();
}

/** "Closed: hay F3, F4 12 May to 4 Jul; nesting K2 10 Apr to 20 Jun." */
function shutList(sheet: Sheet, words: Words): string {
  const cells = new Map<string, string[]>();
  for (const cell of sheet.scenario.cells) {
    for (const span of shutGround(sheet, cell, words)) {
      if (span.openShare > 0) continue;
      const key = `${shutWords(span, words)}|${toldSpan(span.firstDay, span.lastDay, words)}`;
      cells.set(key, [...(cells.get(key) ?? []), cell.name]);
    }
  }
  const parts = [...cells].map(([key, names]) => `${key.split("|")[0]} ${names.join(", ")} ${key.split("|")[1]}`);
  return parts.length === 0 ? "" : words.say("season.text-closed", { ground: parts.join("; ") });
}
