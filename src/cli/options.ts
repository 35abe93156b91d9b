import { commandLineFinding, InputFault } from "./outcome.js";

export const EFFORTS = ["quick", "usual", "long"] as const;
export type Effort = (typeof EFFORTS)[number];

/** Largest seed: a whole number that every machine holds exactly. */
const MOST_SEED = 2_147_483_647;
const MOST_SECONDS = 86_400;
const LEAST_COLUMNS = 40;
const MOST_COLUMNS = 1000;

/** Refuses an option given twice: which of the two is meant is a question, not a choice of ours. */
export function refuseTwice(args: readonly string[]): void {
  const end = args.indexOf("--");
  const names = args.slice(0, end < 0 ? args.length : end).map((arg) => (/^--[^=]+/.exec(arg) ?? [""])[0]);
  const twice = names.flatMap((name, i) => (name !== "" && names.indexOf(name) < i ? [{ name, i }] : []));
  const findings = twice.map(({ name, i }) =>
    commandLineFinding("option-twice", `${name} is given twice`, "each option is given once", `leave out one ${name}`, columnOf(args, i)));
  if (findings.length > 0) throw new InputFault(findings);
}

/** The word's column on the command line as typed with single spaces, the program's name not counted. */
function columnOf(args: readonly string[], index: number): number {
  return args.slice(0, index).reduce((sum, arg) => sum + arg.length + 1, 1);
}

/** Reads `--name` as a whole number within limits. */
export function wholeNumber(name: string, least: number, most: number): (given: unknown) => number | undefined {
  return (given) => {
    if (given === undefined) return undefined;
    const text = String(given).trim();
    const value = Number(text);
    if (/^\d+$/.test(text) && value >= least && value <= most) return value;
    throw refused(name, text, `a whole number from ${least} to ${most}`, `write --${name} ${least > 1 ? least : 1}`);
  };
}

export const readSeed = wholeNumber("seed", 0, MOST_SEED);
export const readSeconds = wholeNumber("seconds", 1, MOST_SECONDS);
export const readColumns = wholeNumber("columns", LEAST_COLUMNS, MOST_COLUMNS);

/** Reads `--effort`. */
export function readEffort(given: unknown): Effort {
  const effort = EFFORTS.find((one) => one === given);
  if (effort) return effort;
  throw refused("effort", String(given), "quick, usual or long", "write --effort usual");
}

/** Reads a file or folder name. */
export function readName(name: string): (given: unknown) => string | undefined {
  return (given) => {
    if (given === undefined) return undefined;
    if (typeof given === "string" && given.trim() !== "") return given;
    throw refused(name, String(given), "a name", `write a name after --${name}`);
  };
}

function refused(name: string, text: string, allowed: string, next: string): InputFault {
  const found = text === "" || text === "NaN" ? `--${name} has nothing after it` : `--${name} is ${text}`;
  return new InputFault([commandLineFinding("option-value", found, allowed, next)]);
}
