import { describe, expect, it } from "vitest";
import type { Screen } from "../../src/cli/screen.js";
import { progressLines } from "../../src/cli/try-progress.js";

/** A terminal of so many columns that keeps what is on it: lines, and where the cursor is. */
function terminal(columns: number, live = true) {
  const lines = [""];
  let at = 0;
  let written = 0;
  const aside = (text: string): void => {
    written++;
    for (const sign of text.match(/\r|\n|\u001b\[2K|\u001b\[1A|[^\r\n\u001b]+/g) ?? []) {
      if (sign === "\n") lines[++at] ??= "";
      else if (sign === "\u001b[1A") at--;
      else if (sign === "\u001b[2K") lines[at] = "";
      else if (sign !== "\r") lines[at] += sign;
    }
  };
  const screen: Screen = { say: () => undefined, aside, columns, live, heading: (text) => text, soft: (text) => text };
  return { screen, seen: () => lines.filter((line) => line !== ""), written: () => written, at: () => at };
}

const PROGRESS = { seconds: 3, cost: 250, bound: 0 };

describe("progress of several farms", () => {
  it("has a line for each, drawn again in place, and none left at the end", () => {
    const { screen, seen, at } = terminal(80);
    let clock = 0;
    const lines = progressLines(screen, "GBP", ["As it is", "Two more cows"], () => (clock += 1000));
    lines.show(0, PROGRESS);
    expect(seen()).toEqual(["As it is  3 s  best plan £250", "Two more cows  waits", "Ctrl-C keeps what is found."]);
    lines.show(1, { seconds: 4, cost: Infinity, bound: 0 });
    expect(seen()).toEqual(["As it is  3 s  best plan £250", "Two more cows  4 s  no plan yet", "Ctrl-C keeps what is found."]);
    lines.clear();
    expect([seen(), at()]).toEqual([[], 0]);
  });

  it("cuts lines to the terminal, so that none wraps", () => {
    const { screen, seen } = terminal(40);
    progressLines(screen, "GBP", ["A change with a title as long as a line and longer"]).show(0, PROGRESS);
    expect(seen().every((line) => line.length < 40)).toBe(true);
  });

  it("says nothing where nobody watches", () => {
    const { screen, written } = terminal(80, false);
    const lines = progressLines(screen, "GBP", ["As it is"]);
    lines.show(0, PROGRESS);
    lines.clear();
    expect(written()).toBe(0);
  });
});
