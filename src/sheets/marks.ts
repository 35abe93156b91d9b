import type { Group, Kind } from "../farm/scenario.js";
import type { Words } from "../words/words.js";

/** Figures of which a bar's pattern is made. */
export type Pattern = "solid" | "upright-lines" | "level-lines" | "upright-bands" | "squares" | "dots" | "rings" | "half" | "waves" | "pluses";

/** How a kind is marked: letter first, pattern second, colour last. Printed sheets use black on white only. */
export interface Mark {
  readonly letter: string;
  readonly pattern: Pattern;
  /** Screen colours; line on fill 4.8 : 1 or more. */
  readonly fill: string;
  readonly line: string;
}

export const MARKS: Readonly<Record<Kind, Mark>> = {
  cattle: { letter: "C", pattern: "solid", fill: "#3B2F5B", line: "#3B2F5B" },
  sheep: { letter: "S", pattern: "upright-lines", fill: "#CFE0DE", line: "#2E6664" },
  goats: { letter: "G", pattern: "level-lines", fill: "#E6E3C0", line: "#5F6420" },
  horses: { letter: "H", pattern: "upright-bands", fill: "#EAD8C8", line: "#7A4524" },
  pigs: { letter: "P", pattern: "squares", fill: "#EBC3CF", line: "#8A2F50" },
  layers: { letter: "L", pattern: "dots", fill: "#F2CF7A", line: "#6B4A00" },
  broilers: { letter: "B", pattern: "rings", fill: "#FFF6DF", line: "#8A5A00" },
  turkeys: { letter: "T", pattern: "half", fill: "#DDBBAA", line: "#6E2F14" },
  ducks: { letter: "D", pattern: "waves", fill: "#C3DAEC", line: "#1F5680" },
  geese: { letter: "E", pattern: "pluses", fill: "#E9ECEE", line: "#4A545C" },
};

/** A group's mark: its kind's, with its own letter; a second group of a kind (Cy) has a notched corner. */
export interface GroupMark extends Mark {
  readonly second: boolean;
}

export function markOf(group: Group): GroupMark {
  return { ...MARKS[group.kind], letter: group.letter, second: group.letter.length > 1 };
}

/** The pattern of a kind's bar in words, for keys and screen readers: "upright lines". */
export function patternWords(pattern: Pattern, words: Words): string {
  return words.say(`pattern.${pattern}`);
}

/** Many animals of a kind: "hens". */
export function pluralWords(kind: Kind, words: Words): string {
  return words.say(`kind.${kind}`);
}

/** Classes that are words for animals, and so have a plural; others only describe ("growing"). */
const COUNTED: readonly string[] = [
  "weaner", "grower", "sow", "gilt", "boar", "bull", "cow", "heifer", "steer", "calf", "ewe", "ram", "lamb", "hogget", "doe", "buck", "kid", "mare", "pony", "foal",
];

/** Heads of a group in a few words: "5, with 5 calves", "8 weaners", "60, Layer pen". */
export function headWords({ head, young, kind, strip, animalClass }: Group, words: Words): string {
  if (young && young.head > 0) return words.say("heads.young", { head, young: words.say(`young.${kind}`, { n: young.head }) });
  if (strip?.pen) return words.say("heads.and", { head, what: strip.pen });
  if (COUNTED.includes(animalClass)) return words.say(`class.${animalClass}`, { n: head });
  return animalClass === "" ? words.figure(head) : words.say("heads.and", { head, what: animalClass });
}
