import { NO_HANDOVER } from "../farm/handover.js";
import { defaultFigures } from "../farm/figures.js";
import type { Cell, Group, Kind, Scenario, Strip, Want } from "../farm/scenario.js";
import { addDays } from "../quantity/calendar.js";
import { seededRandom, type Random } from "../programme/random.js";

/** Size of a study farm: cells, groups, days. */
export interface StudySize {
  readonly name: string;
  readonly cells: number;
  readonly groups: number;
  readonly days: number;
}

export const STUDY_SIZES: readonly StudySize[] = [
  { name: "S", cells: 8, groups: 2, days: 90 },
  { name: "M", cells: 16, groups: 4, days: 205 },
  { name: "L", cells: 32, groups: 6, days: 205 },
  { name: "XL", cells: 60, groups: 8, days: 365 },
];

/** Growth of an oceanic year on old pasture, kg DM/ha/day by month. */
const GROWTH = [4, 4, 14, 45, 75, 66, 60, 60, 55, 30, 12, 4].map((g) => g * 0.55);
const ALWAYS = { firstDay: "2020-01-01", lastDay: "2040-12-31" };

/** A made-up farm of a given size, the same for the same seed: cattle first, then layers behind them, pigs, broilers. */
export function studyFarm(size: StudySize, seed = 1): Scenario {
  const random = seededRandom(seed);
  const firstDay = "2027-04-10";
  const season = { firstDay, lastDay: addDays(firstDay, size.days - 1) };
  const cells = Array.from({ length: size.cells }, (_, i) => studyCell(i, random, firstDay));
  const fields = [...new Set(cells.map((cell) => cell.field))];
  const groups = Array.from({ length: size.groups }, (_, i) => studyGroup(i, size, cells, season));
  return {
    farm: `Study ${size.name}`, units: "metric", season,
    fields: fields.map((name) => ({ name, distanceM: 60 + random.below(300), cells: cells.filter((c) => c.field === name).map((c) => c.name) })),
    cells, groups,
    yards: [{ name: "Barn lot", costPerDay: 3, room: null, open: [ALWAYS] }, { name: "Hen barn", costPerDay: 6, room: null, open: [ALWAYS] }],
    people: [
      { name: "Owner", tows: true, minutesByWeekday: [160, 160, 160, 160, 160, 240, 240].map((m) => m + 25 * size.groups), minutesByDay: {}, away: [] },
      { name: "Helper", tows: false, minutesByWeekday: [0, 0, 90, 0, 0, 120, 0], minutesByDay: {}, away: [] },
    ],
    kit: { nets: 2 * size.groups, reels: 5 + 2 * size.groups, reelM: 200, energisers: 1 + size.groups },
    hay: { inStoreKg: 3000, winterNeedKg: 0, dryMatter: 0.88, feedOutLoss: 0.1, storeLoss: 0.05 },
    prices: { currency: "GBP", hayPerKg: 0.15, labourPerHour: 14, mowingPerHa: 180, haul: 0 },
    rules: { farm: defaultFigures(), fields: {}, groups: {} },
    holds: [], housingOrders: [], standstills: [], ceilingCover: 5000, troddenShare: 0.15,
    handover: NO_HANDOVER,
    weather: { dry: 0.8, wet: 1.4, month: 0.2, springDays: 10, lateMoves: 0.05, weekAway: 0.2 }, assumed: [],
    print: `sha256:study-${size.name}-${seed}`, form: null,
  };
}

function studyCell(i: number, random: Random, firstDay: string): Cell {
  const field = `Field ${1 + Math.floor(i / 4)}`;
  const wants: Want[] = [(["fertility", "scratching", "opening"] as const)[Math.floor(i / 4) % 3]];
  const closed = i % 7 === 3 ? [{ reason: "nesting", firstDay: "2027-04-01", lastDay: "2027-06-20" }] : i % 9 === 5 ? [{ reason: "hay", firstDay: "2027-05-12", lastDay: "2027-07-04" }] : [];
  return {
    name: `C${i + 1}`, field, areaHa: 0.2 + random.below(12) / 100, coverKgPerHa: 1900 + random.below(5) * 100, coverDate: firstDay,
    growthByMonth: GROWTH, water: i % 8 === 6 ? "carted" : "trough", waterWalkM: 0, shade: i % 3 === 0, wetGround: i % 8 === 7, mow: true,
    slopePercent: 0, fenceM: 110, boundary: null, notFor: [], wants, closed, past: [{ by: "cattle", lastDay: "2026-10-10", share: 1 }], pastNitrogen: [], ours: ALWAYS,
  };
}

