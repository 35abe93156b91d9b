/** Where a day sheet sends a pen: by lane and peg as its pen sheet says where the ground's shape is known, else beside the strip it stands on. */
import { describe, expect, it } from "vitest";
import { pensOfFarm } from "../../src/decide/pens/pens-of-farm.js";
import { stepsIn } from "../../src/decide/pens/steps.js";
import { NO_CALLS } from "../../src/farm/calls.js";
import { daySheet } from "../../src/sheets/day/day-sheet.js";
import { addDays, type IsoDate } from "../../src/quantity/calendar.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";

const words = englishWords();

/** All that the tasks of a day say of a group. */
function toldOf(farm: "withy-end" | "rushy-leys", day: IsoDate, group: string): string {
  const tasks = daySheet(plannedFarm(farm), words, { day, printedOn: "2027-04-01", calls: NO_CALLS }).parts.flatMap((part) => part.tasks);
  return tasks.filter((task) => task.group === group).flatMap(({ lines }) => lines).flatMap(({ steps }) => steps).flatMap(({ bits }) => bits.map(({ text }) => text)).join("");
}

describe("a strip on a day sheet", () => {
  it("lies in the lane and at the peg of the pen sheet where the shape is known", () => {
    const { scenario, plan } = plannedFarm("rushy-leys");
    let seen = 0;
    for (const pen of pensOfFarm(scenario, plan)) {
      for (const one of pen.cells) {
        const steps = stepsIn(one, pen.strip.days);
        for (const [i, { number, firstDay, lane }] of steps.entries()) {
          if (i === 0 || steps[i - 1]!.lastDay !== addDays(firstDay, -1) || firstDay === scenario.season.lastDay) continue;
          if (++seen % 7 !== 0) continue; // a day of each week
          expect([firstDay, toldOf("rushy-leys", firstDay, pen.group.name)]).toEqual([firstDay, expect.stringMatching(new RegExp(`strip ${number} \\(lane ${lane!.number}, peg ${lane!.alongM}\\s`))]);
        }
      }
    }
    expect(seen).toBeGreaterThan(50);
  });

  it("lies beside the one before it where only the area is known; the first has a line for its owner to write on", () => {
    expect(toldOf("withy-end", "2027-06-01", "Broilers")).toContain("strip 6, fresh side of 5");
    expect(toldOf("withy-end", "2027-06-16", "Layers")).toContain("strip 1.It lies:");
  });
});
