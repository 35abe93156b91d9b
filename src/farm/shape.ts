import { z } from "zod";
import { RULES } from "../rules/index.js";
import { BIRDS, KINDS, WANTS } from "./scenario.js";

/** Every value enters as text; what it measures is read after its shape is known. */
const text = z.string();
const list = z.union([text, z.array(text)]);
const spans = z.union([text, z.array(text), z.record(text, text)]);
const flag = z.enum(["yes", "no"]);

/** Sides of a field that strips may run along: the longest, or the longest that faces a way, by the compass. */
export const ALONG = ["longest", "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"] as const;

const rules = z.strictObject(
  Object.fromEntries(
    RULES.map((rule) => {
      const figures = Object.fromEntries(rule.parameters.map((parameter) => [parameter.key, text.optional().meta({ description: `${parameter.meaning} (${parameter.unit || "bare figure"})` })]));
      return [rule.id, z.strictObject({ ...figures, use: z.enum(["hard", "charged", "off"]).optional() }).optional().meta({ description: rule.sentence })];
    }),
  ),
);

/** What a field says for all its cells, and a cell for itself. */
const ground = {
  note: text.optional(),
  area: text.optional(),
  width: text.optional(),
  length: text.optional(),
  sides: list.optional(),
  diagonal: text.optional(),
  boundary: list.optional(),
  cover: text.optional(),
  height: text.optional(),
  "cover-date": text.optional(),
  growth: text.optional(),
  "growth-scale": text.optional(),
  grows: text.optional(),
  water: z.enum(["trough", "stream", "pond", "carted", "none"]).optional(),
  "water-walk": text.optional(),
  shade: flag.optional(),
  "wet-ground": flag.optional(),
  mow: flag.optional(),
  slope: text.optional(),
  fence: text.optional(),
  "not-for": list.optional(),
  wants: z.union([z.string(), z.array(z.enum(WANTS))]).optional(),
  closed: z.record(text, list).optional(),
  last: z.partialRecord(z.enum([...KINDS, "hay", "litter"]), list).optional(),
  nitrogen: z.record(text, text).optional(),
  "public-path": flag.optional(),
};

const cell = z.strictObject(ground);
const field = {
  ...ground,
  sward: text.optional(),
  distance: text.optional(),
  strips: z.union([list, z.strictObject({ cells: list, along: z.enum(ALONG).optional() })]).optional(),
  ours: text.optional(),
  way: text.optional(),
  rules: rules.optional(),
};

const group = z.strictObject({
  note: text.optional(),
  kind: z.enum(KINDS),
  class: text.optional(),
  head: text,
  weight: text,
  gain: text.optional(),
  young: text.optional(),
  "young-weight": text.optional(),
  "young-gain": text.optional(),
  "young-until": text.optional(),
  intake: text.optional(),
  nitrogen: text.optional(),
  "young-nitrogen": text.optional(),
  "water-need": text.optional(),
  letter: text.optional(),
  here: spans.optional(),
  turnout: text.optional(),
  housing: text.optional(),
  pen: text.optional(),
  strip: text.optional(),
  "strip-days": text.optional(),
  follows: text.optional(),
  "runs-with": z.union([text, z.strictObject({ group: text, days: spans.optional() })]).optional(),
  yard: text.optional(),
  "only-in": list.optional(),
  "not-in": list.optional(),
  "stay-limit": text.optional(),
  "move-takes": text.optional(),
  "set-takes": text.optional(),
  "people-to-move": text.optional(),
  feed: z.strictObject({ what: text, each: text, lies: text.optional() }).optional(),
  take: text.optional(),
  births: spans.optional(),
  rules: rules.optional(),
});

const pen = z.strictObject({
  note: text.optional(),
  size: text.optional(),
  "moved-by": z.enum(["tow", "hand"]),
  count: text.optional(),
  net: text.optional(),
  step: text.optional(),
  "step-takes": text.optional(),
});

const yard = z.strictObject({ note: text.optional(), cost: text.optional(), room: text.optional(), open: list.optional() });
const person = z.strictObject({ note: text.optional(), minutes: z.union([text, z.record(text, text)]), tows: flag.optional(), away: spans.optional() });

const owned = z.union([text, z.record(text, text)]);
const whole = {
  farm: text,
  note: text.optional(),
  units: z.enum(["metric", "US"]).optional(),
  season: text,
  walk: list.optional(),
  map: list.optional(),
  growth: text.optional(),
  "growth-scale": text.optional(),
  grows: text.optional(),
  sward: text.optional(),
  "cover-date": text.optional(),
  people: z.record(text, person).optional(),
  pens: z.record(text, pen).optional(),
  yards: z.record(text, yard).optional(),
  kit: z.strictObject({ nets: owned.optional(), reels: owned.optional(), energisers: text.optional(), lies: text.optional(), "least-voltage": text.optional(), "least-voltage-wool": text.optional() }).optional(),
  paths: z.record(text, text).optional(),
  hay: z.strictObject({ "in-store": text.optional(), "winter-need": text.optional(), "dry-matter": text.optional(), "feed-out-loss": text.optional(), "store-loss": text.optional() }).optional(),
  prices: z.strictObject({ hay: text.optional(), labour: text.optional(), mowing: text.optional(), haul: text.optional() }).optional(),
  weather: z.strictObject({ dry: text.optional(), wet: text.optional(), month: text.optional(), spring: text.optional(), "late-moves": text.optional(), "week-away": text.optional() }).optional(),
  trodden: text.optional(),
  "ceiling-cover": text.optional(),
  rules: rules.optional(),
  holds: z.record(text, z.strictObject({ group: text.optional(), cell: text.optional(), yard: text.optional(), cut: z.enum(["hay", "topping"]).optional(), days: text })).optional(),
  "housing-orders": z.record(text, z.union([text, z.strictObject({ days: text, known: text.optional(), kinds: z.union([text, z.array(z.enum(BIRDS))]).optional() })])).optional(),
  standstills: z.record(text, z.union([text, z.strictObject({ days: text })])).optional(),
};

/** The farm file's long form, in which it is checked: a cell is always a map. */
export const farmShape = z.strictObject({
  ...whole,
  fields: z.record(text, z.strictObject({ ...field, cells: z.record(text, cell) })),
  groups: z.record(text, group),
});

/** The farm file as people type it: a cell may be its area alone, or its name alone where the map has it, and strips are cells. For the published schema. */
export const typedFarmShape = z.strictObject({
  ...whole,
  fields: z.record(text, z.strictObject({ ...field, cells: z.union([list, z.record(text, z.union([text, cell]))]).optional() })),
  groups: z.record(text, group),
});

/** Keys that belong inside a field, cell, group and so on: by them a line that stands too far left is known. */
export const INNER_KEYS: Readonly<Record<string, readonly string[]>> = {
  fields: ["cells", ...Object.keys(field)],
  cells: Object.keys(ground),
  groups: Object.keys(group.shape),
  pens: Object.keys(pen.shape),
  yards: Object.keys(yard.shape),
  people: Object.keys(person.shape),
};
