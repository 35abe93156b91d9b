import { useOf } from "../../farm/scenario.js";
import { YARD } from "../../season/season.js";
import type { Draft } from "../draft.js";
import { farmFigure } from "../half.js";
import { grassWish } from "../rules/grass-in-hand.js";
import type { Builder } from "./builder.js";
import type { Card, FreeDays } from "./cards.js";

/** Rules of the whole farm that some choice of cards could touch. */
export function farmRows(draft: Draft, b: Builder, free: readonly FreeDays[], cards: readonly (readonly Card[])[]): void {
  const { season } = draft;
  const worst = (of: (card: Card) => number, pick: (...values: number[]) => number): number => cards.reduce((sum, own) => sum + own.map(of).reduce((a, v) => pick(a, v)), 0);
  if (useOf(season.scenario, "grass-in-hand", null, null) !== "off") {
    season.walks.forEach((t, w) => {
      const wanted = grassWish(season, t) * season.grazersTaken[t];
      if (wanted > 0 && worst((card) => card.state.grass[w], Math.min) < wanted) b.row(`grass ${w}`, wanted, Infinity);
    });
  }
  if (useOf(season.scenario, "nitrogen-ceiling", null, null) !== "off") {
    const most = holdingNitrogen(draft);
    for (let y = 0; y < 3; y++) if (worst((card) => card.state.nitrogenByYear[y], Math.max) > most) b.row(`nitrogen ${y}`, -Infinity, most);
  }
  const { hay } = season.scenario;
  if (useOf(season.scenario, "hay-stock", null, null) === "off") return;
  b.row("hay", hay.winterNeedKg - hay.inStoreKg + hayFedOutside(draft, free), Infinity);
  for (const t of cutDays(draft)) b.row(`mown ${t}`, -Infinity, farmFigure(season, "hay-stock", "together"));
}

function hayFedOutside(draft: Draft, free: readonly FreeDays[]): number {
  let kg = draft.hayFed;
  for (const { group, from, to } of free) for (let t = from; t <= to; t++) if (draft.place[group][t] === YARD) kg -= draft.season.groups[group].hayKg[t];
  return kg;
}

/** Evenings with a cut. The mower's coming is paid whatever the cards; ground mown beyond that is theirs. */
function cutDays({ season, cuts }: Draft): number[] {
  return [...new Set([...season.cells.flatMap((cell) => cell.ownerCuts.map((cut) => cut.day)), ...cuts.flat()])];
}

function holdingNitrogen({ season }: Draft): number {
  return farmFigure(season, "nitrogen-ceiling", "holding") * season.cells.reduce((sum, cell) => sum + cell.areaHa, 0);
}

/** What may be short or over at a price; by a hard rule, not at all, or by `breaking` for each step it is broken. */
export function addShorts(draft: Draft, b: Builder, breaking: number | null): void {
  const { season } = draft;
  const hard = (rule: "grass-in-hand" | "nitrogen-ceiling"): boolean => useOf(season.scenario, rule, null, null) === "hard";
  const upper = (rule: "grass-in-hand" | "nitrogen-ceiling"): number => (hard(rule) && breaking === null ? 0 : Infinity);
  season.walks.forEach((t, w) => {
    if (!b.has(`grass ${w}`)) return;
    const price = (farmFigure(season, "grass-in-hand", "price") / season.grazersTaken[t]) * (hard("grass-in-hand") ? breaking ?? 1 : 1);
    b.put(`grass ${w}`, b.column({ kind: "short", what: `grass ${w}` }, price, upper("grass-in-hand"), false), 1);
  });
  for (let y = 0; y < 3; y++) {
    const price = hard("nitrogen-ceiling") ? (breaking ?? 0) / 10 : farmFigure(season, "nitrogen-ceiling", "holding-price");
    if (b.has(`nitrogen ${y}`)) b.put(`nitrogen ${y}`, b.column({ kind: "short", what: `nitrogen ${y}` }, price, upper("nitrogen-ceiling"), false), -1);
  }
  if (b.has("hay")) {
    const price = season.scenario.prices.hayPerKg * (farmFigure(season, "hay-stock", "short-share") / 100);
    b.put("hay", b.column({ kind: "short", what: "hay" }, price, Infinity, false), 1);
  }
  for (const t of cutDays(draft)) {
    if (b.has(`mown ${t}`)) b.put(`mown ${t}`, b.column({ kind: "short", what: `mown ${t}` }, season.scenario.prices.mowingPerHa, Infinity, false), -1);
  }
}
