import { daysBetween, type Span } from "../quantity/calendar.js";
import type { Tables } from "../science/tables.js";
import { checkGroups } from "./across-groups.js";
import { checkLand } from "./across-land.js";
import { checkNames } from "./across-names.js";
import { noteFarm } from "./across-notes.js";
import { checkPeople } from "./across-people.js";
import { checkRules } from "./across-rules.js";
import { gatherAssumed } from "./assumed.js";
import { canonicalForm } from "./canonical-form.js";
import { spansMeant } from "./days-meant.js";
import { amountIn, newDesk, say, type Desk } from "./desk.js";
import { inFileOrder, type Finding, type Result } from "./finding.js";
import { lettersOf } from "./letters.js";
import { longForm } from "./long-form.js";
import { mapOf } from "./map/farm-map.js";
import { figuresOnMap } from "./map/figures-on-map.js";
import type { MapText } from "./map/map-feature.js";
import { takeDefault, OWN, takeOwn } from "./own-defaults.js";
import { parseTree } from "./parse-tree.js";
import { spanAt } from "./read-days.js";
import { kindsOf, readGroups } from "./read-groups.js";
import { swardOf } from "./read-growth.js";
import { readHandover } from "./read-handover.js";
import { readHolds, readHousingOrders, readStandstills } from "./read-holds.js";
import { readLand } from "./read-land.js";
import { readPeople } from "./read-people.js";
import { ownedKit, readPens, type Pen } from "./read-pens.js";
import { readRules, swardRest } from "./read-rules.js";
import { readHay, readPrices } from "./read-stock.js";
import { readYards } from "./read-yards.js";
import type { FigureSet, Kit, Scenario } from "./scenario.js";
import { checkShape } from "./shape-findings.js";
import { withStripCells } from "./strip-names.js";
import { child, entriesOf, textOf, type MapNode } from "./tree.js";
import { withRectangles } from "./width-and-length.js";

/** Takes a text's SHA-256 as lower-case hexadecimal; given by the rooms that may use the machine. */
export type Hash = (text: string) => string;

/** Reads a farm file and the maps it names. Every fault is a finding, all of them at once; nothing a user can write makes it throw. */
export function readScenario(text: string, fileName: string, tables: Tables, hash?: Hash, maps: readonly MapText[] = []): Result<Scenario> {
  const parsed = parseTree(text, fileName);
  if (parsed.tree === null) return { ok: false, findings: inFileOrder(parsed.findings, [fileName]) };
  return readLongForm(longForm(parsed.tree), { tables, hash, maps, files: [fileName], said: parsed.findings });
}

export interface Reading {
  readonly tables: Tables;
  readonly hash?: Hash | undefined;
  /** Texts of the map files beside the farm file. */
  readonly maps: readonly MapText[];
  /** Farm file first, then changes in turn. */
  readonly files: readonly string[];
  /** What parsing and merging found. */
  readonly said: readonly Finding[];
}

/** Reads a farm in long form, with its changes merged in. */
export function readLongForm(written: MapNode, { tables, hash = unhashed, maps, files, said }: Reading): Result<Scenario> {
  const bare = newDesk(tables);
  bare.findings.push(...said);
  const root = withStripCells(bare, written);
  const whole = checkShape(bare, root);
  const desk = { ...bare, map: mapOf(bare, whole, maps) };
  const read = resolve(desk, whole);
  if (read !== null) crossChecks(desk, whole, read.scenario, read.pens);
  const order = [...files, ...maps.map(({ file }) => file)];
  const findings = inFileOrder(once(desk.findings), order);
  if (findings.length > 0 || read === null) return { ok: false, findings };
  const form = canonicalForm(root, desk.map && figuresOnMap(desk.map, hash));
  const scenario = { ...read.scenario, assumed: gatherAssumed(desk.taken, read.scenario), print: `sha256:${hash(form)}`, form };
  return { ok: true, value: scenario, notes: inFileOrder(once(desk.notes), order) };
}

function unhashed(text: string): string {
  return `not taken, ${text.length} signs`;
}

/** Everything but what holds across parts; null when the season or the body is missing. */
function resolve(desk: Desk, root: MapNode): { readonly scenario: Scenario; readonly pens: readonly Pen[] } | null {
  const season = seasonOf(desk, root);
  if (season === null) return null;
  const kinds = kindsOf(root);
  const letters = lettersOf(desk, root, kinds);
  const land = readLand(desk, withRectangles(desk, root), season, kinds);
  const [nets, reels] = [ownedKit(desk, root, "nets"), ownedKit(desk, root, "reels")];
  const pens = readPens(desk, root, nets.lengthM ?? OWN.netM);
  const yards = readYards(desk, root, season, kinds);
  const groups = readGroups(desk, root, { season, land, pens, yards, letters, names: Object.keys(kinds) });
  const names = { groups: Object.keys(kinds), cells: land.cells.map((cell) => cell.name), yards: yards.yards.map((yard) => yard.name) };
  const units = textOf(child(root, "units")) === "US" ? "US" : "metric";
  if (!child(root, "units")) takeOwn(desk, "units", "", units, units);
  const scenario: Scenario = {
    farm: textOf(child(root, "farm")) ?? "",
    units,
    season,
    ...land,
    groups,
    yards: yards.yards,
    people: readPeople(desk, root, season),
    kit: kitOf(desk, root, nets.owned, reels),
    hay: readHay(desk, root),
    rules: withStayLimits(desk, root, rulesOf(desk, root)),
    holds: readHolds(desk, root, season, names),
    housingOrders: readHousingOrders(desk, root, season),
    standstills: readStandstills(desk, root, season),
    ceilingCover: amountIn(desk, { map: root, name: "the farm" }, "ceiling-cover") ?? takeDefault(desk, "ceiling-cover", ""),
    troddenShare: amountIn(desk, { map: root, name: "the farm" }, "trodden") ?? takeDefault(desk, "trodden", ""),
    weather: weatherOf(desk, root),
    handover: readHandover(desk, root, season, { fields: land.fields.map((field) => field.name), yards: names.yards }),
    prices: readPrices(desk, root, units),
    assumed: [],
    print: "",
    form: null,
  };
  return { scenario, pens };
}

