import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { RuleId } from "../rules/rule.js";
import type { Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { checkAfterPigs } from "./after-pigs.js";
import { checkCleanGround } from "./clean-ground.js";
import { checkClosedDates } from "./closed-dates.js";
import { checkClosingCover } from "./closing-cover.js";
import { checkDemandMet } from "./demand-met.js";
import { checkDensityCeiling } from "./density-ceiling.js";
import { checkEntryCover } from "./entry-cover.js";
import { checkEveryDayPlaced } from "./every-day-placed.js";
import { checkFenceKit } from "./fence-kit.js";
import { checkFollowWindow } from "./follow-window.js";
import { checkGrassInHand } from "./grass-in-hand.js";
import { checkGroundWants } from "./ground-wants.js";
import { checkHayStock } from "./hay-stock.js";
import { checkHolds } from "./holds.js";
import { checkHousingOrder } from "./housing-order.js";
import { checkLookedAt } from "./looked-at.js";
import { checkNitrogenCeiling } from "./nitrogen-ceiling.js";
import { checkOneGroupPerCell } from "./one-group-per-cell.js";
import { checkPenSteps } from "./pen-steps.js";
import { checkPeople } from "./people.js";
import { checkPigPressure } from "./pig-pressure.js";
import { checkPigRest } from "./pig-rest.js";
import { checkPoultryRest } from "./poultry-rest.js";
import { checkRateCeiling } from "./rate-ceiling.js";
import { checkResidualCover } from "./residual-cover.js";
import { checkRestPeriod } from "./rest-period.js";
import { checkShade } from "./shade.js";
import { checkStandstill } from "./standstill.js";
import { checkStayLimit } from "./stay-limit.js";
import { checkUpperCover } from "./upper-cover.js";
import { checkWater } from "./water.js";
import { checkWorkedGround } from "./worked-ground.js";
import { checkYardRoom } from "./yard-room.js";

/** One rule's check: what of a plan breaks it, and what its price is. */
export type RuleCheck = (scenario: Scenario, plan: Plan, replay: Replay) => Judged;

/** Every rule's check. */
export const RULE_CHECKS: Readonly<Record<RuleId, RuleCheck>> = {
  "every-day-placed": checkEveryDayPlaced,
  "looked-at": checkLookedAt,
  "one-group-per-cell": checkOneGroupPerCell,
  "entry-cover": checkEntryCover,
  "upper-cover": checkUpperCover,
  "residual-cover": checkResidualCover,
  "demand-met": checkDemandMet,
  "stay-limit": checkStayLimit,
  "rest-period": checkRestPeriod,
  "clean-ground": checkCleanGround,
  "poultry-rest": checkPoultryRest,
  "pig-rest": checkPigRest,
  "pig-pressure": checkPigPressure,
  "after-pigs": checkAfterPigs,
  "worked-ground": checkWorkedGround,
  "follow-window": checkFollowWindow,
  "ground-wants": checkGroundWants,
  "grass-in-hand": checkGrassInHand,
  "closing-cover": checkClosingCover,
  "density-ceiling": checkDensityCeiling,
  "rate-ceiling": checkRateCeiling,
  "nitrogen-ceiling": checkNitrogenCeiling,
  "pen-steps": checkPenSteps,
  "people": checkPeople,
  "fence-kit": checkFenceKit,
  "water": checkWater,
  "shade": checkShade,
  "closed-dates": checkClosedDates,
  "housing-order": checkHousingOrder,
  "standstill": checkStandstill,
  "yard-room": checkYardRoom,
  "hay-stock": checkHayStock,
  "holds": checkHolds,
};
