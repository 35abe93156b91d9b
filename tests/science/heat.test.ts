import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { heatClass, heatIndex } from "../../src/science/heat.js";
import { TABLES } from "./published.js";

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

describe("heat", () => {
  it("rises with humidity above 14.4 C and with temperature", () => {
    const t = fc.double({ min: 15, max: 45, noNaN: true });
    const h = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(fc.property(t, t, h, h, (t1, t2, h1, h2) => {
      const [cool, warm] = [Math.min(t1, t2), Math.max(t1, t2)];
      const [dry, damp] = [Math.min(h1, h2), Math.max(h1, h2)];
      expect(heatIndex(warm, damp)).toBeGreaterThanOrEqual(heatIndex(cool, dry));
    }));
  });
});

describe("outside truth: heat", () => {
  // Clemson Univ. chart, rows as read: degrees F, then 40, 50, ... 90 % humidity.
  const chart: readonly (readonly number[])[] = [
    [76, 70, 71, 72, 73, 74, 75], [80, 73, 74, 75, 76, 78, 79], [90, 79, 81, 83, 85, 86, 88], [94, 82, 84, 86, 88, 90, 92], [100, 86, 88, 91],
  ];
  const cells = chart.flatMap(([f, ...row]) => row.map((index, i) => [f!, 40 + 10 * i, index] as const));

  it.each(cells)("%d F at %d %% is %d", (fahrenheit, humidity, printed) => {
    expect(Math.abs(heatIndex(celsius(fahrenheit), humidity / 100) - printed)).toBeLessThan(0.65);
  });

  it("most of the chart comes out to the very number", () => {
    const exact = cells.filter(([f, h, printed]) => Math.round(heatIndex(celsius(f), h / 100)) === printed);
    expect(exact.length / cells.length).toBeGreaterThan(0.9);
  });

  it.each([[74, "none"], [75, "alert"], [78, "alert"], [79, "danger"], [83, "danger"], [84, "emergency"]])("Kansas State: %d is %s", (index, name) => {
    expect(heatClass(index, TABLES.cautions)).toBe(name);
  });
});
