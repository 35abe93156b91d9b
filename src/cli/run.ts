import yargs, { type Argv } from "yargs";
import { checkCommand } from "./check.js";
import { CHECK, EXAMPLES, EXIT_CODES, PLAN, READ, WHAT_IT_IS, type Example } from "./examples.js";
import { findingsOutcome } from "./findings-text.js";
import { holdToSchema } from "./hold-to-schema.js";
import { EFFORTS, readPlanOptions, refuseTwice } from "./options.js";
import { commandLineFinding, InputFault, type ExitCode, type Outcome } from "./outcome.js";
import { planCommand } from "./plan.js";
import { readCommand } from "./read.js";
import type { Screen } from "./screen.js";

type Job = () => Outcome | Promise<Outcome>;

/** Runs one command line and gives the exit code. Nothing that is thrown gets out of here. */
export async function runCommandLine(args: readonly string[], screen: Screen): Promise<ExitCode> {
  const json = args.includes("--json");
  try {
    refuseTwice(args);
    const job = await jobOf(args, screen);
    return job ? deliver(await job(), json, screen) : 0;
  } catch (fault) {
    if (fault instanceof InputFault) return deliver(findingsOutcome(fault.findings), json, screen);
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
      .command("check <farm> <plan>", CHECK, checkOptions, (given) => choose(() => checkCommand(given, screen)))
      .epilogue(EXIT_CODES)
      .wrap(Math.min(screen.columns ?? 100, 110))
      .strict()
      .demandCommand(1, "no command: read, plan or check")
      .exitProcess(false)
      .fail((message, fault) => {
        throw fault ?? new InputFault([usageFinding(message)]);
      }),
    EXAMPLES.inbye,
  );
}

const json = { type: "boolean", describe: "Print one JSON object and nothing else; its shape is in schemas/", default: false } as const;
/** An option with a value, kept as typed: what it may be is asked in one place, all at once. */
function valued(describe: string) {
  return { type: "string", describe } as const;
}

function readOptions(command: Argv) {
  return withExamples(command, EXAMPLES.read)
    .positional("farm", { type: "string", demandOption: true, describe: "Farm file" })
    .option("assumed", { type: "boolean", default: false, describe: "List every figure that was assumed, with its source" })
    .option("json", json);
}

function planOptions(command: Argv) {
  return withExamples(command, EXAMPLES.plan)
    .positional("farm", { type: "string", demandOption: true, describe: "Farm file" })
    .option("out", valued("Folder for the sheets; plans/ and the farm file's name unless given"))
    .option("effort", valued(`How hard to look: ${EFFORTS.join(", ")}; usual unless given`))
    .option("seed", valued("Number that the search starts from, 1 unless given; same farm, seed and effort, same plan"))
    .option("seconds", valued("Stop after so many seconds with the best plan found"))
    .option("replace", { type: "boolean", default: false, describe: "Write over sheets that are there" })
    .option("from", valued("A plan.json or grid.csv to start from and stay close to"))
    .option("keep", valued("Money for each day of a group that differs from it (usual: 2)"))
    .option("columns", valued("Width of the printed grid in characters"))
    .option("json", json);
}

function checkOptions(command: Argv) {
  return withExamples(command, EXAMPLES.check)
    .positional("farm", { type: "string", demandOption: true, describe: "Farm file" })
    .positional("plan", { type: "string", demandOption: true, describe: "plan.json, or a grid as CSV" })
    .option("json", json);
}

function withExamples<T>(command: Argv<T>, examples: readonly Example[]): Argv<T> {
  return examples.reduce((sum, example) => sum.example(`$0 ${example.line}`, example.says), command);
}

/** The parser's words about a command line, as a finding. */
function usageFinding(message: string) {
  const unknown = /^Unknown arguments?: (.*)$/.exec(message);
  if (unknown) return commandLineFinding("option-unknown", `not known here: ${unknown[1]}`, "inbye --help lists the commands, inbye COMMAND --help its options", "");
  if (message.startsWith("Not enough non-option")) {
    return commandLineFinding("file-not-named", "a file is missing", "read and plan take a farm file, check a farm file and a plan", "inbye --help shows examples");
  }
  return commandLineFinding("command-missing", message, "", "inbye --help shows examples");
}

function deliver(outcome: Outcome, json: boolean, screen: Screen): ExitCode {
  if (json) {
    holdToSchema(outcome.answer.shape, outcome.answer.value);
    screen.say(`${JSON.stringify(outcome.answer.value)}\n`);
  } else if (outcome.exit === 0 || outcome.exit === 3) {
    screen.say(outcome.text);
  } else {
    screen.aside(outcome.text);
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