const SHORTEST = 7;
const LONGEST = 400;

function seasonOf(desk: Desk, root: MapNode): Span | null {
  const node = child(root, "season");
  const open = { firstDay: "2000-01-01", lastDay: "2000-12-31" };
  if (node === undefined || textOf(node) === undefined) return null;
  if (!/\sto\s/.test(textOf(node)!)) {
    const meant = spansMeant(textOf(node)!);
    say(desk, node, { code: "season-form", found: `season is ${textOf(node)!}`, allowed: "a season runs from a day to a day, each year-month-day", next: meant.length > 0 ? `write ${meant.join(" or ")}` : "write its first day, to, and its last day" });
    return null;
  }
  const season = spanAt(desk, node, "season", open);
  if (season === undefined) return null;
  const days = daysBetween(season.firstDay, season.lastDay) + 1;
  if (days >= SHORTEST && days <= LONGEST) return season;
  say(desk, node, { code: "out-of-reach", found: `the season is ${days} d long`, allowed: `it may be ${SHORTEST} to ${LONGEST} d`, next: "change one of its days" });
  return null;
}

function kitOf(desk: Desk, root: MapNode, nets: number | null, reels: { readonly lengthM: number | null; readonly owned: number | null }): Kit {
  const energisers = amountOwned(desk, root);
  const reelM = reels.lengthM ?? takeOwn(desk, "reel", "", OWN.reelM, `${OWN.reelM} m`);
  return { nets, reels: reels.owned, reelM, energisers };
}

function amountOwned(desk: Desk, root: MapNode): number | null {
  const node = child(child(root, "kit"), "energisers");
  if (node === undefined) return takeOwn(desk, "energisers", "", null, "not counted");
  const { file, line, column } = node;
  const map: MapNode = { kind: "map", entries: [{ key: "owned", at: node, value: node }], file, line, column };
  return amountIn(desk, { map, name: "energisers" }, "owned") ?? null;
}

function weatherOf(desk: Desk, root: MapNode): Scenario["weather"] {
  const thing = { map: child(root, "weather"), name: "weather" };
  const figure = (key: "dry" | "wet" | "month" | "spring" | "late-moves" | "week-away"): number =>
    amountIn(desk, thing, key) ?? takeDefault(desk, `weather.${key}`, "", `weather ${key}`);
  return {
    dry: figure("dry"), wet: figure("wet"), month: figure("month"), springDays: figure("spring"),
    lateMoves: figure("late-moves"), weekAway: figure("week-away"),
  };
}

/** The owner's rules, and under them the rest that a named sward wants. */
function rulesOf(desk: Desk, root: MapNode): FigureSet {
  const farm = { map: root, name: "the farm" };
  const swards = entriesOf(child(root, "fields")).flatMap(({ key, value }) => {
    const sward = swardOf(desk, [{ map: value, name: key }, farm]);
    return sward === undefined ? [] : [[key, sward] as const];
  });
  return swardRest(desk, readRules(desk, root), Object.fromEntries(swards));
}

/** A group's `stay-limit` is the limit of the rule of that name, for that group. */
function withStayLimits(desk: Desk, root: MapNode, rules: FigureSet): FigureSet {
  const groups = { ...rules.groups };
  for (const { key, value } of entriesOf(child(root, "groups"))) {
    const limit = amountIn(desk, { map: value, name: key }, "stay-limit");
    if (limit === undefined) continue;
    const own = groups[key]?.["stay-limit"];
    groups[key] = { ...groups[key], "stay-limit": { ...own, figures: { ...own?.figures, limit } } };
  }
  return { ...rules, groups };
}

function crossChecks(desk: Desk, root: MapNode, scenario: Scenario, pens: readonly Pen[]): void {
  checkLand(desk, root, scenario);
  checkNames(desk, root, scenario);
  checkGroups(desk, root, scenario, pens);
  checkRules(desk, root, scenario);
  // Days and minutes mean nothing while a span or a figure of somebody is refused.
  if (desk.findings.length === 0) checkPeople(desk, root, scenario);
  if (desk.findings.length === 0) noteFarm(desk, root, scenario);
}

/** A field's fault would be said for each of its cells. */
function once(findings: readonly Finding[]): readonly Finding[] {
  const keys = findings.map((f) => `${f.file} ${f.line} ${f.column} ${f.code} ${f.found}`);
  return findings.filter((_, i) => keys.indexOf(keys[i]!) === i);
}
