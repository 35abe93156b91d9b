import { isGrazer, type Scenario } from "../farm/scenario.js";
import { addDays } from "../quantity/calendar.js";
import { isSetAhead } from "./changes-of-place.js";
import type { Job, JobKind } from "./job.js";

const INTO_A_CELL: readonly JobKind[] = ["arrive", "part", "move"];

/** What moves ask for before and after them: ground set the evening before, birds shut in for a tow, fence kit fetched afterwards. */
export function setAhead(scenario: Scenario, moves: readonly Job[]): readonly Job[] {
  return moves.flatMap((move) => {
    const group = scenario.groups.find((one) => one.name === move.group)!;
    const into = INTO_A_CELL.includes(move.kind) && move.to !== null && !move.to.yard && move.minutes > 0;
    const evening = { ...move, day: addDays(move.day, -1), part: "evening" as const, positions: null, for: move.day, people: 1, tow: false };
    const left = move.kind === "move" && move.from !== null && !move.from.yard && isGrazer(group.kind);
    return [
      ...(into && isSetAhead(scenario, group.name) ? [{ ...evening, ...named("set", group.name, evening.day), from: null, minutes: group.setMinutes }] : []),
      ...(move.tow && move.from !== null ? [{ ...evening, ...named("shut-in", group.name, evening.day), part: "dusk" as const, to: move.from, minutes: 0 }] : []),
      ...(left ? [{ ...move, ...named("collect", group.name, move.day), to: move.from, positions: null, company: [], minutes: 0, people: 1, tow: false }] : []),
    ];
  });
}

function named(kind: JobKind, group: string, day: string): { readonly kind: JobKind; readonly id: string } {
  return { kind, id: `${kind}:${group}:${day}` };
}
