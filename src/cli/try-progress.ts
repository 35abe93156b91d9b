import type { Progress } from "../decide/plan-season.js";
import { progressWords } from "./progress.js";
import { widthOf, type Screen } from "./screen.js";

const REDRAW_MS = 200;
const CLEAR_LINE = "\r\u001b[2K";
const UP = "\u001b[1A";

/** A line for each farm under way, redrawn in place; nothing at all where standard error is no terminal. */
export function progressLines(screen: Screen, currency: string, names: readonly string[], now: () => number = Date.now) {
  const seen: (Progress | null)[] = names.map(() => null);
  let drawn = -Infinity;
  let lines = 0;
  const clear = (): void => {
    if (lines > 0) screen.aside(`${CLEAR_LINE}${`${UP}${CLEAR_LINE}`.repeat(lines - 1)}`);
    lines = 0;
  };
  const draw = (): void => {
    if (!screen.live || now() - drawn < REDRAW_MS) return;
    drawn = now();
    clear();
    const width = (screen.columns ?? widthOf(screen)) - 1;
    const rows = names.map((name, i) => `${name}  ${seen[i] ? progressWords(seen[i], currency) : "waits"}`);
    screen.aside([...rows, "Ctrl-C keeps what is found."].map((row) => row.slice(0, width)).join("\n"));
    lines = rows.length + 1;
  };
  return {
    show(farm: number, progress: Progress): void {
      seen[farm] = progress;
      draw();
    },
    tick: draw,
    clear(): void {
      if (screen.live) clear();
    },
  };
}
