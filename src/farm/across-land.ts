import { dayNumber, spanHolds } from "../quantity/calendar.js";
import { say, type Desk } from "./desk.js";
import { daysOf, overlap } from "./read-days.js";
import { figureOf, isBird, isGrazer, type Cell, type Group, type Hold, type Scenario } from "./scenario.js";
import { child, entriesOf, type Entry, type MapNode } from "./tree.js";

/** Faults that show only when several parts of the farm are laid side by side: ground and holds. */
export function checkLand(desk: Desk, root: MapNode, scenario: Scenario): void {
  checkCellNames(desk, root);
  const fields = child(root, "fields");
  // Strips that cannot be cut were said already.
  const cut = entriesOf(fields).some(({ value }) => child(value, "strips") !== undefined);
  if (fields && !cut && cellEntries(root).length === 0) say(desk, fields, { code: "no-cell", found: "there is no cell", allowed: "a farm has one cell at least", next: "write the cells of a field, or leave one of them" });
  for (const group of scenario.groups) checkCells(desk, root, scenario, group);
  for (const hold of scenario.holds) checkHold(desk, root, scenario, hold);
}

/** Every cell's entry, in the order written. */
function cellEntries(root: MapNode): readonly Entry[] {
  return entriesOf(child(root, "fields")).flatMap((field) => entriesOf(child(field.value, "cells")));
}

const PLACE_WORDS = ["yard", "away", "nobody", "cut"];

