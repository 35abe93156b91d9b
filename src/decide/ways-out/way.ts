import type { Scenario } from "../../farm/scenario.js";

/** A farm changed in one thing: the change in words, and as the text of a change file where it can be written as one. */
export interface Way {
  readonly words: string;
  readonly scenario: Scenario;
  readonly change: string | null;
}

/** Changes of one sort, the smallest first; what a small one makes possible, a larger one does as well. */
export type Sort = readonly Way[];

/** A name as it stands in a change file, in quotes where it could be read as something else. */
export function keyText(name: string): string {
  return /^[A-Za-z][A-Za-z0-9 ]*$/.test(name) && !/^(null|yes|no)$/i.test(name) ? name : JSON.stringify(name);
}

/** A change file: its title, and what it lays over the farm. */
export function changeText(title: string, lines: readonly string[]): string {
  return [`change: ${JSON.stringify(title)}`, ...lines, ""].join("\n");
}
