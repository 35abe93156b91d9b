import type { LandSummary } from "../decide/land.js";
import type { Finding } from "../farm/finding.js";
import type { Cell, Scenario } from "../farm/scenario.js";
import { daysBetween } from "../quantity/calendar.js";
import { wayRoundM } from "../science/rings.js";
import { dayMonth } from "../sheets/day-words.js";
import { areaWords, lengthWords } from "../sheets/figure-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import type { ReadAnswer } from "./answers.js";
import { findingsText } from "./findings-text.js";
import { widthOf, type Screen } from "./screen.js";
import { columnsOf } from "./table.js";
import { countWords, grassFigure, grassUnit, tonnesWords, weightWords } from "./words.js";

/** What the words about a farm are made from. */
export interface FarmSeen {
  readonly scenario: Scenario;
  readonly land: LandSummary;
  readonly notes: readonly Finding[];
  readonly listAssumed: boolean;
  /** As typed on the command line, for the line that tells how to go on. */
  readonly farmFile: string;
}

/** A farm as it was understood: cells enough or not, first of all. */
export function readText(seen: FarmSeen, screen: Screen): string {
  const { scenario, land, notes } = seen;
  const columns = widthOf(screen);
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  return [
    screen.heading(`${scenario.farm}: ${dayMonth(scenario.season.firstDay)} to ${dayMonth(scenario.season.lastDay)} ${scenario.season.lastDay.slice(0, 4)}`),
    ...part("Cells needed, and cells there are", needPart(land).map((row) => wrapped(row, columns, 4))),
    ...part("What the land grows in the season, and what the stock eats", supplyPart(scenario, land)),
    ...part("Week by week in a usual year", weekPart(scenario, land)),
    ...part("Land", landPart(scenario, columns)),
    ...part("Cells with a boundary", groundPart(scenario)),
    ...part("Stock", stockPart(scenario, land)),
    ...part("Worth knowing", notes.length === 0 ? [] : [findingsText(notes, columns).trimEnd()]),
    ...part(seen.listAssumed ? "Assumed, with its source" : "Assumed", assumedPart(seen).map((row) => wrapped(row, columns, 6))),
    "",
    wrapped(`Nothing to put right. Next: inbye plan ${seen.farmFile}`, columns),
    "",
  ].join("\n");
}

/** Cells needed against cells there are, group by group. */
export function needPart(land: Pick<LandSummary, "groups">): readonly string[] {
  return land.groups.map(({ group, cellsNeeded, cellsItMayEnter }) => {
    if (cellsNeeded === null) return `  ${group}: takes ground strip by strip in ${countWords(cellsItMayEnter, "cell")}`;
    const verdict = cellsNeeded <= cellsItMayEnter ? "enough" : `${cellsNeeded - cellsItMayEnter} short: stays grow longer, rests shorter, or days go to the yard`;
    return `  ${group}: needs ${countWords(cellsNeeded, "cell")} (rest / stay + 1), may enter ${cellsItMayEnter}: ${verdict}`;
  });
}

function supplyPart({ units }: Scenario, land: LandSummary): readonly string[] {
  const { low, usual, high } = land.grownKg;
  const eaten = land.groups.reduce((sum, group) => sum + group.demandKg, 0);
  return columnsOf([
    ["grown in a low year", tonnesWords(low, units)],
    ["grown in a usual year", tonnesWords(usual, units)],
    ["grown in a high year", tonnesWords(high, units)],
    ["eaten, all groups", tonnesWords(eaten, units)],
  ]);
}

function weekPart({ units }: Scenario, land: LandSummary): readonly string[] {
  const figures = (week: LandSummary["weeks"][number]) => [week.grownKg, week.eatenKg, week.hayKg].map((kg) => grassFigure(kg, units));
  const rows = land.weeks.map((week) => [dayMonth(week.firstDay), ...figures(week), week.daysInHand === null ? "" : String(Math.round(week.daysInHand))]);
  const unit = grassUnit(units);
  return columnsOf([["week from", `grown, ${unit}`, `eaten, ${unit}`, `hay, ${unit}`, "days of grass in hand"], ...rows]);
}

function landPart({ fields, cells, units }: Scenario, columns: number): readonly string[] {
  const rows = fields.map((field) => {
    const inside = cells.filter((cell) => cell.field === field.name);
    const ha = inside.reduce((sum, cell) => sum + cell.areaHa, 0);
    return [field.name, areaWords(ha, units), countWords(inside.length, "cell"), inside.map((cell) => cell.name).join(" ")];
  });
  const whole = cells.reduce((sum, cell) => sum + cell.areaHa, 0);
  const lines = columnsOf([...rows, ["all", areaWords(whole, units), countWords(cells.length, "cell"), ""]], [0, 3]);
  return lines.map((line, i) => wrapped(line, columns, line.length - (rows[i]?.[3] ?? "").length));
}

function groundPart({ cells, units }: Scenario): readonly string[] {
  const rows = groundOf(cells).map(({ cell, areaHa, wayRoundM, fenceM }) => [cell, areaWords(areaHa, units), lengthWords(wayRoundM, units), lengthWords(fenceM, units)]);
  return rows.length === 0 ? [] : columnsOf([["", "area", "way round", "movable fence"], ...rows]);
}

function stockPart({ groups, units }: Scenario, land: LandSummary): readonly string[] {
  const rows = groups.map((group) => {
    const weight = land.groups.find((one) => one.group === group.name)?.liveWeightKg ?? 0;
    const days = group.here.reduce((sum, span) => sum + daysBetween(span.firstDay, span.lastDay) + 1, 0);
    return [`${group.name} (${group.letter})`, `${group.head} ${group.kind}`, weightWords(weight, units), countWords(days, "day")];
  });
  return columnsOf([["", "head", "weight at most", "here"], ...rows]);
}

function assumedPart({ scenario, listAssumed, farmFile }: FarmSeen): readonly string[] {
  const { assumed } = scenario;
  if (assumed.length === 0) return ["  Nothing: every figure is yours."];
  if (!listAssumed) return [`  ${countWords(assumed.length, "figure")} not in the file; inbye read ${farmFile} --assumed lists them with their sources.`];
  return assumed.flatMap(({ key, value, source, status }) => [`  ${key}: ${value}`, `      ${source === status ? source : `${source} (${status})`}`]);
}

/** The same as one object. */
export function readAnswer(scenario: Scenario, land: LandSummary, notes: readonly Finding[]): ReadAnswer {
  return {
    farm: scenario.farm,
    units: scenario.units,
    season: scenario.season,
    areaHa: scenario.cells.reduce((sum, cell) => sum + cell.areaHa, 0),
    cells: scenario.cells.length,
    groups: land.groups.map((need) => {
      const { letter, kind, head } = scenario.groups.find((group) => group.name === need.group)!;
      return { letter, kind, head, ...need };
    }),
    ground: groundOf(scenario.cells),
    grownKg: land.grownKg,
    weeks: [...land.weeks],
    assumed: [...scenario.assumed],
    notes: [...notes],
  };
}

/** Cells whose boundary is known. */
function groundOf(cells: readonly Cell[]): ReadAnswer["ground"] {
  return cells.flatMap(({ name, areaHa, boundary, fenceM }) => {
    if (boundary === null) return [];
    const rings = boundary.rings.map((ring) => ring.map((corner) => [...corner]));
    return [{ cell: name, areaHa, wayRoundM: wayRoundM(boundary), fenceM, rings }];
  });
}
