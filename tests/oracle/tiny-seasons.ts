/** Random seasons of a few days with every rule's figures drawn so small that they bind within them. */
import type { Cell, Group, Kind, Scenario, Strip } from "../../src/farm/scenario.js";
import { WANTS } from "../../src/farm/scenario.js";
import { addDays, type Span } from "../../src/quantity/calendar.js";
import { RULES } from "../../src/rules/index.js";
import type { RuleId, Use } from "../../src/rules/rule.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { chanceOf, type Chance } from "./chance.js";
import { mildFigures, tightFigures, type Rules } from "./tight-figures.js";

/** Who is on a tiny farm, how many cells it has, and for how many days. */
export interface TinySize {
  readonly name: string;
  readonly days: number;
  readonly cells: number;
  readonly groups: readonly ("grazers" | "birds" | "pigs" | "companion")[];
}

export const TINY_SIZES: readonly TinySize[] = [
  { name: "grazers, nine days", days: 9, cells: 1, groups: ["grazers"] },
  { name: "grazers, two cells", days: 6, cells: 2, groups: ["grazers"] },
  { name: "grazers, three cells", days: 5, cells: 3, groups: ["grazers"] },
  { name: "birds, nine days", days: 9, cells: 1, groups: ["birds"] },
  { name: "pigs, nine days", days: 9, cells: 1, groups: ["pigs"] },
  { name: "grazers and a mower", days: 6, cells: 1, groups: ["grazers"] },
  { name: "grazers and birds, two cells", days: 3, cells: 2, groups: ["grazers", "birds"] },
  { name: "grazers and birds", days: 6, cells: 1, groups: ["grazers", "birds"] },
  { name: "grazers and pigs, two cells", days: 3, cells: 2, groups: ["grazers", "pigs"] },
  { name: "grazers and pigs", days: 6, cells: 1, groups: ["grazers", "pigs"] },
  { name: "two groups of grazers", days: 4, cells: 2, groups: ["grazers", "grazers"] },
  { name: "grazers in company", days: 5, cells: 2, groups: ["grazers", "companion"] },
  { name: "birds and pigs", days: 6, cells: 1, groups: ["birds", "pigs"] },
  { name: "birds of two kinds", days: 6, cells: 1, groups: ["birds", "birds"] },
  { name: "grazers, birds and pigs", days: 4, cells: 1, groups: ["grazers", "birds", "pigs"] },
];

/** The size in which the planner's own cuts are tried as well. */
export const MOWER = "grazers and a mower";

const FIRST_DAYS = ["2027-04-28", "2027-05-28", "2027-07-10", "2027-12-28"] as const;

/** The tiny season of a size and seed: the same on every machine. */
export function tinySeason(size: TinySize, seed: number): Scenario {
  const chance = chanceOf(seed);
  const firstDay = chance.pick(FIRST_DAYS);
  const season = { firstDay, lastDay: addDays(firstDay, size.days - 1) };
  const on = (t: number): string => addDays(firstDay, t);
  const cells = Array.from({ length: size.cells }, (_, c) => tinyCell(chance, "ABCD"[c], size, on));
  const groups = size.groups.map((role, g) => tinyGroup(chance, role, g, size, on, season));
  const { farm, fields, groups: groupRules } = tinyRules(chance, cells, groups);
  const scenario = tinyFarm({ days: size.days, firstDay, cells, groups: groups.map((g) => ({ ...g, mayEnter: mayEnter(chance, cells, g) })), rules: farm });
  return { ...scenario, ...tinyMeans(chance, size, on, scenario), rules: { ...scenario.rules, fields, groups: groupRules } };
}

function mayEnter(chance: Chance, cells: readonly Cell[], own: Group): string[] {
  const names = cells.filter((c) => !c.notFor.includes(own.name)).map((c) => c.name);
  const open = names.filter(() => chance.luck(0.95));
  return open.length ? open : names;
}

