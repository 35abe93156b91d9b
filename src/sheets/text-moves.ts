import { addDays } from "../quantity/calendar.js";
import { weekdayMonth } from "./day-words.js";
import type { Sheet } from "./made.js";
import { asOf } from "./next-free.js";
import { movesOf, type Move } from "./season-days.js";
import { wrapped } from "./text-wrap.js";

const DAYS_AHEAD = 14;

/** The moves and cuts of the next two weeks, a day a line. */
export function nextMoves(sheet: Sheet, width: number): string {
  const first = asOf(sheet);
  const last = addDays(first, DAYS_AHEAD - 1);
  const ahead = (day: string): boolean => first <= day && day <= last;
  const moves = movesOf(sheet.scenario, sheet.plan).filter((move) => ahead(move.day)).map((move) => ({ day: move.day, words: moveWords(move) }));
  const cuts = sheet.plan.cuts.filter((cut) => ahead(cut.day)).map((cut) => ({ day: cut.day, words: cut.cut === "hay" ? `cut ${cut.cell} for hay` : `top ${cut.cell}` }));
  const days = [...new Set([...moves, ...cuts].map((one) => one.day))].sort();
  const lines = days.map((day) => wrapped(`${weekdayMonth(day).padEnd(10)}  ${[...moves, ...cuts].filter((one) => one.day === day).map((one) => one.words).join("; ")}`, width, 12));
  return ["Next moves, 14 days:", ...(lines.length > 0 ? lines : ["none"])].join("\n");
}

function moveWords({ group, from, to }: Move): string {
  return from === null ? `${group} come to ${to}` : `${group} ${from} to ${to}`;
}
