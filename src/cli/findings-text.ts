import { findingText, type Finding } from "../farm/finding.js";
import type { Outcome } from "./outcome.js";

/** Findings as people read them: place and what was found, then what may stand there and what to do, with the code. */
export function findingsText(findings: readonly Finding[]): string {
  return findings.map((finding) => `${findingText(finding)}\n`).join("\n");
}

/** The outcome of a command whose input cannot be used. */
export function findingsOutcome(findings: readonly Finding[]): Outcome {
  const count = findings.length === 1 ? "One thing to put right; nothing was written." : `${findings.length} things to put right; nothing was written.`;
  return {
    exit: 2,
    text: `${findingsText(findings)}\n${count}\n`,
    answer: { shape: "findings-answer", value: { findings } },
  };
}
