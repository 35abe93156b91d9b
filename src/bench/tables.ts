import type { Growth } from "./growth.js";
import type { FarmMeasured, Measured, Moment } from "./measured.js";

/** A table: a title, its head, its rows, all words. */
export interface Table {
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const NONE = "-";
/** With digits behind the point; a zero is never negative. */
const digits = (amount: number, n: number): string => amount.toFixed(n).replace(/^-(0(\.0+)?)$/, "$1");
const money = (amount: number | null): string => (amount === null ? NONE : digits(amount, 1));
const percent = (share: number | null): string => (share === null ? NONE : `${digits(share * 100, 1)} %`);
const seconds = (time: number | null): string => (time === null ? NONE : time.toFixed(time < 1 ? 3 : 1));
const whole = (amount: number | null): string => (amount === null ? NONE : amount.toFixed(0));

/** The highest bound that any of the ways proved, 0 when none did: money is never negative. */
export function bestBound(ways: readonly Measured[]): number {
  return Math.max(0, ...ways.map((way) => way.bound ?? 0));
}

/** What is left between a valid plan and the bound: money, share of the plan's cost, and the share of (hand rule - bound) that it saves. */
export function standing(way: Measured, bound: number, handCost: number | null): { readonly gap: number | null; readonly ofCost: number | null; readonly saved: number | null } {
  if (way.cost === null || way.breaches !== 0) return { gap: null, ofCost: null, saved: null };
  const gap = way.cost - bound;
  const room = handCost === null ? 0 : handCost - bound;
  return { gap, ofCost: way.cost > 0 ? gap / way.cost : 0, saved: room > 1e-9 && handCost !== null ? (handCost - way.cost) / room : null };
}

/** Money by which a bound may pass a plan: what the solvers themselves round. */
const ROUNDING = 0.02;

/** All ways of one farm, side by side. */
export function farmTable({ farm, size, ways }: FarmMeasured): Table {
  const bound = bestBound(ways);
  const hand = ways.find((way) => way.way === "hand rule" && way.breaches === 0)?.cost ?? null;
  return {
    title: `${farm}: ${size}`,
    head: ["way", "cost", "broken rules", "bound", "gap", "gap of cost", "saved of (hand rule - bound)", "seconds", "first plan, s", "check, ms", "memory, MB", "work", "note"],
    rows: ways.map((way) => {
      const { gap, ofCost, saved } = standing(way, bound, hand);
      return [
        way.way, money(way.cost), whole(way.breaches), money(way.bound), money(gap), percent(ofCost), percent(saved), seconds(way.seconds), seconds(way.firstPlanSeconds),
        way.checkMilliseconds === null ? NONE : way.checkMilliseconds.toFixed(1), whole(way.memoryMb), way.work || NONE,
        gap !== null && gap < -ROUNDING ? "THE BOUND IS ABOVE THIS VALID PLAN" : way.note || NONE,
      ];
    }),
  };
}

/** Seconds at which the whole road is looked at. */
const MARKS = [1, 2, 5, 10, 20, 30, 60, 90, 120, 180, 300, 600];

/** The whole road as it goes: plan and bound at each mark, farm by farm, until it ended. */
export function alongTable(farms: readonly FarmMeasured[]): Table {
  const roads = farms.flatMap(({ farm, ways }) => ways.filter((way) => way.along.length > 0).map((way) => ({ farm, way })));
  const marks = MARKS.filter((_, i) => i === 0 || roads.some(({ way }) => way.seconds > MARKS[i - 1]));
  return {
    title: "The whole road as it goes: cost (gap to its own bound, of cost)",
    head: ["farm", ...marks.map((mark) => `${mark} s`)],
    rows: roads.map(({ farm, way }) => [farm, ...marks.map((mark) => momentWords(way.along.filter((moment) => moment.seconds <= mark).at(-1), mark > way.seconds))]),
  };
}

function momentWords(moment: Moment | undefined, over: boolean): string {
  if (!moment || !Number.isFinite(moment.cost)) return NONE;
  return `${money(moment.cost)} (${percent((moment.cost - Math.max(0, moment.bound)) / moment.cost)})${over ? ", ended" : ""}`;
}

/** How cost and time grow with one figure of the farm. */
export function growthTable(title: string, grown: readonly Growth[]): Table {
  return {
    title: `With ${title} (cells/groups/days)`,
    head: ["size", "hand rule", "hand rule, s", "search", "search, s", "bound", "bound, s", "gap of cost", "columns day by day", "memory, MB"],
    rows: grown.map((g) => [
      g.size, money(g.handCost), seconds(g.handSeconds), money(g.cost), seconds(g.searchSeconds), money(g.bound), seconds(g.boundSeconds),
      percent((g.cost - Math.max(0, g.bound)) / g.cost), g.columns.toLocaleString("en-GB"), whole(g.memoryMb),
    ]),
  };
}

/** A table in Markdown. */
export function markdown({ title, head, rows }: Table): string {
  const line = (boxes: readonly string[]): string => `| ${boxes.map((box) => box.replaceAll("|", "/")).join(" | ")} |`;
  return [`## ${title}`, "", line(head), line(head.map((_, i) => (i === 0 ? "---" : "---:"))), ...rows.map(line), ""].join("\n");
}
