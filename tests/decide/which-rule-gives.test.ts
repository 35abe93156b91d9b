/** A farm without a plan is told what gives, in the check's own words, and what would help, each way planned. */
import { beforeAll, describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import type { Effort } from "../../src/decide/effort.js";
import { planSeason, type Planned, type Services } from "../../src/decide/plan-season.js";
import { readChanged } from "../../src/farm/change.js";
import type { Hold, Scenario } from "../../src/farm/scenario.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { filesIn, scenarioText, TABLES } from "../farm/read-text.js";
import { cell, tinyFarm } from "../fixtures/tiny-farm.js";
import { cows, ewes } from "../rules/animals.js";
import { day } from "../rules/grid.js";
import { inThisThread } from "./in-this-thread.js";

const EFFORT: Effort = { name: "quick", seed: 1, capSeconds: null, steps: { seeds: 1, search: 3000, polishes: 1, bound: 5, windowRounds: 0 } };
const ON = { asked: false };
const SLOW = { timeout: 60_000 };

let services: Services;
beforeAll(() => {
  const solver = highsSolver();
  services = { threads: inThisThread(solver), solver };
});

const planned = (scenario: Scenario, stop: { readonly asked: boolean } = ON): Promise<Planned> => planSeason(scenario, services, EFFORT, () => undefined, stop);

/** Three small cells, four weeks, cows, and a yard that nobody may use. */
const YARDLESS = `farm: No Yard
season: 2027-05-01 to 2027-05-28
grows: 7 t/ha
fields:
  Croft:
    cover: 2300 kg/ha
    cells: { C1: 0.5 ha, C2: 0.5 ha, C3: 0.5 ha, C4: 0.5 ha }
groups:
  Cows: { kind: cattle, class: cow with calf, head: 7, weight: 600 kg }
yards: { Byre: { room: 0 } }
`;

function farm(...changes: readonly string[]): Scenario {
  const read = readChanged({ file: "farm.yaml", text: YARDLESS }, changes.map((text, i) => ({ file: `change-${i}.yaml`, text })), TABLES);
  if (!read.ok) throw new Error(JSON.stringify(read.findings, null, 1));
  return read.value.scenario;
}

function refusalIn({ kind, refusal }: Planned): NonNullable<Planned["refusal"]> {
  expect(kind).toBe("no-plan");
  if (!refusal) throw new Error("a plan that is refused comes with its refusal");
  return refusal;
}

describe("a farm that may not use its yard", () => {
  const answers: Planned[] = [];
  beforeAll(async () => {
    answers.push(await planned(farm()), await planned(farm()));
  }, 60_000);

  it("is told every breach that the check finds in the plan that breaks least, and no other", () => {
    const { plan, report } = answers[0]!;
    const { gives } = refusalIn(answers[0]!);
    expect(report.breaches.length).toBeGreaterThan(0);
    expect(checkPlan(farm(), plan).breaches).toEqual(report.breaches);
    const told = gives.flatMap(({ breaches }) => breaches.map(({ unit, ...breach }) => {
      expect(unit).not.toBe("");
      return JSON.stringify(breach);
    }));
    expect([...told].sort()).toEqual(report.breaches.map((breach) => JSON.stringify(breach)).sort());
  });

  it("is told each breach under the stay in which it falls", () => {
    const { plan } = answers[0]!;
    for (const { group, cell: name, yard, firstDay, lastDay, breaches } of refusalIn(answers[0]!).gives) {
      if (group !== null) expect(plan.stays).toContainEqual({ group, cell: name, yard, firstDay, lastDay });
      for (const breach of breaches) expect(firstDay <= breach.firstDay && breach.lastDay <= lastDay).toBe(true);
    }
  });

  it("has three ways out, cheapest first, each with a plan that the check accepts at the cost told", () => {
    const { waysOut, otherWays } = refusalIn(answers[0]!);
    expect(waysOut.length).toBe(3);
    for (const way of [...waysOut, ...otherWays]) {
      const report = checkPlan(way.scenario, way.plan);
      expect(report.breaches).toEqual([]);
      expect(report.cost).toBeCloseTo(way.cost, 6);
    }
    expect(waysOut.map(({ cost }) => cost)).toEqual(waysOut.map(({ cost }) => cost).sort((a, b) => a - b));
  });

  it("has change files that say the same as the ways out they belong to", () => {
    const { waysOut, otherWays } = refusalIn(answers[0]!);
    const written = [...waysOut, ...otherWays].filter(({ change }) => change !== null);
    expect(written.length).toBeGreaterThan(1);
    for (const way of written) {
      const changed = farm(way.change!);
      expect(checkPlan(changed, way.plan).breaches).toEqual([]);
      expect(checkPlan(changed, way.plan).cost).toBeCloseTo(way.cost, 6);
    }
  });

  it("is told the same each time", () => {
    const [a, b] = answers.map((answer) => ({ plan: answer.plan, refusal: answer.refusal }));
    expect(a).toEqual(b);
  });

  it("is told what gives, and no ways out, when it is stopped before they are looked for", SLOW, async () => {
    const stop = { asked: false };
    const answer = await planSeason(farm(), services, EFFORT, ({ looks }) => {
      if (looks !== undefined) stop.asked = true;
    }, stop);
    const { gives, waysOut } = refusalIn(answer);
    expect(gives.length).toBeGreaterThan(0);
    expect(waysOut).toEqual([]);
  });
});

const held = (name: string, more: Partial<Hold>, first: number, last = first): Hold => (
  { name, days: { firstDay: day(first), lastDay: day(last) }, group: null, cell: null, yard: null, cut: null, ...more }
);

describe("changes to try it with", () => {
  it.each(filesIn("changes/no-plan"))("%s lies over the farm it is named after", (file) => {
    const base = filesIn(".").find((name) => file.startsWith(name.replace(".yaml", "")));
    const read = readChanged({ file: base!, text: scenarioText(base!) }, [{ file, text: scenarioText(`changes/no-plan/${file}`) }], TABLES);
    expect(read.ok ? [] : read.findings).toEqual([]);
  });
});

describe("holds that clash", () => {
  const land = (holds: readonly Hold[]): Scenario => tinyFarm({
    days: 14, cells: [cell("A1"), cell("A2"), cell("A3")], groups: [cows(), ewes()], more: { holds },
  });

  it("are named, without those that could stand, and lifting one is a way out", SLOW, async () => {
    const holds = [
      held("vet", { group: "Cows", yard: "Yard" }, 2), held("show", { group: "Cows", cell: "A1" }, 5, 6),
      held("shearing", { group: "Ewes", cell: "A1" }, 6, 7), held("count", { group: "Ewes", yard: "Yard" }, 12),
    ];
    const { clash, gives, waysOut } = refusalIn(await planned(land(holds)));
    expect(clash).toEqual({ holds: ["show", "shearing"] });
    expect(gives.length).toBeGreaterThan(0);
    const lifted = waysOut.filter(({ words }) => words.includes("lifted"));
    expect(lifted.length).toBeGreaterThan(0);
    for (const way of lifted) expect(checkPlan(way.scenario, way.plan).breaches).toEqual([]);
  });

  // the shortest rest is 18 days: back on the sixth day is too soon
  it("with a rule in between are found as well", SLOW, async () => {
    const holds = [held("first bite", { group: "Cows", cell: "A1" }, 1, 2), held("photograph", { group: "Cows", cell: "A1" }, 8), held("count", { group: "Ewes", yard: "Yard" }, 12)];
    const { clash } = refusalIn(await planned(land(holds)));
    expect(clash).toEqual({ holds: ["first bite", "photograph"] });
  });

  it("are not blamed where no hold is in the way", SLOW, async () => {
    const shut = { ...farm(), holds: [held("count", { group: "Cows", cell: "C1" }, 1)] };
    expect(refusalIn(await planned(shut)).clash).toBeNull();
  });
});
