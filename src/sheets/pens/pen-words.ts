import type { PenInCell, PenOnFarm } from "../../decide/pens/pens-of-farm.js";
import type { Scenario } from "../../farm/scenario.js";
import { daysBetween } from "../../quantity/calendar.js";
import { UNITS } from "../../quantity/units.js";
import { areaWords, nitrogenFigure, nitrogenUnit } from "../figure-words.js";

type Units = Scenario["units"];

/** "12.5 m", "41 ft". */
export function lengthWords(metres: number, units: Units): string {
  return units === "US" ? `${trimmed(metres / UNITS.length["ft"]!, 1)} ft` : `${trimmed(metres, 2)} m`;
}

function trimmed(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}

/** "2.5 m x 4 m". */
export function sidesWords([a, b]: readonly [number, number], units: Units): string {
  return `${lengthWords(a, units)} x ${lengthWords(b, units)}`;
}

/** Up to a tenth of a hectare in square metres, else in hectares; square feet and acres on a US farm. */
export function groundWords(areaHa: number, units: Units): string {
  if (areaHa >= 0.1) return areaWords(areaHa, units);
  const m2 = areaHa * 10_000;
  return units === "US" ? `${Math.round(m2 / UNITS.length["ft"]! ** 2)} sq ft` : `${trimmed(m2, m2 < 10 ? 1 : 0)} m2`;
}

export function daysWords(days: number): string {
  return `${days} ${days === 1 ? "day" : "days"}`;
}

/** "Layer pen: a net, square of 12.5 m x 12.5 m", "Broiler pen: 2 pens of 3.6 m x 4 m, one behind the other". */
export function penTitle({ group, strip, sidesM, count }: PenOnFarm, units: Units): string {
  const size = sidesWords(sidesM, units);
  if (strip.pen === null) return `Strips of ${groundWords(strip.areaHa, units)}, as squares of ${size}`;
  const house = strip.nets > 0 ? (count === 1 ? "a net, square of" : `${count} nets, squares of`) : count === 1 ? "one pen of" : `${count} pens of`;
  const set = count > 1 ? ", one behind the other" : "";
  const moved = group.needsTow || strip.movedBy === "tow" ? "towed" : "moved by hand";
  return `${strip.pen}: ${house} ${size}${set}, ${moved}`;
}

/** "about 20 kg N/ha", "under 10 kg N/ha". */
export function passWords(kgPerHa: number, units: Units): string {
  const figure = nitrogenFigure(kgPerHa, units);
  return figure < 10 ? `under 10 ${nitrogenUnit(units)}` : `about ${figure} ${nitrogenUnit(units)}`;
}

const LIMIT_WORDS = { step: "the rule for steps", nitrogen: "nitrogen", grass: "the grass under it", pressure: "rooting" } as const;

/** "the rule for steps 3 days, the grass under it 21 days, nitrogen 42 days". */
export function limitWords({ limits }: PenInCell): string {
  return limits.map(({ by, days }) => `${LIMIT_WORDS[by]} ${days < 1 ? "not a day" : daysWords(days)}`).join(", ");
}

/** The cell in which a pen may stand shortest; of several the first. */
function tightest({ cells }: PenOnFarm): PenInCell | undefined {
  return cells.reduce<PenInCell | undefined>((best, one) => (best === undefined || longestOf(one) < longestOf(best) ? one : best), undefined);
}

function longestOf({ limits }: PenInCell): number {
  return limits[0]?.days ?? Infinity;
}

/** What a pen comes to over the season, in sentences. */
export function penSentences(pen: PenOnFarm, planned: boolean, units: Units): readonly string[] {
  const { strip, daysOut, worked, workedHa, shareOfFarm, cells, firstOut } = pen;
  const ground = `${worked} ${worked === 1 ? "position" : "positions"}, ${groundWords(workedHa, units)}, ${partWords(shareOfFarm)}`;
  const step = strip.days === 1 ? "every day" : `every ${strip.days} days`;
  const tight = tightest(pen);
  const first = cells[0];
  return [
    firstOut === null ? "Not out on ground this season." : `May be out on ground ${daysWords(daysOut)}, a step ${step}. ${planned ? `By the plan it is out ${daysWords(plannedDays(pen))} and works` : "In the season it works"} ${ground}.`,
    ...(first ? [`Each pass lays ${passWords(first.run.nitrogenKgPerHa, units)} on the ground it stands on.`] : []),
    ...(tight ? [`Longest on one position (${sameEverywhere(pen) ? "in every cell" : `in ${tight.cell.name}, the shortest`}): ${limitWords(tight)}.`] : []),
    ...(cells.length > 0 ? [stepWords(pen)] : []),
    ...(pen.restDays > 0 ? [`Ground they used rests ${daysWords(pen.restDays)} before they or their like come back to it.`] : []),
  ];
}

function plannedDays({ cells }: PenOnFarm): number {
  return cells.flatMap(({ taken }) => taken?.stays ?? []).reduce((sum, { firstDay, lastDay }) => sum + daysBetween(firstDay, lastDay) + 1, 0);
}

function sameEverywhere({ cells }: PenOnFarm): boolean {
  return new Set(cells.map(limitWords)).size === 1;
}

/** "14 % of the farm's cells", "1.4 % of the farm's cells (one part in 69)". */
function partWords(share: number): string {
  const percent = share < 0.095 ? trimmed(share * 100, 1) : String(Math.round(share * 100));
  return `${percent} % of the farm's cells${share > 0 && share < 0.095 ? ` (one part in ${Math.round(1 / share)})` : ""}`;
}

/** What step to use where. */
function stepWords({ cells, strip }: PenOnFarm): string {
  const named = (of: readonly PenInCell[]): string => of.map(({ cell }) => cell.name).join(", ");
  const bare = cells.filter(({ step }) => step === null);
  const shorter = [...new Set(cells.flatMap(({ step }) => (step !== null && step < strip.days ? [step] : [])))].sort((a, b) => a - b);
  if (bare.length === 0 && shorter.length === 0) return `Step to use: ${daysWords(strip.days)}, as written.`;
  const parts = shorter.map((days) => `${daysWords(days)} in ${named(cells.filter(({ step }) => step === days))}`);
  const kept = cells.filter(({ step }) => step === strip.days);
  const keep = kept.length > 0 ? [`${daysWords(strip.days)}, as written, in ${named(kept)}`] : [];
  const none = bare.length > 0 ? [`no whole day in ${named(bare)} (fewer animals, or more ground at a time)`] : [];
  return `Step to use: ${[...parts, ...keep, ...none].join("; ")}.`;
}

/** What is worth knowing of a pen in one cell besides its figures. */
export function cellNotes({ cell, layout, positions, resting, stepToLast, taken }: PenInCell, day: (iso: string) => string): readonly string[] {
  const notes = [
    positions === 0 ? "No position fits." : "",
    !layout.asIf && layout.each > 1 && layout.middles.length % layout.each > 0 ? "One pen's place is over." : "",
    layout.brought > 0 && !layout.asIf ? `Brought round what is in the way ${layout.brought === 1 ? "once" : `${layout.brought} times`}.` : "",
    resting ? `${Math.round(resting.share * 100)} % of it rests from before the season until ${day(resting.until)}: where that lies, only you know. It is counted as the last positions.` : "",
    taken?.runsOut ? `Fresh ground runs out on ${day(taken.runsOut)}.${stepToLast !== null && stepToLast > 1 ? ` A step of ${daysWords(stepToLast)} makes this cell last all the days out.` : ""}` : "",
  ];
  return notes.filter((note) => note !== "").map((note) => `${cell.name}: ${note}`);
}
