import { basename, join } from "node:path";
import { checkPlan } from "../check/check-plan.js";
import { comparePlans, groupsDiffer, type PlannedFarm } from "../decide/compare-plans.js";
import { tryChanges, type Trial, type TrialFarm } from "../decide/try-changes.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { madeOf, todayHere } from "./made.js";
import { openPlan } from "./open.js";
import type { PlanOptions } from "./options.js";
import { refuseWhatIsThere, writeOut } from "./out-folder.js";
import { commandLineFinding, InputFault, type Outcome } from "./outcome.js";
import { widthOf, type Screen } from "./screen.js";
import { planningServices } from "./services.js";
import { REFUSED_FILES, refusedFiles, SHEETS, sheetFiles } from "./sheet-files.js";
import { stopOnInterrupt } from "./stop.js";
import { tryAnswer } from "./try-answer.js";
import { openTrials, type OpenedTrials } from "./try-open.js";
import { progressLines } from "./try-progress.js";
import type { ChangeSeen, GivenSeen, TrySeen } from "./try-seen.js";
import { tryText } from "./try-text.js";

export interface TryGiven extends PlanOptions {
  readonly farm: string;
  readonly trials: readonly string[];
  readonly together: boolean;
  readonly replace: boolean;
}

const AS_IT_IS = "As it is";
const TICK_MS = 1000;

/** `inbye try FARM CHANGE...`: plans the farm as it is and with each change, and says what differs. */
export async function tryCommand(given: TryGiven, screen: Screen): Promise<Outcome> {
  const opened = openTrials(given.farm, given.changes, given.trials, given.together);
  const folders = foldersOf(given);
  for (const folder of folders) refuseWhatIsThere(folder, [...SHEETS, ...REFUSED_FILES], given.replace);
  const from = given.from === null ? null : openPlan(given.from, opened.base);
  const began = performance.now();
  const [base, ...trials] = await triedWatched(opened, from?.value ?? null, given, screen) as [Trial, ...Trial[]];
  const files = [base, ...trials].flatMap((trial, i) => (folders[i] === undefined ? [] : writtenTo(folders[i], trial, given, opened.laidFirst)));
  const seen: TrySeen = {
    scenario: opened.base,
    asked: { effort: given.effort, seed: given.seed },
    laidFirst: opened.laidFirst,
    base,
    changes: trials.map((trial) => changeSeen(base, trial)),
    given: from && givenSeen(opened.base, from.value, base),
    seconds: (performance.now() - began) / 1000,
    files,
    notes: [...opened.notes, ...from?.notes ?? []],
  };
  return {
    exit: [base, ...trials].some(({ planned }) => planned.kind === "no-plan") ? 3 : 0,
    text: tryText(seen, given.columns ?? widthOf(screen), screen),
    answer: { shape: "try-answer", value: tryAnswer(seen) },
  };
}

/** A folder for the farm as it is and for each change, by the change file's name; none where nothing is to be written. */
function foldersOf({ out, trials, together }: TryGiven): readonly string[] {
  if (out === null) return [];
  const names = ["as-it-is", ...trials.map((file) => basename(file).replace(/\.(ya?ml|json)$/i, "")), ...together ? ["all-together"] : []];
  const same = names.filter((name, i) => names.indexOf(name) < i);
  if (same.length > 0) throw new InputFault(same.map((name) => commandLineFinding("folder-twice", `two folders would be called ${name}`, "each change's sheets go to a folder of its file's name", "give one of the files another name")));
  return names.map((name) => join(out, name));
}

/** Plans with a line for each farm on the terminal and Ctrl-C minded. */
async function triedWatched(opened: OpenedTrials, from: Plan | null, given: TryGiven, screen: Screen): Promise<readonly Trial[]> {
  const farms: readonly TrialFarm[] = [{ title: AS_IT_IS, scenario: opened.base }, ...opened.changes];
  const lines = progressLines(screen, opened.base.prices.currency, farms.map(({ title }) => title));
  const { stop, release } = stopOnInterrupt(() => {
    lines.clear();
    screen.aside("\nStopping with the best plans found; Ctrl-C again quits.\n");
  });
  const ticking = setInterval(() => lines.tick(), TICK_MS);
  try {
    const effort = { name: given.effort, seed: given.seed, capSeconds: given.seconds };
    return await tryChanges(farms, from, planningServices(), effort, { progress: (farm, progress) => lines.show(farm, progress), stop });
  } finally {
    clearInterval(ticking);
    lines.clear();
    release();
  }
}

function changeSeen(base: Trial, trial: Trial): ChangeSeen {
  const both = base.planned.kind === "plan" && trial.planned.kind === "plan";
  return { trial, comparison: both ? comparePlans(farmOf(base), farmOf(trial)) : null };
}

function farmOf({ scenario, planned: { plan, report } }: Trial): PlannedFarm {
  return { scenario, plan, report };
}

function givenSeen(scenario: Scenario, plan: Plan, base: Trial): GivenSeen {
  const report = checkPlan(scenario, plan);
  const differs = groupsDiffer({ scenario, plan, report }, farmOf(base));
  return { cost: report.cost, breaches: report.breaches.length, daysOtherwise: differs.reduce((sum, { days }) => sum + days, 0) };
}

/** The same sheets as `plan` writes, into the folder of a trial. */
function writtenTo(folder: string, { title, scenario, planned }: Trial, { replace }: TryGiven, laidFirst: readonly string[]): readonly string[] {
  const made = madeOf(scenario, planned, todayHere());
  const ancestry = { replaces: null, changes: title === AS_IT_IS ? laidFirst : [...laidFirst, title] };
  const sheets = planned.kind === "plan" ? sheetFiles(scenario, planned, made, ancestry) : refusedFiles(scenario, planned, made, ancestry, () => null);
  return writeOut(folder, sheets, replace);
}