function span(chance: Chance, days: number, on: (t: number) => string, least = 1): Span {
  const first = chance.whole(0, days - least);
  return { firstDay: on(first), lastDay: on(chance.whole(first + least - 1, Math.min(days - 1, first + 3))) };
}

function tinyCell(chance: Chance, name: string, { days }: TinySize, on: (t: number) => string): Cell {
  const level = chance.pick([0, 3, 40, 80, 120]);
  const rented = chance.luck(0.12);
  const ours = rented ? { firstDay: on(chance.whole(1, 2)), lastDay: on(chance.whole(3, days)) } : { firstDay: "2020-01-01", lastDay: "2040-12-31" };
  return cell(name, {
    field: chance.pick(["Near", "Near", "Far"]), areaHa: chance.between(0.08, 0.5), coverKgPerHa: chance.between(1900, 3000),
    coverDate: rented && chance.luck(0.5) ? ours.firstDay : on(-chance.whole(0, 5)),
    growthByMonth: Array.from({ length: 12 }, () => level * chance.between(0.7, 1.3)),
    water: chance.pick(["trough", "stream", "carted", "carted", chance.luck(0.15) ? "none" : "pond"] as const), waterWalkM: chance.pick([0, 0, 0, 100, 250]),
    shade: chance.luck(0.5), wetGround: chance.luck(0.3), mow: chance.luck(0.8), boundary: null, fenceM: chance.pick([80, 150, 250]),
    notFor: chance.luck(0.1) ? ["Birds"] : [], wants: chance.some(WANTS, 0.4),
    closed: chance.luck(0.2) ? [{ reason: chance.pick(["nesting", "hay", "seeding"]), ...span(chance, days, on) }] : [],
    past: pastUses(chance, on), ours,
    pastNitrogen: chance.luck(0.3) ? [{ day: on(-chance.whole(1, 40)), kgPerHa: chance.between(5, 60) }, { day: on(-chance.whole(300, 420)), kgPerHa: chance.between(5, 60) }] : [],
  });
}

function pastUses(chance: Chance, on: (t: number) => string): Cell["past"] {
  const use = (by: Cell["past"][number]["by"], most: number) => ({ by, lastDay: on(-chance.whole(1, most)), share: chance.pick([0.2, 0.4, 0.6, 1]) });
  const uses = [use("cattle", 4), use("sheep", 6), use("layers", 6), use("broilers", 6), use("pigs", 6), use("pigs", 300), use("hay", 30), use("horses", 3)];
  return uses.filter(() => chance.luck(0.15));
}

const STRIP = { movedBy: "hand", stepMinutes: 0, nets: 0, pen: null } as const;

const OWN: Record<"cattle" | "sheep" | "goats" | "horses" | "layers" | "turkeys" | "broilers" | "geese" | "pigs", (chance: Chance) => Partial<Group>> = {
  cattle: (c) => ({ animalClass: "cow with calf", head: c.whole(1, 4), weightKg: c.between(400, 650), young: c.luck(0.4) ? { head: 1, weightKg: 80, gainKgPerDay: 1 } : null }),
  sheep: (c) => ({ animalClass: "ewe", head: c.whole(6, 25), weightKg: 65, intake: { shareOfWeight: 0.03, youngShareOfWeight: 0.03 }, nitrogenKgPerHeadDay: 0.033, waterLPerHeadDay: 6 }),
  goats: (c) => ({ animalClass: "doe", head: c.whole(6, 20), weightKg: 60, nitrogenKgPerHeadDay: 0.03, waterLPerHeadDay: 7, needsTow: true }),
  horses: (c) => ({ animalClass: "horse", head: c.whole(1, 3), weightKg: 500, gainKgPerDay: 0.5, peopleToMove: 2 }),
  layers: (c) => birds(c, { head: 60, weightKg: 1.9, intake: { kgDmPerHeadDay: c.between(0.02, 0.3) }, needsTow: true }),
  turkeys: (c) => birds(c, { head: 30, weightKg: 6, intake: { kgDmPerHeadDay: 0.06 } }),
  broilers: (c) => birds(c, { head: 120, weightKg: 0.6, gainKgPerDay: 0.057, intake: { kgDmPerHeadDay: 0.0107 } }),
  geese: (c) => birds(c, { head: 20, weightKg: 4, intake: { kgDmPerHeadDay: 0.2 }, nitrogenKgPerHeadDay: 0.01 }),
  pigs: (c) => ({
    animalClass: c.pick(["weaner", "sow"]), head: c.whole(3, 10), weightKg: 30, gainKgPerDay: 0.6, intake: { kgDmPerHeadDay: 0.3 }, nitrogenKgPerHeadDay: 0.05, waterLPerHeadDay: 6,
    strip: { ...STRIP, areaHa: c.between(0.008, 0.05), days: c.whole(2, 4) },
  }),
};

