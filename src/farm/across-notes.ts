import { daysBetween, monthOf, spanHolds, type IsoDate } from "../quantity/calendar.js";
import { intakeKgDmPerDay, liveWeightKg } from "../science/intake.js";
import { isOpen } from "./across-land.js";
import { note, type Desk } from "./desk.js";
import { daysOf } from "./read-days.js";
import { isGrazer, type Group, type Scenario } from "./scenario.js";
import { child, entriesOf, type MapNode, type Place } from "./tree.js";
import { youngOn } from "./young.js";

/** What a farm may be, and an owner may yet not have meant. */
export function noteFarm(desk: Desk, root: MapNode, scenario: Scenario): void {
  noteClosed(desk, root, scenario);
  noteStock(desk, root, scenario);
  noteYards(desk, root, scenario);
  for (const group of scenario.groups) noteStayLimit(desk, root, group);
}

/** Cells that nobody may enter on any day. */
function noteClosed(desk: Desk, root: MapNode, scenario: Scenario): void {
  const days = daysOf(scenario.season);
  for (const field of scenario.fields) {
    const shut = scenario.cells.filter((cell) => cell.field === field.name && !days.some((day) => isOpen(cell, day))).map((cell) => cell.name);
    if (shut.length === 0) continue;
    const entry = entriesOf(child(child(child(root, "fields"), field.name), "cells")).find(({ key }) => shut.includes(key))!;
    note(desk, entry.at, { code: "closed-all-season", found: `${shut.join(", ")} ${shut.length > 1 ? "are" : "is"} closed or not in hand all season`, allowed: "no group can stand there", next: "nothing to do if that is meant" });
  }
}

/** Times the land's growth beyond which a slipped figure is likelier than a farm that feeds so much hay. */
const MOST_TIMES = 1.5;

function noteStock(desk: Desk, root: MapNode, scenario: Scenario): void {
  const days = daysOf(scenario.season);
  const grown = scenario.cells.reduce((sum, cell) => sum + cell.areaHa * days.reduce((kg, day) => kg + (spanHolds(cell.ours, day) ? cell.growthByMonth[monthOf(day)]! : 0), 0), 0);
  const eaten = scenario.groups.filter((group) => isGrazer(group.kind)).reduce((sum, group) => sum + demandKg(group), 0);
  if (!(eaten > MOST_TIMES * grown)) return;
  const tonnes = (kg: number): string => `${Number((kg / 1000).toPrecision(kg >= 100_000 ? 3 : 2))} t`;
  const at: Place = entriesOf(root).find((entry) => entry.key === "groups")?.at ?? root;
  note(desk, at, { code: "overstocked", found: `the grazers want ${tonnes(eaten)} of dry matter in the season, the land grows ${tonnes(grown)} in a usual year`, allowed: "what the land does not grow is fed as hay in the yard", next: "look at head, weight and areas" });
}

/** Dry matter that a group wants on its days out in the season, kg. */
function demandKg(group: Group): number {
  return group.here.reduce((sum, span) => sum + daysOf(span).filter((day) => spanHolds(group.out, day)).reduce((kg, day) => kg + intakeOn(group, day, span.firstDay), 0), 0);
}

function intakeOn(group: Group, day: IsoDate, firstDay: IsoDate): number {
  if ("kgDmPerHeadDay" in group.intake) return group.head * group.intake.kgDmPerHeadDay;
  const { shareOfWeight, youngShareOfWeight } = group.intake;
  const one = (weightKg: number, gain: number, share: number): number => intakeKgDmPerDay(liveWeightKg(weightKg, gain, daysBetween(firstDay, day)), share);
  const young = youngOn(group, day);
  return group.head * one(group.weightKg, group.gainKgPerDay, shareOfWeight) + (young ? young.head * one(young.weightKg, young.gainKgPerDay, youngShareOfWeight) : 0);
}

/** Yards with less room than the groups that stand in them when no cell suits. */
function noteYards(desk: Desk, root: MapNode, scenario: Scenario): void {
  for (const yard of scenario.yards) {
    if (yard.room === null) continue;
    const users = scenario.groups.filter((group) => group.yard === yard.name);
    const head = (day: IsoDate): number => users.reduce((sum, group) => sum + (group.here.some((span) => spanHolds(span, day)) ? group.head : 0), 0);
    const most = Math.max(0, ...daysOf(scenario.season).map(head));
    if (most <= yard.room) continue;
    const node = child(child(child(root, "yards"), yard.name), "room") ?? root;
    note(desk, node, { code: "yard-small", found: `${yard.name} has room for ${yard.room} head, and up to ${most} have it as their yard (${users.map((group) => group.name).join(", ")})`, allowed: "a group without a cell stands in its yard", next: `write room: ${most}, or give one of them another yard` });
  }
}

/** Groups that take ground by strips have no grazing stays. */
function noteStayLimit(desk: Desk, root: MapNode, group: Group): void {
  const node = child(child(child(root, "groups"), group.name), "stay-limit");
  if (node === undefined || group.strip === null) return;
  const [key, where] = group.strip.pen === null ? ["strip-days", "strip-days are the days on one strip"] : ["step", `step of ${group.strip.pen} is the days on one position`];
  note(desk, node, { code: "stay-limit-unused", found: `${group.name}: stay-limit is for grazing stays, and ${group.name} take ground strip by strip`, allowed: where, next: `write ${key} if that is meant, and take stay-limit out` });
}
