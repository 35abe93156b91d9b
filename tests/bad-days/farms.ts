/** Small farms in an owner's own words, and the same on a bad day. */

export interface Farm {
  readonly season?: string;
  readonly top?: string;
  readonly fields?: string;
  readonly groups?: string;
  readonly rest?: string;
}

/** Four weeks, five cells, a few cows and hens; any part of it may be another. */
export function farmText({ season = "2027-05-01 to 2027-05-28", top = "", fields = FIELDS, groups = COWS_AND_HENS, rest = PEN_AND_OWNER }: Farm = {}): string {
  return `farm: Sike Head\nseason: ${season}\n${top}fields:\n${fields}groups:\n${groups}${rest}`;
}

export const FIELDS = `  Long Croft:
    cover: 2300 kg/ha
    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: 0.4 ha }
  Sike side:
    cover: 2100 kg/ha
    distance: 250 m
    cells: { S1: 0.5 ha, S2: 0.4 ha }
`;

export const COWS = "  Cows: { kind: cattle, class: cow with calf, head: 3, weight: 550 kg }\n";
export const HENS = "  Hens: { kind: layers, head: 40, weight: 1.8 kg, pen: Ark, follows: Cows }\n";
export const PIGS = "  Pigs: { kind: pigs, class: weaner, head: 6, weight: 30 kg, gain: 600 g/d }\n";
export const COWS_AND_HENS = COWS + HENS;
export const PEN_AND_OWNER = "pens:\n  Ark: { size: 3 m x 4 m, moved-by: hand }\npeople:\n  Owner: { minutes: 3 h }\n";
export const OWNER = "people:\n  Owner: { minutes: 3 h }\n";

/** A hundred cells of twenty-five fields, twelve groups, four hundred days. */
export function largestFarm(): string {
  const fields = Array.from({ length: 25 }, (_, f) => {
    const cells = Array.from({ length: 4 }, (_, c) => `F${f}-${c + 1}: 0.${4 + (c % 3)} ha`.replace("-", "x"));
    return `  Field ${letters(f)}:\n    cover: ${1900 + 100 * (f % 5)} kg/ha\n    distance: ${60 + 20 * f} m\n    wants: ${["fertility", "scratching", "opening"][f % 3]}\n    cells: { ${cells.join(", ")} }\n`;
  });
  const groups = [
    ...Array.from({ length: 4 }, (_, i) => `  Herd ${letters(i)}: { kind: cattle, class: cow with calf, head: 9, weight: 600 kg, letter: C${letters(i).toLowerCase()} }\n`),
    ...Array.from({ length: 2 }, (_, i) => `  Flock ${letters(i)}: { kind: sheep, class: dry ewe, head: 30, weight: 70 kg, letter: S${letters(i).toLowerCase()} }\n`),
    ...Array.from({ length: 3 }, (_, i) => `  Hens ${letters(i)}: { kind: layers, head: 60, weight: 1.9 kg, pen: Ark ${letters(i)}, follows: Herd ${letters(i)}, letter: L${letters(i).toLowerCase()} }\n`),
    ...Array.from({ length: 3 }, (_, i) => `  Pigs ${letters(i)}: { kind: pigs, class: weaner, head: 8, weight: 25 kg, gain: 650 g/d, letter: P${letters(i).toLowerCase()}, here: 2027-05-0${i + 1} to 2027-08-2${i} }\n`),
  ];
  const pens = Array.from({ length: 3 }, (_, i) => `  Ark ${letters(i)}: { size: 4 m x 6 m, moved-by: hand }\n`);
  return `farm: Great Moss\nseason: 2027-03-01 to 2028-04-03\nfields:\n${fields.join("")}groups:\n${groups.join("")}pens:\n${pens.join("")}people:\n  Owner: { minutes: 10 h, tows: yes }\n  Hands: { minutes: 10 h }\n`;
}

const letters = (i: number): string => "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[i];
