/** A farm laid out by day: figures worked by hand beside, growth by the logistic closed form. */
import { describe, expect, it } from "vitest";
import { AWAY, FREE, YARD } from "../../src/season/season.js";
import type { Span } from "../../src/quantity/calendar.js";
import { buildSeason } from "../../src/season/build-season.js";
import { cell, EVEN_GROWTH, tinyFarm } from "../fixtures/tiny-farm.js";
import { bare, cows, ewes, hens, pigs } from "../rules/animals.js";
import { day } from "../rules/grid.js";
import { draftOf } from "./drafts.js";

const spans = (...days: readonly (readonly [number, number])[]): Span[] => days.map(([first, last]) => ({ firstDay: day(first), lastDay: day(last) }));
const words = (flags: ArrayLike<number>): string => Array.from(flags).join("");

describe("a group's days", () => {
  const bull = cows({ name: "Bull", head: 1, weightKg: 900, gainKgPerDay: 0, runsWith: { with: "Cows", days: spans([3, 4]) }, here: spans([1, 6]) });
  const season = buildSeason(tinyFarm({
    days: 8, cells: [cell("A"), cell("B", { notFor: ["Ewes"] })],
    groups: [
      cows({ gainKgPerDay: 1, here: spans([1, 3], [5, 9]), out: { firstDay: day(2), lastDay: day(7) }, young: { head: 2, weightKg: 100, gainKgPerDay: 1, lastDay: day(5) } }),
      bull, ewes({ needsTow: true, peopleToMove: 2 }), hens({ follows: "Cows" }),
    ],
    more: {
      people: [
        { name: "Owner", tows: true, minutesByWeekday: Array<number>(7).fill(100), minutesByDay: { [day(2)]: 40 }, away: spans([4, 4]) },
        { name: "Helper", tows: false, minutesByWeekday: [0, 0, 0, 0, 0, 60, 60], minutesByDay: {}, away: [] },
      ],
      holds: [{ name: "Held", days: spans([2, 3])[0], group: "Ewes", cell: "A", yard: null, cut: null }, { name: "In", days: spans([6, 6])[0], group: "Ewes", cell: null, yard: "Yard", cut: null }],
      housingOrders: [{ name: "Order", known: day(1), kinds: ["layers"], ...spans([5, 6])[0] }],
    },
  }));
  const [herd, alone, flock, layers] = season.groups;

  it("are its own while it is here, and not those on which it runs with another", () => {
    expect([herd, alone, flock, layers].map((g) => words(g.present))).toEqual(["11101111", "11001100", "11111111", "11111111"]);
    expect([herd, alone, flock, layers].map((g) => words(g.arrives))).toEqual(["10001000", "10001000", "10000000", "10000000"]);
  });

  it("are out by the group's own dates, and never under an order", () => {
    expect([herd, layers].map((g) => words(g.out))).toEqual(["01101110", "11110011"]);
  });

  it("count weight from each arrival, young until they are weaned, and the bull on the days he runs with them", () => {
    // 5 x 600 + 2 x 100 on day 1, a kilogram more each a day; day 5 begins again; weaned after day 5; the bull's 900 on day 3
    expect(Array.from(herd.liveWeight)).toEqual([3200, 3207, 3214 + 900, 0, 3200, 3005, 3010, 3015]);
    expect(herd.intake[0]).toBeCloseTo(5 * 600 * 0.025 + 2 * 100 * 0.015, 9);
    expect(herd.intake[2]).toBeCloseTo(5 * 602 * 0.025 + 2 * 102 * 0.015 + 900 * 0.025, 9);
    expect(herd.taken[2]).toBeCloseTo(1.15 * herd.intake[2], 9);
    expect(herd.nitrogen[2]).toBeCloseTo(6 * 0.227 + 2 * 0.023, 9);
    expect(herd.litres[2]).toBe(360);
    // 88 % dry matter, a tenth lost in feeding, a twentieth in store
    expect(herd.hayKg[0]).toBeCloseTo(herd.intake[0] / (0.88 * 0.9 * 0.95), 9);
    expect(alone.liveWeight[2]).toBe(0);
  });

  it("can be moved when enough are at home and somebody tows", () => {
    // 1 May 2027 is a Saturday: the helper is there on days 1, 2 and 8; on day 4 nobody is
    expect(words(flock.moveOk)).toBe("11000001");
    expect(words(herd.moveOk)).toBe("11101111");
    expect(words(layers.stepOk)).toBe("11101111");
  });

  it("are held, and keep to their cells", () => {
    expect(Array.from(flock.held)).toEqual([FREE, 0, 0, FREE, FREE, YARD, FREE, FREE]);
    expect([herd, flock].map((g) => words(g.mayEnter))).toEqual(["11", "10"]);
    expect(layers.leader).toBe(0);
    expect(season.groups.map((g) => [g.grazer, g.bird, g.pig])).toEqual([[true, false, false], [true, false, false], [true, false, false], [false, true, false]]);
  });

  it("ask of grass what each grazer takes by itself while it is out", () => {
    // day 1: cows not yet out; bull and ewes. Day 3: cows and bull. Day 8: cows no longer out, bull gone
    const each = (kg: number): number => 1.15 * kg;
    expect(season.grazersTaken[0]).toBeCloseTo(each(900 * 0.025 + 1400 * 0.025), 9);
    expect(season.grazersTaken[2]).toBeCloseTo(each(5 * 602 * 0.025 + 2 * 102 * 0.015 + 900 * 0.025 + 1400 * 0.025), 9);
    expect(season.grazersTaken[7]).toBeCloseTo(each(1400 * 0.025), 9);
  });

  it("leave people their chores and minutes", () => {
    expect(Array.from(season.minutesAtHome)).toEqual([160, 100, 100, 0, 100, 100, 100, 160]);
    // morning 30, dusk 10, 5 a group on its own feet: four; on day 3 the bull runs along; on day 4 the cows are away; from day 7 the bull is
    expect(Array.from(season.chores)).toEqual([60, 60, 55, 50, 60, 60, 55, 55]);
  });

  it("start a draft in the yard, or nowhere", () => {
    expect(Array.from(draftOf(season).place[1])).toEqual([YARD, YARD, AWAY, AWAY, YARD, YARD, AWAY, AWAY]);
  });
});

