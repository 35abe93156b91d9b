/**
 * Farms on a bad day, as their owners would write them. Each has a plan that the check accepts, with its reasons in words where
 * somebody stays in the yard; or findings in the file; or no plan, with what breaks. Never a fault of ours, never a group-day
 * without a place.
 */
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import { planSeason, type Planned } from "../../src/decide/plan-season.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { daysBetween } from "../../src/quantity/calendar.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { inThisThread } from "../decide/in-this-thread.js";
import { findingsOf, scenarioOf } from "../farm/read-text.js";
import { COWS, COWS_AND_HENS, farmText, FIELDS, HENS, OWNER, PEN_AND_OWNER, PIGS } from "./farms.js";

const SLOW = 120_000;
const EFFORT = { name: "quick", seed: 1, capSeconds: null, steps: { seeds: 1, search: 1500, polishes: 1, bound: 4, windowRounds: 0 } } as const;

const ONE_CELL = "  Croft:\n    cover: 2300 kg/ha\n    cells: { L1: 0.5 ha }\n";
const closed = (reason: string, days: string): string => FIELDS.replaceAll("    cells:", `    closed: { ${reason}: ${days} }\n    cells:`);

const daysOf = (spans: readonly { firstDay: string; lastDay: string }[]): number => spans.reduce((sum, span) => sum + daysBetween(span.firstDay, span.lastDay) + 1, 0);

/** Every group stands somewhere on each of its days, once. */
function expectAllPlaced(scenario: Scenario, { plan }: Planned): void {
  for (const group of scenario.groups) {
    expect({ group: group.name, days: daysOf(plan.stays.filter((stay) => stay.group === group.name)) }).toEqual({ group: group.name, days: daysOf(group.here) });
  }
}

async function planned(text: string): Promise<{ scenario: Scenario; planned: Planned }> {
  const scenario = scenarioOf(text);
  const done = await planSeason(scenario, { threads: inThisThread(highsSolver()), solver: highsSolver() }, EFFORT, () => undefined, { asked: false });
  expectAllPlaced(scenario, done);
  return { scenario, planned: done };
}

async function plannedWell(text: string): Promise<Planned> {
  const { scenario, planned: done } = await planned(text);
  expect({ kind: done.kind, breaches: checkPlan(scenario, done.plan).breaches }).toEqual({ kind: "plan", breaches: [] });
  expect(done.bound).toBeLessThanOrEqual(done.cost + 1e-6);
  return done;
}

const findings = (text: string): string[] => findingsOf(text).map(({ code, line, found, allowed, next }) => `${code} in line ${line}: ${found}; ${allowed}; ${next}`);