/** Cell names are one to a farm, hold a digit, and none of the signs that a grid uses. */
function checkCellNames(desk: Desk, root: MapNode): void {
  const seen = new Map<string, number>();
  for (const { key, at } of cellEntries(root)) {
    const line = seen.get(key);
    if (line !== undefined) say(desk, at, { code: "name-twice", found: `${key} stands here and in line ${line}`, allowed: "one gate, one name", next: "give one of them another name" });
    else if (!/\d/.test(key) || /[>,;"\s]/.test(key) || PLACE_WORDS.includes(key)) {
      say(desk, at, { code: "name-form", found: `${key} cannot be a cell's name`, allowed: "a cell's name has a digit in it and no blanks or commas, such as H1", next: `${key.replaceAll(/[>,;"\s]/g, "") || "H"}1?` });
    }
    seen.set(key, line ?? at.line);
  }
}

/** A group that is out on ground needs one cell at least that it may stand in on some day. */
function checkCells(desk: Desk, root: MapNode, scenario: Scenario, group: Group): void {
  if (scenario.cells.length === 0 || group.here.length === 0 || Number.isNaN(group.head)) return;
  const reasons = scenario.cells.map((cell) => [cell.name, whyNot(scenario, group, cell)] as const);
  if (reasons.some(([, why]) => why === null)) return;
  const gathered = [...new Set(reasons.map(([, why]) => why!))].map((why) => `${reasons.filter((r) => r[1] === why).map((r) => r[0]).join(", ")} ${why}`);
  const entry = entriesOf(child(root, "groups")).find((e) => e.key === group.name)!;
  say(desk, entry.at, { code: "no-cell", found: `${group.name}: no cell is left (${gathered.join("; ")})`, allowed: "a group needs one cell at least", next: "open one to it, or keep it in the yard: turnout after its last day" });
}

/** Why a group may never enter a cell, or null when it may. */
function whyNot(scenario: Scenario, group: Group, cell: Cell): string | null {
  if (!group.mayEnter.includes(cell.name)) return "not for it";
  if (cell.water === "none") return "without water";
  if (group.strip && group.strip.areaHa > cell.areaHa + 1e-9) return "smaller than one position";
  const days = group.here.flatMap(daysOf);
  if (!days.some((day) => isOpen(cell, day))) return "closed all its days";
  return tooSoon(scenario, group, cell, days);
}

/** In hand, and closed for no reason. */
export function isOpen(cell: Cell, day: string): boolean {
  return spanHolds(cell.ours, day) && !cell.closed.some((closed) => spanHolds(closed, day));
}

/** Young pigs on last year's pig ground, and turkeys after chickens. */
function tooSoon(scenario: Scenario, group: Group, cell: Cell, days: readonly string[]): string | null {
  const figure = (key: string): number => figureOf(scenario, "clean-ground", key, cell.field, group.name) ?? 0;
  if (scenario.rules.farm["clean-ground"].use === "off") return null;
  if (group.kind === "pigs" && ["weaner", "grower"].includes(group.animalClass) && figure("young-pigs-next-year") === 1) {
    const pigs = cell.past.find((use) => use.by === "pigs" && use.share >= 0.5 && days.every((day) => Number(day.slice(0, 4)) === Number(use.lastDay.slice(0, 4)) + 1));
    if (pigs) return `had pigs to ${pigs.lastDay}`;
  }
  if (group.kind !== "turkeys") return null;
  const birds = cell.past.find((use) => (use.by === "layers" || use.by === "broilers") && days.every((day) => dayNumber(day) - dayNumber(use.lastDay) - 1 < figure(`turkeys after ${use.by}`)));
  return birds ? `had ${birds.by} to ${birds.lastDay}` : null;
}

function checkHold(desk: Desk, root: MapNode, scenario: Scenario, hold: Hold): void {
  const entry = entriesOf(child(root, "holds")).find((e) => e.key === hold.name)!;
  const at = child(entry.value, "days") ?? entry.at;
  const { firstDay, lastDay } = hold.days;
  const days = firstDay === lastDay ? firstDay : `${firstDay} to ${lastDay}`;
  const clash = (found: string, allowed: string, next = "move one of them"): void => say(desk, at, { code: "hold-closed", found: `hold ${hold.name}: ${found}`, allowed, next });
  if (lastDay < scenario.season.firstDay || firstDay > scenario.season.lastDay) {
    clash(`${days} lies outside the season`, `the season runs from ${scenario.season.firstDay} to ${scenario.season.lastDay}`, "change the day, or take the hold out");
    return;
  }
  const group = scenario.groups.find((g) => g.name === hold.group);
  const cell = scenario.cells.find((c) => c.name === hold.cell);
  if (group) checkHeldGroup(scenario, hold, group, clash);
  if (cell) checkHeldCell(hold, cell, group, clash);
}

type Clash = (found: string, allowed: string, next?: string) => void;

function checkHeldGroup(scenario: Scenario, hold: Hold, group: Group, clash: Clash): void {
  const inside = daysOf(hold.days).every((day) => group.here.some((span) => spanHolds(span, day)));
  if (!inside) clash(`${group.name} is not here then`, `it is here ${group.here.map((s) => `${s.firstDay} to ${s.lastDay}`).join(", ")}`);
  const other = scenario.holds.find((h) => h.group === hold.group && h.name < hold.name && overlap(h.days, hold.days) && (h.cell !== hold.cell || h.yard !== hold.yard));
  if (other) clash(`${group.name} is held elsewhere by ${other.name}`, "a group stands in one place a day");
}

function checkHeldCell(hold: Hold, cell: Cell, group: Group | undefined, clash: Clash): void {
  const shut = cell.closed.find((closed) => overlap(closed, hold.days));
  // A closure for hay is there to be cut.
  if (shut && (group || shut.reason !== "hay")) clash(`${cell.name} is closed for ${shut.reason} to ${shut.lastDay}`, "a closed cell stays empty");
  if (hold.days.firstDay < cell.ours.firstDay || hold.days.lastDay > cell.ours.lastDay) clash(`${cell.name} is not ours then`, `it is ours ${cell.ours.firstDay} to ${cell.ours.lastDay}`);
  if (hold.cut && !cell.mow) clash(`${cell.name} is not mown`, "it says mow: no");
  if (!group) return;
  if (!group.mayEnter.includes(cell.name)) clash(`${cell.name} is not for ${group.name}`, "a group stands only where it may");
  if (hold.days.firstDay < group.out.firstDay || hold.days.lastDay > group.out.lastDay) clash(`${group.name} is not out then`, `it is out ${group.out.firstDay} to ${group.out.lastDay}`);
}

/** Cells too small to feed a group for one whole day, even when full. */
export function tooSmall(scenario: Scenario, group: Group): readonly string[] {
  if (!isGrazer(group.kind) || isBird(group.kind)) return [];
  const eaten = "kgDmPerHeadDay" in group.intake ? group.head * group.intake.kgDmPerHeadDay : group.head * group.weightKg * group.intake.shareOfWeight;
  const taken = eaten * (1 + scenario.troddenShare);
  return group.mayEnter.filter((name) => {
    const cell = scenario.cells.find((c) => c.name === name)!;
    const residual = figureOf(scenario, "residual-cover", "grazers", cell.field, group.name) ?? 0;
    return (scenario.ceilingCover - residual) * cell.areaHa < taken;
  });
}
