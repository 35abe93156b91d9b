import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import type { Scenario } from "../../src/farm/scenario.js";
import type { Stay } from "../../src/plan/plan.js";
import type { DayWork, Job } from "../../src/work/job.js";
import { seasonWork } from "../../src/work/season-work.js";
import { plannedFarm } from "../fixtures/planned-farm.js";

const { scenario, plan, report } = plannedFarm("withy-end");
const work = seasonWork(scenario, plan);
const jobs = work.flatMap((day) => day.jobs);
const of = (kind: Job["kind"], group?: string): readonly Job[] => jobs.filter((job) => job.kind === kind && (group === undefined || job.group === group));
const total = (days: readonly DayWork[]): number => days.reduce((sum, day) => sum + day.roundMinutes + day.jobs.reduce((all, job) => all + job.minutes, 0), 0);

/** Days on which a group's place differs from the day before's, straight from the stays. */
function changesIn(stays: readonly Stay[], group: string): readonly string[] {
  const own = stays.filter((stay) => stay.group === group).sort((a, b) => (a.firstDay < b.firstDay ? -1 : 1));
  return own.slice(1).map((stay) => stay.firstDay);
}

describe.each(["withy-end", "rushy-leys"] as const)("the work of %s", (farm) => {
  const season = plannedFarm(farm);
  const days = seasonWork(season.scenario, season.plan);

  it("takes the minutes that the check counts, over the whole season", () => {
    const counted = season.report.measures.minutesByDay.reduce((sum, minutes) => sum + minutes, 0);
    expect(total(days)).toBeCloseTo(counted, 6);
  });

  it("has a look and a place for every group on every day that it is on the farm", () => {
    for (const { day, jobs: todo, standing } of days.slice(1)) {
      const here = season.scenario.groups.filter((group) => group.here.some((span) => span.firstDay <= day && day <= span.lastDay)).map((group) => group.name);
      expect(standing.map((one) => one.group)).toEqual(here);
      expect(todo.filter((job) => job.kind === "look").map((job) => job.group)).toEqual(here);
    }
  });

  it("gives every job a name of its own", () => {
    const ids = days.flatMap((day) => day.jobs.map((job) => job.id));
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe("moves", () => {
  it("are the changes between stays", () => {
    expect(of("move", "Cows").map((job) => job.day)).toEqual(changesIn(plan.stays, "Cows"));
    expect(of("move", "Layers").map((job) => job.day)).toEqual(changesIn(plan.stays, "Layers"));
  });

  it("of grazers have fence set the evening before and fetched afterwards, each with the same places", () => {
    const into = of("move", "Cows").filter((job) => !job.to!.yard);
    expect(of("set", "Cows").map((job) => job.for)).toEqual([scenario.season.firstDay, ...into.map((job) => job.day)].filter((day) => of("set", "Cows").some((job) => job.for === day)));
    for (const move of into) expect(of("set", "Cows")).toContainEqual(expect.objectContaining({ for: move.day, to: move.to, part: "evening" }));
    for (const move of of("move", "Cows").filter((job) => !job.from!.yard)) expect(of("collect", "Cows")).toContainEqual(expect.objectContaining({ day: move.day, to: move.from }));
  });

  it("of a towed house keep the birds shut in the dusk before, and so do its steps", () => {
    const towed = [...of("move", "Layers"), ...of("step", "Layers")].map((job) => job.day).sort();
    expect(of("shut-in", "Layers").map((job) => job.for)).toEqual(towed);
    expect([...of("move", "Layers"), ...of("step", "Layers")].every((job) => job.tow && job.people === 2)).toBe(true);
  });

  it("of batches begin with an arrival and end with a leaving", () => {
    expect(of("arrive", "Broilers").map((job) => job.day)).toEqual(["2027-05-20", "2027-08-05"]);
    expect(of("leave", "Broilers").map((job) => job.day)).toEqual(["2027-06-23", "2027-09-08"]);
  });
});

describe("strips and pens", () => {
  it("count positions on, so that the last one of a stay is where the next stay begins less one", () => {
    const pens = work.slice(1).flatMap(({ standing }) => standing.filter((one) => one.group === "Layers" && one.position !== null));
    const last = new Map<string, number>();
    for (const { place, position } of pens) {
      expect(position! - (last.get(place.name) ?? 0)).toBeGreaterThanOrEqual(0);
      expect(position! - (last.get(place.name) ?? 0)).toBeLessThanOrEqual(1);
      last.set(place.name, position!);
    }
  });
});

describe("ground", () => {
  it("opens the day after its last closed day, and shuts on its first", () => {
    const news = work.flatMap(({ day, ground }) => ground.map((one) => `${day} ${one.cell} ${one.news} ${one.reason}`));
    expect(news).toContain("2027-06-21 K2 opens nesting");
    expect(news).toContain("2027-05-12 F3 shuts hay");
    expect(news.some((line) => line.includes("ours"))).toBe(false);
  });

  it("of a rented field opens when it is in hand", () => {
    const rented: Scenario = { ...scenario, cells: scenario.cells.map((cell) => (cell.name === "H1" ? { ...cell, ours: { firstDay: "2027-06-01", lastDay: "2027-08-31" } } : cell)) };
    const news = seasonWork(rented, plan).flatMap(({ day, ground }) => ground.filter((one) => one.cell === "H1").map((one) => `${day} ${one.news}`));
    expect(news).toEqual(["2027-06-01 opens", "2027-09-01 shuts"]);
  });
});

describe("a group that runs with another", () => {
  const beside = { firstDay: "2027-06-01", lastDay: "2027-06-30" };
  const [cows] = scenario.groups;
  const bull = { ...cows!, name: "Bull", letter: "Cb", animalClass: "bull", head: 1, young: null, here: [scenario.season], runsWith: { with: "Cows", days: [beside] } };
  const farm: Scenario = { ...scenario, groups: [...scenario.groups, bull] };
  const stays: readonly Stay[] = [
    { group: "Bull", cell: null, yard: "Barn lot", firstDay: scenario.season.firstDay, lastDay: "2027-05-31" },
    ...plan.stays.filter((stay) => stay.group === "Cows" && stay.lastDay >= beside.firstDay && stay.firstDay <= beside.lastDay).map((stay) => ({
      ...stay, group: "Bull", firstDay: stay.firstDay < beside.firstDay ? beside.firstDay : stay.firstDay, lastDay: stay.lastDay > beside.lastDay ? beside.lastDay : stay.lastDay,
    })),
    { group: "Bull", cell: null, yard: "Barn lot", firstDay: "2027-07-01", lastDay: scenario.season.lastDay },
  ];
  const whole = { ...plan, stays: [...plan.stays, ...stays] };
  const todo = seasonWork(farm, whole).flatMap((day) => day.jobs);

  it("joins and parts on its dates, and comes along in between", () => {
    expect(todo.filter((job) => job.group === "Bull" && job.kind !== "look").map((job) => `${job.kind} ${job.day}`)).toEqual([`join ${beside.firstDay}`, "part 2027-07-01"]);
    const moves = todo.filter((job) => job.group === "Cows" && job.kind === "move" && job.day > beside.firstDay && job.day <= beside.lastDay);
    expect(moves.length).toBeGreaterThan(3);
    expect(moves.every((job) => job.company.join() === "Bull")).toBe(true);
  });

  it("still closes with the check's minutes", () => {
    const counted = checkPlan(farm, whole).measures.minutesByDay.reduce((sum, minutes) => sum + minutes, 0);
    expect(total(seasonWork(farm, whole))).toBeCloseTo(counted, 6);
  });
});

describe("people", () => {
  it("are those with minutes on the day", () => {
    const home = work.find(({ day }) => day === "2027-06-23")!.people;
    expect(home).toEqual([{ name: "Owner", tows: true, minutes: 150 }, { name: "Helper", tows: false, minutes: 90 }]);
    expect(report.measures.minutesAtHomeByDay[74]).toBe(240);
  });
});
