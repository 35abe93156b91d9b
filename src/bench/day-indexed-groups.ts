import { askedIn, figures } from "../programme/half.js";
import { YARD, type Season } from "../season/season.js";
import { priceOf, type Writing } from "./day-indexed-writing.js";

/** One place a group and day, one group a cell and day, and what begins a stay. */
export function placeRows({ season, b, stand, start }: Writing): void {
  season.groups.forEach((group, g) => {
    for (let t = 0; t < season.days; t++) {
      if (!group.present[t]) continue;
      b.row(`placed ${g} ${t}`, 1, 1, places(season).map((place) => [stand(g, place, t), 1]));
      const before = group.arrives[t] ? -1 : t - 1;
      for (const place of places(season)) {
        if (stand(g, place, t) >= 0) b.atMost(`start ${g} ${place} ${t}`, 0, [[stand(g, place, t), 1], [stand(g, place, before), -1], [start(g, place, t), -1]]);
      }
    }
  });
  if (season.groups.length < 2) return;
  season.cells.forEach((_, c) => {
    for (let t = 0; t < season.days; t++) b.atMost(`one group ${c} ${t}`, 1, season.groups.map((_g, g) => [stand(g, c, t), 1]));
  });
}

const places = (season: Season): number[] => [YARD, ...season.cells.keys()];

/** Haul columns by group, field and day: a group stands in a field in which it did not stand the day before. */
export function fieldRows({ season, tables, b, stand }: Writing): (group: number, field: number, day: number) => number {
  const fields = season.scenario.fields.map((_, f) => [...season.cells.keys()].filter((c) => season.cells[c].field === f));
  const hauls = season.groups.map((group, g) =>
    fields.map((cells, f) =>
      Int32Array.from(group.present, (present, t) => {
        if (!present || cells.every((c) => stand(g, c, t) < 0)) return -1;
        const haul = b.column(tables.haulMoney[g][f], 1);
        const before = group.arrives[t] ? -1 : t - 1;
        b.atMost(`haul ${g} ${f} ${t}`, 0, [...cells.map((c) => [stand(g, c, t), 1] as const), ...cells.map((c) => [stand(g, c, before), -1] as const), [haul, -1]]);
        return haul;
      }),
    ),
  );
  return (group, field, day) => hauls[group][field][day];
}

/** Minutes, kit, carted water, yards' room: what all groups use of a day, against what there is. Steps inside a stay are left out. */
export function dayRows({ season, tables, b, stand, start }: Writing, haul: (group: number, field: number, day: number) => number): void {
  tables.rows.forEach((used, r) => {
    for (let t = 0; t < season.days; t++) {
      const entries: [number, number][] = [];
      season.groups.forEach((_, g) => {
        for (const place of places(season)) {
          const index = t * tables.width + place + 1;
          entries.push([stand(g, place, t), used.stand?.[g][index] ?? 0], [start(g, place, t), used.start?.[g][index] ?? 0]);
        }
        season.scenario.fields.forEach((_f, f) => entries.push([haul(g, f, t), used.haul?.[g][f] ?? 0]));
      });
      if (Number.isFinite(used.row.limit[t])) b.atMost(`day ${r} ${t}`, used.row.limit[t], entries);
    }
  });
}

/** The longest stay of grazers, and the price of days beyond the usual; not asked from the first day of no growth on. */
export function stayRows({ season, b, stand }: Writing): void {
  const [nil, limit, price] = [figures(season, "stay-limit", "nil-growth"), figures(season, "stay-limit", "limit"), priceOf(season, "stay-limit", "price")];
  season.groups.forEach((group, g) => {
    if (!group.grazer) return;
    const usual = figures(season, "stay-limit", season.scenario.groups[g].kind);
    season.cells.forEach((cell, c) => {
      if (!askedIn(season, "stay-limit", c, g)) return;
      const still = cell.growth.findIndex((growth) => growth <= nil(c, g));
      const run = (t: number, days: number): (readonly [number, number])[] => Array.from({ length: days + 1 }, (_, k) => [stand(g, c, t - k), 1] as const);
      for (let t = 0; t < (still < 0 ? season.days : still); t++) {
        if (t >= limit(c, g)) b.atMost(`limit ${g} ${c} ${t}`, limit(c, g), run(t, limit(c, g)));
        if (t >= usual(c, g) && price(c, g) > 0) b.atMost(`usual ${g} ${c} ${t}`, usual(c, g), [...run(t, usual(c, g)), [b.column(price(c, g), 1), -1]]);
      }
    });
  });
}
