import type { Finding } from "../farm/finding.js";
import { CHANGE_OPTION, flag, JSON_OPTION, needed, valued, withExamples, type CommandLine } from "./command-line.js";
import { EXAMPLES, WEATHER } from "./examples.js";
import { changesOf, MOST_SEED, named, USUAL_SEED, wholeNumber, type Say, type Typed } from "./options.js";
import { InputFault } from "./outcome.js";

const USUAL_YEARS = 200;
const MOST_YEARS = 10_000;

const OPTIONS = {
  years: valued(`Years to try, ${USUAL_YEARS} unless given`),
  seed: valued("Number that the years are drawn from, 1 unless given; same farm, plan and seed, same answer"),
  figures: flag("Also which figure the answer hangs on most: each halved and doubled, and planned again (half a minute more)"),
  out: valued("Folder for weather.html, a picture of the hay; none is drawn unless given"),
  replace: flag("Write over a picture that is there"),
  ...CHANGE_OPTION,
  ...JSON_OPTION,
};

export const weatherLine: CommandLine = {
  name: "weather",
  takes: "a farm file and a plan",
  options: Object.keys(OPTIONS),
  add: (cli, screen, choose) =>
    cli.command("weather <farm> <plan>", WEATHER, (command) =>
      withExamples(command, EXAMPLES.weather).positional("farm", needed("Farm file")).positional("plan", needed("plan.json, or a grid as CSV")).options(OPTIONS), (given) =>
      choose(async () => {
        const asked = { ...given, ...optionsOf(given) };
        return (await import("./weather.js")).weatherCommand(asked, screen);
      })),
};

/** Reads the options of `weather`, or stops with every finding about them. */
function optionsOf(typed: { readonly years?: Typed; readonly seed?: Typed; readonly out?: Typed; readonly change?: Typed }) {
  const findings: Finding[] = [];
  const say: Say = (finding) => {
    findings.push(finding);
    return null;
  };
  const options = {
    years: wholeNumber("years", typed.years, [1, MOST_YEARS], say) ?? USUAL_YEARS,
    seed: wholeNumber("seed", typed.seed, [0, MOST_SEED], say) ?? USUAL_SEED,
    out: typed.out === undefined ? null : named("out", typed.out, say),
    changes: changesOf(typed.change, say),
  };
  if (findings.length > 0) throw new InputFault(findings);
  return options;
}
