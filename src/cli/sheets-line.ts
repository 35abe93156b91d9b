import { CHANGE_OPTION, flag, JSON_OPTION, needed, valued, withExamples, type CommandLine } from "./command-line.js";
import { EXAMPLES, SHEETS } from "./examples.js";
import { PAPER_NAMES } from "../sheets/paper.js";
import { FORMATS, readSheetsOptions } from "./sheets-options.js";
import { SHEET_KINDS, TAKES } from "./sheets-table.js";

const OPTIONS = {
  sheet: valued(`Which: ${Object.keys(SHEET_KINDS).join(", ")}; several with commas between`),
  day: valued("Day of a sheet that is of one day, 2027-06-15; today unless given"),
  week: valued("Any day of the week of a sheet that is of one week; this week unless given"),
  month: valued("Month of a sheet that is of one month, 2027-06; this month unless given"),
  paper: valued(`${PAPER_NAMES.join(", ")}; letter on a farm in US units, else a4, unless given`),
  as: valued(`${FORMATS.join(", ")}; html unless given`),
  out: valued("Folder for the files; the plan's own unless given, text to the terminal"),
  calls: valued("File of people to call, for the day sheet; farm-file-name.calls.yaml beside the farm file unless given"),
  columns: valued("Width of text, in characters"),
  language: valued("Language of the sheets, by its file in shared/words; en unless given"),
  replace: flag("Write over files that are there"),
  ...CHANGE_OPTION,
  ...JSON_OPTION,
};

export const sheetsLine: CommandLine = {
  name: "sheets",
  takes: "a farm file and a plan",
  options: Object.keys(OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("sheets <farm> <plan>", SHEETS, (command) =>
      withExamples(command, EXAMPLES.sheets).positional("farm", needed("Farm file")).positional("plan", needed("plan.json, or a grid as CSV")).options(OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...readSheetsOptions(given, TAKES), farm: given.farm, plan: given.plan, replace: given.replace };
        return (await import("./sheets.js")).sheetsCommand(asked, screen);
      })),
};
