import yargs, { type Argv } from "yargs";
import type { Finding } from "../farm/finding.js";
import { listOr } from "../farm/near-names.js";
import { withExamples, type Job } from "./command-line.js";
import { COMMANDS } from "./commands.js";
import { EXAMPLES, EXIT_CODES, WHAT_IT_IS } from "./examples.js";
import { findingsOutcome } from "./findings-text.js";
import { holdToSchema } from "./hold-to-schema.js";
import { refuseTwice } from "./options.js";
import { commandLineFinding, InputFault, type ExitCode, type Outcome } from "./outcome.js";
import { widthOf, type Screen } from "./screen.js";

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
  const empty = yargs([...args])
    .scriptName("inbye")
    .locale("en")
    .updateStrings({ string: "value", boolean: "switch", required: "needed" })
    .parserConfiguration({ "dot-notation": false, "boolean-negation": false })
    .usage(`${WHAT_IT_IS}\n\n$0 COMMAND ...`);
  const whole = COMMANDS.reduce((cli, command) => command.add(cli, screen, choose), empty)
    .wrap(Math.min(widthOf(screen), 110))
    .strict()
    .demandCommand(1, `no command: ${listOr(COMMANDS.map(({ name }) => name))}`)
    .exitProcess(false)
    .fail((message, fault) => {
      throw fault ?? new InputFault(usageFindings(message, args));
    });
  return withExamples(whole, EXAMPLES.inbye).epilogue(`\n${EXIT_CODES}`);
}

/** The parser's words about a command line, as findings. */
function usageFindings(message: string, args: readonly string[]): readonly Finding[] {
  const unknown = /^Unknown arguments?: (.*)$/.exec(message);
  if (unknown) return [unknownHere(unknown[1]!)];
  if (message.startsWith("Not enough non-option")) {
    return [commandLineFinding("file-not-named", "a file is missing", COMMANDS.map(({ name, takes }) => `${name} takes ${takes}`).join(", "), "see the examples of inbye --help")];
  }
  return [...unknownOptions(args).map(unknownHere), commandLineFinding("command-missing", message, "", "see the examples of inbye --help")];
}

/** Options that no command knows: without a command the parser does not look at them. */
function unknownOptions(args: readonly string[]): readonly string[] {
  return args.filter((arg) => /^-./.test(arg) && !knownOptions().includes(arg.replace(/^--/, "").replace(/=.*$/, ""))).map((arg) => arg.replace(/=.*$/, ""));
}

function knownOptions(): readonly string[] {
  return ["help", "version", ...COMMANDS.flatMap(({ options }) => options)];
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
