/** A pen's sheet read back from its SVG: what is drawn is what the figures say, to scale. */
import { describe, expect, it } from "vitest";
import * as polyclip from "polyclip-ts";
import { pensOfFarm, type PenInCell } from "../../src/decide/pens/pens-of-farm.js";
import type { Cell, Scenario, Strip } from "../../src/farm/scenario.js";
import { cautionsFor } from "../../src/plan/cautions.js";
import type { Plan } from "../../src/plan/plan.js";
import { outlineOfCorners, type Corner } from "../../src/science/boundary.js";
import { penSheet } from "../../src/sheets/pens/page.js";
import { englishWords } from "../fixtures/planned-farm.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { lShape, rectangle } from "../science/ground-shapes.js";
import { faultsOf } from "./well-formed.js";

/** Hundredths of a millimetre on paper, as metres on the ground, for corners that were rounded one by one. */
const roundedM = (scale: number): number => (0.03 * scale) / 1000;

const POND: readonly Corner[] = [[8, 9], [17, 8], [20, 15], [13, 19], [7, 16]];
const turned = (ring: readonly Corner[]): readonly Corner[] => ring.map(([x, y]) => [x * Math.cos(0.4) - y * Math.sin(0.4), x * Math.sin(0.4) + y * Math.cos(0.4)]);
const ELL = cell("E1", { areaHa: 0.28, boundary: { rings: [turned(lShape(64, 58, 30, 28)), turned(POND)], north: true } });
const SQUARE = cell("R2", { areaHa: 0.1 });
const CROFT = cell("C3 & co", { areaHa: 0.12, boundary: { rings: [rectangle(40, 30)] } });

const ARK: Strip = { areaHa: 0.0024, days: 1, movedBy: "hand", stepMinutes: 10, nets: 0, pen: "Ark", each: { sidesM: [3, 4], count: 2 } };

function farm(cells: readonly Cell[], strip: Strip, units: Scenario["units"] = "metric"): Scenario {
  return tinyFarm({ days: 60, cells, groups: [group("Hens", { letter: "L", kind: "layers", animalClass: "", head: 30, nitrogenKgPerHeadDay: 0.0015, intake: { kgDmPerHeadDay: 0.025 }, strip })], more: { units } });
}

const PLAN: Plan = { stays: [{ group: "Hens", cell: "E1", yard: null, firstDay: "2027-05-01", lastDay: "2027-05-20" }, { group: "Hens", cell: "R2", yard: null, firstDay: "2027-05-21", lastDay: "2027-05-24" }], cuts: [] };

function sheetOf(scenario: Scenario, plan: Plan | null): { readonly html: string; readonly cells: readonly PenInCell[] } {
  const [pen] = pensOfFarm(scenario, plan);
  return { html: penSheet(scenario, pen!, plan !== null, cautionsFor(scenario, plan ?? PLAN), englishWords()), cells: pen!.cells };
}

interface Read {
  readonly title: string;
  readonly scale: number;
  /** Metres, the drawing's upper left corner for a start, y down. */
  readonly ground: readonly (readonly Corner[])[];
  readonly places: readonly { readonly number: number; readonly used: boolean; readonly corners: readonly Corner[] }[];
  readonly texts: readonly string[];
  readonly svg: string;
}

const FIGURE = "(-?[\\d.]+)";
const PLACE = new RegExp(`<g class="place( used)?" data-number="(\\d+)" transform="translate\\(${FIGURE} ${FIGURE}\\) rotate\\(${FIGURE}\\)">`
  + `<rect x="${FIGURE}" y="${FIGURE}" width="${FIGURE}" height="${FIGURE}"`, "g");

/** Drawings of a page, back to metres by the scale that each one states. */
function drawingsOf(html: string): readonly Read[] {
  return [...html.matchAll(/<svg[\s\S]*?<\/svg>/g)].map(([svg]) => {
    const scale = Number(/data-scale="(\d+)"/.exec(svg)![1]);
    const metres = (mm: string): number => (Number(mm) * scale) / 1000;
    const path = / d="([^"]*)"/.exec(/<path class="ground[^>]*>/.exec(svg)![0])![1]!;
    const ground = path.split("Z").filter((ring) => ring !== "").map((ring) =>
      [...ring.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((corner): Corner => [metres(corner[1]!), metres(corner[2]!)]));
    const places = [...svg.matchAll(PLACE)]
      .map(([, used, number, x, y, turn, left, top, width, height]) => ({
        number: Number(number), used: used !== undefined,
        corners: rectangle(metres(width!), metres(height!), metres(left!), metres(top!)).map(([px, py]): Corner => {
          const angle = (Number(turn) * Math.PI) / 180;
          return [metres(x!) + px * Math.cos(angle) - py * Math.sin(angle), metres(y!) + px * Math.sin(angle) + py * Math.cos(angle)];
        }),
      }));
    return { title: /<title[^>]*>([^<]*)</.exec(svg)![1]!, scale, ground, places, texts: [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map((text) => text[1]!), svg };
  });
}

