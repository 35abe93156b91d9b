import type { Effort } from "../decide/effort.js";
import { planSeason, type Planned } from "../decide/plan-season.js";
import type { Scenario } from "../farm/scenario.js";
import type { PlanFile } from "../plan/plan-file.js";
import { madeOf, todayHere } from "./made.js";
import { openFarm, openPlanFile, withChange } from "./open.js";
import type { PlanOptions } from "./options.js";
import { refuseWhatIsThere, usualFolder, writeOut } from "./out-folder.js";
import type { Outcome } from "./outcome.js";
import { planAnswer, type PlanSeen } from "./plan-answer.js";
import { planText } from "./plan-text.js";
import { progressLine } from "./progress.js";
import { widthOf, type Screen } from "./screen.js";
import { refusedText } from "./refused-text.js";
import { REFUSED_FILES, refusedFiles, SHEETS, sheetFiles } from "./sheet-files.js";
import { planningServices } from "./services.js";
import { stopOnInterrupt } from "./stop.js";

export interface PlanGiven extends PlanOptions {
  readonly farm: string;
  readonly replace: boolean;
}

const TICK_MS = 1000;

/** `inbye plan FARM`: plans the season, writes the sheets, says what it costs and how good it is. */
export async function planCommand(given: PlanGiven, screen: Screen): Promise<Outcome> {
  const { value: scenario, notes, changes } = openFarm(given.farm, given.changes);
  const folder = given.out ?? usualFolder(given.farm);
  refuseWhatIsThere(folder, [...SHEETS, ...REFUSED_FILES], given.replace);
  const from = given.from === null ? null : openPlanFile(given.from, scenario).value;
  const base = from && { plan: from.plan, price: given.keep };
  const planned = await planWatched(scenario, { ...given, base }, screen);
  const replaces = versionBefore(scenario, from?.file ?? null);
  const made = madeOf(scenario, planned, todayHere(), replaces);
  const asked = { effort: given.effort, seed: given.seed };
  const refused = planned.kind === "no-plan";
  const changed = (text: string) => withChange(given.farm, given.changes, text);
  const sheets = refused ? refusedFiles(scenario, planned, made, { replaces, changes }, changed) : sheetFiles(scenario, planned, made, { replaces, changes });
  const files = writeOut(folder, sheets, given.replace);
  const columns = given.columns ?? widthOf(screen);
  const seen: PlanSeen = { scenario, planned, made, asked, files, notes };
  return {
    exit: refused ? 3 : 0,
    text: refused ? refusedText(seen, given, columns, screen) : planText(seen, columns, screen),
    answer: { shape: "plan-answer", value: planAnswer(seen) },
  };
}

/** Version of the plan of this farm that planning started from; a grid has none, and another farm's does not count here. */
function versionBefore({ farm }: Scenario, file: PlanFile | null): number | null {
  return file?.farm === farm ? file.version : null;
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
