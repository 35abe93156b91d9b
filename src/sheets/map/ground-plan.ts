import type { Scenario } from "../../farm/scenario.js";
import { blockPlan } from "./block-plan.js";
import type { GroundPlan, PlanRoom } from "./planned-ground.js";
import { shapePlan } from "./shape-plan.js";

/** To shape and place where the farm's map has all its cells and the yard, else blocks in right proportion and order. */
export function groundPlan(scenario: Scenario, room: PlanRoom): GroundPlan {
  const drawn = scenario.handover.yardAt !== null && scenario.cells.every(({ boundary }) => boundary?.north === true);
  return drawn ? shapePlan(scenario, room) : blockPlan(scenario, room);
}
