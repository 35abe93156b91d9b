/**
 * Seasons of a few days, every way to live them tried by the check alone. The cheapest way that the check accepts is
 * what the programme must find, what other solvers must find, and what the bound may never pass.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { raiseBound } from "../../src/programme/bound/ascent.js";
import { SeasonBound } from "../../src/programme/bound/bound.js";
import type { Draft } from "../../src/programme/draft.js";
import { handRule } from "../../src/programme/hand-rule.js";
import { runJob } from "../../src/programme/jobs.js";
import { snapshot, type Snapshot } from "../../src/programme/snapshot.js";
import type { PricingSolver } from "../../src/programme/solver.js";
import { cardsOf, type Card, type FreeDays } from "../../src/programme/window/cards.js";
import { windowModel } from "../../src/programme/window/window-model.js";
import { mendWindow } from "../../src/programme/window/windows.js";
import { HALVES } from "../../src/programme/rules/index.js";
import type { RuleId } from "../../src/rules/rule.js";
import type { Season } from "../../src/season/season.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { javascriptLpSolver } from "../../src/solvers/javascript-lp-solver.js";
import { draftOf } from "../programme/drafts.js";
import { byYalps } from "../solvers/yalps.js";
import { enumerateSeason, type Enumerated, type Priced } from "./best-way.js";
import { judged, type Way } from "./enumerate.js";
import { MOWER, TINY_SIZES, tinySeason } from "./tiny-seasons.js";

/** A longer run begins at another seed and asks for more of them. */
const FIRST_SEED = Number(process.env["INBYE_FIRST_SEED"] ?? 0);
const SEEDS = Array.from({ length: Number(process.env["INBYE_SEEDS"] ?? 90) }, (_, i) => FIRST_SEED + i);
/** More columns than this are too many for the two solvers written in JavaScript. */
const FEW_COLUMNS = 120;

const seen = { seasons: 0, choices: 0, ways: 0, optima: 0, otherSolvers: 0, bounds: 0, searches: 0, rules: new Set<RuleId>() };
let highs: PricingSolver;
beforeAll(() => {
  highs = highsSolver();
});

const wholeSeason = (season: Season): FreeDays[] => season.groups.flatMap((group, g) => {
  const [from, to] = [group.present.indexOf(1), group.present.lastIndexOf(1)];
  return from < 0 ? [] : [{ group: g, from, to }];
});

function draftWith(season: Season, { place, cuts }: Way): Draft {
  const draft = draftOf(season);
  draft.load(place, cuts);
  return draft;
}

/** The season's programme solved as one window: from a start, to its proven optimum. */
async function optimumFrom(draft: Draft): Promise<number> {
  for (let round = 0; round < 6; round++) {
    const end = await mendWindow(draft, wholeSeason(draft.season), highs, { cards: 5000, nodes: 2000, guardSeconds: 20 });
    if (end === "proven") return draft.cost;
    expect(end).toBe("better");
  }
  throw new Error("six windows over the whole season, and still no proof");
}

async function holdProgramme({ season, unmown, dearest }: Enumerated): Promise<void> {
  if (!unmown || !dearest) return;
  expect(await optimumFrom(draftWith(season, dearest.way))).toBeCloseTo(unmown.cost, 2);
  const byHand = draftOf(season);
  handRule(byHand);
  if (byHand.over === 0) expect(await optimumFrom(byHand)).toBeCloseTo(unmown.cost, 2);
  seen.optima++;
}

