import type { Finding } from "../farm/finding.js";
import { CHANGE_OPTION, flag, JSON_OPTION, valued } from "./command-line.js";
import { readChanges } from "./options.js";
import { commandLineFinding, InputFault } from "./outcome.js";

/** Options of `pens`. */
export const PENS_OPTIONS = {
  out: valued("Folder for the drawings, one page a pen; nothing is written without it"),
  replace: flag("Write over drawings that are there"),
  ...CHANGE_OPTION,
  ...JSON_OPTION,
};

export interface PensOptions {
  readonly out: string | null;
  readonly changes: readonly string[];
}

/** Reads the options of `pens`, or stops with what is wrong in them. */
export function readPensOptions(typed: { readonly out?: string | undefined; readonly change?: string | undefined }): PensOptions {
  const findings: Finding[] = typed.out?.trim() === "" ? [commandLineFinding("option-value", "--out has nothing after it", "a name", "write a name after --out")] : [];
  if (findings.length > 0) throw new InputFault(findings);
  return { out: typed.out ?? null, changes: readChanges(typed.change) };
}
