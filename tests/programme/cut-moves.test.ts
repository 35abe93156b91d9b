/** Cuts that the search proposes: none on a day on which the owner cuts the cell anyhow. */
import { describe, expect, it } from "vitest";
import { changeCut } from "../../src/programme/moves/cuts.js";
import { moveSense } from "../../src/programme/moves/sense.js";
import { seededRandom } from "../../src/programme/random.js";
import { plannedFarm } from "../fixtures/planned-farm.js";
import { draftOf } from "./drafts.js";

describe("a cut that is proposed", () => {
  const draft = draftOf(plannedFarm("withy-end").scenario);
  const sense = moveSense(draft.season);
  const random = seededRandom(11);
  const proposed = Array.from({ length: 20_000 }, () => changeCut(draft, sense, random)).flatMap((move) => (move?.cut ? [move.cut] : []));

  it("is on a cell that the owner cuts, too, but never on the owner's own day", () => {
    const cut = draft.season.cells.flatMap(({ ownerCuts }, cell) => ownerCuts.map(({ day }) => ({ cell, day })));
    expect(cut.length).toBeGreaterThan(0);
    for (const { cell, day } of cut) {
      const there = proposed.filter((one) => one.cell === cell);
      expect(there.length).toBeGreaterThan(100);
      expect(there.filter(({ cuts }) => cuts.includes(day))).toEqual([]);
      expect(there.some(({ cuts }) => cuts.includes(day + 1))).toBe(true);
    }
  });
});
