/** What is amiss in a file that somebody wrote, as data; `findingText` puts it in words. */
export interface Finding {
  readonly file: string;
  /** Both from 1. */
  readonly line: number;
  readonly column: number;
  readonly code: string;
  /** Clauses without a full stop: what was found, what is allowed, what to do next. */
  readonly found: string;
  readonly allowed: string;
  readonly next: string;
}

/** A value with notes, or every finding at once in file order. The user's fault is a finding; ours throws. */
export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly notes: readonly Finding[] }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/** Faults of the file's layout, said before all others. */
export const LAYOUT_CODES: readonly string[] = [
  "empty-file", "too-big", "not-text", "tab", "colon-missing", "colon-space", "colon-inside", "hash", "level", "layout", "no-anchors",
];

/** By file as given, layout faults first, then by place. Files in the order of `files`. */
export function inFileOrder(findings: readonly Finding[], files: readonly string[] = []): readonly Finding[] {
  const rank = (f: Finding): readonly number[] => [files.indexOf(f.file), LAYOUT_CODES.includes(f.code) ? 0 : 1, f.line, f.column];
  return [...findings].sort((a, b) => {
    const [x, y] = [rank(a), rank(b)];
    const i = x.findIndex((value, at) => value !== y[at]);
    return i < 0 ? 0 : x[i]! - y[i]!;
  });
}

/** Two lines: the place and what was found; what is allowed, what to do, and the code. */
export function findingText(finding: Finding): string {
  const { file, line, column, found, allowed, next, code } = finding;
  return `${file}:${line}:${column}  ${found}.\n  ${[allowed, next].filter((text) => text !== "").map(sentence).join(" ")}   ${code}`;
}

function sentence(clause: string): string {
  const end = /[.?!]$/.test(clause) ? "" : ".";
  return clause.slice(0, 1).toUpperCase() + clause.slice(1) + end;
}
