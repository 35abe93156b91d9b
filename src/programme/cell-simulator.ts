import { isBird } from "../farm/scenario.js";
import { dayNumber } from "../quantity/calendar.js";
import { grownCover } from "../science/growth.js";
import { hayMadeKg } from "../science/hay.js";
import type { Season } from "../season/season.js";
import { freshState, resetState, type CellState, type WorkedUse } from "./cell-state.js";
import { figures, isOff, type CellHooks, type Half } from "./half.js";
import { HALVES } from "./rules/index.js";

type Hooks<K extends keyof CellHooks> = readonly NonNullable<CellHooks[K]>[];

/** Lives one cell's season exactly: the only place of the programme that knows growth. */
export interface CellSimulator {
  readonly season: Season;
  fresh(cell: number): CellState;
  /** Takes a state back to the first morning. */
  reset(s: CellState): void;
  /** Lives on without animals to the morning of a day. */
  advance(s: CellState, day: number): void;
  /** Lives a whole stay; the state is then on the morning after its last day. */
  stay(s: CellState, group: number, first: number, last: number): void;
  /** Money and broken rules of a stay where grass, rest and lots are no matter: what is left of its price. */
  probe(s: CellState, group: number, first: number, last: number): { readonly money: number; readonly over: number };
  /** Cuts on the evening of `day`, to which the state is advanced. */
  cut(s: CellState, day: number, byOwner: boolean, makesHay: boolean): void;
  /** Lives to the season's end and settles what is asked there. */
  finish(s: CellState): void;
}

/** Figures of the ground that the simulator itself needs. */
type Ground = Readonly<Record<"leastStanding" | "pigCover" | "birdsInterval" | "pigsInterval" | "stubble" | "makingLoss" | "openedFrom", (cell: number, group: number) => number>>;

function groundOf(season: Season): Ground {
  const [back, reseeded, reseed] = ["back", "reseeded", "reseed"].map((key) => figures(season, "after-pigs", key));
  return {
    leastStanding: figures(season, "demand-met", "least-standing"),
    pigCover: figures(season, "after-pigs", "cover"),
    birdsInterval: figures(season, "worked-ground", "birds"),
    pigsInterval: (cell, group) => (reseed(cell, group) >= 1 ? reseeded : back)(cell, group),
    stubble: figures(season, "hay-stock", "stubble"),
    makingLoss: figures(season, "hay-stock", "making-loss"),
    openedFrom: figures(season, "pig-pressure", "opened"),
  };
}

