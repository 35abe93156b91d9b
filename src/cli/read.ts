import { landSummary } from "../decide/land.js";
import { highsSolver } from "../solvers/highs.js";
import { openFarm } from "./open.js";
import type { Outcome } from "./outcome.js";
import { readAnswer, readText } from "./read-text.js";
import type { Screen } from "./screen.js";

export interface ReadGiven {
  readonly farm: string;
  readonly assumed: boolean;
}

/** `inbye read FARM`: what is wrong in the file; cells needed against cells there are; what the land grows and the stock eats. */
export async function readCommand(given: ReadGiven, screen: Screen): Promise<Outcome> {
  const { value: scenario, notes } = openFarm(given.farm);
  const land = await landSummary(scenario, highsSolver());
  return {
    exit: 0,
    text: readText({ scenario, land, notes, listAssumed: given.assumed, farmFile: given.farm }, screen),
    answer: { shape: "read-answer", value: readAnswer(scenario, land, notes) },
  };
}
