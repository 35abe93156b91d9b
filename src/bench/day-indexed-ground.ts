import { useOf } from "../farm/scenario.js";
import { askedIn, farmFigure, figures } from "../programme/half.js";
import { grassWish } from "../programme/rules/grass-in-hand.js";
import { usualRest } from "../programme/rules/rest-period.js";
import { grownCover } from "../science/growth.js";
import type { Season } from "../season/season.js";
import { priceOf, type Writing } from "./day-indexed-writing.js";
import { followRows, groundTaken, holdingRows, nitrogenRows, stripRows, wantRows } from "./day-indexed-wants.js";

/** Covers at which the growth law is touched from above, kg DM/ha. */
const TOUCHES = [1500, 2200, 3000, 4200];

/** Kilograms of one unit of a cover column: solvers like figures near one. */
const TONNE = 1000;

/** Grass, rests, strips, nitrogen and wants of every cell. Cover columns stand for the morning, in t DM/ha. */
export function groundRows(w: Writing): void {
  const covers = w.season.cells.map((_, c) => coverRows(w, c));
  w.season.cells.forEach((_, c) => {
    entryRows(w, c, covers[c]);
    restRows(w, c);
    stripRows(w, c);
    followRows(w, c);
    nitrogenRows(w, c);
    wantRows(w, c);
    closingRow(w, c, covers[c]);
  });
  grassRows(w, covers);
  holdingRows(w);
}

/** Groups that graze a cell's open ground. */
const grazersOf = (season: Season, c: number): number[] => [...season.groups.keys()].filter((g) => season.groups[g].grazer && season.groups[g].mayEnter[c]);

function coverRows({ season, b, stand }: Writing, c: number): number[] {
  const { areaHa, rates, startCover, ownerCuts } = season.cells[c];
  const K = season.ceiling;
  const [residual, least, stubble] = [figures(season, "residual-cover", "grazers"), figures(season, "demand-met", "least-standing"), figures(season, "hay-stock", "stubble")];
  const cover = Array.from({ length: season.days + 1 }, (_, t) => b.column(0, t === 0 ? startCover / TONNE : K / TONNE));
  const graze = grazersOf(season, c);
  const left = (g: number): number => Math.max(askedIn(season, "residual-cover", c, g) ? residual(c, g) : 0, askedIn(season, "demand-met", c, g) ? least(c, g) : 0);
  for (let t = 0; t < season.days; t++) {
    const eaten = graze.map((g) => [stand(g, c, t), season.groups[g].taken[t] / areaHa / TONNE] as const);
    b.atLeast(`left ${c} ${t}`, 0, [[cover[t], 1], ...graze.map((g, i) => [stand(g, c, t), -eaten[i][1] - left(g) / TONNE] as const)]);
    for (const at of TOUCHES) {
      const rate = rates[t + 1] - rates[t];
      const grown = grownCover(at, rate, K);
      const slope = (grown / at) ** 2 * Math.exp(-rate);
      b.atMost(`grown ${c} ${t} ${at}`, (grown - slope * at) / TONNE, [[cover[t + 1], 1], [cover[t], -slope], ...eaten.map(([column, kg]) => [column, slope * kg] as const)]);
      if (rate === 0) break;
    }
    if (ownerCuts.some((cut) => cut.day === t)) b.atMost(`cut ${c} ${t}`, stubble(c, -1) / TONNE, [[cover[t + 1], 1]]);
  }
  return cover;
}

/** Grass that must stand when grazers or pigs enter; less, at a price, while the cell has not been grazed this spring. */
function entryRows({ season, b, stand, start }: Writing, c: number, cover: readonly number[]): void {
  const [full, first, firstDays, pigs, open] = ["grazers", "first-pass", "first-pass-days", "pigs"].map((key) => figures(season, "entry-cover", key)).concat(figures(season, "worked-ground", "least-open"));
  const price = priceOf(season, "entry-cover", "first-pass-price");
  const asked = (g: number): boolean => askedIn(season, "entry-cover", c, g);
  const graze = grazersOf(season, c).filter(asked);
  const pig = [...season.groups.keys()].filter((g) => season.groups[g].pig && season.groups[g].mayEnter[c] && asked(g));
  const lower = Math.max(0, ...graze.map((g) => full(c, g) - first(c, g))) / TONNE;
  const springDays = Math.max(0, ...graze.map((g) => firstDays(c, g)));
  // Ground shut behind pigs and birds is not charged for: at least so much is open.
  const openHa = season.cells[c].areaHa * (askedIn(season, "worked-ground", c, -1) ? Math.min(1, open(c, -1) / 100) : 0);
  const money = openHa * Math.min(...graze.map((g) => price(c, g)), Infinity);
  let used = -1;
  for (let t = 0; t < season.days; t++) {
    const short = graze.length > 0 && t < springDays ? b.column(Number.isFinite(money) ? money : 0, lower) : -1;
    if (short >= 0) {
      const before = used;
      used = b.column(0, t === 0 ? 0 : 1);
      b.atLeast(`grazed ${c} ${t}`, 0, [[used, 1], [before, -1]]);
      for (const g of graze) b.atLeast(`grazed ${c} ${t} ${g}`, 0, [[used, 1], [stand(g, c, t - 1), -1]]);
      b.atMost(`first pass ${c} ${t}`, lower, [[short, 1], [used, lower]]);
    }
    if (graze.length > 0) b.atLeast(`entry ${c} ${t}`, 0, [[cover[t], 1], [short, 1], ...graze.map((g) => [start(g, c, t), -full(c, g) / TONNE] as const)]);
    for (const g of pig) b.atLeast(`entry ${c} ${t} ${g}`, 0, [[cover[t], 1], [start(g, c, t), -pigs(c, g) / TONNE]]);
  }
}

