import type { Draft } from "../draft.js";

/** First day of the stay that holds day t. */
export function stayStart(draft: Draft, g: number, t: number): number {
  const own = draft.place[g];
  const { arrives } = draft.season.groups[g];
  while (t > 0 && own[t - 1] === own[t] && !arrives[t]) t--;
  return t;
}

/** Last day of the stay that holds day t. */
export function stayEnd(draft: Draft, g: number, t: number): number {
  const own = draft.place[g];
  const { arrives } = draft.season.groups[g];
  while (t + 1 < draft.season.days && own[t + 1] === own[t] && !arrives[t + 1]) t++;
  return t;
}
