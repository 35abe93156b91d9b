import { addDays } from "../quantity/calendar.js";
import type { Words } from "../words/words.js";
import type { Sheet } from "./made.js";
import { asOf } from "./next-free.js";
import { movesOf, type Move } from "./season-days.js";
import { wrapped } from "./text-wrap.js";

const DAYS_AHEAD = 14;

/** The moves and cuts of the next two weeks, a day a line. */
export function nextMoves(sheet: Sheet, width: number, words: Words): string {
  const first = asOf(sheet);
  const last = addDays(first, DAYS_AHEAD - 1);
  const ahead = (day: string): boolean => first <= day && day <= last;
  const moves = movesOf(sheet.scenario, sheet.plan).filter((move) => ahead(move.day)).map((move) => ({ day: move.day, told: moveWords(move, words) }));
  const cuts = sheet.plan.cuts.filter((cut) => ahead(cut.day)).map((cut) => ({ day: cut.day, told: cut.cut === "hay" ? words.say("move.cut", { cell: cut.cell }) : words.say("move.top", { cell: cut.cell }) }));
  const days = [...new Set([...moves, ...cuts].map((one) => one.day))].sort();
  const lines = days.map((day) => wrapped(`${words.weekdayDay(day).padEnd(10)}  ${[...moves, ...cuts].filter((one) => one.day === day).map((one) => one.told).join("; ")}`, width, 12));
  return [words.say("move.head", { days: DAYS_AHEAD }), ...(lines.length > 0 ? lines : [words.say("move.none")])].join("\n");
}

function moveWords({ group, from, to }: Move, words: Words): string {
  return from === null ? words.say("move.come", { group, to }) : words.say("move.move", { group, from, to });
}