function birds(chance: Chance, more: Partial<Group>): Partial<Group> {
  const strip: Strip = {
    ...STRIP, areaHa: chance.between(0.01, 0.06), days: chance.whole(1, 3), movedBy: chance.pick(["tow", "hand"]), stepMinutes: chance.whole(5, 40),
    nets: chance.whole(0, 2), pen: "Pen",
  };
  return { animalClass: "", nitrogenKgPerHeadDay: 0.003, waterLPerHeadDay: 0.3, strip, ...more };
}

const KINDS: Record<TinySize["groups"][number], readonly (keyof typeof OWN & Kind)[]> = {
  grazers: ["cattle", "cattle", "sheep", "goats", "horses"], companion: ["cattle", "sheep"], birds: ["layers", "layers", "turkeys", "broilers", "geese"], pigs: ["pigs"],
};
const NAMES = { grazers: ["Grazers", "Others"], companion: ["Companion", "Companion"], birds: ["Birds", "Flock"], pigs: ["Pigs", "Sows"] } as const;

function tinyGroup(chance: Chance, role: TinySize["groups"][number], g: number, size: TinySize, on: (t: number) => string, season: Span): Group {
  const { days, groups } = size;
  const earlier = groups.slice(0, g).filter((r) => r === role).length;
  const kind = chance.pick(KINDS[role]);
  const away = chance.luck(0.2) ? chance.whole(1, days - 3) : null;
  const gone = away === null ? [season] : [{ firstDay: season.firstDay, lastDay: on(away - 1) }, { firstDay: on(away + 1), lastDay: season.lastDay }];
  const late = [{ firstDay: on(chance.whole(-2, 2)), lastDay: on(days + chance.whole(-2, 1)) }];
  const here = role === "grazers" && groups.includes("companion") ? [season] : chance.luck(0.15) ? late : gone;
  return group(NAMES[role][earlier], {
    kind, here, out: chance.luck(0.2) ? { firstDay: on(1), lastDay: on(days - chance.whole(1, 2)) } : { firstDay: "2020-01-01", lastDay: "2040-12-31" },
    follows: role === "birds" && groups[0] === "grazers" && chance.luck(0.7) ? "Grazers" : null,
    runsWith: role === "companion" ? { with: "Grazers", days: [span(chance, days, on, 2)] } : null,
    moveMinutes: chance.whole(5, 30), setMinutes: chance.whole(0, 40), yard: g > 0 && chance.luck(0.4) ? "Barn" : "Yard", ...OWN[kind](chance),
  });
}

