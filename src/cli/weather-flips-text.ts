import type { Turn } from "../decide/weather/figures.js";
import type { FigureFlips, Flip } from "../decide/weather/what-flips.js";
import type { Scenario } from "../farm/scenario.js";
import { hayFigure } from "../sheets/figure-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import { aboutPrice, countWords, percentWords } from "./words.js";

const TURN_WORDS: Readonly<Record<Turn, string>> = {
  halved: "half", doubled: "double", least: "as low as may be written", most: "as high as may be written",
};

/** Each figure turned, the one that matters most first. */
export function flipsRows(figures: readonly FigureFlips[], scenario: Scenario, columns: number): readonly string[] {
  const [first] = figures;
  if (!first) return [];
  const line = (text: string, indent: number) => wrapped(text, columns, indent);
  return [
    line("  Each figure was halved and doubled, and the season planned again from this plan (a short search: not the best plan there is). Set against the same done with the figure as it is:", 2),
    line(`  It hangs most on the ${first.words}${first.assumed ? ", which is assumed: look at it first" : ""}.`, 2),
    ...figures.flatMap(({ words, assumed, flips }) => [
      `  ${words}${assumed ? " (assumed)" : ""}`,
      ...flips.map((flip) => line(`    ${TURN_WORDS[flip.turn]}: ${flipWords(flip, scenario)}`, 6)),
    ]),
  ];
}

/** Money and kg of hay below this are told as no change: short searches differ by as much. */
const LITTLE_MONEY = 20;
const LITTLE_HAY = 25;

function flipWords(flip: Flip, { prices: { currency }, units }: Scenario): string {
  const { costMore, hayMoreKg, movesMore, daysElsewhere, days, keptCostsMore } = flip;
  if (!flip.planned) return "no plan that keeps every rule was found.";
  const told = [
    ...(Math.abs(costMore) < LITTLE_MONEY ? [] : [`costs ${aboutPrice(Math.abs(costMore), currency)} ${costMore > 0 ? "more" : "less"}`]),
    ...(Math.abs(hayMoreKg) < LITTLE_HAY ? [] : [`${hayFigure(Math.abs(hayMoreKg), units)} ${hayMoreKg > 0 ? "more" : "less"} hay`]),
    ...(movesMore === 0 ? [] : [`${countWords(Math.abs(movesMore), "move")} ${movesMore > 0 ? "more" : "fewer"}`]),
    ...(daysElsewhere === 0 ? [] : [`groups stand elsewhere on ${percentWords(daysElsewhere / days)} of their days`]),
  ];
  const kept = keptCostsMore === null
    ? "; keeping to this plan would break rules"
    : keptCostsMore < LITTLE_MONEY ? "" : `; keeping to this plan as far as it goes would cost ${aboutPrice(keptCostsMore, currency)} more than that`;
  return told.length === 0 && kept === "" ? "nothing to speak of changes." : `${told.join(", ") || "about as good a plan is found"}${daysElsewhere === 0 ? ", nobody stands elsewhere" : ""}${kept}.`;
}
