import { basename } from "node:path";
import { NO_CALLS, readCalls, type Calls } from "../farm/calls.js";
import type { Finding, Result } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { formDifferences } from "../farm/form-differences.js";
import { isThere, readFarm, readTableFile, readTextFile } from "../files/read.js";
import { loadTables } from "../files/tables.js";
import { openCatalogue } from "../files/words.js";
import type { PlanFile } from "../plan/plan-file.js";
import type { Plan } from "../plan/plan.js";
import { readGrid } from "../plan/read-grid.js";
import { readPlanFile } from "../plan/read-plan-file.js";
import { wordsOf, type Words } from "../words/words.js";
import { InputFault } from "./outcome.js";

/** What was read, with what is worth knowing about it. */
export interface Opened<T> {
  readonly value: T;
  readonly notes: readonly Finding[];
}

/** Reads a farm file with changes laid over it in turn, or stops with every finding in them. */
export function openFarm(path: string, changes: readonly string[] = []): Opened<Scenario> & { readonly changes: readonly string[] } {
  const { value, notes } = valueOf(readFarm(path, changes, loadTables()));
  return { value: value.scenario, notes, changes: value.titles };
}

/** The texts of a language, or every finding about its catalogue. */
export function openWords(language: string): Words {
  return wordsOf(valueOf(openCatalogue(language)).value);
}

/** The farm with one more change laid over it, as its text reads; null where it does not read. */
export function withChange(path: string, changes: readonly string[], text: string): Scenario | null {
  const read = readFarm(path, changes, loadTables(), [{ file: "change", text }]);
  return read.ok ? read.value.scenario : null;
}

/** Reads a plan: plan.json where the text opens with a brace, else a grid as CSV. */
export function openPlan(path: string, scenario: Scenario): Opened<Plan> {
  const { value, notes } = openPlanFile(path, scenario);
  return { value: value.plan, notes };
}

/** The same with what plan.json says beside the plan; null of a grid, which says nothing else. */
export function openPlanFile(path: string, scenario: Scenario): Opened<{ readonly plan: Plan; readonly file: PlanFile | null }> {
  const text = valueOf(readTableFile(path)).value;
  const file = basename(path);
  if (!text.trimStart().startsWith("{")) {
    const { value: plan, notes } = valueOf(readGrid(text, scenario, file));
    return { value: { plan, file: null }, notes };
  }
  const { value, notes } = valueOf(readPlanFile(text, file, scenario));
  const other: Finding = {
    file, line: 1, column: 1, code: "other-farm-file",
    found: changedWords(value.farmForm, scenario.form), allowed: "the plan is judged against the farm as it is now", next: "plan again when the change matters",
  };
  return { value: { plan: value.plan, file: value }, notes: value.farmPrint === scenario.print ? notes : [...notes, other] };
}

/** Figures of the farm file told one by one, at most. */
const MOST_TOLD = 8;

/** What the farm file says otherwise than when the plan was made, as far as the plan knows. */
function changedWords(then: string | null, now: string | null): string {
  const changed = "the farm file has changed since this plan was made";
  const differences = then === null || now === null ? [] : formDifferences(then, now);
  if (differences.length === 0) return changed;
  const told = differences.slice(0, MOST_TOLD).map((one) => `${one.where}: ${one.then ?? "not there"} then, ${one.now ?? "not there"} now`);
  const more = differences.length - told.length;
  return `${changed}: ${told.join("; ")}${more > 0 ? `; and ${more} more` : ""}`;
}

function valueOf<T>(result: Result<T>): Opened<T> {
  if (!result.ok) throw new InputFault(result.findings);
  return { value: result.value, notes: result.notes };
}

/** Whom to call: the file named, or the one beside the farm file ("withy-end.calls.yaml"); nobody where there is none. */
export function openCalls(farm: string, named: string | null): Calls {
  const path = named ?? callsBeside(farm);
  if (named === null && !isThere(path)) return NO_CALLS;
  return valueOf(readCalls(valueOf(readTextFile(path)).value, basename(path))).value;
}

function callsBeside(farm: string): string {
  return farm.replace(/(\.ya?ml)?$/, ".calls.yaml");
}