/** The same programme by three solvers. What its columns do not hold, the mower's coming, is the owner's own cuts. */
async function holdSolvers({ season }: Enumerated, unmown: Priced): Promise<void> {
  const draft = draftWith(season, unmown.way);
  const free = wholeSeason(season);
  const cards = season.cells.map((_, c) => cardsOf(draft, c, free, 5000)).filter((own): own is Card[] => own !== null);
  expect(cards).toHaveLength(season.cells.length);
  const { model } = windowModel(draft, free, cards);
  const limits = { nodes: 2000, gap: 1e-6, start: null, guardSeconds: 10 };
  const byHighs = await highs.solve(model, limits);
  expect(byHighs.kind).toBe("optimal");
  const value = byHighs.kind === "optimal" ? byHighs.value : NaN;
  if (season.cells.every((cell) => cell.ownerCuts.length === 0)) expect(value).toBeCloseTo(unmown.cost, 4);
  if (model.columns > FEW_COLUMNS) return;
  const bySecond = await javascriptLpSolver().solve(model, limits);
  if (bySecond.kind !== "limit") expect(bySecond).toMatchObject({ kind: "optimal", value: expect.closeTo(value, 4) });
  const byThird = byYalps(model);
  if (byThird.kind !== "unfinished") expect(byThird).toMatchObject({ kind: "optimal", value: expect.closeTo(value, 4) });
  if (bySecond.kind !== "limit" && byThird.kind !== "unfinished") seen.otherSolvers++;
}

function holdBound({ season, best }: Enumerated): void {
  const draft = draftOf(season);
  const bound = new SeasonBound(season, draft.simulator, draft.tables, 0.03);
  const { value } = raiseBound(bound, 150, { stop: () => false, better: () => undefined });
  if (best) expect(value).toBeLessThanOrEqual(best.cost + 1e-6);
  seen.bounds++;
}

async function holdSearch({ season, best, kept }: Enumerated, mown: number | null): Promise<void> {
  const byHand = draftOf(season);
  handRule(byHand);
  const news = await runJob({ kind: "search", scenario: season.scenario, from: snapshot(byHand), keep: null, steps: 3000, polishes: 1, seed: 7 }, { stop: () => false, news: () => undefined }, highs);
  if (news.kind !== "plan") throw new Error("a search answers with a plan");
  const { plan } = news;
  if (plan.over > 0) return;
  const { report, keeps } = judged(season, plan);
  expect({ keeps, breaches: keeps ? [] : report.breaches }).toEqual({ keeps: true, breaches: [] });
  expect(report.cost).toBeCloseTo(plan.cost, 6);
  seen.searches++;
  // A cut that was not tried may cost less, or make good what no way without it keeps.
  if (!enumerated(plan, mown)) return;
  expect(kept).toBeGreaterThan(0);
  expect(plan.cost).toBeGreaterThanOrEqual((best?.cost ?? Infinity) - 1e-6);
}

/** True when the plan's own cuts are among those that were tried. */
const enumerated = ({ cuts }: Snapshot, mown: number | null): boolean => cuts.every((own, c) => own.length === 0 || (c === mown && own.length === 1));

describe("every way to live a tiny season", () => {
  it.each(SEEDS)("season %i", { timeout: 60_000 }, async (seed) => {
    const size = TINY_SIZES[seed % TINY_SIZES.length];
    const scenario = tinySeason(size, seed);
    const mown = size.name === MOWER ? 0 : null;
    const found = enumerateSeason(scenario, mown);
    expect(found.differ.slice(0, 3)).toEqual([]);
    await holdProgramme(found);
    if (found.unmown) await holdSolvers(found, found.unmown);
    holdBound(found);
    await holdSearch(found, mown);
    seen.seasons++;
    seen.ways += found.ways;
    if (found.kept > 1) seen.choices++;
    for (const rule of found.active) seen.rules.add(rule);
  });

  it.runIf(SEEDS.length >= 90)("has a choice in fifty seasons, and every rule that the programme has a half of speaks in one", () => {
    expect(seen.choices).toBeGreaterThanOrEqual(50);
    expect(seen.optima).toBeGreaterThanOrEqual(50);
    expect(seen.otherSolvers).toBeGreaterThanOrEqual(20);
    expect(HALVES.map((half) => half.id).filter((id) => !seen.rules.has(id))).toEqual([]);
  });

  afterAll(() => {
    if (process.env["INBYE_COUNTS"]) process.stdout.write(`${JSON.stringify({ ...seen, rules: seen.rules.size })}\n`);
  });
});
