/** For each rule with a half in the programme, a tiny season whose cheapest way breaks the rule, or pays it, unless the half speaks. */
import type { RuleId } from "../../src/rules/rule.js";
import { cell, type TinyFarm } from "../fixtures/tiny-farm.js";
import { bare, cows, hens, pigs } from "../rules/animals.js";
import { day } from "../rules/grid.js";
import type { Hold, Scenario } from "../../src/farm/scenario.js";

export type Half = Exclude<RuleId, "every-day-placed" | "looked-at" | "one-group-per-cell" | "standstill">;

export interface Tempting {
  /** What the half keeps the programme from: a broken rule, or a charge that it would not see. */
  readonly what: "breaks" | "charges";
  readonly farm: TinyFarm;
}

/** A yard dear enough that every group is better out. */
const dear: Partial<Scenario> = { yards: [{ name: "Yard", costPerDay: 60, room: null, open: [{ firstDay: day(1), lastDay: day(30) }] }] };
const ground = (kgPerHa: number, more: Parameters<typeof cell>[1] = {}): TinyFarm["cells"] => [bare("A", kgPerHa, { areaHa: 1, ...more })];
const breaks = (farm: Partial<TinyFarm>): Tempting => ({ what: "breaks", farm: { days: 3, cells: ground(2600), groups: [cows()], ...farm, more: { ...dear, ...farm.more } } });
const charges = (farm: Partial<TinyFarm>): Tempting => ({ ...breaks(farm), what: "charges" });
const held = (group: string, place: Partial<Hold>, last: number): Hold => ({ name: `${group} held`, days: { firstDay: day(1), lastDay: day(last) }, group, cell: null, yard: null, cut: null, ...place });
const off = { use: "off" } as const;

export const TEMPTING: Readonly<Record<Half, Tempting>> = {
  "entry-cover": breaks({ cells: ground(1650), rules: { "residual-cover": off } }),
  "upper-cover": breaks({ cells: ground(3200), groups: [hens()] }),
  "residual-cover": breaks({ cells: ground(1700, { areaHa: 0.3 }) }),
  "demand-met": breaks({ cells: ground(1700, { areaHa: 0.05 }), rules: { "residual-cover": off } }),
  "stay-limit": breaks({ days: 9, cells: [cell("A", { areaHa: 3 })] }),
  "rest-period": breaks({ cells: ground(2600, { past: [{ by: "cattle", lastDay: day(-3), share: 1 }] }) }),
  "clean-ground": breaks({ groups: [hens({ name: "Turkeys", kind: "turkeys" })], cells: ground(2600, { past: [{ by: "layers", lastDay: day(-10), share: 0.1 }] }) }),
  "poultry-rest": breaks({ groups: [hens()], cells: ground(2600, { past: [{ by: "layers", lastDay: day(-10), share: 1 }] }) }),
  "pig-rest": breaks({ groups: [pigs({ animalClass: "sow" })], cells: ground(2600, { past: [{ by: "pigs", lastDay: day(-10), share: 1 }] }) }),
  "pig-pressure": breaks({ groups: [pigs({}, { areaHa: 0.005 })], rules: { "pig-pressure": { figures: { most: 1000 } } } }),
  // pigs, or hens, are held on four fifths of the cell for two days; the cows would like the last fifth for the next two
  "after-pigs": breaks({ days: 4, groups: [cows(), pigs({}, { areaHa: 0.8 })], more: { holds: [held("Pigs", { cell: "A" }, 2)] } }),
  "worked-ground": breaks({ days: 4, groups: [cows(), hens({}, { areaHa: 0.8 })], more: { holds: [held("Hens", { cell: "A" }, 2)] } }),
  // the cows are held in the yard, so the hens follow nobody
  "follow-window": charges({ groups: [cows(), hens({ follows: "Cows" })], more: { holds: [held("Cows", { yard: "Yard" }, 3)] } }),
  "ground-wants": charges({ groups: [hens()], cells: ground(2600, { wants: ["scratching"] }) }),
  // on the walk of day 8 nothing stands above the residual
  "grass-in-hand": charges({ days: 8, cells: ground(1500) }),
  "closing-cover": charges({ cells: ground(1900) }),
  "density-ceiling": breaks({ rules: { "density-ceiling": { figures: { most: 2999 } } } }),
  "rate-ceiling": breaks({ rules: { "rate-ceiling": { figures: { most: 2999 } } } }),
  "nitrogen-ceiling": charges({ cells: ground(2600, { pastNitrogen: [{ day: day(-30), kgPerHa: 249 }] }) }),
  "pen-steps": breaks({ groups: [hens({}, { areaHa: 1.2 })], rules: { "poultry-rest": off } }),
  // 35 minutes of chores, 59 to go out
  people: breaks({ more: { people: [{ name: "Owner", tows: true, minutesByWeekday: Array<number>(7).fill(93), minutesByDay: {}, away: [] }] } }),
  "fence-kit": breaks({ more: { kit: { nets: null, reels: null, reelM: 200, energisers: 0 } } }),
  water: breaks({ cells: ground(2600, { water: "none" }) }),
  shade: charges({ groups: [pigs()], rules: { shade: { figures: { "first-month": 5 } } } }),
  "closed-dates": breaks({ cells: ground(2600, { closed: [{ reason: "nesting", firstDay: day(2), lastDay: day(2) }] }) }),
  // closed dates keep ordered birds in as well
  "housing-order": breaks({ groups: [hens()], rules: { "closed-dates": off }, more: { housingOrders: [{ name: "Order", known: day(1), kinds: ["layers"], firstDay: day(2), lastDay: day(3) }] } }),
  "yard-room": breaks({ more: { yards: [{ name: "Yard", costPerDay: 0, room: 4, open: [{ firstDay: day(1), lastDay: day(30) }] }], prices: { currency: "GBP", hayPerKg: 0, labourPerHour: 14, mowingPerHa: 180, haul: 0 } } }),
  "hay-stock": charges({ more: { hay: { inStoreKg: 0, winterNeedKg: 500, dryMatter: 0.88, feedOutLoss: 0.1, storeLoss: 0.05 } } }),
  holds: breaks({ more: { holds: [held("Cows", { yard: "Yard" }, 3)] } }),
};
