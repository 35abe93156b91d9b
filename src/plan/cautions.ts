import { addDays, daysBetween, monthOf, type IsoDate, type Span } from "../quantity/calendar.js";
import { figureOf, isBird, isGrazer, type Group, type Scenario } from "../farm/scenario.js";
import type { Plan, Stay } from "./plan.js";

/** A danger that these animals on these days bring, in short sentences. */
export interface Caution {
  readonly topic: string;
  readonly text: string;
  /** A row of the published tables, the page that says it, or "common practice". */
  readonly source: string;
  /** Days on which it applies; null for the whole plan. */
  readonly days: Span | null;
}

/** What a caution is asked of: the groups that have stays, and where they stand when. */
interface Asked {
  readonly scenario: Scenario;
  readonly groups: readonly Group[];
  readonly inCells: readonly Stay[];
}

interface Rule {
  readonly topic: string;
  readonly text: string;
  readonly source: string;
  /** Days on which it applies, null for always, or false when it does not. */
  readonly applies: (asked: Asked) => Span | null | false;
}

const COMMON = "common practice";
const MEMORY = "from memory";
const ENERGISER = "energiser.joules, energiser.apart, fence.sign-every";

const kindsOf = ({ groups }: Asked): readonly string[] => groups.map((group) => group.kind);
const always = (yes: boolean): null | false => (yes ? null : false);
const some = (test: (group: Group) => boolean) => (asked: Asked): null | false => always(asked.groups.some(test));
const ruminant = (group: Group): boolean => ["cattle", "sheep", "goats"].includes(group.kind);
const inMilk = (group: Group): boolean => group.kind === "cattle" && (group.young !== null || /milk|with calf/.test(group.animalClass));

/** From the first to the last day of the months on which one of the groups that count stands in a cell. */
function daysIn(asked: Asked, first: number, last: number, counts: (group: Group) => boolean): Span | false {
  const names = asked.groups.filter(counts).map((group) => group.name);
  const inMonths = (day: IsoDate): boolean => monthOf(day) + 1 >= first && monthOf(day) + 1 <= last;
  const days = asked.inCells.filter((stay) => names.includes(stay.group)).flatMap(daysOf).filter(inMonths).sort();
  return days.length === 0 ? false : { firstDay: days[0]!, lastDay: days.at(-1)! };
}

function daysOf({ firstDay, lastDay }: Stay): readonly IsoDate[] {
  return Array.from({ length: daysBetween(firstDay, lastDay) + 1 }, (_, i) => addDays(firstDay, i));
}

function hotMonths({ scenario }: Asked): readonly [number, number] {
  const month = (key: string, otherwise: number): number => figureOf(scenario, "shade", key, null, null) ?? otherwise;
  return [month("first-month", 6), month("last-month", 8)];
}

