import type { Argv } from "yargs";
import type { Example } from "./examples.js";
import type { Outcome } from "./outcome.js";
import type { Screen } from "./screen.js";

export type Job = () => Outcome | Promise<Outcome>;

/** One command of the command line: what adds it to the parser, and the options it knows. */
export interface CommandLine {
  /** Its name and what stands after it, for messages. */
  readonly name: string;
  readonly takes: string;
  readonly options: readonly string[];
  readonly add: (cli: Argv, screen: Screen, choose: (job: Job) => void) => Argv;
}

/** An option with a value, kept as typed: what it may be is asked in one place, all at once. */
export function valued(describe: string) {
  return { type: "string", describe } as const;
}

export function flag(describe: string) {
  return { type: "boolean", describe, default: false } as const;
}

export const JSON_OPTION = { json: flag("Print one JSON object and nothing else; its shape is in schemas/") };
export const CHANGE_OPTION = { change: valued("Change file to lay over the farm; several with commas between") };

/** Under the options, where a line to copy is not broken into columns. */
export function withExamples<T>(command: Argv<T>, examples: readonly Example[]): Argv<T> {
  return command.epilogue(["Examples:", ...examples.flatMap(({ line, says }) => [`  inbye ${line}`, `      ${says}`])].join("\n"));
}

/** A file that a command cannot do without. */
export function needed(describe: string) {
  return { type: "string", demandOption: true, describe } as const;
}
