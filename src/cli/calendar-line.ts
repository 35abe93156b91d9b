import { readCalendarOptions } from "./calendar-options.js";
import { CHANGE_OPTION, flag, JSON_OPTION, needed, valued, withExamples, type CommandLine } from "./command-line.js";
import { CALENDAR, EXAMPLES } from "./examples.js";

const OPTIONS = {
  group: valued("Only the jobs of these groups; several with commas between"),
  person: valued("Only the days on which this person is at home, and no tow that somebody else does alone"),
  since: valued("The plan that your calendar holds by now: what is no more is called off"),
  out: valued("Folder for the file; the plan's own unless given"),
  language: valued("Language of the calendar, by its file in shared/words; en unless given"),
  replace: flag("Write over a file that is there"),
  ...CHANGE_OPTION,
  ...JSON_OPTION,
};

export const calendarLine: CommandLine = {
  name: "calendar",
  takes: "a farm file and a plan",
  options: Object.keys(OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("calendar <farm> <plan>", CALENDAR, (command) =>
      withExamples(command, EXAMPLES.calendar).positional("farm", needed("Farm file")).positional("plan", needed("plan.json, or a grid as CSV")).options(OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...readCalendarOptions(given), farm: given.farm, plan: given.plan, replace: given.replace };
        return (await import("./calendar.js")).calendarCommand(asked, screen);
      })),
};
