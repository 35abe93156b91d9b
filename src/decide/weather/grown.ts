import type { Scenario } from "../../farm/scenario.js";
import { grownRow, type Year } from "./year.js";

/** The farm in a year. Long grass is topped for birds then, not the birds shut in. */
export function grownFarm(scenario: Scenario, year: Pick<Year, "growth" | "springLate">): Scenario {
  const farm = { ...scenario.rules.farm, "upper-cover": { ...scenario.rules.farm["upper-cover"], use: "off" as const } };
  const cells = scenario.cells.map((cell) => ({ ...cell, growthByMonth: grownRow(cell.growthByMonth, year) }));
  return { ...scenario, rules: { ...scenario.rules, farm }, cells };
}
