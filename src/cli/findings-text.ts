import { findingText, type Finding } from "../farm/finding.js";
import { wrapped } from "../sheets/text-wrap.js";
import type { Outcome } from "./outcome.js";

/** Findings as people read them: place and what was found, then what may stand there and what to do, with the code. */
export function findingsText(findings: readonly Finding[], columns: number): string {
  const lines = (finding: Finding) => findingText(finding).split("\n").map((line) => wrapped(line, columns));
  return findings.map((finding) => `${lines(finding).join("\n")}\n`).join("\n");
}

/** The outcome of a command whose input cannot be used. */
export function findingsOutcome(findings: readonly Finding[], columns: number): Outcome {
  const count = findings.length === 1 ? "One thing to put right; nothing was written." : `${findings.length} things to put right; nothing was written.`;
  return {
    exit: 2,
    text: `${findingsText(findings, columns)}\n${count}\n`,
    answer: { shape: "findings-answer", value: { findings } },
  };
}
