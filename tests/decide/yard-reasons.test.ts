/** A group that never leaves its yard is told why, where the farm's own figures say it. */
import { describe, expect, it } from "vitest";
import { yardReasons } from "../../src/decide/yard-reasons.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { buildSeason } from "../../src/season/build-season.js";
import { YARD } from "../../src/season/season.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";

/** What is said of a farm whose one group stands in the yard for the whole season. */
function reasonIn(scenario: Scenario): string {
  const season = buildSeason(scenario);
  const reasons = yardReasons(season, { place: [new Int16Array(season.days).fill(YARD)] });
  expect(reasons.length).toBe(1);
  return reasons[0]!;
}

const people = (minutes: number) => [{ name: "Owner", tows: true, minutesByWeekday: Array<number>(7).fill(minutes), minutesByDay: {}, away: [] }];

describe("yardReasons", () => {
  it("says nothing of a group that goes out", () => {
    const farm = tinyFarm({ cells: [cell("A1")], groups: [group("Cows")] });
    const season = buildSeason(farm);
    const place = new Int16Array(season.days).fill(YARD);
    place[3] = 0;
    expect(yardReasons(season, { place: [place] })).toEqual([]);
  });

  // chores 30 + 5; move 15 + set 30 + haul 10 + 100 m at half of 50 m/min, 4: 59 min beside the chores
  it("names the minutes when the way out takes longer than anybody has", () => {
    const short = tinyFarm({ cells: [cell("A1")], groups: [group("Cows")], more: { people: people(93) } });
    expect(reasonIn(short)).toContain("takes 59 min beside the day's chores, and never more than 58 min are left");
    const enough = tinyFarm({ cells: [cell("A1")], groups: [group("Cows")], more: { people: people(94) } });
    expect(reasonIn(enough)).toContain("cost more than the yard");
  });

  it("names the people when a move needs more than are ever at home", () => {
    const farm = tinyFarm({ cells: [cell("A1")], groups: [group("Cows", { peopleToMove: 2 })] });
    expect(reasonIn(farm)).toContain("the people at home whom a move needs");
  });

  it("names closed ground", () => {
    const season = { firstDay: "2027-05-01", lastDay: "2027-05-21" };
    const farm = tinyFarm({ cells: [cell("A1", { closed: [{ ...season, reason: "wet" }] })], groups: [group("Cows")] });
    expect(reasonIn(farm)).toContain("no cell that they may enter is open");
  });

  it("names housing", () => {
    const farm = tinyFarm({ cells: [cell("A1")], groups: [group("Cows", { out: { firstDay: "2028-01-01", lastDay: "2028-12-31" } })] });
    expect(reasonIn(farm)).toContain("between turnout and housing");
  });

  it("names grass that never stands high enough", () => {
    const farm = tinyFarm({ cells: [cell("A1", { coverKgPerHa: 600, growthByMonth: Array<number>(12).fill(1) })], groups: [group("Cows")] });
    expect(reasonIn(farm)).toContain("grass never reaches");
  });

  // Five cows take 86.25 kg a day (rules/animals); 0.05 ha at 2,600 kg/ha on which nothing grows holds 55 kg above 1,500
  it("names the mouths when a day of theirs takes more than any cell has", () => {
    const bare = { growthByMonth: Array<number>(12).fill(0) };
    const small = tinyFarm({ cells: [cell("A1", { areaHa: 0.05, ...bare }), cell("A2", { areaHa: 0.04, ...bare })], groups: [group("Cows")] });
    expect(reasonIn(small)).toContain("they take 86 kg of dry matter or more a day, trodden grass counted, and no cell ever has more than 55 kg above what must be left");
    const enough = tinyFarm({ cells: [cell("A1", { areaHa: 0.08, ...bare })], groups: [group("Cows")] });
    expect(reasonIn(enough)).toContain("cost more than the yard");
  });

  // 110 m of fence are one reel of 200 m; on the day of a move the next is set ahead: two
  it.each([[{ reels: 1 }, "needs 2 reels, and there are 1;"], [{ energisers: 0 }, "needs 1 energiser, and there are 0;"]])("names the kit that is short: %j", (own, words) => {
    const kit = { nets: null, reels: null, reelM: 200, energisers: null };
    const farm = (more: object) => tinyFarm({ cells: [cell("A1")], groups: [group("Cows")], more: { kit: { ...kit, ...more } } });
    expect(reasonIn(farm(own))).toContain(words);
    expect(reasonIn(farm({ reels: 2, energisers: 1 }))).toContain("cost more than the yard");
  });
});
