import { priceWords } from "../sheets/figure-words.js";
import { widthOf, type Screen } from "./screen.js";
import { shownMoney } from "./words.js";

/** What the planning says about itself while it works: no cost yet is Infinity, no bound yet 0. */
export interface ProgressSeen {
  readonly seconds: number;
  readonly cost: number;
  readonly bound: number;
  /** Changed farms planned so far, when there is no plan and ways out are looked for. */
  readonly looks?: number;
}

const REDRAW_MS = 200;
const CLEAR_LINE = "\r\u001b[2K";
const HINT = "  (Ctrl-C keeps it)";

/** One line on a terminal, redrawn; nothing at all where standard error is no terminal. */
export function progressLine(screen: Screen, currency: string, now: () => number = Date.now) {
  let drawn = -Infinity;
  let last: { readonly seen: ProgressSeen; readonly at: number } | null = null;
  const draw = (seen: ProgressSeen) => {
    if (!screen.live || now() - drawn < REDRAW_MS) return;
    drawn = now();
    screen.aside(`${CLEAR_LINE}${fitted(progressWords(seen, currency), Number.isFinite(seen.cost) ? HINT : "", (screen.columns ?? widthOf(screen)) - 1)}`);
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

/** "12 s  best plan £1,690  could still save at most £430": what is not known yet is not said. */
export function progressWords({ seconds, cost, bound, looks }: ProgressSeen, currency: string): string {
  const time = `${Math.round(seconds)} s`;
  if (looks !== undefined) return `${time}  no plan keeps every rule; looking for ways out, ${looks} tried`;
  if (!Number.isFinite(cost)) return `${time}  no plan yet`;
  const best = `${time}  best plan ${priceWords(cost, currency)}`;
  return bound > 0 ? `${best}  could still save at most ${priceWords(Math.max(0, shownMoney(cost) - shownMoney(bound)), currency)}` : best;
}

/** With the hint where there is room; cut to the terminal's width, or the line would wrap and not be redrawn. */
function fitted(text: string, hint: string, columns: number): string {
  if (text.length + hint.length <= columns) return text + hint;
  return text.length <= columns ? text : `${text.slice(0, Math.max(0, columns - 1))}…`;
}
