import type { Finding } from "../farm/finding.js";
import type { AnswerName } from "./answers.js";

/** 0 done, 1 our fault, 2 findings in the input, 3 no plan or rules broken. */
export type ExitCode = 0 | 1 | 2 | 3;

/** What a command came to: words for people, and the same as one JSON object whose shape is published. */
export interface Outcome {
  readonly exit: ExitCode;
  readonly text: string;
  readonly answer: { readonly shape: AnswerName; readonly value: object };
}

/** The input cannot be used as it is: carries every finding. */
export class InputFault extends Error {
  constructor(readonly findings: readonly Finding[]) {
    super(findings.map((finding) => finding.code).join(", "));
  }
}

/** Where findings about the command line itself point. */
export const COMMAND_LINE = "command line";

/** A finding about the command line; the column is that of the word, counted from 1. */
export function commandLineFinding(code: string, found: string, allowed: string, next: string, column = 1): Finding {
  return { file: COMMAND_LINE, line: 1, column, code, found, allowed, next };
}
