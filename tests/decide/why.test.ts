/** Why a group stands where it stands: every answer is a plan that the check accepts, or a stay that it refuses. */
import { beforeAll, describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import { planSeason } from "../../src/decide/plan-season.js";
import { cellDay } from "../../src/decide/why-cell-day.js";
import { standsThere, withStay } from "../../src/decide/why-forced.js";
import { neverThere } from "../../src/decide/why-never.js";
import { shortBy } from "../../src/decide/why-short.js";
import { leavesEmpty } from "../../src/decide/why-search.js";
import { whyCell, whyGroup } from "../../src/decide/why.js";
import type { Plan } from "../../src/plan/plan.js";
import { addDays } from "../../src/quantity/calendar.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { scenarioOf } from "../farm/read-text.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { inThisThread } from "./in-this-thread.js";

const SLOW = 240_000;

const FARM = scenarioOf(`farm: Two Becks
season: 2027-05-01 to 2027-05-28
fields:
  Long Croft:
    cover: 2300 kg/ha
    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: 0.4 ha }
  Beck side:
    cover: 2100 kg/ha
    distance: 300 m
    cells: { B1: 0.5 ha, B2: { area: 0.4 ha, closed: { nesting: 2027-05-10 to 2027-05-20 } } }
groups:
  Cows: { kind: cattle, class: cow with calf, head: 3, weight: 550 kg }
  Hens: { kind: layers, head: 40, weight: 1.8 kg, pen: Ark, follows: Cows, not-in: B1 }
pens:
  Ark: { size: 3 m x 4 m, moved-by: hand }
people:
  Owner: { minutes: 2 h 30 min }
holds:
  vet: { group: Cows, cell: L2, days: 2027-05-12 }
`);
const PLANNING = { name: "usual", seed: 5, capSeconds: null, steps: { seeds: 1, search: 4000, polishes: 1, bound: 5, windowRounds: 0 } } as const;
const EFFORT = { look: 500, proper: 1500, seed: 1 };
const threads = inThisThread(highsSolver());
const services = { threads, stop: { asked: false }, onSearch: () => undefined };

let plan: Plan;
beforeAll(async () => {
  plan = (await planSeason(FARM, { threads, solver: highsSolver() }, PLANNING, () => undefined, { asked: false })).plan;
}, SLOW);

describe("whyGroup", () => {
  it.each(["Cows", "Hens"].flatMap((name) => [2, 9, 13, 19, 25].map((t) => [name, addDays("2027-05-01", t)] as const)))("answers for %s on %s with plans that are there and stays that are refused", async (name, day) => {
    const why = await whyGroup(FARM, plan, { group: name, day, only: null }, services, EFFORT);
    expect(why.planCost).toBeCloseTo(checkPlan(FARM, plan).cost, 9);
    expect(checkPlan(FARM, why.cheapest.plan)).toMatchObject({ breaches: [], cost: why.cheapestCost });
    expect(why.places.map(({ question }) => question.place.cell)).toEqual([...FARM.cells.map((one) => one.name), null].filter((one) => one !== why.here.cell));
    for (const { question, kind, never, asItStands, found, more } of why.places) {
      const forced = checkPlan(FARM, withStay(FARM, plan, question, { firstDay: day, lastDay: day }, null)).breaches;
      if (kind === "allowed") {
        expect(checkPlan(FARM, found!.plan)).toMatchObject({ breaches: [], cost: found!.cost });
        expect({ there: standsThere(found!.plan, question), more }).toEqual({ there: true, more: expect.closeTo(found!.cost - why.cheapestCost, 9) as unknown });
        expect(more).toBeGreaterThanOrEqual(0);
      } else expect(forced.length * asItStands.length).toBeGreaterThan(0);
      if (kind === "never") expect(forced).toContainEqual(expect.objectContaining({ rule: never[0]!.rule, found: never[0]!.found }));
      if (asItStands.length === 0) expect(more).not.toBeNull();
    }
    if (why.without) expect(leavesEmpty(why.without.found.plan, why.here.cell!, day)).toBe(true);
  }, SLOW);

  it("says never of closed ground on its last closed day, and not on the day after", () => {
    const asked = (day: string) => neverThere(FARM, { group: "Cows", place: { cell: "B2", yard: null }, day });
    expect(asked("2027-05-20")).toMatchObject([{ rule: "closed-dates", found: "closed: nesting" }]);
    expect(asked("2027-05-21")).toEqual([]);
  });

  it("says never of a cell that a group keeps out of, and of any other place on a held day", () => {
    expect(neverThere(FARM, { group: "Hens", place: { cell: "B1", yard: null }, day: "2027-05-05" })).toMatchObject([{ rule: "closed-dates", found: "not open to Hens" }]);
    expect(neverThere(FARM, { group: "Cows", place: { cell: "L1", yard: null }, day: "2027-05-12" })).toMatchObject([{ rule: "holds", found: "in L1", allowed: "in L2, as held" }]);
    expect(neverThere(FARM, { group: "Cows", place: { cell: "L1", yard: null }, day: "2027-05-13" })).toEqual([]);
  });

  it("tells the hold that puts a group where it is, and that its day cannot be left out", async () => {
    const why = await whyGroup(FARM, plan, { group: "Cows", day: "2027-05-12", only: { cell: "L1", yard: null } }, services, EFFORT);
    expect({ cell: why.here.cell, held: why.here.held, without: why.without, kinds: why.places.map(({ kind }) => kind) }).toEqual({ cell: "L2", held: "vet", without: null, kinds: ["never"] });
  });

  it("gives the same answer again, whatever the order of its searches", async () => {
    const asked = { group: "Cows", day: "2027-05-20", only: null };
    const first = await whyGroup(FARM, plan, asked, services, EFFORT);
    for (const order of ["in turn", "last first"] as const) expect(await whyGroup(FARM, plan, asked, { ...services, threads: inThisThread(highsSolver(), order) }, EFFORT)).toEqual(first);
  }, SLOW);
});

describe("whyCell", () => {
  it("weighs each group that is not there, and knows who is, what was and what comes", async () => {
    const day = "2027-05-20";
    for (const { name } of FARM.cells) {
      const why = await whyCell(FARM, plan, { cell: name, day }, services, EFFORT);
      const there = plan.stays.find((stay) => stay.cell === name && stay.firstDay <= day && stay.lastDay >= day) ?? null;
      expect(why.cell.stay).toEqual(there);
      expect(why.places.map(({ question }) => question.group)).toEqual(["Cows", "Hens"].filter((one) => one !== there?.group));
      expect(why.cell.next).toEqual(plan.stays.find((stay) => stay.cell === name && stay.firstDay > day) ?? null);
      expect(why.hereMore === null).toBe(there === null);
      for (const { group: who, day: free } of why.cell.free) {
        if (free === null) continue;
        const forced = withStay(FARM, plan, { group: who, place: { cell: name, yard: null }, day: free }, { firstDay: free, lastDay: free }, null);
        expect(checkPlan(FARM, forced).breaches).toEqual([]);
      }
    }
  }, SLOW);

  it("knows when closed ground opens, two closures that touch counted as one", () => {
    const closed = [["wet", "2027-05-02", "2027-05-04"], ["nesting", "2027-05-05", "2027-05-08"]].map(([reason, firstDay, lastDay]) => ({ reason: reason!, firstDay: firstDay!, lastDay: lastDay! }));
    const farm = tinyFarm({ cells: [cell("A1", { closed })], groups: [group("Cows")] });
    const empty = { stays: [{ group: "Cows", cell: null, yard: "Yard", firstDay: "2027-05-01", lastDay: "2027-05-21" }], cuts: [] };
    const on = (day: string) => cellDay(farm, empty, checkPlan(farm, empty), "A1", day).shut;
    expect(on("2027-05-01")).toBeNull();
    expect(on("2027-05-03")).toMatchObject({ reason: "wet", opensOn: "2027-05-09" });
    expect(on("2027-05-09")).toBeNull();
  });
});

describe("shortBy", () => {
  it.each([
    ["12 days of rest", "at least 18 days of rest", "6 days short"],
    ["17 days of rest", "at least 18 days of rest", "1 day short"],
    ["1470 kg DM/ha left", "at least 1500 kg DM/ha left", "30 kg DM/ha short"],
    ["0.062 ha wanted", "at most 0.05 ha rested from birds", "0.012 ha too much"],
    ["a stay of 9 days", "at most 7 days", "2 days too much"],
    ["218 min", "at most 150 min", "68 min too much"],
    ["20 % open, birds' ground shut", "at least 25 % open", "5 % short"],
    ["closed: wet", "an open day", null],
    ["3 nets", "at most 2 reels", null],
  ])("of %s where %s is %s", (found, allowed, short) => {
    expect(shortBy({ found, allowed })).toBe(short);
  });
});
