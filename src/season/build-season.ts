import { figureOf, isBird, isGrazer, type Cell, type Field, type Scenario } from "../farm/scenario.js";
import { addDays, dayNumber, isoDate, monthOf, spanHolds } from "../quantity/calendar.js";
import { growthRate, grownCover } from "../science/growth.js";
import { buildGroups, takenOn } from "./build-groups.js";
import { peopleByDay } from "./people-by-day.js";
import type { Season, SeasonCell } from "./season.js";

/** Lays the farm out by day: growth, open ground, people, and what each group eats, drops and needs. */
export function buildSeason(scenario: Scenario): Season {
  const firstDay = dayNumber(scenario.season.firstDay);
  const days = dayNumber(scenario.season.lastDay) - firstDay + 1;
  const dates = Array.from({ length: days }, (_, t) => isoDate(firstDay + t));
  const people = peopleByDay(scenario, dates);
  const groups = buildGroups(scenario, dates, people);
  return {
    scenario,
    days,
    firstDay,
    ceiling: scenario.ceilingCover,
    cells: scenario.cells.map((cell) => buildCell(scenario, cell, dates)),
    groups,
    dayOfYear: Int16Array.from(dates, dayOfYear),
    month: Uint8Array.from(dates, monthOf),
    year: Uint8Array.from(dates, (d) => Number(d.slice(0, 4)) - Number(dates[0].slice(0, 4))),
    minutesAtHome: people.minutes,
    chores: choresByDay(scenario, dates),
    walks: Array.from({ length: days }, (_, t) => t).filter((t) => t > 0 && t % 7 === 0),
    grazersTaken: Float64Array.from(dates, (date) => scenario.groups.reduce((sum, g) => sum + (isGrazer(g.kind) && spanHolds(g.out, date) ? takenOn(scenario, g, date) : 0), 0)),
    haulMinutes: scenario.groups.map((g) => Float64Array.from(scenario.fields, (f) => haulMinutes(scenario, f, g.name))),
  };
}

/** Day of the year, 1 for 1 January. */
export function dayOfYear(date: string): number {
  return dayNumber(date) - dayNumber(`${date.slice(0, 4)}-01-01`) + 1;
}

function haulMinutes(scenario: Scenario, { name, distanceM }: Field, group: string): number {
  const pace = figureOf(scenario, "people", "pace", name, group) ?? 50;
  return (figureOf(scenario, "people", "haul", name, group) ?? 0) + distanceM / (pace / 2);
}

function buildCell(scenario: Scenario, cell: Cell, dates: readonly string[]): SeasonCell {
  const inHand = Uint8Array.from(dates, (d) => (spanHolds(cell.ours, d) ? 1 : 0));
  const open = Uint8Array.from(dates, (d, t) => (inHand[t] && !cell.closed.some((span) => spanHolds(span, d)) ? 1 : 0));
  const grazed = cell.past.filter((use) => use.by !== "hay" && use.by !== "litter" && isGrazer(use.by)).map((use) => dayNumber(use.lastDay));
  return {
    name: cell.name,
    field: scenario.fields.findIndex((f) => f.name === cell.field),
    areaHa: cell.areaHa,
    ...grassOf(scenario, cell, dates),
    inHand,
    open,
    ownerCuts: ownerCuts(scenario, cell, dates),
    mow: cell.mow,
    lastGrazed: grazed.length ? Math.max(...grazed) - dayNumber(dates[0]) : null,
  };
}

/** What grows on a cell: cover on the first morning, growth of each day, and its sums. */
function grassOf(scenario: Scenario, cell: Cell, dates: readonly string[]): Pick<SeasonCell, "startCover" | "rates" | "growth"> {
  const growth = Float64Array.from(dates, (d) => cell.growthByMonth[monthOf(d)]);
  const rates = new Float64Array(dates.length + 1);
  dates.forEach((date, t) => {
    rates[t + 1] = rates[t] + (date < cell.coverDate ? 0 : growthRate(growth[t], scenario.ceilingCover));
  });
  return { startCover: coverOnFirstDay(scenario, cell, dates[0]), rates, growth };
}

/** A season as it is on a farm that differs from its own in growth and in figures of rules for the ground only. */
export function regrown(season: Season, scenario: Scenario): Season {
  const dates = Array.from({ length: season.days }, (_, t) => isoDate(season.firstDay + t));
  return { ...season, scenario, cells: season.cells.map((cell, c) => ({ ...cell, ...grassOf(scenario, scenario.cells[c], dates) })) };
}

/** Cover on the first morning, grown from the day it was measured; a later measure stands as it is. */
function coverOnFirstDay(scenario: Scenario, cell: Cell, firstDay: string): number {
  let rate = 0;
  for (let d = cell.coverDate; d < firstDay; d = addDays(d, 1)) rate += growthRate(cell.growthByMonth[monthOf(d)], scenario.ceilingCover);
  return grownCover(cell.coverKgPerHa, rate, scenario.ceilingCover);
}

function ownerCuts(scenario: Scenario, cell: Cell, dates: readonly string[]): { day: number; makesHay: boolean }[] {
  const closed = cell.mow ? cell.closed.filter((span) => span.reason === "hay").map((span) => ({ date: span.lastDay, makesHay: true })) : [];
  const held = scenario.holds.filter((h) => h.cell === cell.name && h.cut).map((h) => ({ date: h.days.lastDay, makesHay: h.cut === "hay" }));
  // Of two on one day the held one is made.
  const byDay = new Map([...closed, ...held].map((cut) => [dates.indexOf(cut.date), cut.makesHay]));
  return [...byDay].map(([day, makesHay]) => ({ day, makesHay })).filter((cut) => cut.day >= 0).sort((a, b) => a.day - b.day);
}

function choresByDay(scenario: Scenario, dates: readonly string[]): Float64Array {
  const [morning, dusk] = ["morning", "dusk"].map((key) => figureOf(scenario, "people", key, null, null) ?? 0);
  const each = (group: string): number => figureOf(scenario, "people", "each-group", null, group) ?? 0;
  return Float64Array.from(dates, (date) => {
    const here = scenario.groups.filter((g) => g.here.some((span) => spanHolds(span, date)));
    const rounds = here.filter((g) => !g.runsWith?.days.some((span) => spanHolds(span, date)));
    return (here.length ? morning : 0) + rounds.reduce((sum, g) => sum + each(g.name), 0) + (here.some((g) => isBird(g.kind)) ? dusk : 0);
  });
}
