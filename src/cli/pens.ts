import { pensOfFarm, type PenOnFarm } from "../decide/pens/pens-of-farm.js";
import type { Scenario } from "../farm/scenario.js";
import { cautionsFor } from "../plan/cautions.js";
import type { Plan } from "../plan/plan.js";
import { penSheet } from "../sheets/pens/page.js";
import { english } from "./english.js";
import { openFarm, openPlan } from "./open.js";
import { refuseWhatIsThere, writeOut } from "./out-folder.js";
import type { Outcome } from "./outcome.js";
import { pensAnswer, type PensSeen } from "./pens-answer.js";
import type { PensOptions } from "./pens-options.js";
import { pensText } from "./pens-text.js";
import type { Screen } from "./screen.js";

export interface PensGiven extends PensOptions {
  readonly farm: string;
  readonly plan: string | null;
  readonly replace: boolean;
}

/** Dangers of moving pens and of what lives in them; the others stand on the plan's own sheets. */
const PEN_TOPICS = ["fence", "tow", "pen", "dead-birds", "bird-flu", "open-water", "dusk", "heat", "codes"];

/** `inbye pens FARM [PLAN]`: what each pen, net and pigs' strip covers of each cell; drawn to scale where a folder is named. */
export function pensCommand(given: PensGiven, screen: Screen): Outcome {
  const farm = openFarm(given.farm, given.changes);
  const scenario = farm.value;
  const plan = given.plan === null ? null : openPlan(given.plan, scenario);
  const found = pensFound(scenario, plan?.value ?? null);
  const files = given.out === null ? [] : written(given.out, given.replace, found);
  const seen: PensSeen = { ...found, files, notes: [...farm.notes, ...(plan?.notes ?? [])] };
  return { exit: 0, text: pensText(seen, english(), given.farm, screen), answer: { shape: "pens-answer", value: pensAnswer(seen) } };
}

/** The pens of a farm, with the dangers of those there are. */
export function pensFound(scenario: Scenario, plan: Plan | null): Omit<PensSeen, "files" | "notes"> {
  const pens = pensOfFarm(scenario, plan);
  const cautions = pens.length === 0 ? [] : cautionsFor(scenario, plan ?? everywhere(scenario, pens)).filter(({ topic }) => PEN_TOPICS.includes(topic));
  return { scenario, pens, planned: plan !== null, cautions };
}

function written(folder: string, replace: boolean, { scenario, pens, planned, cautions }: Omit<PensSeen, "files" | "notes">): readonly string[] {
  const names = fileNames(pens.map(({ group }) => group.name)).map((name) => `${name}.html`);
  refuseWhatIsThere(folder, names, replace);
  return writeOut(folder, pens.map((pen, i) => ({ name: names[i]!, text: penSheet(scenario, pen, planned, cautions, english()) })), replace);
}

/** "pens-layers", to be ended by what sort of file it is; names that come out alike are numbered. */
export function fileNames(groups: readonly string[]): readonly string[] {
  const plain = groups.map((name) => name.toLowerCase().normalize("NFKD").replaceAll(/[^a-z0-9]+/g, "-").replaceAll(/^-|-$/g, ""));
  return plain.map((name, i) => {
    const alike = plain.filter((other) => other === name).length > 1 || name === "";
    return `pens-${name}${alike ? `${name === "" ? "" : "-"}${i + 1}` : ""}`;
  });
}

/** Every group in every cell it may enter: all the dangers that a season of it may bring. */
function everywhere(scenario: Scenario, pens: readonly PenOnFarm[]): Plan {
  const stays = scenario.groups.flatMap((group) => {
    const cells = pens.some((pen) => pen.group.name === group.name) ? group.mayEnter : [];
    const yard = { group: group.name, cell: null, yard: group.yard, ...group.here[0]! };
    return [yard, ...cells.flatMap((cell) => group.here.map((span) => ({ group: group.name, cell, yard: null, ...span })))];
  });
  return { stays, cuts: [] };
}
