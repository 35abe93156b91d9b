import type { CautionRow, CautionWhere } from "../farm/handover.js";
import { figureOf, isBird, type Cell, type Group, type Scenario } from "../farm/scenario.js";
import { youngOn } from "../farm/young.js";
import { addDays, daysBetween, monthOf, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import type { Plan } from "./plan.js";

/** A danger that these animals on these days bring; its words stand in the catalogue under "caution." and its topic. */
export interface Caution {
  readonly topic: string;
  /** 1 hurts people, 2 kills animals, 3 is law, 4 everything else. */
  readonly rank: number;
  readonly source: string;
  /** First and last day on which it applies; null for as long as the animals are here. */
  readonly days: Span | null;
}

/** A group on a day of the plan, and the cell where it stands; null in a yard. */
interface Seen {
  readonly scenario: Scenario;
  readonly plan: Plan;
  readonly group: Group;
  readonly day: IsoDate;
  readonly cell: Cell | null;
}

const electric = ({ group, cell }: Seen): boolean => cell !== null && (!isBird(group.kind) || (group.strip?.nets ?? 0) > 0);
const comes = ({ scenario, group, day }: Seen): boolean => day > scenario.season.firstDay && group.here.some(({ firstDay }) => firstDay === day);
const leaves = ({ scenario, group, day }: Seen): boolean => day < scenario.season.lastDay && group.here.some(({ lastDay }) => lastDay === day);

/** When the condition of a row holds for a group on a day. */
const WHERE: Readonly<Record<Exclude<CautionWhere, "mown">, (seen: Seen) => boolean>> = {
  "here": () => true,
  "ground": ({ cell }) => cell !== null,
  "with-young": ({ group, day }) => (youngOn(group, day)?.head ?? 0) > 0 || /calf|litter/.test(group.animalClass),
  "births": ({ scenario, group, day }) => (scenario.handover.births[group.name] ?? []).some((span) => spanHolds(span, day)),
  "public-path": ({ scenario, cell }) => cell !== null && scenario.handover.publicPaths.includes(cell.name),
  "towed": ({ group }) => group.needsTow || group.strip?.movedBy === "tow",
  "pushed": ({ group }) => group.strip?.movedBy === "hand" && group.strip.pen !== null,
  "fenced": electric,
  "hot": ({ scenario, day }) => isMonthOf(day, hotMonths(scenario)),
  "shade": ({ cell }) => cell?.shade === true,
  "wet-ground": ({ cell }) => cell?.wetGround === true,
  "open-water": ({ cell }) => cell?.water === "pond" || cell?.water === "stream",
  "housing-order": ({ scenario, group, day }) => scenario.housingOrders.some((order) => order.kinds.includes(group.kind) && spanHolds(order, day)),
  "comes": comes,
  "leaves": leaves,
  "comes-or-goes": (seen) => comes(seen) || leaves(seen),
};

function hotMonths(scenario: Scenario): readonly [number, number] {
  const month = (key: string, otherwise: number): number => figureOf(scenario, "shade", key, null, null) ?? otherwise;
  return [month("first-month", 6), month("last-month", 8)];
}

/** From the first to the last month, over the year's end where the last comes first. */
function isMonthOf(day: IsoDate, [first, last]: readonly [number, number]): boolean {
  const month = monthOf(day) + 1;
  return first <= last ? month >= first && month <= last : month >= first || month <= last;
}

const inMilk = ({ kind, young, animalClass }: Group): boolean => kind === "cattle" && (young !== null || /milk|with calf/.test(animalClass));

function isOf(row: CautionRow, group: Group): boolean {
  return row.kinds.includes(group.kind) && (row.class === undefined || new RegExp(row.class).test(group.animalClass)) && (row["in-milk"] !== true || inMilk(group));
}

/** Whether a row applies on a day on which these groups are here. */
function holds(row: CautionRow, plan: Plan, day: IsoDate, here: readonly Seen[]): boolean {
  if (row.months && !isMonthOf(day, row.months)) return false;
  const { where, beside } = row;
  if (where === "mown") return plan.cuts.some((cut) => cut.day === day);
  return here.some((seen) => isOf(row, seen.group) && WHERE[where](seen) && (!beside || here.some(({ group }) => group !== seen.group && beside.includes(group.kind))));
}

/** The plan's groups on a day, each where it stands. */
function hereOn(scenario: Scenario, plan: Plan, day: IsoDate): readonly Seen[] {
  return plan.stays.filter((stay) => spanHolds(stay, day)).flatMap((stay) => {
    const group = scenario.groups.find(({ name }) => name === stay.group);
    return group ? [{ scenario, plan, group, day, cell: scenario.cells.find(({ name }) => name === stay.cell) ?? null }] : [];
  });
}

const LAST = "codes";
const CODES: Caution = { topic: LAST, rank: 4, source: "common practice", days: null };

/** Conditions that hold as long as the animals are here, so that no dates are told. */
const ALWAYS: readonly CautionWhere[] = ["here", "ground", "with-young", "towed", "pushed", "fenced"];

/** The cautions that apply to these animals on the days of the plan, whatever can hurt people first; the last is always there. */
export function cautionsFor(scenario: Scenario, plan: Plan): readonly Caution[] {
  const { firstDay, lastDay } = scenario.season;
  const days = Array.from({ length: daysBetween(firstDay, lastDay) + 1 }, (_, i) => addDays(firstDay, i));
  const seen = days.map((day) => hereOn(scenario, plan, day));
  const applying = scenario.handover.cautions.flatMap((row) => {
    const on = days.filter((day, i) => holds(row, plan, day, seen[i]!));
    if (on.length === 0) return [];
    const dated = row.months !== undefined || !ALWAYS.includes(row.where);
    return [{ topic: row.key, rank: row.rank, source: row.source, days: dated ? { firstDay: on[0]!, lastDay: on.at(-1)! } : null }];
  });
  return [...applying, CODES];
}

/** Those of one day, in the same order; `days` is that day. */
export function cautionsOn(scenario: Scenario, plan: Plan, day: IsoDate): readonly Caution[] {
  const here = hereOn(scenario, plan, day);
  const applying = scenario.handover.cautions.filter((row) => holds(row, plan, day, here));
  return [...applying.map(({ key, rank, source }) => ({ topic: key, rank, source, days: { firstDay: day, lastDay: day } })), CODES];
}
