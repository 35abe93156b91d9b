import { checkCommand } from "./check.js";
import { CHANGE_OPTION, flag, JSON_OPTION, needed, valued, withExamples, type CommandLine } from "./command-line.js";
import { CHECK, EXAMPLES, PLAN, READ, WHY } from "./examples.js";
import { EFFORTS, readChanges, readPlanOptions } from "./options.js";
import { planCommand } from "./plan.js";
import { readCommand } from "./read.js";
import { whyCommand } from "./why.js";
import { WHY_OPTIONS } from "./why-options.js";

const FARM = needed("Farm file");
const READ_OPTIONS = { assumed: flag("List every figure that was assumed, with its source"), ...JSON_OPTION };
const PLAN_OPTIONS = {
  out: valued("Folder for the sheets; plans/ and the farm file's name unless given"),
  effort: valued(`How hard to look: ${EFFORTS.join(", ")}; usual unless given`),
  seed: valued("Number that the search starts from, 1 unless given; same farm, seed and effort, same plan"),
  seconds: valued("Stop after so many seconds with the best plan found"),
  replace: flag("Write over sheets that are there"),
  from: valued("A plan.json or grid.csv to start from and stay close to"),
  keep: valued("Money for each day of a group that differs from it (usual: 2)"),
  columns: valued("Width of what is printed, in characters"),
  ...CHANGE_OPTION,
  ...JSON_OPTION,
};
const CHECK_OPTIONS = { ...CHANGE_OPTION, ...JSON_OPTION };

const readLine: CommandLine = {
  name: "read",
  takes: "a farm file",
  options: Object.keys(READ_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("read <farm>", READ, (command) => withExamples(command, EXAMPLES.read).positional("farm", FARM).options(READ_OPTIONS), (given) => choose(() => readCommand(given, screen))),
};

const planLine: CommandLine = {
  name: "plan",
  takes: "a farm file",
  options: Object.keys(PLAN_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("plan <farm>", PLAN, (command) => withExamples(command, EXAMPLES.plan).positional("farm", FARM).options(PLAN_OPTIONS), (given) =>
      choose(() => planCommand({ ...readPlanOptions(given), farm: given.farm, replace: given.replace }, screen))),
};

const checkLine: CommandLine = {
  name: "check",
  takes: "a farm file and a plan",
  options: Object.keys(CHECK_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("check <farm> <plan>", CHECK, (command) =>
      withExamples(command, EXAMPLES.check).positional("farm", FARM).positional("plan", needed("plan.json, or a grid as CSV")).options(CHECK_OPTIONS), (given) =>
      choose(() => checkCommand({ ...given, changes: readChanges(given.change) }, screen))),
};

const whyLine: CommandLine = {
  name: "why",
  takes: "a farm file and a plan",
  options: Object.keys(WHY_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("why <farm> <plan>", WHY, (command) =>
      withExamples(command, EXAMPLES.why).positional("farm", FARM).positional("plan", needed("plan.json, or a grid as CSV")).options(WHY_OPTIONS), (given) =>
      choose(() => whyCommand({ ...given, changes: readChanges(given.change) }, screen))),
};

/** All commands, in the order of the help. */
export const COMMANDS: readonly CommandLine[] = [readLine, planLine, checkLine, whyLine];
