import { yardHayKg } from "../../check/hay-fed.js";
import { isGrazer } from "../../farm/scenario.js";
import type { Place } from "../../work/job.js";
import { amountWords, doseWords } from "./amounts.js";
import { cellOf, groupOf, type Day } from "./context.js";
import { step } from "./draft.js";
import type { Bits, Step } from "./model.js";

/** Litres a day that a group drinks with those that run with it, from head and what one drinks. */
export function litresOf({ replay, scenario, t }: Day, group: string): number {
  const g = scenario.groups.findIndex((one) => one.name === group);
  return Math.round(replay.groups[g]?.party.waterL[Math.max(0, t)] ?? 0);
}

/** What there is to look at, or to bring; what was brought the evening before is looked at. */
export function waterStep(day: Day, group: string, place: Place): Step {
  const { words } = day;
  const litres = amountWords(day, "volume", litresOf(day, group));
  if (groupOf(day, group).strip?.pen) return step(null, words.pieces("day.water.drinkers", { litres }));
  const water = cellOf(day, place.name)?.water ?? "trough";
  if ((water === "carted" || water === "none") && wasSet(day, group)) return step(null, words.pieces("day.water.brought", { litres }));
  const told: Readonly<Record<typeof water, () => Bits>> = {
    trough: () => words.pieces("day.water.trough", { litres }),
    stream: () => words.pieces("day.water.stream", { litres }),
    pond: () => words.pieces("day.water.pond", { litres }),
    carted: () => words.pieces("day.water.carted", { litres }),
    none: () => words.pieces("day.water.none", { litres }),
  };
  return step(null, told[water]());
}

function wasSet({ before, day }: Day, group: string): boolean {
  return before?.jobs.some((job) => job.kind === "set" && job.group === group && job.for === day) === true;
}

/** Feed by head and what each gets, hay in a yard by the day; a line to write on where the farm file does not say what birds and pigs get. */
export function feedStep(day: Day, group: string, place: Place): Step | null {
  const { words, replay, scenario } = day;
  const g = scenario.groups.findIndex((one) => one.name === group);
  if (isGrazer(groupOf(day, group).kind)) {
    const kg = place.yard && day.t >= 0 ? Math.round(yardHayKg(scenario, replay.groups[g]!, day.t)) : 0;
    return kg > 0 ? step(null, words.pieces("day.feed.hay", { kg: amountWords(day, "weight", kg) })) : null;
  }
  const feed = scenario.handover.feed[group];
  if (!feed) return step(null, words.pieces("day.feed.unknown"));
  const told = { what: feed.what, kg: amountWords(day, "weight", feed.kgPerHeadDay * groupOf(day, group).head, 1), each: doseWords(day, feed.kgPerHeadDay) };
  return step(null, feed.lies === null ? words.pieces("day.feed.lies-unknown", told) : words.pieces("day.feed.known", { ...told, lies: feed.lies }));
}
