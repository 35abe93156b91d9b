import { say, type Desk } from "./desk.js";
import { listOr } from "./near-names.js";
import type { Scenario } from "./scenario.js";
import { child, entriesOf, type Entry, type MapNode } from "./tree.js";

/** Words that mean something else where a group or a place is written in a grid. */
const GROUP_WORDS = ["cut", "cuts"];
const YARD_WORDS = ["yard", "away", "nobody", "cut"];

/** Signs that no gate bears and no table carries: line breaks and tabs, halves of a letter. */
const NO_LETTERS = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u;

/** Names of groups and yards, as far as a written plan could not tell them apart. */
export function checkNames(desk: Desk, root: MapNode, scenario: Scenario): void {
  const cells = scenario.cells.map(({ name }) => name);
  for (const { key, at } of entriesOf(child(root, "groups"))) {
    checkName(desk, { key, at }, "a group's name", GROUP_WORDS.includes(key.toLowerCase()), "");
  }
  for (const { key, at } of entriesOf(child(root, "yards"))) {
    checkName(desk, { key, at }, "a yard's name", YARD_WORDS.includes(key.toLowerCase()) || key.includes(">") || cells.includes(key), ", is no cell's, and holds no >");
  }
  for (const cell of fieldCells(root)) if (/[\p{Cc}\p{Cs}]/u.test(cell.key)) checkName(desk, cell, "a cell's name", false, "");
  checkNumbers(desk, root, [...cells, ...scenario.yards.map(({ name }) => name)]);
}

function fieldCells(root: MapNode): readonly Entry[] {
  return entriesOf(child(root, "fields")).flatMap((field) => entriesOf(child(field.value, "cells")));
}

function checkName(desk: Desk, { key, at }: Pick<Entry, "key" | "at">, what: string, taken: boolean, more: string): void {
  if (!taken && !NO_LETTERS.test(key)) return;
  say(desk, at, { code: "name-form", found: `${JSON.stringify(key)} cannot be ${what}`, allowed: `a name is one line and no word of the grid${more}`, next: "give it another name" });
}

/** Two names that are one number come out of a spreadsheet as one: 7 and 007, 10 and 1E1. */
function checkNumbers(desk: Desk, root: MapNode, names: readonly string[]): void {
  const written = [...fieldCells(root), ...entriesOf(child(root, "yards"))];
  const numbers = [...new Set(names)].filter(isNumber);
  for (const [i, name] of numbers.entries()) {
    const twins = numbers.slice(0, i).filter((other) => Number(other) === Number(name));
    const at = written.find(({ key }) => key === name)?.at ?? child(root, "fields") ?? root;
    if (twins.length > 0) say(desk, at, { code: "names-alike", found: `${listOr([...twins, name], "and")} are one number`, allowed: "names that a spreadsheet can tell apart", next: "give one of them another name" });
  }
}

function isNumber(text: string): boolean {
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text);
}
