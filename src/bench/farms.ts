import { readdirSync } from "node:fs";
import { openFarm } from "../cli/open.js";
import type { Scenario } from "../farm/scenario.js";
import { daysBetween } from "../quantity/calendar.js";
import { STUDY_SIZES, studyFarm, type StudySize } from "./study-farms.js";

const SCENARIOS = new URL("../../scenarios/", import.meta.url);

/** S, cut to days so few that every solver ends: what the others are held against. */
const TINY: StudySize = { name: "T", cells: 8, groups: 2, days: 5 };

const SIZES = [TINY, ...STUDY_SIZES];

/** What `--farms` may name. */
export const FARM_SETS: readonly string[] = [...SIZES.map((size) => size.name), "scenarios"];

/** A study farm of any size: cells/groups/days. */
export const SIZE = /^(\d+)\/(\d+)\/(\d+)$/;

/** Measured when none are named: all but the huge one. */
export const USUAL_SETS: readonly string[] = FARM_SETS.filter((name) => name !== "XL");

/** Farms of the sets named, by the names that `farmOf` knows. */
export function farmsIn(sets: readonly string[]): string[] {
  return sets.flatMap((name) => (name === "scenarios" ? readdirSync(SCENARIOS).filter((file) => file.endsWith(".yaml")).map((file) => file.replace(/\.yaml$/, "")).sort() : [name]));
}

/** A study farm by its letter, a scenario by its file's name, or any size as `SIZE` writes it. */
export function farmOf(name: string): Scenario {
  const own = SIZE.exec(name);
  const size = own ? { name, cells: Number(own[1]), groups: Number(own[2]), days: Number(own[3]) } : SIZES.find((study) => study.name === name);
  return size ? studyFarm(size) : openFarm(new URL(`${name}.yaml`, SCENARIOS).pathname).value;
}

/** "16 cells, 4 groups, 205 days". */
export function sizeWords({ cells, groups, season }: Scenario): string {
  const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? "" : "s"}`;
  return [counted(cells.length, "cell"), counted(groups.length, "group"), counted(daysBetween(season.firstDay, season.lastDay) + 1, "day")].join(", ");
}
