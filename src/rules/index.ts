import { everyDayPlaced } from "./every-day-placed.js";
import { lookedAt } from "./looked-at.js";
import { oneGroupPerCell } from "./one-group-per-cell.js";
import { entryCover } from "./entry-cover.js";
import { upperCover } from "./upper-cover.js";
import { residualCover } from "./residual-cover.js";
import { demandMet } from "./demand-met.js";
import { stayLimit } from "./stay-limit.js";
import { restPeriod } from "./rest-period.js";
import { cleanGround } from "./clean-ground.js";
import { poultryRest } from "./poultry-rest.js";
import { pigRest } from "./pig-rest.js";
import { pigPressure } from "./pig-pressure.js";
import { afterPigs } from "./after-pigs.js";
import { workedGround } from "./worked-ground.js";
import { followWindow } from "./follow-window.js";
import { groundWants } from "./ground-wants.js";
import { grassInHand } from "./grass-in-hand.js";
import { closingCover } from "./closing-cover.js";
import { densityCeiling } from "./density-ceiling.js";
import { rateCeiling } from "./rate-ceiling.js";
import { nitrogenCeiling } from "./nitrogen-ceiling.js";
import { penSteps } from "./pen-steps.js";
import { people } from "./people.js";
import { fenceKit } from "./fence-kit.js";
import { water } from "./water.js";
import { shade } from "./shade.js";
import { closedDates } from "./closed-dates.js";
import { housingOrder } from "./housing-order.js";
import { standstill } from "./standstill.js";
import { yardRoom } from "./yard-room.js";
import { hayStock } from "./hay-stock.js";
import { holds } from "./holds.js";
import type { Rule, RuleId } from "./rule.js";

/** Every rule's statement, in the order they are written for people. */
export const RULES: readonly Rule[] = [
  everyDayPlaced,
  lookedAt,
  oneGroupPerCell,
  entryCover,
  upperCover,
  residualCover,
  demandMet,
  stayLimit,
  restPeriod,
  cleanGround,
  poultryRest,
  pigRest,
  pigPressure,
  afterPigs,
  workedGround,
  followWindow,
  groundWants,
  grassInHand,
  closingCover,
  densityCeiling,
  rateCeiling,
  nitrogenCeiling,
  penSteps,
  people,
  fenceKit,
  water,
  shade,
  closedDates,
  housingOrder,
  standstill,
  yardRoom,
  hayStock,
  holds,
];

const BY_ID = new Map<RuleId, Rule>(RULES.map((rule) => [rule.id, rule]));

/** The statement of a rule. */
export function ruleOf(id: RuleId): Rule {
  const rule = BY_ID.get(id);
  if (!rule) throw new Error(`no rule ${id}`);
  return rule;
}