/** The farm's rules drawn tight, some made hard or off, and some figures of a field's or a group's own. */
function tinyRules(chance: Chance, cells: readonly Cell[], groups: readonly Group[]): { farm: Rules; fields: Scenario["rules"]["fields"]; groups: Scenario["rules"]["groups"] } {
  const [tight, mild] = [tightFigures(chance), mildFigures()];
  const farm: Record<string, { use?: Use; figures?: Record<string, number | null> }> = {};
  for (const rule of RULES) {
    const use = rule.uses.length > 1 && chance.luck(0.12) ? chance.pick(rule.uses) : undefined;
    const figures = chance.luck(0.3) ? tight[rule.id]?.figures : mild[rule.id]?.figures;
    farm[rule.id] = { ...(use ? { use } : {}), figures: figures ?? {} };
  }
  const own = (names: readonly string[]): Record<string, Record<string, object>> =>
    Object.fromEntries(names.filter(() => chance.luck(0.2)).map((name) => [name, someRules(chance)]));
  return { farm: farm as Rules, fields: own([...new Set(cells.map((c) => c.field))]), groups: own(groups.map((g) => g.name)) };
}

/** A few figures or uses of a field's or group's own. */
function someRules(chance: Chance): Record<string, object> {
  const tight = tightFigures(chance);
  const ids = chance.some(Object.keys(tight) as RuleId[], 0.2);
  return Object.fromEntries(ids.map((id) => {
    const { uses } = RULES.find((rule) => rule.id === id)!;
    return [id, chance.luck(0.3) && uses.length > 1 ? { use: chance.pick(uses) } : { figures: tight[id]!.figures }];
  }));
}

/** People, kit, hay, yards, holds and orders. */
function tinyMeans(chance: Chance, { days }: TinySize, on: (t: number) => string, { season, cells, groups, yards }: Scenario): Partial<Scenario> {
  const held = chance.pick(groups);
  const place = held.mayEnter.length > 0 && chance.luck(0.5) ? { cell: chance.pick(held.mayEnter), yard: null } : { cell: null, yard: chance.pick(["Yard", "Barn"]) };
  const birds = groups.find((g) => g.strip?.pen);
  const allButLast = [{ firstDay: on(0), lastDay: on(days - 2) }];
  return {
    yards: [
      { ...yards[0], costPerDay: chance.between(2, 14), room: chance.luck(0.15) ? chance.whole(20, 150) : null, open: chance.luck(0.06) ? allButLast : [season] },
      { name: "Barn", costPerDay: chance.between(1, 12), room: null, open: [season] },
    ],
    people: [
      { name: "Owner", tows: true, minutesByWeekday: Array.from({ length: 7 }, () => chance.pick([150, 200, 300, 600])), minutesByDay: chance.luck(0.3) ? { [on(chance.whole(1, days - 1))]: 90 } : {}, away: chance.luck(0.15) ? [span(chance, days, on)] : [] },
      { name: "Helper", tows: false, minutesByWeekday: Array.from({ length: 7 }, () => chance.pick([0, 60, 120, 120])), minutesByDay: {}, away: [] },
    ],
    kit: { nets: chance.luck(0.3) ? chance.whole(0, 2) : null, reels: chance.luck(0.4) ? chance.whole(1, 4) : null, reelM: 100, energisers: chance.luck(0.3) ? 1 : null },
    hay: { inStoreKg: 300, winterNeedKg: chance.luck(0.4) ? chance.whole(100, 500) : 0, dryMatter: 0.88, feedOutLoss: 0.1, storeLoss: 0.05 },
    prices: { currency: "GBP", hayPerKg: 0.15, labourPerHour: chance.between(5, 20), mowingPerHa: chance.between(20, 180), haul: chance.pick([0, 0, 3]) },
    holds: chance.luck(0.2) && !held.runsWith ? [{ name: "Held", days: span(chance, days, on), group: held.name, cut: null, ...place }]
      : chance.luck(0.1) ? [{ name: "Mown", days: { firstDay: on(2), lastDay: on(2) }, group: null, cell: chance.pick(cells).name, yard: null, cut: chance.pick(["hay", "topping"]) }] : [],
    housingOrders: chance.luck(0.2) ? [{ name: "Order", known: on(0), kinds: chance.luck(0.7) && birds ? [birds.kind] : [groups[0].kind], ...span(chance, days, on) }] : [],
  };
}
