import type { PenInCell, PenOnFarm } from "../../decide/pens/pens-of-farm.js";
import type { Scenario } from "../../farm/scenario.js";
import { daysBetween } from "../../quantity/calendar.js";
import { UNITS } from "../../quantity/units.js";
import type { Words } from "../../words/words.js";
import { toldArea, toldNitrogen } from "../amounts.js";

type Units = Scenario["units"];

/** "12.5 m", "41 ft". */
export function lengthWords(metres: number, units: Units, words: Words): string {
  return units === "US" ? words.say("amount.ft", { figure: words.figure(metres / UNITS.length["ft"]!, 1) }) : words.say("amount.m", { figure: words.figure(metres, 2) });
}

/** "2.5 m x 4 m". */
function sidesWords([a, b]: readonly [number, number], units: Units, words: Words): string {
  return words.say("amount.sides", { along: lengthWords(a, units, words), across: lengthWords(b, units, words) });
}

/** Up to a tenth of a hectare in square metres, else in hectares; square feet and acres on a US farm. */
function groundWords(areaHa: number, units: Units, words: Words): string {
  if (areaHa >= 0.1) return toldArea(areaHa, units, words);
  const m2 = areaHa * 10_000;
  return units === "US" ? words.say("amount.sq-ft", { figure: words.figure(m2 / UNITS.length["ft"]! ** 2) }) : words.say("amount.m2", { figure: words.figure(m2, m2 < 10 ? 1 : 0) });
}

/** "Layer pen: a net, square of 12.5 m x 12.5 m", "Broiler pen: 2 pens of 3.6 m x 4 m, one behind the other". */
export function penTitle({ group, strip, sidesM, count }: PenOnFarm, units: Units, words: Words): string {
  const size = sidesWords(sidesM, units, words);
  if (strip.pen === null) return words.say("pens.strips", { area: groundWords(strip.areaHa, units, words), size });
  const what = strip.nets > 0 ? words.say("pens.nets", { count, size }) : words.say("pens.pens", { count, size });
  const moved = group.needsTow || strip.movedBy === "tow" ? words.say("pens.towed") : words.say("pens.by-hand");
  return words.say("pens.pen", { pen: strip.pen, what, moved });
}

/** "the rule for steps 3 days, the grass under it 21 days, nitrogen 42 days". */
function limitWords({ limits }: PenInCell, words: Words): string {
  return limits.map(({ by, days }) => words.say("pens.limit", { limit: words.say(`pens.limit.${by}`), days: days < 1 ? 0 : days })).join(", ");
}

/** The cell in which a pen may stand shortest; of several the first. */
function tightest({ cells }: PenOnFarm): PenInCell | undefined {
  return cells.reduce<PenInCell | undefined>((best, one) => (best === undefined || longestOf(one) < longestOf(best) ? one : best), undefined);
}

function longestOf({ limits }: PenInCell): number {
  return limits[0]?.days ?? Infinity;
}

/** What a pen comes to over the season, in sentences. */
export function penSentences(pen: PenOnFarm, planned: boolean, units: Units, words: Words): readonly string[] {
  const { cells, restDays } = pen;
  const tight = tightest(pen);
  const first = cells[0];
  return [
    outWords(pen, planned, units, words),
    ...(first ? [words.say("pens.each-pass", { nitrogen: toldNitrogen(first.run.nitrogenKgPerHa, units, words) })] : []),
    ...(tight ? [longestWords(pen, tight, words)] : []),
    ...(cells.length > 0 ? [stepWords(pen, words)] : []),
    ...(restDays > 0 ? [words.say("pens.ground-rests", { days: restDays })] : []),
  ];
}

function outWords(pen: PenOnFarm, planned: boolean, units: Units, words: Words): string {
  const { strip, daysOut, worked, workedHa, shareOfFarm, firstOut } = pen;
  if (firstOut === null) return words.say("pens.not-out");
  const ground = words.say("pens.worked", { worked, area: groundWords(workedHa, units, words), part: partWords(shareOfFarm, words) });
  const works = planned ? words.say("pens.by-plan", { days: plannedDays(pen), ground }) : words.say("pens.in-season", { ground });
  return `${words.say("pens.may-out", { days: daysOut, step: strip.days })} ${works}`;
}

function longestWords({ cells }: PenOnFarm, tight: PenInCell, words: Words): string {
  const limits = limitWords(tight, words);
  const everywhere = new Set(cells.map((one) => limitWords(one, words))).size === 1;
  return everywhere ? words.say("pens.longest-everywhere", { limits }) : words.say("pens.longest", { cell: tight.cell.name, limits });
}

function plannedDays({ cells }: PenOnFarm): number {
  return cells.flatMap(({ taken }) => taken?.stays ?? []).reduce((sum, { firstDay, lastDay }) => sum + daysBetween(firstDay, lastDay) + 1, 0);
}

/** "14 % of the farm's cells", "1.4 % of the farm's cells (one part in 69)". */
function partWords(share: number, words: Words): string {
  const small = share < 0.095;
  const percent = words.figure(share * 100, small ? 1 : 0);
  return share > 0 && small ? words.say("pens.share-one-in", { percent, parts: words.figure(1 / share) }) : words.say("pens.share", { percent });
}

/** What step to use where. */
function stepWords({ cells, strip }: PenOnFarm, words: Words): string {
  const named = (of: readonly PenInCell[]): string => of.map(({ cell }) => cell.name).join(", ");
  const bare = cells.filter(({ step }) => step === null);
  const shorter = [...new Set(cells.flatMap(({ step }) => (step !== null && step < strip.days ? [step] : [])))].sort((a, b) => a - b);
  if (bare.length === 0 && shorter.length === 0) return words.say("pens.step-as-written", { days: strip.days });
  const parts = shorter.map((days) => words.say("pens.step-in", { days, cells: named(cells.filter(({ step }) => step === days)) }));
  const kept = cells.filter(({ step }) => step === strip.days);
  const keep = kept.length > 0 ? [words.say("pens.step-kept", { days: strip.days, cells: named(kept) })] : [];
  const none = bare.length > 0 ? [words.say("pens.step-none", { cells: named(bare) })] : [];
  return words.say("pens.step", { parts: [...parts, ...keep, ...none].join("; ") });
}

/** What is worth knowing of a pen in one cell besides its figures. */
export function cellNotes(one: PenInCell, words: Words): readonly string[] {
  const { cell, layout, positions, resting } = one;
  const notes = [
    positions === 0 ? words.say("pens.note-none") : "",
    !layout.asIf && layout.each > 1 && layout.middles.length % layout.each > 0 ? words.say("pens.note-over") : "",
    layout.brought > 0 && !layout.asIf ? words.say("pens.note-brought", { times: layout.brought }) : "",
    resting ? words.say("pens.note-resting", { percent: Math.round(resting.share * 100), day: words.dayMonth(resting.until) }) : "",
    runsOutWords(one, words),
  ];
  return notes.filter((note) => note !== "").map((note) => words.say("pens.note", { cell: cell.name, note }));
}

function runsOutWords({ taken, stepToLast }: PenInCell, words: Words): string {
  if (!taken?.runsOut) return "";
  const out = words.say("pens.note-runs-out", { day: words.dayMonth(taken.runsOut) });
  return stepToLast !== null && stepToLast > 1 ? `${out} ${words.say("pens.note-step-to-last", { days: stepToLast })}` : out;
}
