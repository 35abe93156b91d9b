/** Farms for the feed budget: small ones to reckon by hand, and chance ones. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import type { Cell, Group, Scenario } from "../../src/farm/scenario.js";
import { readFarm } from "../../src/files/read.js";
import { loadTables } from "../../src/files/tables.js";
import { addDays } from "../../src/quantity/calendar.js";
import { SCENARIOS } from "../farm/read-text.js";
import { cell, group, tinyFarm, type TinyFarm } from "../fixtures/tiny-farm.js";
import { chanceOf } from "../oracle/chance.js";

const off = { use: "off" } as const;

/** Grass and mouths alone: nothing is asked of cover, rest, closing or days ahead, and feet take nothing. */
export function plainFarm(farm: TinyFarm): Scenario {
  const rules = { "entry-cover": off, "rest-period": off, "closing-cover": off, "upper-cover": off, "grass-in-hand": off, ...farm.rules };
  return tinyFarm({ ...farm, rules, more: { troddenShare: 0, ceilingCover: 20_000, ...farm.more } });
}

/** All farms of the house by file name. */
export const HOUSE_FARMS = readdirSync(SCENARIOS).filter((name) => name.endsWith(".yaml")).sort();

export function houseFarm(name: string): Scenario {
  const read = readFarm(join(SCENARIOS, name), [], loadTables());
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value.scenario;
}

/** A farm by chance: two or three grounds, some closed or rented for a while, one or two herds, perhaps hens; five to nine weeks. */
export function chanceFarm(seed: number): Scenario {
  const { whole, between, luck, pick } = chanceOf(seed);
  const days = whole(32, 62);
  const firstDay = pick(["2027-04-05", "2027-05-20", "2027-07-15"]);
  const span = () => {
    const from = whole(0, days - 5);
    return { firstDay: addDays(firstDay, from), lastDay: addDays(firstDay, Math.min(days - 1, from + whole(4, 24))) };
  };
  const growth = Array.from({ length: 12 }, () => pick([0, 5, 30, 60, 90]));
  const cells = ["A", "B", "C"].slice(0, whole(2, 3)).map((name): Cell => cell(name, {
    areaHa: between(0.3, 1.3), coverKgPerHa: between(1400, 3800), growthByMonth: growth, mow: luck(0.5),
    closed: luck(0.5) ? [] : [{ reason: pick(["hay", "wet"]), ...span() }], ...(luck(0.7) ? {} : { ours: span() }),
  }));
  const herd = group("Cows", { head: whole(1, 6), here: luck(0.5) ? [] : [span()], out: luck(0.5) ? { firstDay: "2020-01-01", lastDay: "2040-12-31" } : { firstDay: addDays(firstDay, 9), lastDay: addDays(firstDay, days - 6) } });
  const flock = group("Ewes", { kind: "sheep", animalClass: "ewe", head: whole(5, 25), weightKg: 70, mayEnter: [cells[0]!.name] });
  const hens = group("Hens", { kind: "layers", animalClass: "", head: 60, weightKg: 1.9, intake: { kgDmPerHeadDay: 0.025 }, strip: { areaHa: 0.01, days: 3, movedBy: "hand", stepMinutes: 30, nets: 1, pen: "House" } });
  const groups: Group[] = [herd, ...(luck(0.5) ? [flock] : []), ...(luck(0.5) ? [hens] : [])];
  const hay = { inStoreKg: whole(0, 2000), winterNeedKg: whole(0, 3000), dryMatter: 0.88, feedOutLoss: 0.1, storeLoss: 0.05 };
  return tinyFarm({ days, firstDay, cells, groups, more: { hay } });
}
