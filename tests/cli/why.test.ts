/** `why` by the built command: questions about a day in words and as one object, and what cannot be asked. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Finding } from "../../src/farm/finding.js";
import { answer, freshFolder, inbye, type Ran } from "./inbye.js";

const SLOW = 240_000;
const folder = freshFolder();

/** Four weeks, so that a season is planned again in a moment. */
const FARM = `farm: Low Acre
season: 2027-04-20 to 2027-05-17
fields:
  Long Croft:
    cover: 2300 kg/ha
    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: { area: 0.4 ha, closed: { nesting: until 2027-05-05 } }, L4: 0.6 ha }
groups:
  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }
  Bull: { kind: cattle, class: bull, head: 1, weight: 900 kg, here: 2027-05-10 to 2027-05-17, runs-with: { group: Cows, days: from 2027-05-10 } }
people:
  Owner: { minutes: 2 h }
  Helper: { minutes: 2 h }
`;

interface Place {
  readonly cell: string | null;
  readonly kind: string;
  readonly cost: number | null;
  readonly more: number | null;
  readonly never: readonly { readonly rule: string }[];
}

interface GroupAnswer {
  readonly group: string;
  readonly runsWith: string | null;
  readonly planCost: number;
  readonly cheapestCost: number;
  readonly places: readonly Place[];
}

let planned: Ran;
const why = (...args: string[]): Ran => inbye(["why", "low-acre.yaml", "plans/low-acre/plan.json", ...args], folder.path);
const widest = (text: string): number => Math.max(...text.split("\n").map((line) => [...line].length));

beforeAll(() => {
  writeFileSync(join(folder.path, "low-acre.yaml"), FARM);
  planned = inbye(["plan", "low-acre.yaml", "--effort", "quick"], folder.path);
}, SLOW);
afterAll(folder.done);

describe("why", () => {
  it("says where a group stands, by which figures, and what each other place would cost, within 80 columns", () => {
    expect(planned.exit).toBe(0);
    const { exit, out } = why("--group", "Cows", "--day", "2027-05-03");
    expect({ exit, wide: widest(out) <= 80 }).toEqual({ exit: 0, wide: true });
    for (const part of ["Low Acre, Mon 3 May 2027: Cows in", "at least", "Elsewhere that day", "closed: nesting", "open from 6 May", "less the cheapest season found"]) expect(out.replace(/\s+/g, " ")).toContain(part);
    expect(out).not.toMatch(/\b(dual|bound|gap|heuristic|solver|seed|optimum)\b/i);
  }, SLOW);

  it("says the same as one object, whose figures close", () => {
    const one = answer<GroupAnswer>(why("--group", "cows", "--day", "2027-05-03", "--json"), "why-group-answer");
    expect(one.cheapestCost).toBeLessThanOrEqual(one.planCost);
    for (const place of one.places) if (place.more !== null) expect(place.cost! - one.cheapestCost).toBeCloseTo(place.more, 1);
    expect(one.places.find(({ cell }) => cell === "L3")).toMatchObject({ kind: "never", never: [{ rule: "closed-dates" }] });
  }, SLOW);

  it("answers for one place alone, named after --not or --cell, and for those that run with others", () => {
    const not = answer<GroupAnswer>(why("--group", "Cows", "--day", "2027-05-03", "--not", "L3", "--json"), "why-group-answer");
    expect(not.places.map(({ cell, kind }) => [cell, kind])).toEqual([["L3", "never"]]);
    expect(why("--group", "Cows", "--day", "2027-05-03", "--cell", "l3", "--json").out).toBe(why("--group", "Cows", "--day", "2027-05-03", "--not", "L3", "--json").out);
    const along = answer<GroupAnswer>(why("--group", "Bull", "--day", "2027-05-12", "--not", "yard", "--json"), "why-group-answer");
    expect({ group: along.group, runsWith: along.runsWith }).toEqual({ group: "Cows", runsWith: "Cows" });
  }, SLOW);

  it("says why a cell is empty and what it may be used for", () => {
    const { exit, out } = why("--cell", "L3", "--day", "2027-05-03");
    expect({ exit, wide: widest(out) <= 80 }).toEqual({ exit: 0, wide: true });
    for (const part of ["L3", "closed, nesting, open from 6 May", "kg DM/ha that morning", "First day for each"]) expect(out).toContain(part);
    answer(why("--cell", "L3", "--day", "2027-05-03", "--json"), "why-cell-answer");
  }, SLOW);
});

describe("what cannot be asked", () => {
  const found = (ran: Ran): readonly Finding[] => {
    expect(ran.exit).toBe(2);
    return answer<{ findings: readonly Finding[] }>(ran, "findings-answer").findings;
  };
  it.each([
    [["--group", "Cow", "--cell", "L9", "--day", "2027-05-32"], ["day-form", "name-unknown", "name-unknown"]],
    [[], ["day-missing", "nothing-asked"]],
    [["--group", "Cows", "--day", "3/5/2027"], ["day-form"]],
    [["--group", "Cows", "--day", "2027-04-19"], ["day-outside"]],
    [["--group", "Bull", "--day", "2027-05-09"], ["not-here"]],
    [["--cell", "L1", "--not", "L2", "--day", "2027-05-03"], ["group-missing", "two-places"]],
  ])("%j: %j", (args, codes) => {
    expect(found(why(...args, "--json")).map(({ code }) => code)).toEqual(codes);
  });

  it("names what may be meant, when a group is here, and where it does stand", () => {
    expect(found(why("--group", "Cow", "--day", "2027-05-03", "--json"))[0]!.next).toBe("Cows?");
    expect(found(why("--group", "Cows", "--day", "3/5/2027", "--json"))[0]!.next).toBe("2027-05-03?");
    expect(found(why("--group", "Bull", "--day", "2027-05-09", "--json"))[0]!.allowed).toContain("10 May to 17 May");
    const stays = (JSON.parse(readFileSync(join(folder.path, "plans/low-acre/plan.json"), "utf8")) as { stays: { group: string; cell?: string; yard?: string; "first-day": string; "last-day": string }[] }).stays;
    const stay = stays.find((one) => one.group === "Cows" && one["first-day"] <= "2027-05-03" && one["last-day"] >= "2027-05-03")!;
    expect(found(why("--group", "Cows", "--day", "2027-05-03", "--not", (stay.cell ?? stay.yard)!, "--json"))[0]).toMatchObject({ code: "stands-there" });
  });

  it("asks for a plan that keeps every rule of the farm as it is, and names what has changed since", () => {
    writeFileSync(join(folder.path, "other.yaml"), FARM.replace("2300", "1600"));
    const ran = inbye(["why", "other.yaml", "plans/low-acre/plan.json", "--cell", "L1", "--day", "2027-05-03", "--json"], folder.path);
    expect(found(ran).map(({ code }) => code)).toEqual(["other-farm-file", "plan-broken"]);
    writeFileSync(join(folder.path, "renamed.yaml"), FARM.replace("farm: Low Acre", "farm: High Acre"));
    expect(found(inbye(["why", "renamed.yaml", "plans/low-acre/plan.json", "--cell", "L1", "--day", "2027-05-03", "--json"], folder.path)).map(({ code }) => code)).toEqual(["other-farm"]);
  });
});
