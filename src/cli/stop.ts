import { writeSync } from "node:fs";

/** One press reaches a program twice where the program that started it passes it on as well. */
const ONE_PRESS_MS = 700;

/** Exit codes: nothing was planned; ended by the owner while a plan was at hand. */
const NO_PLAN = 3;
const QUIT = 130;

const STOPPED = "Stopped before the first plan; nothing was written.";

/** What Ctrl-C does now. One listener for good: a press that waits for its turn would be lost with a listener taken off. */
let onPress: (() => void) | null = null;

function mindPresses(handle: () => void): void {
  if (onPress === null) process.on("SIGINT", () => onPress?.());
  onPress = handle;
}

/** From the first moment on, before the rest of the program is even loaded, Ctrl-C says what came of it. */
export function endBeforePlan(json: boolean): void {
  mindPresses(() => {
    if (json) writeSync(1, `${JSON.stringify(stoppedAnswer())}\n`);
    else writeSync(2, `\n${STOPPED}\n`);
    process.exit(NO_PLAN);
  });
}

/** In the shape of `schemas/findings-answer`. */
export function stoppedAnswer() {
  const finding = { file: "command line", line: 1, column: 1, code: "stopped", found: "stopped before the first plan", allowed: "", next: "nothing was written; plan again" };
  return { findings: [finding] };
}

/** Ctrl-C while planning: the first time it asks the planning to stop with what it has, the second time it quits. */
export function stopOnInterrupt(onAsked: () => void, now: () => number = Date.now): { readonly stop: { readonly asked: boolean }; readonly release: () => void } {
  const stop = { asked: false };
  let pressed = -Infinity;
  mindPresses(() => {
    const again = now() - pressed >= ONE_PRESS_MS;
    if (stop.asked && again) process.exit(QUIT);
    if (stop.asked) return;
    stop.asked = true;
    pressed = now();
    onAsked();
  });
  // what was planned is written and printed whole
  return { stop, release: () => mindPresses(() => undefined) };
}