function areaOf(rings: readonly (readonly Corner[])[]): number {
  return rings.reduce((sum, ring, i) => {
    const outline = outlineOfCorners(ring);
    return sum + (outline.ok ? outline.areaM2 : 0) * (i === 0 ? 1 : -1);
  }, 0);
}

function shared(a: readonly (readonly Corner[])[], b: readonly (readonly Corner[])[]): number {
  const open = (rings: readonly (readonly Corner[])[]) => rings.map((ring) => ring.map(([x, y]): [number, number] => [x, y]));
  return polyclip.intersection(open(a), open(b)).reduce((sum, part) => sum + areaOf(part), 0);
}

describe("a pen's drawing, read back", () => {
  const { html, cells } = sheetOf(farm([ELL, SQUARE, CROFT], ARK), PLAN);
  const drawings = drawingsOf(html);
  const [ell] = drawings as [Read, Read];

  it("has one of each cell that the plan uses", () => {
    expect(drawings.map(({ title }) => title)).toEqual(["E1, Field: Hens", "R2, Field: Hens"]);
  });

  it("has the boundary and the pond to scale", () => {
    expect(ell.ground.map((ring) => ring.length)).toEqual([6, 5]);
    expect(Math.abs(areaOf(ell.ground) - areaOf(ELL.boundary!.rings)) / areaOf(ELL.boundary!.rings)).toBeLessThan(0.002);
  });

  it("has each position once for each pen, of the pen's sides", () => {
    const [known] = cells;
    const numbers = ell.places.map(({ number }) => number);
    expect(numbers).toEqual(Array.from({ length: known!.positions }, (_, i) => [i + 1, i + 1]).flat());
    for (const { corners } of ell.places) {
      const [a, b, c] = corners as [Corner, Corner, Corner];
      const sides = [Math.hypot(b[0] - a[0], b[1] - a[1]), Math.hypot(c[0] - b[0], c[1] - b[1])].sort((p, q) => p - q);
      expect(Math.abs(sides[0]! - 3)).toBeLessThan(roundedM(ell.scale));
      expect(Math.abs(sides[1]! - 4)).toBeLessThan(roundedM(ell.scale));
    }
  });

  it("has none outside the boundary, in the pond or over another, as far as paper is exact (polyclip-ts)", () => {
    const slack = 2 * (3 + 4) * roundedM(ell.scale);
    ell.places.forEach(({ corners, number }, i) => {
      expect([number, areaOf([corners]) - shared([corners], ell.ground) < slack]).toEqual([number, true]);
      for (const other of ell.places.slice(i + 1)) {
        if (Math.hypot(other.corners[0]![0] - corners[0]![0], other.corners[0]![1] - corners[0]![1]) < 5.5) expect(shared([corners], [other.corners])).toBeLessThan(slack);
      }
    });
  });

  it("fills the positions of the plan and no others", () => {
    expect([...new Set(ell.places.filter(({ used }) => used).map(({ number }) => number))]).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
    for (const [group] of ell.svg.matchAll(/<g class="place[\s\S]*?<\/g>/g)) expect(group.includes('class="pl"')).toBe(group.includes("place used"));
    expect(html).toContain("1 May to 20 May positions 1 to 20");
  });

  it("has a scale bar as long as it says, and north only where it is known", () => {
    for (const { svg, scale, texts } of drawings) {
      const [, metres, from, to] = /<g class="bar" data-metres="([\d.]+)"><path d="M([\d.]+) [\d.]+L([\d.]+) /.exec(svg)!;
      expect(((Number(to) - Number(from)) * scale) / 1000).toBeCloseTo(Number(metres), 1);
      expect(texts).toContain(`${metres} m`);
      expect(texts).toContain(`1 : ${scale}`);
    }
    expect(drawings.map(({ texts }) => texts.includes("N"))).toEqual([true, false]);
  });

  it("says of ground without a shape that its square is one as if, and counts by area beside it", () => {
    const square = drawings[1]!;
    expect(square.svg).toContain('class="ground as-if"');
    expect(html).toContain(`Drawn as if it were a square: ${new Set(square.places.map(({ number }) => number)).size} positions. By area alone at most ${cells[1]!.positions}.`);
    expect(cells[1]!.positions).toBe(41);
  });
});

describe("the run, step by step", () => {
  const { html, cells } = sheetOf(farm([ELL, SQUARE], { ...ARK, days: 3 }), PLAN);
  const [ellPart, squarePart] = html.split('<section class="cell">').slice(1).map((part) => part.split("</section>")[0]);
  const rows = (part: string): readonly string[] => [...part.matchAll(/<li>(.*?)<\/li>/g)].map(([, row]) => row!.replaceAll(/<[^>]+>/g, " ").trim().replaceAll(/ +/g, " "));

  it("gives every position its days and its peg, to the end of each stay", () => {
    expect(rows(ellPart!)).toHaveLength(7);
    expect(rows(ellPart!)[0]).toMatch(/^1 peg 0 m Sat 1 May to 3 May$/);
    expect(rows(ellPart!).at(-1)).toMatch(/^7 peg \d+ m Wed 19 May to 20 May$/);
  });

  it("has pegs as far along each lane as its positions are long, and begins each lane anew", () => {
    const { layout } = cells[0]!;
    const far = rows(ellPart!).map((row) => Number(/peg (\d+) m/.exec(row)![1]));
    const lanes = ellPart!.match(/class="lane-head"/g)!.length;
    expect(far.filter((metres) => metres < layout.alongM)).toHaveLength(lanes);
    expect(far.every((metres) => metres % layout.alongM === 0)).toBe(true);
  });

  it("draws a peg at the corner of a position, at every position of every lane", () => {
    const [drawing] = drawingsOf(html) as [Read];
    const metres = (mm: number): number => (mm * drawing.scale) / 1000;
    const pegs = [...drawing.svg.matchAll(/class="peg" d="M([\d.]+) ([\d.]+)h/g)].map(([, x, y]): Corner => [metres(Number(x) + 0.9), metres(Number(y))]);
    const { layout } = cells[0]!;
    expect(pegs.length).toBeGreaterThanOrEqual(layout.positions);
    for (const [x, y] of pegs.slice(0, layout.positions - 1)) {
      const nearest = Math.min(...drawing.places.flatMap(({ corners }) => corners).map(([cx, cy]) => Math.hypot(cx - x, cy - y)));
      expect(nearest).toBeLessThan(2 * roundedM(drawing.scale));
    }
  });

  it("names no peg where the shape is not known", () => {
    expect(rows(squarePart!)).toEqual(["1 Fri 21 May to 23 May", "2 Mon 24 May"]);
    expect(drawingsOf(html)[1]!.svg).not.toContain('class="peg"');
  });
});

describe("the page", () => {
  it("is well-formed, self-contained, black on white, and names what is dangerous", () => {
    for (const [strip, units] of [[ARK, "metric"], [{ ...ARK, each: { sidesM: [1.2, 2], count: 1 }, areaHa: 0.00024 }, "US"]] as const) {
      const { html } = sheetOf(farm([ELL, SQUARE, CROFT], strip, units), null);
      expect(faultsOf(html)).toEqual([]);
      expect(html).not.toMatch(/<script|https?:|@import|url\(/);
      expect(html.match(/#[0-9a-f]{3,6}\b/gi)!.filter((colour) => !["#000", "#fff"].includes(colour))).toEqual([]);
      expect(html).toContain("Shut and count the birds at dusk.");
      expect(drawingsOf(html).length).toBe(3);
    }
  });

  it("numbers the ends of lanes where a position is too small for its figure", () => {
    const { html } = sheetOf(farm([ELL], { ...ARK, each: { sidesM: [1, 1.4], count: 1 }, areaHa: 0.00014 }), null);
    const [drawing] = drawingsOf(html) as [Read];
    const figures = drawing.texts.filter((text) => /^\d+$/.test(text));
    expect(figures.length).toBeLessThan(drawing.places.length / 3);
    expect(figures).toContain(String(drawing.places.length));
  });

  it("speaks feet, square feet and acres on a US farm", () => {
    const { html } = sheetOf(farm([ELL], ARK, "US"), null);
    expect(html).toContain("2 pens of 9.8 ft x 13.1 ft");
    expect(html).toMatch(/lb N\/ac/);
    const [, metres] = /data-metres="([\d.]+)"/.exec(html)!;
    // a foot is 0.3048 m by agreement of 1959
    expect(html).toContain(`>${Math.round(Number(metres) / 0.3048)} ft<`);
  });
});
