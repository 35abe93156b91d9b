import { nearNames } from "./near-names.js";

const ANY_CHICKENS = ["layers", "broilers"];

/** What people call the animals, and the kinds that it may mean here. */
const EVERYDAY: Readonly<Record<string, readonly string[]>> = {
  hen: ["layers"], hens: ["layers"], "laying hens": ["layers"], layer: ["layers"], pullets: ["layers"], chicken: ANY_CHICKENS, chickens: ANY_CHICKENS, chooks: ANY_CHICKENS,
  poultry: ANY_CHICKENS, birds: ANY_CHICKENS, "meat birds": ["broilers"], "meat chickens": ["broilers"], "table birds": ["broilers"], chicks: ["broilers"],
  cow: ["cattle"], cows: ["cattle"], calves: ["cattle"], heifers: ["cattle"], steers: ["cattle"], bullocks: ["cattle"], bull: ["cattle"], beef: ["cattle"], dairy: ["cattle"],
  ewes: ["sheep"], ewe: ["sheep"], lambs: ["sheep"], rams: ["sheep"], does: ["goats"], kids: ["goats"], horse: ["horses"], pony: ["horses"], ponies: ["horses"],
  hogs: ["pigs"], swine: ["pigs"], sows: ["pigs"], sow: ["pigs"], piglets: ["pigs"], weaners: ["pigs"], goose: ["geese"], drakes: ["ducks"],
};

/** The words that a written one may stand for: those of the same meaning, else those spelt alike. */
export function meantWords(written: string, words: readonly string[]): readonly string[] {
  const key = written.toLowerCase();
  const same = Object.hasOwn(EVERYDAY, key) ? EVERYDAY[key]!.filter((word) => words.includes(word)) : [];
  return same.length > 0 ? same : nearNames(written, words);
}
