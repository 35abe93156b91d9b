import { entryCoverHalf } from "./entry-cover.js";
import { upperCoverHalf } from "./upper-cover.js";
import { residualCoverHalf } from "./residual-cover.js";
import { demandMetHalf } from "./demand-met.js";
import { stayLimitHalf } from "./stay-limit.js";
import { restPeriodHalf } from "./rest-period.js";
import { cleanGroundHalf } from "./clean-ground.js";
import { poultryRestHalf } from "./poultry-rest.js";
import { pigRestHalf } from "./pig-rest.js";
import { pigPressureHalf } from "./pig-pressure.js";
import { afterPigsHalf } from "./after-pigs.js";
import { workedGroundHalf } from "./worked-ground.js";
import { followWindowHalf } from "./follow-window.js";
import { groundWantsHalf } from "./ground-wants.js";
import { grassInHandHalf } from "./grass-in-hand.js";
import { closingCoverHalf } from "./closing-cover.js";
import { densityCeilingHalf } from "./density-ceiling.js";
import { rateCeilingHalf } from "./rate-ceiling.js";
import { nitrogenCeilingHalf } from "./nitrogen-ceiling.js";
import { penStepsHalf } from "./pen-steps.js";
import { peopleHalf } from "./people.js";
import { fenceKitHalf } from "./fence-kit.js";
import { waterHalf } from "./water.js";
import { shadeHalf } from "./shade.js";
import { closedDatesHalf } from "./closed-dates.js";
import { housingOrderHalf } from "./housing-order.js";
import { yardRoomHalf } from "./yard-room.js";
import { hayStockHalf } from "./hay-stock.js";
import { holdsHalf } from "./holds.js";
import type { RuleId } from "../../rules/rule.js";
import type { Half } from "../half.js";

/** Every rule's part in the programme. */
export const HALVES: readonly Half[] = [
  entryCoverHalf,
  upperCoverHalf,
  residualCoverHalf,
  demandMetHalf,
  stayLimitHalf,
  restPeriodHalf,
  cleanGroundHalf,
  poultryRestHalf,
  pigRestHalf,
  pigPressureHalf,
  afterPigsHalf,
  workedGroundHalf,
  followWindowHalf,
  groundWantsHalf,
  grassInHandHalf,
  closingCoverHalf,
  densityCeilingHalf,
  rateCeilingHalf,
  nitrogenCeilingHalf,
  penStepsHalf,
  peopleHalf,
  fenceKitHalf,
  waterHalf,
  shadeHalf,
  closedDatesHalf,
  housingOrderHalf,
  yardRoomHalf,
  hayStockHalf,
  holdsHalf,
];

/** Rules without a part in the programme, and why nothing is lost. */
export const NO_HALF: Partial<Record<RuleId, string>> = {
  "every-day-placed": "a group has one place a day by the shape of the programme's data",
  "looked-at": "no plan brings anybody home: it is a finding of reading",
  "one-group-per-cell": "a cell holds one group a day by the shape of the programme's data",
  standstill: "arrivals and departures are the owner's dates: the check names those in a standstill",
};
