import type { Compared } from "../decide/compare-plans.js";
import type { FigureKey } from "../decide/season-figures.js";
import type { Scenario } from "../farm/scenario.js";
import { UNITS } from "../quantity/units.js";
import { moneyWords, nitrogenFigure, nitrogenUnit } from "../sheets/figure-words.js";
import { minutesWords, shownMoney } from "./words.js";

/** How a figure is told: no finer than it is known, and so that told figures can be taken from each other. */
interface Told {
  readonly label: string;
  /** Rounded, in the unit it is told in. */
  readonly figure: (value: number) => number;
  readonly words: (figure: number) => string;
  readonly fewer: "less" | "fewer";
}

/** A figure of two seasons in words, with the difference of what is told. */
export interface ToldRow {
  readonly label: string;
  readonly base: string;
  readonly change: string;
  readonly difference: string;
}

type Unit = Pick<Scenario, "units" | "prices">;

/** Rows of figures in their order; those that are nothing in both are left out. */
export function toldRows(figures: Readonly<Record<FigureKey, Compared>>, farm: Unit): readonly ToldRow[] {
  return toldFigures(farm).flatMap(([key, told]) => toldRow(told, figures[key]));
}

/** Money by any name, as it is, with a change, and the difference; nothing where it is nothing in both. */
export function moneyRow(label: string, compared: Compared, { prices }: Unit): readonly ToldRow[] {
  return toldRow(money(label, prices.currency), compared);
}

/** One season's figure in words. */
export function toldFigure(key: FigureKey, value: number, farm: Unit): string {
  const [, told] = toldFigures(farm).find(([one]) => one === key)!;
  return told.words(told.figure(value));
}

export function labelOf(key: FigureKey, farm: Unit): string {
  return toldFigures(farm).find(([one]) => one === key)![1].label;
}

function toldRow({ label, figure, words, fewer }: Told, { base, change }: Compared): readonly ToldRow[] {
  const [before, after] = [figure(base), figure(change)];
  if (before === 0 && after === 0) return [];
  const difference = Math.abs(after - before) < 1e-9 ? "same" : `${words(Math.abs(after - before))} ${after > before ? "more" : fewer}`;
  return [{ label, base: words(before), change: words(after), difference }];
}

function toldFigures({ units, prices }: Unit): readonly (readonly [FigureKey, Told])[] {
  const [hay, ground] = [weight(units), area(units)];
  return [
    ["cost", money("Season's cost", prices.currency)],
    ["hay-fed-kg", hay("Hay fed")],
    ["hay-days", counted("Days in a yard")],
    ["hay-made-kg", hay("Hay made")],
    ["hay-to-buy-kg", hay("Hay to buy")],
    ["moves", counted("Moves")],
    ["hauls", counted("of these hauls")],
    ["moves-a-week", { ...counted("Moves a week"), figure: (value) => Math.round(value * 10) / 10, words: (figure) => figure.toFixed(1) }],
    ["moves-worst-week", counted("Moves, fullest week")],
    ["minutes-a-week", time("Work a week")],
    ["minutes-worst-week", time("Work, fullest week")],
    ["rests-short", counted("Rests cut short")],
    ["rests-short-cost", money("what that costs", prices.currency)],
    ["nitrogen-highest-kg-per-ha", nitrogen("Most nitrogen on a cell", units)],
    ["cells-over-nitrogen", counted("Cells over its ceiling")],
    ["nitrogen-in-yard-kg", { ...hay("Nitrogen in the yard"), figure: (kg) => Math.round(kg / UNITS.weight[units === "US" ? "lb" : "kg"]! / 10) * 10 }],
    ["birds-ground-ha", ground("Ground birds worked")],
    ["pigs-ground-ha", ground("Ground pigs opened")],
    ["crowded-day-share", { label: "Fullest day, time taken", figure: (share) => Math.round(share * 100), words: (figure) => `${figure} %`, fewer: "less" }],
    ["nets-most", counted("Nets in use, most")],
    ["reels-most", counted("Reels in use, most")],
    ["energisers-most", counted("Energisers in use, most")],
  ];
}

function counted(label: string): Told {
  return { label, figure: Math.round, words: String, fewer: "fewer" };
}

function money(label: string, currency: string): Told {
  return {
    label, fewer: "less",
    figure: (value) => Math.round(shownMoney(value)),
    words: (figure) => moneyWords(figure, currency).replaceAll(/\B(?=(\d{3})+(?!\d))/g, ","),
  };
}

function time(label: string): Told {
  return { label, figure: (value) => Math.round(value / 5) * 5, words: minutesWords, fewer: "less" };
}

function weight(units: Scenario["units"]): (label: string) => Told {
  const [unit, step] = units === "US" ? ["lb", 100] as const : ["kg", 50] as const;
  return (label) => ({ label, figure: (kg) => Math.round(kg / UNITS.weight[unit]! / step) * step, words: (figure) => `${figure} ${unit}`, fewer: "less" });
}

function area(units: Scenario["units"]): (label: string) => Told {
  const unit = units === "US" ? "ac" : "ha";
  return (label) => ({ label, figure: (ha) => Math.round((ha / UNITS.area[unit]!) * 100) / 100, words: (figure) => `${figure.toFixed(2)} ${unit}`, fewer: "less" });
}

function nitrogen(label: string, units: Scenario["units"]): Told {
  return { label, figure: (kgPerHa) => nitrogenFigure(kgPerHa, units), words: (figure) => `${figure} ${nitrogenUnit(units)}`, fewer: "less" };
}
