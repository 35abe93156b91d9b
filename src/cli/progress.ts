import { moneyWords } from "../sheets/figure-words.js";
import type { Screen } from "./screen.js";

/** What the planning says about itself while it works. */
export interface ProgressSeen {
  readonly seconds: number;
  readonly cost: number;
  readonly bound: number;
}

const REDRAW_MS = 200;
const CLEAR_LINE = "\r\u001b[2K";

/** One line on a terminal, redrawn; nothing at all where standard error is no terminal. */
export function progressLine(screen: Screen, currency: string, now: () => number = Date.now) {
  let drawn = -Infinity;
  let last: { readonly seen: ProgressSeen; readonly at: number } | null = null;
  const draw = (seen: ProgressSeen) => {
    if (!screen.live || now() - drawn < REDRAW_MS) return;
    drawn = now();
    screen.aside(`${CLEAR_LINE}${fitted(progressWords(seen, currency), screen.columns ?? 80)}`);
  };
  return {
    show(seen: ProgressSeen): void {
      last = { seen, at: now() };
      draw(seen);
    },
    /** Draws again with the seconds gone by, so that a long search does not look dead. */
    tick(): void {
      if (last) draw({ ...last.seen, seconds: last.seen.seconds + (now() - last.at) / 1000 });
    },
    clear(): void {
      if (screen.live) screen.aside(CLEAR_LINE);
    },
  };
}

/** "Best plan so far £812, none can cost less than £640, could still save at most £172, 12 s (Ctrl-C keeps it)". */
export function progressWords(seen: ProgressSeen, currency: string): string {
  const bound = Math.max(0, seen.bound);
  return [
    `Best plan so far ${moneyWords(seen.cost, currency)}`,
    `none can cost less than ${moneyWords(bound, currency)}`,
    `could still save at most ${moneyWords(Math.max(0, seen.cost - bound), currency)}`,
    `${Math.round(seen.seconds)} s (Ctrl-C keeps it)`,
  ].join(", ");
}

/** Cut to the terminal's width, or the line would wrap and not be redrawn. */
function fitted(text: string, columns: number): string {
  return text.length < columns ? text : `${text.slice(0, Math.max(0, columns - 2))}…`;
}