/** The floor as one row a day; the usual rest by a clock of days since the last grazing. */
function restRows({ season, b, stand, start }: Writing, c: number): void {
  const graze = grazersOf(season, c).filter((g) => askedIn(season, "rest-period", c, g));
  if (graze.length === 0) return;
  const floors = figures(season, "rest-period", "floor");
  const usual = usualRest(season);
  const price = priceOf(season, "rest-period", "price");
  const floor = Math.min(...graze.map((g) => floors(c, g)));
  const money = Math.min(...graze.map((g) => price(c, g)));
  const longest = Math.max(...graze.flatMap((g) => Array.from({ length: season.days }, (_, t) => usual(c, g, t))));
  const { lastGrazed } = season.cells[c];
  let clock = -1;
  for (let t = 0; t < season.days; t++) {
    const begins = graze.map((g) => [start(g, c, t), 1] as const);
    if (lastGrazed !== null && t - lastGrazed - 1 < floor) b.atMost(`floor ${c} ${t}`, 0, begins);
    if (t >= floor) b.atMost(`floor ${c} ${t}`, 1, graze.flatMap((g) => [[stand(g, c, t - floor), 1] as const, ...Array.from({ length: floor }, (_, k) => [start(g, c, t - k), 1] as const)]));
    if (money <= 0) continue;
    const before = clock;
    clock = b.column(0, t === 0 && lastGrazed !== null ? Math.min(longest, -lastGrazed - 1) : longest);
    if (t > 0) b.atMost(`clock ${c} ${t}`, 1, [[clock, 1], [before, -1]]);
    if (t > 0) b.atMost(`clock reset ${c} ${t}`, longest, [[clock, 1], ...graze.map((g) => [stand(g, c, t - 1), longest] as const)]);
    b.atMost(`rest ${c} ${t}`, 0, [...graze.map((g) => [start(g, c, t), usual(c, g, t)] as const), [clock, -1], [b.column(money, longest), -1]]);
  }
}

/** Cover wished at the season's end, on ground that no strip has touched. */
function closingRow(w: Writing, c: number, cover: readonly number[]): void {
  const { season, b } = w;
  const [wish, price] = [figures(season, "closing-cover", "wish")(c, -1), priceOf(season, "closing-cover", "price")(c, -1)];
  if (!season.cells[c].inHand[season.days - 1] || price <= 0) return;
  const { areaHa } = season.cells[c];
  const worked = season.groups.flatMap((_, g) => groundTaken(w, g, c)).map(([column, ha]) => [column, (ha * wish) / TONNE] as const);
  b.atLeast(`closing ${c}`, (wish * areaHa) / TONNE, [[b.column(price, Infinity), 1], [cover[season.days], areaHa], ...worked]);
}

/** Days of grass ahead on each weekly walk. */
function grassRows({ season, b }: Writing, covers: readonly (readonly number[])[]): void {
  if (useOf(season.scenario, "grass-in-hand", null, null) !== "charged") return;
  const price = farmFigure(season, "grass-in-hand", "price");
  const [residual, stubble] = [figures(season, "residual-cover", "grazers"), figures(season, "hay-stock", "stubble")];
  for (const t of season.walks) {
    const daily = season.grazersTaken[t];
    if (daily <= 0) continue;
    let counted = grassWish(season, t) * daily;
    const grass = season.cells.flatMap((cell, c) => {
      if (!cell.open[t] || grazersOf(season, c).length === 0) return [];
      // A straight line over what stands above the residual, from the lowest cover that this cell can have.
      const left = residual(c, -1);
      const lowest = Math.min(left, cell.startCover, cell.ownerCuts.length > 0 ? stubble(c, -1) : left, askedIn(season, "residual-cover", c, -1) ? left : 0);
      const slope = (cell.areaHa * (season.ceiling - left)) / (season.ceiling - lowest);
      counted += slope * lowest;
      return [[covers[c][t], slope * TONNE] as const];
    });
    b.atLeast(`grass ${t}`, counted, [...grass, [b.column(price, Infinity), daily]]);
  }
}