/** Builds the simulator of a season from the halves of the rules; tests leave one out to see what it was for. */
export function cellSimulator(season: Season, halves: readonly Half[] = HALVES): CellSimulator {
  const bound = halves.filter((half) => !isOff(season, half.id)).map((half) => half.bindCell?.(season)).filter((hooks) => hooks != null);
  const pick = <K extends keyof CellHooks>(key: K): Hooks<K> => bound.map((hooks) => hooks[key]).filter((hook) => hook !== undefined) as Hooks<K>;
  const hooks = { enter: pick("enter"), graze: pick("graze"), bite: pick("bite"), work: pick("work"), lot: pick("lot"), walk: pick("walk"), mow: pick("mow"), close: pick("close") };
  const ground = groundOf(season);
  const past = season.scenario.cells.map((_, c) => pastWork(season, c));
  const K = season.ceiling;
  const sums = nitrogenSums(season);
  const lastYear = season.year[season.days - 1];
  // Day by day only where twelve-month windows can differ from the season's sum.
  const windows = season.days > 365 || season.scenario.cells.some((cell) => cell.pastNitrogen.length > 0);
  const dropNitrogen = (s: CellState, g: number, first: number, last: number): void => {
    for (let y = 0; y <= lastYear; y++) {
      const kg = sums[g][y][last + 1] - sums[g][y][first];
      s.nitrogen += kg;
      s.nitrogenByYear[y] += kg;
    }
    if (!windows) return;
    for (let t = first; t <= last; t++) s.deposits.push(t, season.groups[g].nitrogen[t] / season.cells[s.cell].areaHa);
  };
  const followGap = figures(season, "follow-window", "first");

  const grow = (s: CellState, to: number): void => {
    const rates = season.cells[s.cell].rates;
    s.cover = grownCover(s.cover, rates[to] - rates[s.day], K);
    s.day = to;
  };
  const morning = (s: CellState): void => {
    if (s.day >= season.days) return;
    if (s.lots.length > 0 && s.day >= s.opens) joinLots(season, s);
    if (s.walk < season.walks.length && season.walks[s.walk] === s.day) {
      for (const hook of hooks.walk) hook(s, s.day);
      s.walk++;
    }
  };
  const advance = (s: CellState, day: number): void => {
    while (s.day < day) {
      let next = s.walk < season.walks.length ? Math.min(day, season.walks[s.walk]) : day;
      if (s.lots.length > 0 && s.opens > s.day && s.opens < next) next = s.opens;
      grow(s, next);
      morning(s);
    }
  };
  const graze = (s: CellState, g: number, first: number, last: number): void => {
    for (const hook of hooks.graze) hook(s, g, first, last);
    const { taken } = season.groups[g];
    const least = ground.leastStanding(s.cell, g);
    for (let t = first; t <= last; t++) {
      s.cover -= taken[t] / s.open;
      for (const hook of hooks.bite) hook(s, g, t);
      if (s.cover < least) s.cover = least;
      grow(s, t + 1);
      morning(s);
    }
    s.lastGrazed = last;
    s.grazedThisSeason = true;
  };
  const work = (s: CellState, g: number, first: number, last: number): void => {
    const strip = season.scenario.groups[g].strip;
    if (!strip) throw new Error(`${season.groups[g].name} has no strip`);
    const days = last - first + 1;
    const area = Math.ceil(days / strip.days) * strip.areaHa;
    for (const hook of hooks.work) hook(s, g, first, last, area);
    const pig = season.groups[g].pig;
    const opens = last + 1 + (pig ? ground.pigsInterval : ground.birdsInterval)(s.cell, g);
    s.opens = s.lots.length > 0 ? Math.max(s.opens, opens) : opens;
    for (let from = first; from <= last; from += 7) {
      const to = Math.min(from + 6, last);
      advance(s, from);
      const n = Math.floor((to - first) / strip.days) - Math.ceil((from - first) / strip.days) + 1;
      if (n > 0) splitLot(season, s, g, from, to, n * strip.areaHa, ground, hooks.lot);
    }
    advance(s, last + 1);
    s.worked.push({ last, area, kind: season.scenario.groups[g].kind });
    if (pig) {
      const head = season.scenario.groups[g].head;
      if ((head * strip.days) / strip.areaHa >= ground.openedFrom(s.cell, g)) s.opened += Math.floor(days / strip.days) * strip.areaHa;
    }
  };
  return {
    season,
    fresh: (cell) => freshState(season, cell, past[cell]),
    reset: (s) => resetState(season, s, past[s.cell]),
    advance,
    stay(s, g, first, last) {
      advance(s, first);
      for (const hook of hooks.enter) hook(s, g, first, last);
      if (season.scenario.groups[g].strip) work(s, g, first, last);
      else graze(s, g, first, last);
      s.lastOf[g] = last;
      dropNitrogen(s, g, first, last);
    },
    probe(s, g, first, last) {
      s.day = first;
      s.cover = K;
      s.lastGrazed = null;
      s.grazedThisSeason = true;
      const { leader } = season.groups[g];
      if (leader >= 0) s.lastOf[leader] = first - followGap(s.cell, g);
      for (const hook of hooks.enter) hook(s, g, first, last);
      if (!season.scenario.groups[g].strip) {
        for (const hook of hooks.graze) hook(s, g, first, last);
        for (let t = first; t <= last; t++) for (const hook of hooks.bite) hook(s, g, t);
      }
      return { money: s.money, over: s.over };
    },
    cut(s, day, byOwner, makesHay) {
      // Mown once is mown, whoever asks again.
      if (s.cuts.length > 0 && s.cuts[s.cuts.length - 2] === day) return;
      if (s.day > day) {
        // Nobody mows under feet, be it the owner's cut or the planner's.
        for (const hook of hooks.mow) hook(s, day, byOwner, makesHay);
        s.over += 10;
        s.cuts.push(day, s.open);
        return;
      }
      advance(s, day);
      grow(s, day + 1);
      for (const hook of hooks.mow) hook(s, day, byOwner, makesHay);
      const stubble = ground.stubble(s.cell, -1);
      if (makesHay) s.hayMade += hayMadeKg(s.cover, stubble, s.open, ground.makingLoss(s.cell, -1) / 100, season.scenario.hay.dryMatter);
      s.cuts.push(day, s.open);
      if (s.cover > stubble) s.cover = stubble;
      morning(s);
    },
    finish(s) {
      advance(s, season.days);
      for (const hook of hooks.close) hook(s);
    },
  };
}

function pastWork(season: Season, cell: number): WorkedUse[] {
  const { past, areaHa } = season.scenario.cells[cell];
  return past
    .filter((use) => use.by === "pigs" || (use.by !== "hay" && use.by !== "litter" && isBird(use.by)))
    .map((use) => ({ last: dayNumber(use.lastDay) - season.firstDay, area: use.share * areaHa, kind: use.by }));
}

/** The back fence comes down: all ground of the cell is one again, at its mean cover. */
function joinLots(season: Season, s: CellState): void {
  const { rates, areaHa } = season.cells[s.cell];
  let mass = s.cover * s.open;
  for (const lot of s.lots) mass += grownCover(lot.cover, Math.max(0, rates[s.day] - rates[lot.from]), season.ceiling) * lot.area;
  s.cover = mass / areaHa;
  s.open = areaHa;
  s.lots.length = 0;
  s.pigLots = 0;
}

function splitLot(season: Season, s: CellState, g: number, from: number, to: number, wanted: number, ground: Ground, asked: Hooks<"lot">): void {
  const group = season.groups[g];
  let taken = 0;
  if (group.bird) for (let t = from; t <= to; t++) taken += group.taken[t];
  for (const hook of asked) hook(s, g, from, wanted, taken);
  const area = Math.min(wanted, s.open);
  if (area <= 0) return;
  const cover = group.pig ? Math.min(s.cover, ground.pigCover(s.cell, g)) : Math.max(Math.min(s.cover, ground.leastStanding(s.cell, g)), s.cover - taken / area);
  s.lots.push({ area, cover, from: to + 1, byPigs: group.pig });
  s.open -= area;
  if (s.open < 1e-12) s.open = 0;
  if (group.pig) s.pigLots++;
  else s.scratched += area;
}

/** Sums of a group's nitrogen before a day, by calendar year of the season. */
function nitrogenSums(season: Season): Float64Array[][] {
  return season.groups.map((group) =>
    [0, 1, 2].map((year) => {
      const sums = new Float64Array(season.days + 1);
      for (let t = 0; t < season.days; t++) sums[t + 1] = sums[t] + (season.year[t] === year ? group.nitrogen[t] : 0);
      return sums;
    }),
  );
}
