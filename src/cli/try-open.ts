import { basename, resolve } from "node:path";
import type { TrialFarm } from "../decide/try-changes.js";
import type { Changed } from "../farm/change.js";
import type { Finding, Result } from "../farm/finding.js";
import { formDifferences } from "../farm/form-differences.js";
import type { Scenario } from "../farm/scenario.js";
import { readFarm } from "../files/read.js";
import { loadTables } from "../files/tables.js";
import { commandLineFinding, InputFault } from "./outcome.js";

/** The farm as it is, with each change laid over it alone, and with all of them where that is asked. */
export interface OpenedTrials {
  readonly base: Scenario;
  readonly laidFirst: readonly string[];
  /** In the order given; the last is all together, where asked. */
  readonly changes: readonly TrialFarm[];
  readonly notes: readonly Finding[];
}

/** What stands for all changes at once, beside their titles. */
export const TOGETHER = "All together";

/** Reads the farm and its changes, or stops with every finding about any of them. */
export function openTrials(farm: string, first: readonly string[], changes: readonly string[], together: boolean): OpenedTrials {
  const tables = loadTables();
  const read = (files: readonly string[]): Result<Changed> => readFarm(farm, [...first, ...files], tables);
  const base = read([]);
  const alone = changes.map((file) => read([file]));
  refuseIf([...twice(changes), ...together && changes.length < 2 ? [TOO_FEW] : [], ...unlike([base, ...alone])]);
  const [asItIs, ...trials] = [base, ...alone].map(changedOf) as [Changed, ...Changed[]];
  refuseIf([...unchanged(changes, trials, asItIs), ...together ? fights(changes, read) : []]);
  const whole = together ? [read(changes)] : [];
  refuseIf(unlike(whole));
  return {
    base: asItIs.scenario,
    laidFirst: asItIs.titles,
    changes: [
      ...trials.map(({ scenario, titles }) => ({ title: titles.at(-1)!, scenario })),
      ...whole.map((one) => ({ title: TOGETHER, scenario: changedOf(one).scenario })),
    ],
    notes: [...notesOf(base), ...alone.flatMap((one, i) => newNotes(one, base).map((note) => ({ ...note, found: `${trials[i]!.titles.at(-1)!}: ${note.found}` })))],
  };
}

const TOO_FEW = commandLineFinding("option-value", "--together with one change", "two changes or more are laid over the farm together", "leave out --together, or name another change");

function notesOf(read: Result<Changed>): readonly Finding[] {
  return read.ok ? read.notes : [];
}

/** What a change alone gives rise to. */
function newNotes(read: Result<Changed>, base: Result<Changed>): readonly Finding[] {
  const known = new Set(notesOf(base).map((note) => JSON.stringify(note)));
  return notesOf(read).filter((note) => !known.has(JSON.stringify(note)));
}

function changedOf(read: Result<Changed>): Changed {
  if (!read.ok) throw new Error("findings are told before this");
  return read.value;
}

function refuseIf(findings: readonly Finding[]): void {
  if (findings.length > 0) throw new InputFault(findings);
}

/** The farm file's own findings come with each reading: told once. */
function unlike(reads: readonly Result<Changed>[]): readonly Finding[] {
  return unique(reads.flatMap((read) => (read.ok ? [] : read.findings)));
}

function unique(findings: readonly Finding[]): readonly Finding[] {
  return [...new Map(findings.map((finding) => [JSON.stringify(finding), finding])).values()];
}

function twice(changes: readonly string[]): readonly Finding[] {
  const paths = changes.map((file) => resolve(file));
  return changes.filter((_, i) => paths.indexOf(paths[i]!) < i)
    .map((file) => commandLineFinding("change-twice", `${file} is named twice`, "each change is tried once", "leave one of them out"));
}

/** Changes that leave the farm as it is, and those that make the same farm as one before. */
function unchanged(files: readonly string[], trials: readonly Changed[], base: Changed): readonly Finding[] {
  const prints = trials.map(({ scenario }) => scenario.print);
  return prints.flatMap((print, i) => {
    const file = basename(files[i]!);
    const same = prints.indexOf(print);
    if (print === base.scenario.print) return [finding(file, "changes-nothing", "the farm with it is the farm as it is", "a change says something otherwise than the farm file", "look whether it is the right file, or laid over already")];
    return same < i ? [finding(file, "change-twice", `the farm with it is the farm with ${basename(files[same]!)}`, "each change is tried once", "leave one of them out")] : [];
  });
}

/** Two changes that say one thing otherwise: laid over together, it would turn on their order. */
function fights(files: readonly string[], read: (files: readonly string[]) => Result<Changed>): readonly Finding[] {
  return files.flatMap((one, i) => files.slice(i + 1).flatMap((other) => {
    const [thisLast, thatLast] = [read([other, one]), read([one, other])];
    const said = saidOtherwise(thisLast, thatLast);
    return said === null ? [] : [finding(basename(other), "changes-fight", `${basename(one)} and ${basename(other)} do not go together: ${said}`, "changes laid over together say the same of a thing, or speak of different things", "leave out --together, or one of them")];
  }));
}

/** What differs between the two orders, in words; null where nothing does. */
function saidOtherwise(one: Result<Changed>, other: Result<Changed>): string | null {
  if (!one.ok || !other.ok) {
    const [first] = [one, other].flatMap((read) => (read.ok ? [] : read.findings));
    return first!.found;
  }
  const [form, otherForm] = [one.value.scenario.form, other.value.scenario.form];
  if (form === null || otherForm === null) return null;
  const differences = formDifferences(form, otherForm).filter(({ where }) => !where.startsWith("order of "));
  return differences.length === 0 ? null : differences.map(({ where, then, now }) => `${where} is ${then ?? "not there"} or ${now ?? "not there"}`).join("; ");
}

function finding(file: string, code: string, found: string, allowed: string, next: string): Finding {
  return { file, line: 1, column: 1, code, found, allowed, next };
}
