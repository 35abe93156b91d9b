import type { Group } from "../../farm/scenario.js";
import { spanHolds } from "../../quantity/calendar.js";
import { youngOn } from "../../farm/young.js";
import type { Day } from "./context.js";
import { groupOf } from "./context.js";
import { step } from "./draft.js";
import type { Step } from "./model.js";

/** Classes that have a word of their own. */
const CLASS_WORDS: readonly (readonly [Group["kind"], RegExp, string])[] = [
  ["cattle", /bull/, "bull"], ["cattle", /cow/, "cow"], ["sheep", /ewe/, "ewe"], ["pigs", /sow/, "sow"],
];

/** "60 hens", "5 cows". */
function grown({ words }: Day, group: Group): string {
  const own = CLASS_WORDS.find(([kind, like]) => kind === group.kind && like.test(group.animalClass))?.[2] ?? group.kind;
  return words.say(`day.animal.${own}`, { n: group.head });
}

export const headsOf = grown;

/** A box for each sort of animals of a group and those that run with it. */
export function countSteps(day: Day, names: readonly string[]): readonly Step[] {
  const { words } = day;
  return names.flatMap((name) => {
    const group = groupOf(day, name);
    const young = youngOn(group, day.day);
    const box = (animals: string): Step => step(null, words.pieces("day.count", { animals }));
    return [box(grown(day, group)), ...(young && young.head > 0 ? [box(words.say(`day.young.${group.kind}`, { n: young.head }))] : [])];
  });
}

/** Cow with calf, ewe with lambs. */
export function hasYoung(day: Day, names: readonly string[]): boolean {
  return names.some((name) => (youngOn(groupOf(day, name), day.day)?.head ?? 0) > 0);
}

const NOT_ALONE = /bull|boar|sow/;

/** Which sort of those that nobody goes in with alone a group is: told by name. */
export function notAloneSort({ animalClass }: Group): "bull" | "boar" | "sow" | "births" {
  return (["bull", "boar", "sow"] as const).find((sort) => animalClass.includes(sort)) ?? "births";
}

/** Animals that nobody goes in with alone: bull, boar, sow, and those that calve, lamb or farrow these days. */
export function isNotAlone(day: Day, names: readonly string[]): boolean {
  const births = (name: string): boolean => (day.scenario.handover.births[name] ?? []).some((span) => spanHolds(span, day.day));
  return names.some((name) => NOT_ALONE.test(groupOf(day, name).animalClass) || births(name));
}
