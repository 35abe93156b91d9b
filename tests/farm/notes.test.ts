import { describe, expect, it } from "vitest";
import { landSummary } from "../../src/decide/land.js";
import { readScenario } from "../../src/farm/read-scenario.js";
import { filesIn, LOW_ACRE, lowAcre, MAPS, scenarioOf, scenarioText, TABLES } from "./read-text.js";
import { highsSolver } from "../../src/solvers/highs.js";

function notesOf(text: string) {
  const read = readScenario(text, "farm.yaml", TABLES, undefined, MAPS);
  if (!read.ok) throw new Error(JSON.stringify(read.findings, null, 1));
  return read.notes;
}
const codes = (text: string) => notesOf(text).map(({ code }) => code);

describe("notes", () => {
  it.each(filesIn("."))("%s has none", (file) => {
    expect(notesOf(scenarioText(file))).toEqual([]);
  });

  // Worked by hand: intake 2 kg a head over 195 days (11 + 31 + 30 + 31 + 31 + 30 + 31) is 0.39 t a head; 2.5 ha grow what
  // the row oceanic-b says for those days, halved by the usual scale.
  it("say that the grazers want more than half as much again as the land grows", () => {
    const row = TABLES.growth.find(({ key }) => key === "oceanic-b")!.value;
    const grownKg = 2.5 * 0.5 * (11 * row[3]! + 31 * row[4]! + 30 * row[5]! + 31 * row[6]! + 31 * row[7]! + 30 * row[8]! + 31 * row[9]!);
    const few = Math.floor((1.5 * grownKg) / 390);
    const farm = (head: number) => lowAcre("class: cow with calf, head: 2", `class: bull, head: ${head}, intake: 2 kg/d, people-to-move: 1`);
    expect(codes(farm(few))).not.toContain("overstocked");
    expect(codes(farm(few + 1))).toContain("overstocked");
    const [note] = notesOf(lowAcre("class: cow with calf, head: 2", "class: bull, head: 300, intake: 2 kg/d, people-to-move: 1"));
    expect(note).toMatchObject({ code: "overstocked", line: 12, found: `the grazers want 117 t of dry matter in the season, the land grows ${Math.round(grownKg / 1000)} t in a usual year` });
  });

  it("count only days on the farm and out", () => {
    expect(codes(lowAcre("head: 2", "head: 12, turnout: 2027-10-25"))).not.toContain("overstocked");
    expect(codes(lowAcre("head: 2", "head: 12"))).toContain("overstocked");
  });

  it("say that a yard has less room than its groups together on their fullest day", () => {
    const sheep = "  Ewes: { kind: sheep, class: dry ewe, head: 9, weight: 60 kg, here: from 2027-06-01 }\n";
    const yards = (room: number) => `${LOW_ACRE}${sheep}yards: { Lot: { room: ${room} } }\n`;
    expect(codes(yards(11))).toEqual([]);
    expect(notesOf(yards(10))).toMatchObject([{ code: "yard-small", line: 15, found: "Lot has room for 10 head, and up to 11 have it as their yard (Cows, Ewes)" }]);
  });

  it("name cells that are closed or not in hand all season", () => {
    const shut = lowAcre("L2: 0.5 ha", "L2: { area: 0.5 ha, closed: { reed: until 2027-07-31, birds: from 2027-08-01 } }");
    expect(notesOf(shut)).toMatchObject([{ code: "closed-all-season", line: 8, found: "L2 is closed or not in hand all season" }]);
    expect(codes(shut.replace("2027-07-31", "2027-07-30"))).toEqual([]);
    const rented = lowAcre("groups:", "  Far:\n    cover: 2000 kg/ha\n    ours: from 2028-01-01\n    cells: { F1: 1 ha, F2: 1 ha }\ngroups:");
    expect(notesOf(rented)).toMatchObject([{ code: "closed-all-season", found: "F1, F2 are closed or not in hand all season" }]);
  });

  it("and such cells are not among those that a group may enter", async () => {
    const count = async (text: string) => (await landSummary(scenarioOf(text), highsSolver())).groups[0]!.cellsItMayEnter;
    expect(await count(LOW_ACRE)).toBe(5);
    expect(await count(lowAcre("L2: 0.5 ha", "L2: { area: 0.5 ha, closed: { reed: until 2027-10-31 } }"))).toBe(4);
    expect(await count(lowAcre("L2: 0.5 ha", "L2: { area: 0.5 ha, closed: { reed: until 2027-10-30 } }"))).toBe(5);
  });

  it("say that a stay limit is not for groups that take ground by strips", () => {
    const pigs = "  Pigs: { kind: pigs, class: weaner, head: 2, weight: 25 kg, stay-limit: 14 d }\n";
    expect(notesOf(LOW_ACRE + pigs)).toMatchObject([{ code: "stay-limit-unused", line: 14, allowed: "strip-days are the days on one strip" }]);
    expect(codes(lowAcre("head: 2", "head: 2, stay-limit: 5 d"))).toEqual([]);
  });
});
