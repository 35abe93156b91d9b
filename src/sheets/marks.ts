import type { Group, Kind } from "../farm/scenario.js";

/** Figures of which a bar's pattern is made. */
export type Pattern = "solid" | "upright-lines" | "level-lines" | "upright-bands" | "squares" | "dots" | "rings" | "half" | "waves" | "pluses";

/** How a kind is marked: letter first, pattern second, colour last. Printed sheets use black on white only. */
export interface Mark {
  readonly letter: string;
  readonly pattern: Pattern;
  /** The pattern in words, for keys and screen readers. */
  readonly words: string;
  /** Screen colours; line on fill 4.8 : 1 or more. */
  readonly fill: string;
  readonly line: string;
  /** Many animals, and what their young are called. */
  readonly plural: string;
  readonly young: string;
}

export const MARKS: Readonly<Record<Kind, Mark>> = {
  cattle: { letter: "C", pattern: "solid", words: "solid, white letter", fill: "#3B2F5B", line: "#3B2F5B", plural: "cattle", young: "calves" },
  sheep: { letter: "S", pattern: "upright-lines", words: "upright lines", fill: "#CFE0DE", line: "#2E6664", plural: "sheep", young: "lambs" },
  goats: { letter: "G", pattern: "level-lines", words: "level lines", fill: "#E6E3C0", line: "#5F6420", plural: "goats", young: "kids" },
  horses: { letter: "H", pattern: "upright-bands", words: "broad upright bands", fill: "#EAD8C8", line: "#7A4524", plural: "horses", young: "foals" },
  pigs: { letter: "P", pattern: "squares", words: "squares", fill: "#EBC3CF", line: "#8A2F50", plural: "pigs", young: "piglets" },
  layers: { letter: "L", pattern: "dots", words: "dots", fill: "#F2CF7A", line: "#6B4A00", plural: "hens", young: "chicks" },
  broilers: { letter: "B", pattern: "rings", words: "rings", fill: "#FFF6DF", line: "#8A5A00", plural: "broilers", young: "chicks" },
  turkeys: { letter: "T", pattern: "half", words: "upper half solid", fill: "#DDBBAA", line: "#6E2F14", plural: "turkeys", young: "poults" },
  ducks: { letter: "D", pattern: "waves", words: "waves", fill: "#C3DAEC", line: "#1F5680", plural: "ducks", young: "ducklings" },
  geese: { letter: "E", pattern: "pluses", words: "plus signs", fill: "#E9ECEE", line: "#4A545C", plural: "geese", young: "goslings" },
};

/** A group's mark: its kind's, with its own letter; a second group of a kind (Cy) has a notched corner. */
export interface GroupMark extends Mark {
  readonly second: boolean;
}

export function markOf(group: Group): GroupMark {
  return { ...MARKS[group.kind], letter: group.letter, second: group.letter.length > 1 };
}

/** Classes that are words for animals, and so have a plural; others only describe ("growing"). */
const CLASS_PLURALS: Readonly<Record<string, string>> = {
  weaner: "weaners", grower: "growers", sow: "sows", gilt: "gilts", boar: "boars", bull: "bulls", cow: "cows", heifer: "heifers", steer: "steers",
  calf: "calves", ewe: "ewes", ram: "rams", lamb: "lambs", hogget: "hoggets", doe: "does", buck: "bucks", kid: "kids", mare: "mares", pony: "ponies", foal: "foals",
};

/** Heads of a group in a few words: "5, with 5 calves", "8 weaners", "60, Layer pen". */
export function headWords(group: Group): string {
  if (group.young && group.young.head > 0) return `${group.head}, with ${group.young.head} ${MARKS[group.kind].young}`;
  if (group.strip?.pen) return `${group.head}, ${group.strip.pen}`;
  const plural = CLASS_PLURALS[group.animalClass];
  if (plural) return `${group.head} ${group.head === 1 ? group.animalClass : plural}`;
  return group.animalClass === "" ? String(group.head) : `${group.head}, ${group.animalClass}`;
}