describe("a cell's days", () => {
  const K = 5000;
  /** Logistic growth at 50 kg a day: rate 4 x 50 / 5000 = 0.04 a day. */
  const grown = (cover: number, days: number): number => K / (1 + (K / cover - 1) * Math.exp(-0.04 * days));
  const season = buildSeason(tinyFarm({
    days: 8, groups: [cows()],
    cells: [
      cell("A", { coverKgPerHa: 2000, coverDate: day(-4) }), cell("B", { coverKgPerHa: 2000, coverDate: day(4), ours: spans([4, 6])[0] }),
      cell("C", { closed: [{ reason: "hay", ...spans([3, 5])[0] }], growthByMonth: EVEN_GROWTH.map((g) => g * 2) }),
      cell("D", { past: [{ by: "sheep", lastDay: day(-9), share: 1 }, { by: "cattle", lastDay: day(-2), share: 0.1 }, { by: "layers", lastDay: day(0), share: 1 }], field: "Far" }),
      cell("E", { mow: false, closed: [{ reason: "hay", ...spans([3, 5])[0] }] }),
    ],
    more: { holds: [{ name: "Top", days: spans([2, 2])[0], group: null, cell: "D", yard: null, cut: "topping" }] },
  }));

  it("begin at what has grown since it was walked, or stand still until it is", () => {
    expect(season.cells[0].startCover).toBeCloseTo(grown(2000, 5), 6);
    expect(season.cells[1].startCover).toBeCloseTo(2000, 9);
    expect(Array.from(season.cells[1].rates)).toEqual([0, 0, 0, 0, 0.04, 0.08, 0.12, 0.16, 0.2].map((rate) => expect.closeTo(rate, 12)));
    expect(season.cells[2].rates[8]).toBeCloseTo(8 * 0.08, 12);
  });

  it("are in hand, open and cut by the owner's dates", () => {
    expect(season.cells.map((c) => words(c.inHand))).toEqual(["11111111", "00011100", "11111111", "11111111", "11111111"]);
    expect(season.cells.map((c) => words(c.open))).toEqual(["11111111", "00011100", "11000111", "11111111", "11000111"]);
    expect(season.cells.map((c) => c.ownerCuts)).toEqual([[], [], [{ day: 4, makesHay: true }], [{ day: 1, makesHay: false }], []]);
  });

  it("know when grazers were last there", () => {
    // the first day is 1, so day -2 is three days before it
    expect(season.cells.map((c) => c.lastGrazed)).toEqual([null, null, null, -3, null]);
  });

  it("lie in fields that are so many minutes away", () => {
    // loading 10, 100 and 200 m there and back at 50 m a minute
    expect(season.haulMinutes.map((fields) => Array.from(fields))).toEqual([[14, 18]]);
    expect(season.cells.map((c) => c.field)).toEqual([0, 0, 0, 1, 0]);
  });

  it("are walked once a week, first when a week has gone", () => {
    expect(season.walks).toEqual([7]);
    expect(buildSeason(tinyFarm({ days: 22, cells: [cell("A")], groups: [cows()] })).walks).toEqual([7, 14, 21]);
  });
});

describe("more grass is never worse", () => {
  const farm = (cover: number) => tinyFarm({ days: 40, cells: [bare("A", cover, { growthByMonth: EVEN_GROWTH, areaHa: 0.4 })], groups: [cows(), pigs()] });
  /** The mornings' cover through cows, pigs on strips, a cut and cows again. */
  function mornings(cover: number): number[] {
    const draft = draftOf(farm(cover));
    const { simulator, season } = draft;
    const s = simulator.fresh(0);
    const covers: number[] = [];
    const on = (to: number): void => {
      for (let t = s.day; t <= to; t++) {
        simulator.advance(s, t);
        covers.push(s.cover);
      }
    };
    on(3);
    simulator.stay(s, 0, 4, 6);
    on(9);
    simulator.stay(s, 1, 10, 16);
    on(20);
    simulator.cut(s, 21, true, false);
    on(27);
    simulator.stay(s, 0, 28, 30);
    on(season.days - 1);
    return covers;
  }

  it("on any morning, whatever was done alike", () => {
    const covers = [1200, 1700, 1701, 2200, 3000, 4200, 4999].map(mornings);
    for (let i = 1; i < covers.length; i++) covers[i].forEach((cover, t) => expect(cover).toBeGreaterThanOrEqual(covers[i - 1][t] - 1e-9));
  });

  it("and grows in two steps as in one", () => {
    const draft = draftOf(farm(2000));
    const [a, b] = [draft.simulator.fresh(0), draft.simulator.fresh(0)];
    draft.simulator.advance(a, 30);
    for (let t = 1; t <= 30; t++) draft.simulator.advance(b, t);
    expect(a.cover).toBeCloseTo(b.cover, 6);
    // 2,000 after 30 days at 0.04: the closed form
    expect(a.cover).toBeCloseTo(5000 / (1 + 1.5 * Math.exp(-1.2)), 6);
  });
});
