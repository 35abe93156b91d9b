import yargs, { type Argv } from "yargs";
import type { Finding } from "../farm/finding.js";
import { checkCommand } from "./check.js";
import { CHECK, EXAMPLES, EXIT_CODES, PLAN, READ, WHAT_IT_IS, type Example } from "./examples.js";
import { findingsOutcome } from "./findings-text.js";
import { holdToSchema } from "./hold-to-schema.js";
import { EFFORTS, readChanges, readPlanOptions, refuseTwice } from "./options.js";
import { commandLineFinding, InputFault, type ExitCode, type Outcome } from "./outcome.js";
import { planCommand } from "./plan.js";
import { readCommand } from "./read.js";
import { widthOf, type Screen } from "./screen.js";

type Job = () => Outcome | Promise<Outcome>;

/** Runs one command line and gives the exit code. Nothing that is thrown gets out of here. */
export async function runCommandLine(args: readonly string[], screen: Screen): Promise<ExitCode> {
  const json = args.includes("--json");
  try {
    refuseTwice(args);
    const job = await jobOf(args, screen);
    return job ? deliver(await job(), json, screen) : 0;
  } catch (fault) {
    if (fault instanceof InputFault) return deliver(findingsOutcome(fault.findings, widthOf(screen)), json, screen);
    return deliver(faultOutcome(fault), json, screen);
  }
}

/** What the command line asks for; null when it was only help, which is printed. */
async function jobOf(args: readonly string[], screen: Screen): Promise<Job | null> {
  let job: Job | null = null;
  const choose = (chosen: Job) => {
    job = chosen;
  };
  let help = "";
  await commandsOf(args, screen, choose).parseAsync([...args], {}, (_fault: unknown, _given: unknown, output: string) => {
    help = output;
  });
  if (help !== "") screen.say(`${help}\n`);
  return help === "" ? job : null;
}

function commandsOf(args: readonly string[], screen: Screen, choose: (job: Job) => void): Argv {
  return withExamples(
    yargs([...args])
      .scriptName("inbye")
      .locale("en")
      .updateStrings({ string: "value", boolean: "switch", required: "needed" })
      .parserConfiguration({ "dot-notation": false, "boolean-negation": false })
      .usage(`${WHAT_IT_IS}\n\n$0 COMMAND ...`)
      .command("read <farm>", READ, readOptions, (given) => choose(() => readCommand(given, screen)))
      .command("plan <farm>", PLAN, planOptions, (given) => choose(() => planCommand({ ...readPlanOptions(given), farm: given.farm, replace: given.replace }, screen)))
      .command("check <farm> <plan>", CHECK, checkOptions, (given) => choose(() => checkCommand({ ...given, changes: readChanges(given.change) }, screen)))
      .wrap(Math.min(widthOf(screen), 110))
      .strict()
      .demandCommand(1, "no command: read, plan or check")
      .exitProcess(false)
      .fail((message, fault) => {
        throw fault ?? new InputFault(usageFindings(message, args));
      }),
    EXAMPLES.inbye,
  ).epilogue(`\n${EXIT_CODES}`);
}

/** An option with a value, kept as typed: what it may be is asked in one place, all at once. */
function valued(describe: string) {
  return { type: "string", describe } as const;
}

function flag(describe: string) {
  return { type: "boolean", describe, default: false } as const;
}

const JSON_OPTION = { json: flag("Print one JSON object and nothing else; its shape is in schemas/") };
const CHANGE_OPTION = { change: valued("Change file to lay over the farm; several with commas between") };
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
const OPTIONS: readonly string[] = ["help", "version", ...Object.keys(READ_OPTIONS), ...Object.keys(PLAN_OPTIONS)];

function readOptions(command: Argv) {
  return withExamples(command, EXAMPLES.read)
    .positional("farm", { type: "string", demandOption: true, describe: "Farm file" })
    .options(READ_OPTIONS);
}

function planOptions(command: Argv) {
  return withExamples(command, EXAMPLES.plan)
    .positional("farm", { type: "string", demandOption: true, describe: "Farm file" })
    .options(PLAN_OPTIONS);
}

function checkOptions(command: Argv) {
  return withExamples(command, EXAMPLES.check)
    .positional("farm", { type: "string", demandOption: true, describe: "Farm file" })
    .positional("plan", { type: "string", demandOption: true, describe: "plan.json, or a grid as CSV" })
    .options({ ...CHANGE_OPTION, ...JSON_OPTION });
}

/** Under the options, where a line to copy is not broken into columns. */
function withExamples<T>(command: Argv<T>, examples: readonly Example[]): Argv<T> {
  return command.epilogue(["Examples:", ...examples.flatMap(({ line, says }) => [`  inbye ${line}`, `      ${says}`])].join("\n"));
}

/** The parser's words about a command line, as findings. */
function usageFindings(message: string, args: readonly string[]): readonly Finding[] {
  const unknown = /^Unknown arguments?: (.*)$/.exec(message);
  if (unknown) return [unknownHere(unknown[1]!)];
  if (message.startsWith("Not enough non-option")) {
    return [commandLineFinding("file-not-named", "a file is missing", "read and plan take a farm file, check a farm file and a plan", "see the examples of inbye --help")];
  }
  return [...unknownOptions(args).map(unknownHere), commandLineFinding("command-missing", message, "", "see the examples of inbye --help")];
}

/** Options that no command knows: without a command the parser does not look at them. */
function unknownOptions(args: readonly string[]): readonly string[] {
  return args.filter((arg) => /^-./.test(arg) && !OPTIONS.includes(arg.replace(/^--/, "").replace(/=.*$/, ""))).map((arg) => arg.replace(/=.*$/, ""));
}

function unknownHere(names: string): Finding {
  return commandLineFinding("option-unknown", `not known here: ${names}`, "commands and their options are listed by inbye --help and inbye COMMAND --help", "");
}

function deliver(outcome: Outcome, json: boolean, screen: Screen): ExitCode {
  if (json) {
    holdToSchema(outcome.answer.shape, outcome.answer.value);
    screen.say(`${JSON.stringify(outcome.answer.value)}\n`);
  } else if (outcome.exit === 1) {
    screen.aside(outcome.text);
  } else {
    screen.say(outcome.text);
  }
  return outcome.exit;
}

/** Ours, not the owner's: one sentence; the trace only for whoever asks. */
function faultOutcome(fault: unknown): Outcome {
  const message = fault instanceof Error ? fault.message : String(fault);
  const sentence = `Something went wrong inside inbye (${message}); it is no fault of the farm file, and nothing was written.`;
  const trace = process.env["INBYE_DEBUG"] && fault instanceof Error ? `${fault.stack}\n` : "Set INBYE_DEBUG=1 to see where.\n";
  return { exit: 1, text: `${sentence}\n${trace}`, answer: { shape: "fault-answer", value: { fault: sentence } } };
}
