import type { Finding } from "../farm/finding.js";

/** A text that is plainly no plan and no grid: a farm file, a change, or JSON of another kind. */
export function otherFile(text: string, file: string): Finding | null {
  const what = whatElse(text);
  if (what === null) return null;
  return { file, line: 1, column: 1, code: "not-a-plan", found: `this is ${what}, not a plan`, allowed: "a plan is plan.json or grid.csv, as inbye plan writes them", next: "name the plan's file" };
}

function whatElse(text: string): string | null {
  if (!text.trimStart().startsWith("{")) {
    if (/^change:\s/m.test(text)) return "a change to a farm";
    return /^(fields|groups|season):(\s|$)/m.test(text) ? "a farm file" : null;
  }
  const keys = keysOf(text);
  if (keys === null || keys.includes("inbye") || keys.includes("stays")) return null;
  return keys.includes("fields") || keys.includes("groups") ? "a farm file" : "another file";
}

/** Keys of a JSON object; null for what is none. */
function keysOf(text: string): readonly string[] | null {
  try {
    return Object.keys(JSON.parse(text) as object);
  } catch {
    return null;
  }
}
