import type { RuleId } from "../rules/rule.js";

/** What a charge under each rule is for, short enough for a column. */
const CHARGED_FOR: Readonly<Record<RuleId, string>> = {
  "every-day-placed": "days without a place",
  "looked-at": "days with nobody to look",
  "one-group-per-cell": "groups in one cell",
  "entry-cover": "going in on short grass",
  "upper-cover": "grass grown too long",
  "residual-cover": "grazed too low",
  "demand-met": "hay fed in the yard",
  "stay-limit": "stays longer than usual",
  "rest-period": "rests cut short",
  "clean-ground": "worms: back too soon",
  "poultry-rest": "birds back too soon",
  "pig-rest": "pigs back too soon",
  "pig-pressure": "pigs too long on a strip",
  "after-pigs": "ground the pigs left",
  "worked-ground": "ground shut after birds or pigs",
  "follow-window": "birds not behind the leader",
  "ground-wants": "wants of the ground left undone",
  "grass-in-hand": "too few days of grass in hand",
  "closing-cover": "grass short at closing",
  "density-ceiling": "too dense in a cell",
  "rate-ceiling": "too many on the farm",
  "nitrogen-ceiling": "nitrogen over the advised figure",
  "pen-steps": "pens hauled between cells",
  people: "work of moves and hauls",
  "fence-kit": "fence kit short",
  water: "water carted or far",
  shade: "days without shade",
  "closed-dates": "closed ground used",
  "housing-order": "birds out under an order",
  standstill: "movements in a standstill",
  "yard-room": "days in a yard",
  "hay-stock": "hay short for winter, and mowing",
  holds: "fixed days changed",
};

/** A rule's charge in a few plain words. */
export function chargedFor(rule: RuleId): string {
  return CHARGED_FOR[rule];
}
