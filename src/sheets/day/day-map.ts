import { spanHolds } from "../../quantity/calendar.js";
import { linesOf } from "./heights.js";
import { groundPlan } from "../map/ground-plan.js";
import type { PlanRoom } from "../map/planned-ground.js";
import { isReadable, mapDrawing, type OnMap } from "../map/map-drawing.js";
import type { Mark } from "../map/marks-in-cell.js";
import { shutGround } from "../shut-ground.js";
import { fieldOf, groupOf, type Day } from "./context.js";
import { standingBefore } from "./heads.js";
import type { Bits, Task } from "./model.js";

/** A drawing of the farm with the tasks' numbers on it, and its size with the words below, mm. */
export interface DayMap {
  readonly svg: string;
  readonly caption: Bits;
  readonly w: number;
  readonly h: number;
  /** Whether all names and numbers on it have room. */
  readonly readable: boolean;
}

/** Rooms that a map is drawn for, mm: large where the day leaves so much paper. */
const MAP_ROOMS = [{ w: 88, h: 70 }, { w: 76, h: 54 }, { w: 66, h: 44 }, { w: 62, h: 36 }] as const;

/** The maps of a day, the largest first: those that can be read, or the largest if none can. */
export function dayMaps(day: Day, tasks: readonly Task[], onFoot: Bits): readonly DayMap[] {
  const maps = MAP_ROOMS.map((room) => dayMap(day, tasks, onFoot, room));
  const readable = maps.filter((map) => map.readable);
  return readable.length > 0 ? readable : maps.slice(0, 1);
}

const CAPTION_PT = 7.5;
const CAPTION_MM = 3.3;

/** The ground of a day: who stands where before it starts, where each task begins and ends, and what is left alone. */
function dayMap(day: Day, tasks: readonly Task[], onFoot: Bits, room: PlanRoom): DayMap {
  const { scenario, words, sheet } = day;
  const plan = groundPlan(scenario, room);
  const places = [null, ...scenario.cells.map(({ name }) => name)];
  const shut = scenario.cells.filter((cell) => shutGround(sheet, cell, words).some((span) => span.openShare === 0 && spanHolds(span, day.day))).map(({ name }) => name);
  const caption = [...words.pieces("day.map.caption", { shape: plan.mmPerM === null ? "no" : "yes" }), { text: " ", strong: false }, ...onFoot];
  const told: OnMap = {
    title: words.say("day.map.title"), yard: words.say("day.map.yard"), shut,
    marks: new Map(places.map((place) => [place, [...lettersAt(day, place), ...numbersAt(tasks, place)]])),
    way: wayOf(tasks), fieldOf: (cell) => fieldOf(day, cell)!.name,
  };
  return { svg: mapDrawing(plan, told, "day-map"), readable: isReadable(plan, told), caption, w: room.w, h: plan.h + 1 + linesOf(caption, room.w, CAPTION_PT) * CAPTION_MM };
}

function lettersAt(day: Day, place: string | null): readonly Mark[] {
  const here = standingBefore(day).filter(({ place: { name, yard } }) => (place === null ? yard : !yard && name === place));
  return here.map(({ group }) => ({ kind: "letter", words: groupOf(day, group).letter }));
}

/** Where a task begins stands its number; where it ends elsewhere, the number after an arrow. */
function numbersAt(tasks: readonly Task[], place: string | null): readonly Mark[] {
  const is = (one: Task["from"]): boolean => one !== null && (place === null ? one.yard : !one.yard && one.name === place);
  return tasks.flatMap(({ number, from, to }): readonly Mark[] => {
    if (is(from ?? to)) return [{ kind: "number", words: String(number) }];
    return from !== null && is(to) ? [{ kind: "number", words: `→${number}` }] : [];
  });
}

/** Cells in walking order, the yard between morning and evening. */
function wayOf(tasks: readonly Task[]): readonly (string | null)[] {
  const over = (["morning", "evening", "dusk"] as const).flatMap((part) =>
    [null, ...tasks.filter((task) => task.part === part).flatMap(({ from, to }) => [from ?? to, to]).flatMap((place) => (place ? [place.yard ? null : place.name] : []))]);
  return [...over, null].filter((place, i, all) => i === 0 || place !== all[i - 1]);
}
