import type { Finding } from "../farm/finding.js";
import { commandLineFinding, InputFault } from "./outcome.js";

export const EFFORTS = ["quick", "usual", "long"] as const;
export type Effort = (typeof EFFORTS)[number];

/** Largest seed: a whole number that every machine holds exactly. */
export const MOST_SEED = 2_147_483_647;
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

/** An option as typed: nothing when it was not given. */
export type Typed = string | undefined;

export interface TypedPlanOptions {
  readonly out?: Typed;
  readonly effort?: Typed;
  readonly seed?: Typed;
  readonly seconds?: Typed;
  readonly columns?: Typed;
  readonly from?: Typed;
  readonly keep?: Typed;
  readonly change?: Typed;
}

export interface PlanOptions {
  readonly out: string | null;
  readonly effort: Effort;
  readonly seed: number;
  readonly seconds: number | null;
  readonly columns: number | null;
  /** A plan to start from, and the price of each group-day that differs from it. */
  readonly from: string | null;
  readonly keep: number;
  /** Change files, laid over the farm in this order. */
  readonly changes: readonly string[];
}

export const USUAL_SEED = 1;
/** Money for each group-day that differs from the plan started from. */
const USUAL_KEEP = 2;
const MOST_KEEP = 1000;

/** Reads the options of `plan`, or stops with every finding about them. */
export function readPlanOptions(typed: TypedPlanOptions): PlanOptions {
  const findings: Finding[] = [];
  const say = (finding: Finding): null => {
    findings.push(finding);
    return null;
  };
  const options = {
    out: typed.out === undefined ? null : named("out", typed.out, say),
    effort: typed.effort === undefined ? ("usual" as const) : effortOf(typed.effort, say) ?? "usual",
    seed: wholeNumber("seed", typed.seed, [0, MOST_SEED], say) ?? USUAL_SEED,
    seconds: wholeNumber("seconds", typed.seconds, [1, MOST_SECONDS], say),
    columns: columnsOf(typed.columns, say),
    from: typed.from === undefined ? null : named("from", typed.from, say),
    keep: wholeNumber("keep", typed.keep, [0, MOST_KEEP], say) ?? USUAL_KEEP,
    changes: changesOf(typed.change, say),
  };
  if (findings.length > 0) throw new InputFault(findings);
  return options;
}

export type Say = (finding: Finding) => null;

/** Change files named after --change, with commas between. */
export function changesOf(typed: Typed, say: Say): readonly string[] {
  const written = typed === undefined ? null : named("change", typed, say);
  return written === null ? [] : written.split(",").map((name) => name.trim()).filter((name) => name !== "");
}

/** The change files of a command that takes no other option with a value. */
export function readChanges(typed: Typed): readonly string[] {
  const findings: Finding[] = [];
  const changes = changesOf(typed, (finding) => {
    findings.push(finding);
    return null;
  });
  if (findings.length > 0) throw new InputFault(findings);
  return changes;
}

export function wholeNumber(name: string, typed: Typed, [least, most]: readonly [number, number], say: Say): number | null {
  if (typed === undefined) return null;
  const value = Number(typed);
  if (/^\d+$/.test(typed) && value >= least && value <= most) return value;
  return say(refused(name, typed, `a whole number from ${least} to ${most}`, `write --${name} ${Math.max(1, least)}`));
}

/** Width of text, in characters. */
export function columnsOf(typed: Typed, say: Say): number | null {
  return wholeNumber("columns", typed, [LEAST_COLUMNS, MOST_COLUMNS], say);
}

function effortOf(typed: string, say: Say): Effort | null {
  return EFFORTS.find((one) => one === typed) ?? say(refused("effort", typed, "quick, usual or long", "write --effort usual"));
}

export function named(name: string, typed: string, say: Say): string | null {
  return typed.trim() === "" ? say(refused(name, typed, "a name", `write a name after --${name}`)) : typed;
}

function refused(name: string, typed: string, allowed: string, next: string): Finding {
  return commandLineFinding("option-value", typed.trim() === "" ? `--${name} has nothing after it` : `--${name} is ${typed}`, allowed, next);
}

const USUAL_LANGUAGE = "en";

/** The language of what is printed or sent: by its file's name, English unless typed. */
export function languageOf(typed: Typed, say: Say): string {
  return typed === undefined ? USUAL_LANGUAGE : (named("language", typed, say)?.trim() ?? USUAL_LANGUAGE);
}
