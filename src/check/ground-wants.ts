import { figureOf, type Scenario, type Want } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Judged } from "./findings.js";
import { openedHa, workedHa } from "./ground-done.js";
import type { Replay } from "./replay.js";
import { plain, shortOf } from "./words.js";

const DONE: Readonly<Record<Want, string>> = { opening: "opened", scratching: "scratched", fertility: "fed" };

/** At the season's end, the share of each cell's wants that was left undone. */
export function checkGroundWants(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "ground-wants", replay.days);
  for (const season of replay.cells) {
    const { cell } = season;
    const figure = (key: string) => figureOf(scenario, "ground-wants", key, cell.field, null) ?? 0;
    for (const want of new Set(cell.wants)) {
      const share = Math.min(1, doneShare(scenario, season, want, figure));
      findings.charge({ group: null, cell, first: 0, last: replay.days.count - 1 }, {
        money: cell.areaHa * (1 - share) * figure(`${want}-price`),
        found: `${plain(shortOf(share * 100))} % ${DONE[want]}, all of it wished`, allowed: `all of it ${DONE[want]}`,
      });
    }
  }
  return findings.judged();
}

function doneShare(scenario: Scenario, season: Replay["cells"][number], want: Want, figure: (key: string) => number): number {
  if (want === "opening") return openedHa(scenario, season) / season.cell.areaHa;
  if (want === "scratching") return workedHa(scenario, season) / season.cell.areaHa;
  const nitrogen = season.nitrogenKg.reduce((sum, kg) => sum + kg, 0) / season.cell.areaHa;
  return nitrogen / figure("fertility-target");
}
