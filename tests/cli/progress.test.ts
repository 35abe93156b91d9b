/** The line that a terminal shows while a season is planned. */
import { describe, expect, it } from "vitest";
import { progressLine, progressWords } from "../../src/cli/progress.js";
import type { Screen } from "../../src/cli/screen.js";

function screenOf(live: boolean, columns: number | null = 120): { readonly screen: Screen; readonly drawn: string[] } {
  const drawn: string[] = [];
  return { drawn, screen: { say: () => undefined, aside: (text) => void drawn.push(text), columns, live, heading: (text) => text, soft: (text) => text } };
}

describe("progress", () => {
  it("says seconds, the best plan, and what could still be saved", () => {
    expect(progressWords({ seconds: 12.4, cost: 1689, bound: 1261 }, "GBP")).toBe("12 s  best plan £1,690  could still save at most £430");
  });

  it("says nothing that is not known yet", () => {
    expect(progressWords({ seconds: 2, cost: 812, bound: 0 }, "GBP")).toBe("2 s  best plan £810");
    expect(progressWords({ seconds: 0.2, cost: Infinity, bound: 0 }, "GBP")).toBe("0 s  no plan yet");
  });

  it.each([["GBP", 12], ["GBP", 3599], ["CHF", 3599]])("says its figures whole on a terminal of 80 columns, in %s after %d s", (currency, seconds) => {
    const { screen, drawn } = screenOf(true, 80);
    progressLine(screen, currency, () => 0).show({ seconds, cost: 9985, bound: 1105 });
    const line = drawn[0]!.replace("\r\u001b[2K", "");
    expect(line.length).toBeLessThanOrEqual(79);
    expect(line).toMatch(/save at most \S*8,880/);
    expect(line.includes("Ctrl-C keeps it")).toBe(currency === "GBP"); // the hint only where there is room
  });

  it("draws at most five times a second", () => {
    let clock = 0;
    const { screen, drawn } = screenOf(true);
    const line = progressLine(screen, "GBP", () => clock);
    for (; clock <= 1000; clock += 10) line.show({ seconds: clock / 1000, cost: 100, bound: 50 });
    expect(drawn.length).toBe(6);
  });

  it("counts the seconds on when nothing new is found", () => {
    let clock = 0;
    const { screen, drawn } = screenOf(true);
    const line = progressLine(screen, "GBP", () => clock);
    line.show({ seconds: 3, cost: 100, bound: 50 });
    clock = 9000;
    line.tick();
    expect(drawn.at(-1)).toContain("12 s");
  });

  it("keeps to one row of a narrow terminal", () => {
    const { screen, drawn } = screenOf(true, 40);
    progressLine(screen, "GBP", () => 0).show({ seconds: 1, cost: 100, bound: 50 });
    expect(drawn[0]!.replace("\r\u001b[2K", "").length).toBeLessThan(40);
  });

  it("draws nothing where standard error is no terminal", () => {
    const { screen, drawn } = screenOf(false);
    const line = progressLine(screen, "GBP", () => 0);
    line.show({ seconds: 1, cost: 100, bound: 50 });
    line.tick();
    line.clear();
    expect(drawn).toEqual([]);
  });
});