describe("a farm that can be planned", { timeout: SLOW }, () => {
  it("with one cell: the yard takes what it cannot", async () => {
    const done = await plannedWell(farmText({ fields: ONE_CELL, groups: COWS, rest: OWNER }));
    expect(done.report.measures.yardDays["Cows"]).toBeGreaterThan(0);
    expect(done.report.measures.yardDays["Cows"]).toBeLessThan(28);
  });

  it("with one cell that holds less than a day's grass: says so", async () => {
    const done = await plannedWell(farmText({ fields: ONE_CELL.replace("0.5 ha", "0.01 ha"), groups: COWS, rest: OWNER }));
    const words = /^Cows stay in the yard all season: they take \d+ kg of dry matter or more a day, .* no cell ever has more than \d+ kg above what must be left; plan larger/;
    expect(done.notes).toContainEqual(expect.stringMatching(words));
  });

  it("with five groups on two cells: says who stays in, and why", async () => {
    const two = ONE_CELL.replace("{ L1: 0.5 ha }", "{ L1: 0.5 ha, L2: 0.4 ha }");
    const more = "  Ewes: { kind: sheep, class: dry ewe, head: 10, weight: 70 kg }\n  Geese: { kind: geese, head: 10, weight: 5 kg, pen: Hut }\n";
    const rest = PEN_AND_OWNER.replace("pens:\n", "pens:\n  Hut: { size: 3 m x 3 m, moved-by: hand }\n");
    const done = await plannedWell(farmText({ fields: two, groups: COWS_AND_HENS + PIGS + more, rest }));
    const words = /^Pigs stay in the yard all season: moving them out takes \d+ min .* never more than \d+ min are left; give people more minutes/;
    expect(done.notes).toContainEqual(expect.stringMatching(words));
  });

  it("with all ground closed in July: everybody is in the yard then", async () => {
    const done = await plannedWell(farmText({ season: "2027-06-20 to 2027-08-10", fields: closed("fair", "2027-07-01 to 2027-07-31") }));
    const july = done.plan.stays.filter((stay) => stay.firstDay <= "2027-07-31" && stay.lastDay >= "2027-07-01");
    expect(july.filter((stay) => stay.cell !== null)).toEqual([]);
    expect(done.report.measures.yardDays).toEqual({ Cows: expect.any(Number), Hens: expect.any(Number) });
    expect(Math.min(...Object.values(done.report.measures.yardDays))).toBeGreaterThanOrEqual(31);
  });

  it("whose ground must rest longer than the season lasts: no cell is grazed twice", async () => {
    const done = await plannedWell(farmText({ rest: `${PEN_AND_OWNER}rules: { rest-period: { floor: 60 d, flush: 90 d, midsummer: 90 d } }\n` }));
    const cells = done.plan.stays.filter((stay) => stay.group === "Cows" && stay.cell !== null).map((stay) => stay.cell);
    expect(new Set(cells).size).toBe(cells.length);
  });

  it("in the dead of winter on bare ground: the cows stay in, for want of grass", async () => {
    const done = await plannedWell(farmText({ season: "2027-12-01 to 2028-01-15", fields: FIELDS.replaceAll(/cover: \d+/g, "cover: 1200"), groups: COWS, rest: OWNER }));
    expect(done.notes).toEqual(["Cows stay in the yard all season: grass never reaches what must stand before they go in; walk it again, or look at growth-scale."]);
  });

  it("with two hundred cows, who eat more in a day than any cell has", async () => {
    const done = await plannedWell(farmText({ groups: "  Herd: { kind: cattle, class: cow with calf, head: 200, weight: 700 kg }\n", rest: OWNER }));
    expect(done.notes).toContainEqual(expect.stringMatching(/^Herd stay in the yard all season: they take \d+ kg/));
  });

  it("with twelve cows, who eat more in a week than the farm grows: most of it is hay", async () => {
    const done = await plannedWell(farmText({ groups: "  Herd: { kind: cattle, class: cow with calf, head: 12, weight: 650 kg }\n", rest: OWNER }));
    expect(done.report.measures.yardDays["Herd"]).toBeGreaterThan(14);
    expect(done.report.measures.hayFedKg).toBeGreaterThan(0);
  });

  it("with no kit at all: grazers stay in for want of it, hens in a pen do not", async () => {
    const done = await plannedWell(farmText({ rest: `${PEN_AND_OWNER}kit: { nets: { 50 m: 0 }, reels: { 200 m: 0 }, energisers: 0 }\n` }));
    expect(done.report.measures.yardDays["Cows"]).toBe(28);
    expect(done.report.measures.yardDays["Hens"]).toBeLessThan(28);
    const words = /^Cows stay in the yard all season: to move them to the cell that takes the least fence needs 2 reels, and there are 0; write more kit/;
    expect(done.notes).toContainEqual(expect.stringMatching(words));
  });

  it("with an energiser short: says which piece", async () => {
    const done = await plannedWell(farmText({ groups: COWS, rest: `${OWNER}kit: { energisers: 0 }\n` }));
    expect(done.notes).toContainEqual(expect.stringContaining("needs 1 energiser, and there are 0"));
  });
});