const RULES: readonly Rule[] = [
  { topic: "bull", text: "Never go in with a bull alone. Keep a way out.", source: COMMON, applies: some((g) => g.kind === "cattle" && /bull/.test(g.animalClass)) },
  { topic: "cow with calf", text: "A cow with a calf may charge. Never stand between them, never with a dog.", source: COMMON, applies: some((g) => g.kind === "cattle" && (g.young !== null || /calf/.test(g.animalClass))) },
  { topic: "sow", text: "A sow with a litter may bite. Never go in with her alone.", source: COMMON, applies: some((g) => g.kind === "pigs" && (g.young !== null || /sow|farrow/.test(g.animalClass))) },
  { topic: "boar", text: "Never go in with a boar without a board.", source: COMMON, applies: some((g) => g.kind === "pigs" && /boar/.test(g.animalClass)) },
  { topic: "fence", text: "One energiser a fence, at most 5 J, never on barbed wire. 2.5 m between fences of two energisers. A sign where people pass.", source: ENERGISER,
    applies: (asked) => always(asked.inCells.some((stay) => asked.groups.some((g) => g.name === stay.group && (!isBird(g.kind) || (g.strip?.nets ?? 0) > 0)))) },
  { topic: "tow", text: "Nobody between tractor and pen. Birds shut in and counted before it moves.", source: COMMON, applies: some((g) => g.needsTow || g.strip?.movedBy === "tow") },
  { topic: "pen", text: "No legs under the pen's edge when it is pushed.", source: COMMON, applies: some((g) => isBird(g.kind) && g.strip?.movedBy === "hand") },
  { topic: "feed ban", text: "Bird and pig feed out of reach of cattle, sheep and goats. It may hold animal protein.", source: "21 CFR 589.2000",
    applies: (asked) => always(asked.groups.some(ruminant) && asked.groups.some((g) => !isGrazer(g.kind))) },
  { topic: "dead birds", text: "Dead birds out every day. Cattle and sheep never reach litter or carcasses (botulism).", source: "litter.days",
    applies: (asked) => always(asked.groups.some(ruminant) && asked.groups.some((g) => isBird(g.kind))) },
  { topic: "copper", text: "Sheep never reach pig feed or pig slurry. The copper kills them.", source: "copper.pig-feed-ppm",
    applies: (asked) => always(kindsOf(asked).includes("sheep") && kindsOf(asked).includes("pigs")) },
  { topic: "ionophores", text: "Horses never reach cattle or bird feed with ionophores. A little kills them.", source: MEMORY,
    applies: (asked) => always(kindsOf(asked).includes("horses") && asked.groups.some((g) => g.kind === "cattle" || isBird(g.kind))) },
  { topic: "blackhead", text: "Turkeys never with chickens, nor on their ground (blackhead).", source: "clean-ground.turkeys-after-chickens",
    applies: (asked) => always(kindsOf(asked).includes("turkeys") && kindsOf(asked).some((kind) => kind === "layers" || kind === "broilers")) },
  { topic: "bird flu", text: "In bird flu no mixing of kinds, own boots for the birds. A housing order comes before following the cattle.", source: "USDA APHIS, 30 October 2024", applies: some((g) => isBird(g.kind)) },
  { topic: "open water", text: "Birds do not drink from pond or stream.", source: "USDA APHIS, 30 October 2024",
    applies: (asked) => {
      const wet = asked.scenario.cells.filter((cell) => cell.water === "pond" || cell.water === "stream").map((cell) => cell.name);
      return always(asked.inCells.some((stay) => wet.includes(stay.cell!) && asked.groups.some((g) => g.name === stay.group && isBird(g.kind))));
    } },
  { topic: "dusk", text: "Shut and count the birds at dusk.", source: COMMON, applies: some((g) => isBird(g.kind)) },
  { topic: "hands", text: "Wash hands after birds. Care with children under five (Salmonella).", source: MEMORY, applies: some((g) => isBird(g.kind)) },
  { topic: "tetany", text: "Magnesium for cows in milk on spring grass, from 30 days before turnout.", source: "extension.unl.edu", applies: (asked) => daysIn(asked, 3, 5, inMilk) },
  { topic: "bloat", text: "Never turn hungry cattle or sheep onto wet clover (bloat).", source: MEMORY, applies: (asked) => daysIn(asked, 4, 10, ruminant) },
  { topic: "plants", text: "Look for yew, ragwort and cut cherry before stock go in.", source: MEMORY, applies: (asked) => always(asked.inCells.some((stay) => asked.groups.some((g) => g.name === stay.group && isGrazer(g.kind)))) },
  { topic: "heat", text: "No hauls on hot, close days (THI 79 or more). Moves only at dawn on hotter ones (84 or more).", source: "heat.danger, heat.emergency", applies: (asked) => daysIn(asked, ...hotMonths(asked), () => true) },
  { topic: "pigs in heat", text: "Pigs burn and overheat. Shade and a wallow.", source: COMMON, applies: (asked) => daysIn(asked, ...hotMonths(asked), (g) => g.kind === "pigs") },
  { topic: "scraps", text: "No kitchen scraps to pigs or birds where the law forbids them.", source: COMMON, applies: some((g) => g.kind === "pigs" || isBird(g.kind)) },
  { topic: "papers", text: "Movement papers and standstill when animals come or go.", source: COMMON,
    applies: ({ scenario: { season }, groups }) => always(groups.some((g) => g.here.some((span) => span.firstDay > season.firstDay || span.lastDay < season.lastDay))) },
];

const CODES: Caution = { topic: "codes", text: "Follow local codes, the vet and licensed practice.", source: COMMON, days: null };

/** Only the cautions that apply to these animals on these days; the last is always there. */
export function cautionsFor(scenario: Scenario, plan: Plan): readonly Caution[] {
  const placed = new Set(plan.stays.map((stay) => stay.group));
  const asked: Asked = { scenario, groups: scenario.groups.filter((group) => placed.has(group.name)), inCells: plan.stays.filter((stay) => stay.cell !== null) };
  const applying = RULES.flatMap(({ topic, text, source, applies }) => {
    const days = applies(asked);
    return days === false ? [] : [{ topic, text, source, days }];
  });
  return [...applying, CODES];
}
