import { useOf, WANTS, type Want } from "../farm/scenario.js";
import { stripsOnce } from "../programme/bound/cell-terms.js";
import { farmFigure, figures } from "../programme/half.js";
import { priceOf, type Writing } from "./day-indexed-writing.js";

type Entry = readonly [column: number, value: number];

const DAYS_OF_WINDOW = 365;

/** A group's days in a cell, each with the same value. */
function daysIn({ season, stand }: Writing, g: number, c: number, value: (day: number) => number): Entry[] {
  return Array.from({ length: season.days }, (_, t) => [stand(g, c, t), value(t)] as const);
}

/** Ground that a strip group takes, ha, as positions begun: never less than it is. */
export function groundTaken(w: Writing, g: number, c: number): Entry[] {
  const { strip } = w.season.scenario.groups[g];
  if (!strip) return [];
  const begun = Array.from({ length: w.season.days }, (_, t) => [w.start(g, c, t), (strip.areaHa * (strip.days - 1)) / strip.days] as const);
  return [...daysIn(w, g, c, () => strip.areaHa / strip.days), ...begun];
}

/** Fresh ground of pigs and of birds, each counted once, where its rest is longer than the season. */
export function stripRows(w: Writing, c: number): void {
  const { season, b } = w;
  const { groups } = season.scenario;
  for (const kind of ["pig", "bird"] as const) {
    const own = [...groups.keys()].filter((g) => season.groups[g][kind] && groups[g].strip);
    if (own.length === 0 || !stripsOnce(season, c, own)) continue;
    const taken = own.flatMap((g) => daysIn(w, g, c, () => (groups[g].strip?.areaHa ?? 0) / (groups[g].strip?.days ?? 1)));
    b.atMost(`fresh ${kind} ${c}`, season.cells[c].areaHa, taken);
  }
}

/** A follower's stay costs when its leader was not there in the days before that count. */
export function followRows({ season, b, stand, start }: Writing, c: number): void {
  const [from, to, price] = [figures(season, "follow-window", "first"), figures(season, "follow-window", "last"), priceOf(season, "follow-window", "price")];
  season.groups.forEach(({ leader }, g) => {
    const ordered = season.scenario.housingOrders.some((order) => order.kinds.includes(season.scenario.groups[g].kind));
    if (leader < 0 || ordered || price(c, g) <= 0) return;
    for (let t = 0; t < season.days; t++) {
      if (start(g, c, t) < 0) continue;
      const behind = Array.from({ length: to(c, g) - from(c, g) + 1 }, (_, k) => [stand(leader, c, t - from(c, g) - k), -1] as const);
      b.atMost(`behind ${g} ${c} ${t}`, 0, [[start(g, c, t), 1], ...behind, [b.column(price(c, g), 1), -1]]);
    }
  });
}

/** Nitrogen over the ceiling of a cell: what is dropped in the season's first twelve months. */
export function nitrogenRows(w: Writing, c: number): void {
  const { season, b } = w;
  const { areaHa } = season.cells[c];
  const [most, price] = [figures(season, "nitrogen-ceiling", "cell")(c, -1), priceOf(season, "nitrogen-ceiling", "price")(c, -1)];
  if (price <= 0 || !Number.isFinite(most)) return;
  const dropped = season.groups.flatMap((group, g) => daysIn(w, g, c, (t) => (t < DAYS_OF_WINDOW ? group.nitrogen[t] / areaHa : 0)));
  b.atMost(`nitrogen ${c}`, most, [...dropped, [b.column(price * areaHa, Infinity), -1]]);
}

/** The same on the whole holding, by calendar year. */
export function holdingRows(w: Writing): void {
  const { season, b } = w;
  if (useOf(season.scenario, "nitrogen-ceiling", null, null) !== "charged") return;
  const most = farmFigure(season, "nitrogen-ceiling", "holding") * season.cells.reduce((sum, cell) => sum + cell.areaHa, 0);
  const price = farmFigure(season, "nitrogen-ceiling", "holding-price");
  if (!Number.isFinite(most)) return;
  for (let year = 0; year <= season.year[season.days - 1]; year++) {
    const dropped = season.groups.flatMap((group, g) => [...season.cells.keys()].flatMap((c) => daysIn(w, g, c, (t) => (season.year[t] === year ? group.nitrogen[t] : 0))));
    b.atMost(`holding ${year}`, most, [...dropped, [b.column(price, Infinity), -1]]);
  }
}

/** What is left undone of each want, as a share of the cell. */
export function wantRows(w: Writing, c: number): void {
  const { season, b } = w;
  const { areaHa } = season.cells[c];
  for (const want of WANTS) {
    const price = priceOf(season, "ground-wants", `${want}-price`)(c, -1);
    if (price <= 0 || !season.scenario.cells[c].wants.includes(want)) continue;
    const done = season.groups.flatMap((_, g) => doneBy(w, g, c, want)).map(([column, amount]) => [column, amount / areaHa] as const);
    b.atLeast(`${want} ${c}`, 1, [[b.column(price * areaHa, 1), 1], ...done]);
  }
}

/** Hectares of a want done by a group's days and starts. */
function doneBy(w: Writing, g: number, c: number, want: Want): Entry[] {
  const { season } = w;
  const { strip, head } = season.scenario.groups[g];
  if (want === "fertility") return daysIn(w, g, c, (t) => season.groups[g].nitrogen[t] / figures(season, "ground-wants", "fertility-target")(c, -1));
  if (!strip) return [];
  if (want === "scratching") return season.groups[g].bird ? groundTaken(w, g, c) : [];
  const opens = (head * strip.days) / strip.areaHa >= figures(season, "pig-pressure", "opened")(c, g);
  return season.groups[g].pig && opens ? daysIn(w, g, c, () => strip.areaHa / strip.days) : [];
}
