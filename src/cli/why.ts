import { checkPlan } from "../check/check-plan.js";
import type { WhyEffort, WhyServices } from "../decide/why-search.js";
import { whyCell, whyGroup } from "../decide/why.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { openFarm, openPlan } from "./open.js";
import { InputFault, type Outcome } from "./outcome.js";
import { widthOf, type Screen } from "./screen.js";
import { planningServices } from "./services.js";
import { stopOnInterrupt } from "./stop.js";
import { whyCellAnswer, whyGroupAnswer } from "./why-answer.js";
import { readWhyOptions, type TypedWhy, type WhyAsked } from "./why-options.js";
import { whyCellText, whyGroupText, type WhySeen } from "./why-text.js";
import { countWords } from "./words.js";

export interface WhyGiven extends TypedWhy {
  readonly farm: string;
  readonly plan: string;
  readonly changes: readonly string[];
}

/** Steps of a first look and of a proper search: about a minute on a usual farm with two cores. */
const EFFORT: WhyEffort = { look: 60_000, proper: 200_000, seed: 1 };

/** `inbye why FARM PLAN`: why a group is where it is on a day, or what a cell could be used for, each answer planned again and checked. */
export async function whyCommand(given: WhyGiven, screen: Screen): Promise<Outcome> {
  const { value: scenario, notes: farmNotes } = openFarm(given.farm, given.changes);
  const { value: plan, notes: planNotes } = openPlan(given.plan, scenario);
  const notes = [...farmNotes, ...planNotes];
  const asked = readWhyOptions(given, scenario, plan);
  const unfit = [...planNotes.filter(({ code }) => code === "other-farm"), ...brokenFindings(scenario, given.plan, checkPlan(scenario, plan).breaches.length, planNotes)];
  if (unfit.length > 0) throw new InputFault(unfit);
  const seen: WhySeen = { scenario, farm: given.farm, plan: given.plan, notes, columns: widthOf(screen), screen };
  return watched(screen, async (services) => outcomeOf(asked, seen, scenario, plan, services));
}

async function outcomeOf(asked: WhyAsked, seen: WhySeen, scenario: Scenario, plan: Parameters<typeof whyGroup>[1], services: WhyServices): Promise<Outcome> {
  if (asked.of === "cell") {
    const why = await whyCell(scenario, plan, asked, services, EFFORT);
    return { exit: 0, text: whyCellText(why, seen), answer: { shape: "why-cell-answer", value: whyCellAnswer(scenario, why, seen.notes) } };
  }
  const why = await whyGroup(scenario, plan, asked, services, EFFORT);
  return { exit: 0, text: whyGroupText(why, seen), answer: { shape: "why-group-answer", value: whyGroupAnswer(scenario, why, seen.notes) } };
}

/** A plan that breaks rules of the farm as it is cannot be weighed; where the farm has changed since, that is said first. */
function brokenFindings(scenario: Scenario, file: string, broken: number, notes: readonly Finding[]): readonly Finding[] {
  if (broken === 0) return [];
  const finding: Finding = {
    file, line: 1, column: 1, code: "plan-broken", found: `the plan breaks a rule of ${scenario.farm} in ${countWords(broken, "place")}`,
    allowed: "why is asked of a plan that keeps every rule", next: "look with inbye check, or plan again with inbye plan and --from",
  };
  return [...notes.filter(({ code }) => code === "other-farm-file"), finding];
}

/** Tells a terminal how far it is, and lets Ctrl-C end it with what is known. */
async function watched(screen: Screen, work: (services: WhyServices) => Promise<Outcome>): Promise<Outcome> {
  const { stop, release } = stopOnInterrupt(() => screen.aside("\nStopping with what is known; Ctrl-C again quits.\n"));
  const clear = "\r\u001b[2K";
  try {
    const onSearch = (done: number): void => {
      if (screen.live) screen.aside(`${clear}${countWords(done, "season")} planned beside the plan (Ctrl-C ends it)`);
    };
    return await work({ threads: planningServices().threads, stop, onSearch });
  } finally {
    if (screen.live) screen.aside(clear);
    release();
  }
}
