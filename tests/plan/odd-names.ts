import { fc } from "@fast-check/vitest";
import type { Scenario } from "../../src/farm/scenario.js";
import { planOfStandings, type Standing } from "../../src/plan/standings.js";
import type { Plan } from "../../src/plan/plan.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";

/** Names that spreadsheets have their own idea of, and letters that files may lose. */
const CELLS = ["H1", "1-2", "3/4", "MAR1", "1E3", "007", "10", "=1+1", "+3", "-1", "@A1", "'8", "'=9", "2.50", "10%", "(5)", "£6", "5pm", "12:30", "Ж1", "🐄1", "é1", "1st", "A1:B2", "x1'", "＝2", "=cmd|'/c'!A1"];
const WORDS = ["Cows", "True", "FALSE", "Young cows", "Коровы", "🐄🐖", "<script>alert(1)</script>", 'The "red" ones', "a, b; c", "=SUM(A1:B2)", "@home", "-x", "+y", "Hens & cocks", "May 5", "1 000", "yard one", "A", "B", "A B", "hay", "'s Morgens", "e\u0301ton", "x".repeat(60)];

const letters = fc.string({ unit: "grapheme", minLength: 1, maxLength: 60 });
const fits = (name: string): boolean => name.trim() === name && name !== "" && !/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u.test(name);
const word = fc.oneof(fc.constantFrom(...WORDS), letters.filter(fits));
const groupName = word.filter((name) => !["cut", "cuts"].includes(name.toLowerCase()));
const yardName = word.filter((name) => !name.includes(">") && !["yard", "away", "nobody", "cut"].includes(name.toLowerCase()));
const cellName = fc.oneof(fc.constantFrom(...CELLS), fc.tuple(letters, fc.nat(999)).map(([text, n]) => `${text}${n}`.replaceAll(/[>,;"\s]/g, "")).filter(fits));
const value = (name: string): string => (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(name) ? String(Number(name)) : name);

/** A farm that the reader of farm files takes, with names as odd as it takes. */
export const oddFarm: fc.Arbitrary<Scenario> = fc
  .record({
    places: fc.tuple(fc.array(cellName, { minLength: 2, maxLength: 6 }), fc.array(yardName, { minLength: 1, maxLength: 2 })),
    groups: fc.uniqueArray(groupName, { minLength: 1, maxLength: 3 }),
    firstDay: fc.constantFrom("2027-04-25", "2027-12-20", "2028-02-20", "2031-09-28"),
    days: fc.integer({ min: 7, max: 40 }),
  })
  .filter(({ places }) => new Set(places.flat().map(value)).size === places.flat().length)
  .map(({ places: [cells, yards], groups, firstDay, days }) => {
    const letter = ["C", "A", "B"];
    const farm = tinyFarm({ firstDay, days, cells: cells.map((name) => cell(name)), groups: groups.map((name, i) => group(name, { letter: letter[i]!, yard: yards[0]! })) });
    return { ...farm, yards: yards.map((name) => ({ name, costPerDay: 0, room: null, open: [farm.season] })) };
  });

/** Any plan in which each group stands somewhere, or is away before its first and after its last day; and cuts. */
export function planOn(farm: Scenario, days: readonly string[]): fc.Arbitrary<Plan> {
  const places = [...farm.cells.map(({ name }) => ({ cell: name, yard: null })), ...farm.yards.map(({ name }) => ({ cell: null, yard: name }))];
  const runs = fc.array(fc.record({ place: fc.option(fc.nat(places.length - 1), { freq: 6 }), nights: fc.integer({ min: 1, max: 12 }) }), { minLength: 40, maxLength: 40 });
  const cuts = fc.array(fc.record({ cell: fc.constantFrom(...farm.cells.map(({ name }) => name)), cut: fc.constantFrom("hay" as const, "topping" as const), day: fc.constantFrom(...days) }), { maxLength: 6 });
  return fc.tuple(fc.tuple(...farm.groups.map(() => runs)), cuts).map(([byGroup, mown]) => {
    const standings = byGroup.flatMap((group, i) =>
      group.flatMap(({ place, nights }) => Array<number | null>(nights).fill(place)).slice(0, days.length)
        .flatMap((place, d): Standing[] => (place === null ? [] : [{ group: farm.groups[i]!.name, ...places[place]!, day: days[d]! }])));
    const once = mown.filter((cut, i) => mown.findIndex((other) => JSON.stringify(other) === JSON.stringify(cut)) === i);
    return planOfStandings(standings, once, farm);
  });
}
