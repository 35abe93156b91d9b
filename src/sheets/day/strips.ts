import { layoutOf } from "../../decide/pens/layout.js";
import { positionIn } from "../../decide/pens/steps.js";
import type { Place } from "../../work/job.js";
import { amountWords } from "./amounts.js";
import { cellOf, groupOf, type Day } from "./context.js";
import { step } from "./draft.js";
import type { Step } from "./model.js";

/** A group's strip by lane and peg where the cell's shape is known, else by the strip beside it. */
export function stripWords(day: Day, name: string, { name: cell }: Place, number: number): string {
  const { words } = day;
  const at = laneOf(day, name, cell, number);
  if (at) return words.say("day.strip.peg", { number: at.position, lane: at.number, far: amountWords(day, "length", at.alongM, 1) });
  return number > 1 ? words.say("day.strip.beside", { number, other: number - 1 }) : words.say("day.strip.first", { number });
}

/** A line to write on for a first strip that only its owner knows. */
export function stripLies(day: Day, name: string, { name: cell, yard }: Place, number: number): Step | null {
  return yard || number > 1 || laneOf(day, name, cell, number) ? null : step(null, day.words.pieces("day.strip.lies"));
}

function laneOf(day: Day, name: string, cell: string, number: number): ReturnType<typeof positionIn> {
  const [{ strip }, ground] = [groupOf(day, name), cellOf(day, cell)];
  return strip && ground?.boundary ? positionIn(layoutOf(ground, strip), number) : null;
}
