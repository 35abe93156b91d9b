import type { Effort } from "../decide/effort.js";
import { planSeason, type Planned } from "../decide/plan-season.js";
import type { Scenario } from "../farm/scenario.js";
import { wrapped } from "../sheets/text-wrap.js";
import { breachText } from "./cost-text.js";
import { madeOf, todayHere } from "./made.js";
import { openFarm, openPlan } from "./open.js";
import type { PlanOptions } from "./options.js";
import { refuseWhatIsThere, usualFolder, writeOut } from "./out-folder.js";
import type { Outcome } from "./outcome.js";
import { planAnswer, type PlanSeen } from "./plan-answer.js";
import { planText } from "./plan-text.js";
import { progressLine } from "./progress.js";
import { widthOf, type Screen } from "./screen.js";
import { SHEETS, sheetFiles } from "./sheet-files.js";
import { planningServices } from "./services.js";
import { stopOnInterrupt } from "./stop.js";
import { aboutPrice } from "./words.js";

export interface PlanGiven extends PlanOptions {
  readonly farm: string;
  readonly replace: boolean;
}

const TICK_MS = 1000;

/** `inbye plan FARM`: plans the season, writes the sheets, says what it costs and how good it is. */
export async function planCommand(given: PlanGiven, screen: Screen): Promise<Outcome> {
  const { value: scenario, notes } = openFarm(given.farm);
  const folder = given.out ?? usualFolder(given.farm);
  refuseWhatIsThere(folder, SHEETS, given.replace);
  const base = given.from === null ? null : { plan: openPlan(given.from, scenario).value, price: given.keep };
  const planned = await planWatched(scenario, { ...given, base }, screen);
  const made = madeOf(scenario, planned, todayHere());
  const asked = { effort: given.effort, seed: given.seed };
  const refused = planned.kind === "no-plan";
  const files = refused ? [] : writeOut(folder, sheetFiles(scenario, planned, made), given.replace);
  const columns = given.columns ?? widthOf(screen);
  const seen: PlanSeen = { scenario, planned, made, asked, files, notes };
  return {
    exit: refused ? 3 : 0,
    text: refused ? refusedText(planned, made.currency, columns) : planText(seen, columns, screen),
    answer: { shape: "plan-answer", value: planAnswer(seen) },
  };
}

/** Plans with progress on the terminal and Ctrl-C minded. */
async function planWatched(scenario: Scenario, given: PlanGiven & Pick<Effort, "base">, screen: Screen): Promise<Planned> {
  const line = progressLine(screen, scenario.prices.currency);
  const { stop, release } = stopOnInterrupt(() => screen.aside("\nStopping with the best plan found; Ctrl-C again quits.\n"));
  const ticking = setInterval(() => line.tick(), TICK_MS);
  try {
    const effort = { name: given.effort, seed: given.seed, capSeconds: given.seconds, base: given.base ?? null };
    return await planSeason(scenario, planningServices(), effort, (progress) => line.show(progress), stop);
  } finally {
    clearInterval(ticking);
    line.clear();
    release();
  }
}

/** The check has the last word: a plan it refuses is told, never handed out; with it, what would have to give. */
function refusedText({ report, waysOut, capped }: Planned, currency: string, columns: number): string {
  const ways = waysOut.map(({ words, cost }) => wrapped(`  - ${words}; the season then costs ${aboutPrice(cost, currency)}`, columns, 4));
  const ended = capped ? "Stopped before a plan was found that keeps every rule" : "No plan was found that keeps every rule";
  return [
    wrapped(`${ended}; nothing was written. The nearest one breaks these:`, columns, 0),
    "",
    breachText(report.breaches, columns),
    ...(ways.length === 0 ? [] : ["", "What would help, each tried:", ...ways]),
    "",
  ].join("\n");
}
