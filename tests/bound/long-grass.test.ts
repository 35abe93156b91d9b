/** Birds of no exact season stay longer on growing grass than the bound lets them, and no weekly walk is charged less than it says. */
import { expect, it } from "vitest";
import { studyFarm } from "../../src/bench/study-farms.js";
import type { SeasonBound } from "../../src/programme/bound/bound.js";
import { cloneState, ruleIndex, type CellState } from "../../src/programme/cell-state.js";
import type { Draft } from "../../src/programme/draft.js";
import { chanceOf, type Chance } from "../oracle/chance.js";
import { boundOf, draftOf } from "./farms.js";

/** A cell as it is lived: exactly, and as the bound sees it. `level` is null before anybody grazed or cut. */
interface Lived {
  state: CellState;
  level: number | null;
  worked: boolean;
  grazed: number | null;
}

interface Seen {
  begun: number;
  worked: number;
  walks: number;
}

const LONG = ruleIndex("upper-cover");

function lived(draft: Draft, state: CellState, group: number, first: number, last: number): CellState | null {
  const after = cloneState(state);
  draft.simulator.stay(after, group, first, last);
  return after.over === 0 ? after : null;
}

/** The last morning of the longest stay of a group that begins on a day and keeps every rule of the cell; null where none does. */
function longest(draft: Draft, state: CellState, group: number, first: number): number | null {
  for (let last = Math.min(first + 70, draft.season.days - 1); last >= first; last--) {
    if (draft.season.groups[group].present[last] && lived(draft, state, group, first, last)) return last + 1;
  }
  return null;
}

/** What the bound says of birds that come on day t, against the longest stay that is. */
function probe(draft: Draft, bound: SeasonBound, own: Lived, group: number, t: number, seen: Seen): void {
  const end = longest(draft, own.state, group, t);
  const { levels, grass } = bound.cells[own.state.cell];
  const { birds } = grass;
  if (end === null || !birds) return;
  if (own.worked) {
    seen.worked++;
    expect(end).toBeLessThanOrEqual(birds.untilWorked[t]);
  } else if (own.level === null) {
    expect(birds.mayBegin[t]).toBe(1);
    expect([...birds.mayStand.subarray(t, end)]).not.toContain(0);
  } else {
    expect(end).toBeLessThanOrEqual(birds.until[t * levels.count + own.level]);
    if (own.grazed !== null) {
      expect(t).toBeLessThanOrEqual(birds.shortUntil[own.grazed]);
      expect(end).toBeLessThanOrEqual(birds.shortUntil[own.grazed] + birds.week);
    }
    seen.begun++;
  }
}

function graze(draft: Draft, bound: SeasonBound, own: Lived, group: number, t: number, days: number): void {
  const after = t + days <= draft.season.days ? lived(draft, own.state, group, t, t + days - 1) : null;
  const { levels } = bound.cells[own.state.cell];
  if (!after || days > levels.most) return;
  const from = (own.level === null ? t : t * levels.count + own.level) * levels.most;
  const level = (own.level === null ? levels.afterFirst.get(group)!.level : levels.after.get(group)!)[from + days - 1];
  expect(level).toBeGreaterThanOrEqual(0);
  Object.assign(own, { state: after, level, grazed: t + days });
}

function walk(draft: Draft, bound: SeasonBound, own: Lived, t: number, seen: Seen): void {
  const before = own.state.charges[LONG];
  const alone = own.state.day < t;
  draft.simulator.advance(own.state, t);
  if (!alone || own.worked || !draft.season.walks.includes(t)) return;
  const { grass, levels } = bound.cells[own.state.cell];
  const told = own.level === null ? grass.walkUntouched[t] : (grass.walk?.[t * levels.count + own.level] ?? 0);
  if (told > 0) seen.walks++;
  expect(told).toBeLessThanOrEqual(own.state.charges[LONG] - before + 1e-9);
}

/** One random season of a cell, held against the bound day by day. */
function liveOn(draft: Draft, bound: SeasonBound, cell: number, chance: Chance, seen: Seen): void {
  const { season } = draft;
  const own: Lived = { state: draft.simulator.fresh(cell), level: null, worked: false, grazed: null };
  const eager = chance.pick([0.02, 0.05, 0.15]);
  for (let t = 0; t < season.days; t++) {
    if (own.state.day > t) continue;
    walk(draft, bound, own, t, seen);
    const group = chance.whole(0, season.groups.length - 1);
    if (!season.groups[group].present[t] || !chance.luck(eager)) continue;
    if (season.groups[group].grazer) graze(draft, bound, own, group, t, chance.whole(1, 3));
    else if (season.groups[group].bird) {
      probe(draft, bound, own, group, t, seen);
      const after = chance.luck(0.1) ? lived(draft, own.state, group, t, Math.min(season.days - 1, t + chance.whole(0, 8))) : null;
      if (after) Object.assign(own, { state: after, worked: true });
    }
  }
}

it.each([[2, 0.06], [4, 0.06], [2, 0.15]])("on a long season of %i groups, levels %f apart", { timeout: 120_000 }, (groups, step) => {
  const farm = studyFarm({ name: "long", cells: 4, groups, days: 170 }, groups);
  const draft = draftOf({ ...farm, cells: farm.cells.map((cell) => ({ ...cell, closed: [] })) });
  const bound = boundOf(draft, step);
  const chance = chanceOf(groups);
  const seen: Seen = { begun: 0, worked: 0, walks: 0 };
  draft.season.cells.forEach((_, cell) => {
    for (let i = 0; i < 600; i++) liveOn(draft, bound, cell, chance, seen);
  });
  expect(Math.min(seen.begun, seen.worked, seen.walks)).toBeGreaterThan(50);
});
