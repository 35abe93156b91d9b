import { calendarLine } from "./calendar-line.js";
import { CHANGE_OPTION, flag, JSON_OPTION, needed, valued, withExamples, type CommandLine } from "./command-line.js";
import { CHECK, EXAMPLES, FEED, PENS, PLAN, READ, TRY, WHY } from "./examples.js";
import { EFFORTS, readChanges, readPlanOptions } from "./options.js";
import { PENS_OPTIONS, readPensOptions } from "./pens-options.js";
import { sheetsLine } from "./sheets-line.js";
import { TRY_OPTIONS } from "./try-options.js";
import { weatherLine } from "./weather-options.js";
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

const FEED_OPTIONS = {
  out: valued("Folder for the picture, feed-budget.html; none is written unless given"),
  replace: flag("Write over a picture that is there"),
  ...CHANGE_OPTION,
  ...JSON_OPTION,
};

// what a command does is loaded once it is asked for, so that help and refusals come at once
const readLine: CommandLine = {
  name: "read",
  takes: "a farm file",
  options: Object.keys(READ_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("read <farm>", READ, (command) => withExamples(command, EXAMPLES.read).positional("farm", FARM).options(READ_OPTIONS), (given) =>
      choose(async () => (await import("./read.js")).readCommand(given, screen))),
};

const planLine: CommandLine = {
  name: "plan",
  takes: "a farm file",
  options: Object.keys(PLAN_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("plan <farm>", PLAN, (command) => withExamples(command, EXAMPLES.plan).positional("farm", FARM).options(PLAN_OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...readPlanOptions(given), farm: given.farm, replace: given.replace };
        return (await import("./plan.js")).planCommand(asked, screen);
      })),
};

const checkLine: CommandLine = {
  name: "check",
  takes: "a farm file and a plan",
  options: Object.keys(CHECK_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("check <farm> <plan>", CHECK, (command) =>
      withExamples(command, EXAMPLES.check).positional("farm", FARM).positional("plan", needed("plan.json, or a grid as CSV")).options(CHECK_OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...given, changes: readChanges(given.change) };
        return (await import("./check.js")).checkCommand(asked, screen);
      })),
};

const pensLine: CommandLine = {
  name: "pens",
  takes: "a farm file, and a plan if there is one",
  options: Object.keys(PENS_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("pens <farm> [plan]", PENS, (command) =>
      withExamples(command, EXAMPLES.pens).positional("farm", FARM).positional("plan", valued("plan.json, or a grid as CSV: what it takes of each cell")).options(PENS_OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...readPensOptions(given), farm: given.farm, plan: given.plan ?? null, replace: given.replace };
        return (await import("./pens.js")).pensCommand(asked, screen);
      })),
};

const feedLine: CommandLine = {
  name: "feed",
  takes: "a farm file",
  options: Object.keys(FEED_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("feed <farm>", FEED, (command) => withExamples(command, EXAMPLES.feed).positional("farm", FARM).options(FEED_OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...readPlanOptions({ out: given.out, change: given.change }), farm: given.farm, replace: given.replace };
        return (await import("./feed.js")).feedCommand(asked, screen);
      })),
};

const tryLine: CommandLine = {
  name: "try",
  takes: "a farm file and one or more change files",
  options: Object.keys(TRY_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("try <farm> <changes..>", TRY, (command) =>
      withExamples(command, EXAMPLES.try).positional("farm", FARM).positional("changes", { type: "string", array: true, demandOption: true, describe: "Change files, tried one by one" }).options(TRY_OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...readPlanOptions(given), farm: given.farm, trials: given.changes, together: given.together, replace: given.replace };
        return (await import("./try.js")).tryCommand(asked, screen);
      })),
};

const whyLine: CommandLine = {
  name: "why",
  takes: "a farm file and a plan",
  options: Object.keys(WHY_OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("why <farm> <plan>", WHY, (command) =>
      withExamples(command, EXAMPLES.why).positional("farm", FARM).positional("plan", needed("plan.json, or a grid as CSV")).options(WHY_OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...given, changes: readChanges(given.change) };
        return (await import("./why.js")).whyCommand(asked, screen);
      })),
};

/** All commands, in the order of the help. */
export const COMMANDS: readonly CommandLine[] = [readLine, feedLine, planLine, checkLine, whyLine, tryLine, sheetsLine, calendarLine, pensLine, weatherLine];