const HEN_NET: Strip = { areaHa: 0.0156, days: 3, movedBy: "tow", stepMinutes: 40, nets: 1, pen: "Hen house" };
const PIG_STRIP: Strip = { areaHa: 0.016, days: 7, movedBy: "hand", stepMinutes: 0, nets: 0, pen: null };
const BROILER_PEN: Strip = { areaHa: 0.00288, days: 1, movedBy: "hand", stepMinutes: 20, nets: 0, pen: "Broiler pen" };

function studyGroup(i: number, size: StudySize, cells: readonly Cell[], season: Group["out"]): Group {
  const kind = (["cattle", "layers", "pigs", "broilers", "cattle", "sheep", "layers", "pigs"] as const)[i];
  const area = cells.reduce((sum, cell) => sum + cell.areaHa, 0);
  const grazing = size.groups >= 6 ? 3 : 1;
  const shared = {
    name: `${kind} ${i + 1}`, letter: String.fromCharCode(65 + i), kind, gainKgPerDay: 0, young: null, youngNitrogenKgPerHeadDay: 0, runsWith: null,
    out: ALWAYS, mayEnter: cells.map((c) => c.name), needsTow: false, peopleToMove: 1, follows: null, strip: null, here: [season], yard: "Barn lot",
  };
  return { ...shared, ...OWN[kind](i, area / grazing, season) };
}

type Own = (i: number, areaHa: number, season: Group["out"]) => Omit<Group, "name" | "letter" | "kind" | "gainKgPerDay" | "young" | "youngNitrogenKgPerHeadDay" | "runsWith" | "out" | "mayEnter" | "needsTow" | "peopleToMove" | "follows" | "strip" | "here" | "yard"> & Partial<Group>;
const within = (season: Group["out"], from: string, to: string): Group["here"] => [{ firstDay: from, lastDay: to < season.lastDay ? to : season.lastDay }];

const OWN: Record<Exclude<Kind, "goats" | "horses" | "turkeys" | "ducks" | "geese">, Own> = {
  cattle: (_i, area) => ({ animalClass: "cow with calf", head: Math.max(1, Math.round(area * 1.35)), weightKg: 620, intake: { shareOfWeight: 0.025, youngShareOfWeight: 0 }, nitrogenKgPerHeadDay: 0.227, waterLPerHeadDay: 68, moveMinutes: 15, setMinutes: 30 }),
  sheep: (_i, area) => ({ animalClass: "dry ewe", head: Math.max(4, Math.round(area * 6)), weightKg: 70, intake: { shareOfWeight: 0.03, youngShareOfWeight: 0 }, nitrogenKgPerHeadDay: 0.033, waterLPerHeadDay: 6, moveMinutes: 15, setMinutes: 30 }),
  layers: (i) => ({ animalClass: "", head: 60, weightKg: 1.9, intake: { kgDmPerHeadDay: 0.025 }, nitrogenKgPerHeadDay: 0.00153, waterLPerHeadDay: 0.25, moveMinutes: 70, setMinutes: 0, strip: HEN_NET, follows: i === 1 ? "cattle 1" : "cattle 5", needsTow: true, peopleToMove: 2, yard: "Hen barn" }),
  broilers: (_i, _area, season) => ({ animalClass: "", head: 150, weightKg: 0.6, gainKgPerDay: 0.057, intake: { kgDmPerHeadDay: 0.0107 }, nitrogenKgPerHeadDay: 0.0009, waterLPerHeadDay: 0.3, moveMinutes: 30, setMinutes: 0, strip: BROILER_PEN, here: [...within(season, "2027-05-20", "2027-06-23"), ...within(season, "2027-08-05", "2027-09-08")], yard: "Hen barn" }),
  pigs: (i, _area, season) => ({ animalClass: "weaner", head: 8, weightKg: 25, gainKgPerDay: 0.65, intake: { kgDmPerHeadDay: 0.3 }, nitrogenKgPerHeadDay: 0.0142, waterLPerHeadDay: 6, moveMinutes: 60, setMinutes: 60, strip: PIG_STRIP, here: within(season, i === 2 ? "2027-05-03" : "2027-06-01", i === 2 ? "2027-08-22" : "2027-10-17") }),
};