describe("a farm that cannot be planned", { timeout: SLOW }, () => {
  const breachesOf = async (text: string): Promise<string[]> => {
    const { planned: done } = await planned(text);
    expect(done.kind).toBe("no-plan");
    return done.report.breaches.map(({ rule, group, firstDay, lastDay, found, allowed }) => `${rule} ${group} ${firstDay} to ${lastDay}: ${found}; ${allowed}`);
  };

  it("with ground and yard closed in July says what breaks, and where", async () => {
    const text = farmText({ season: "2027-06-20 to 2027-08-10", fields: closed("fair", "2027-07-01 to 2027-07-31"), groups: COWS, rest: `${OWNER}yards:\n  Barn: { open: until 2027-06-30 }\n` });
    const said = await breachesOf(text);
    expect(said.join("\n")).toMatch(/closed-dates Cows 2027-07-\d\d to \S+: closed: fair; an open day|yard-room Cows \S+ to \S+: in Barn while it is shut; Barn on its open dates/);
  });

  it("with a hold longer than a stay may be names the hold's stay", async () => {
    const said = await breachesOf(farmText({ groups: COWS, rest: `${OWNER}holds: { calving: { group: Cows, cell: L1, days: 2027-05-05 to 2027-05-20 } }\n` }));
    expect(said.join("\n")).toMatch(/stay-limit Cows \S+ to \S+: a stay of \d+ days; at most 7 days|holds Cows \S+ to \S+: in \S+; in L1, as held/);
  });

  it("with a hold in a yard that is shut names the yard", async () => {
    const said = await breachesOf(farmText({ groups: COWS, rest: `${OWNER}yards:\n  Barn: { open: from 2027-05-20 }\nholds: { vet: { group: Cows, yard: Barn, days: 2027-05-10 } }\n` }));
    expect(said.join("\n")).toMatch(/yard-room Cows 2027-05-10 to 2027-05-10: in Barn while it is shut; Barn on its open dates|holds Cows 2027-05-10/);
  });
});

describe("a farm whose file says what cannot be", () => {
  it.each([
    ["a hold on a closed day", farmText({ fields: FIELDS.replace("L1: 0.5 ha", "L1: { area: 0.5 ha, closed: { nesting: 2027-05-05 to 2027-05-12 } }"), rest: `${PEN_AND_OWNER}holds: { calving: { group: Cows, cell: L1, days: 2027-05-10 } }\n` }),
      ["hold-closed in line 18: hold calving: L1 is closed for nesting to 2027-05-12; a closed cell stays empty; move one of them"]],
    ["all ground closed all season", farmText({ fields: closed("flood", "2027-04-01 to 2027-10-31"), groups: COWS, rest: OWNER }),
      ["no-cell in line 14: Cows: no cell is left (L1, L2, L3, S1, S2 closed all its days); a group needs one cell at least; open one to it, or keep it in the yard: turnout after its last day"]],
    ["growth nil", farmText({ top: "growth-scale: 0 %\n" }), ["out-of-reach in line 3: the farm: growth-scale is 0 %; it may be 10 to 200 %; write a figure within that"]],
    ["a year that grows nothing", farmText({ top: "grows: 0 t/ha\n" }), [expect.stringMatching(/^out-of-reach in line 3: the farm: grows is 0 t\/ha; ground grows 0\.5 to 25 t\/ha/)]],
    ["a rest beyond any season", farmText({ rest: `${PEN_AND_OWNER}rules: { rest-period: { floor: 200 d } }\n` }), [expect.stringMatching(/^out-of-reach in line 18: rest-period floor is 200 d; it may be 0 to 120 d/)]],
    ["a net house and no net", farmText({ groups: HENS.replace(", follows: Cows", ""), rest: "pens:\n  Ark: { size: 3 m x 4 m, net: 50 m, moved-by: hand }\npeople:\n  Owner: { minutes: 3 h }\nkit: { nets: { 50 m: 0 } }\n" }),
      [expect.stringMatching(/^net-short in line \d+: Ark needs 1 net at once, the farm has 0; /)]],
    ["a season of a day", farmText({ season: "2027-05-01 to 2027-05-01" }), [expect.stringMatching(/^out-of-reach in line 2: the season is 1 d long; it may be 7 to 400 d/)]],
    ["a season of more than 400 days", farmText({ season: "2027-05-01 to 2028-06-30" }), [expect.stringMatching(/^out-of-reach in line 2: the season is 427 d long; it may be 7 to 400 d/)]],
  ])("%s: named, with what may stand there and what to do", (_, text, said) => {
    expect(findings(text)).toEqual(said);
  });
});
