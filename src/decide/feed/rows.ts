import type { ModelRow } from "../../programme/solver.js";
import { grassWish } from "../../programme/rules/grass-in-hand.js";
import type { Columns, Layout } from "./layout.js";
import { coverOn } from "./ways.js";

const KG = 1000;

/** What comes to a moment goes on from it; the stands of the first morning are there. */
export function momentRows({ ways: { ways, moments }, grounds }: Layout): readonly ModelRow[] {
  const own = moments.map(() => ({ columns: [] as number[], values: [] as number[] }));
  ways.forEach((way, i) => {
    own[way.from]!.columns.push(i);
    own[way.from]!.values.push(1);
    if (way.to === null) return;
    own[way.to]!.columns.push(i);
    own[way.to]!.values.push(-1);
  });
  return moments.map(({ ground, stand, day }, m) => {
    const area = stand === null ? 0 : grounds[ground]!.stands[stand]!.areaHa;
    return { name: `ground ${ground}, day ${day}`, least: area, most: area, ...own[m]! };
  });
}

/** Grass taken in a week from ground with one door is eaten by groups that may pass it. */
export function supplyRows({ ways: { ways }, doors, doorOf, weeks }: Layout, at: Columns): readonly ModelRow[] {
  return doors.flatMap((groups, door) => weeks.map((_, w) => {
    const own = ways.flatMap((way, i) => (way.kind === "graze" && way.week === w && doorOf[way.ground] === door ? [i] : []));
    const columns = [...own, ...groups.map((g) => at.eat(door, g, w))];
    return { name: `week ${w}: grass of door ${door}`, least: 0, most: 0, columns, values: [...own.map((i) => ways[i]!.taken / KG), ...groups.map(() => -1)] };
  }));
}

/** Each group is fed each week: grass, hay in the yard, or hay that is given. By group, then by week. */
export function needRows({ season, doors, needs, weeks }: Layout, at: Columns): readonly ModelRow[] {
  return needs.flatMap((byWeek, g) => weeks.map((_, w) => {
    const { takenT, outDays } = byWeek[w]!;
    const daily = outDays > 0 ? takenT / outDays : 0;
    const eats = doors.flatMap((groups, door) => (groups.includes(g) ? [at.eat(door, g, w)] : []));
    return { name: `${season.groups[g]!.name}, week ${w}: fed`, least: takenT, most: takenT, columns: [...eats, at.hay(g, w), at.given(g, w)], values: [...eats.map(() => 1), daily, daily] };
  }));
}

/** Hay in store, made and fed against what winter needs; what is fed on days that the owner's own dates keep animals in is fixed. */
export function storeRow({ season, ways: { ways }, needs, weeks }: Layout, at: Columns): ModelRow {
  const { inStoreKg, winterNeedKg } = season.scenario.hay;
  const fixed = needs.flat().reduce((sum, need) => sum + need.fixedHayKg, 0);
  const cuts = ways.flatMap((way, i) => (way.hay > 0 ? [i] : []));
  const fed = needs.flatMap((byWeek, g) => weeks.map((_, w) => ({ column: at.hay(g, w), kg: byWeek[w]!.hayDayKg })));
  return {
    name: "hay", least: (winterNeedKg - inStoreKg + fixed) / KG, most: Infinity,
    columns: [at.short, ...cuts, ...fed.map(({ column }) => column)], values: [1, ...cuts.map((i) => ways[i]!.hay / KG), ...fed.map(({ kg }) => -kg / KG)],
  };
}

/** Hay given besides, by calendar month: none, unless somebody asks what a tonne more would be worth. */
export function givenRows({ season, needs, weeks, months }: Layout, at: Columns): readonly ModelRow[] {
  return months.map((month) => {
    const own = needs.flatMap((byWeek, g) => weeks.flatMap(({ first }, w) => (season.month[first] === month ? [{ column: at.given(g, w), kg: byWeek[w]!.hayDayKg }] : [])));
    return { name: `hay given in month ${month + 1}`, least: -Infinity, most: 0, columns: own.map(({ column }) => column), values: own.map(({ kg }) => kg / KG) };
  });
}

/** Days of grass ahead on each weekly walk, against the wish. */
export function walkRows({ season, ways: { ways, moments }, grounds, walks }: Layout, at: Columns): readonly ModelRow[] {
  return walks.map((t, i) => {
    const daily = season.grazersTaken[t]! / KG;
    const standing = ways.flatMap((way, column) => {
      const ground = grounds[way.ground]!;
      const from = moments[way.from]!;
      if (from.day > t || way.day <= t || !ground.like.open[t] || !ground.grazed) return [];
      const above = coverOn(season, ground, from, t) - ground.figures.residual;
      return above > 0 ? [{ column, above }] : [];
    });
    const columns = [...standing.map(({ column }) => column), at.walk(i)];
    return { name: `walk on day ${t}`, least: daily * grassWish(season, t), most: Infinity, columns, values: [...standing.map(({ above }) => above / KG), daily] };
  });
}
