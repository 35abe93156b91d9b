import { feedOf } from "../decide/feed.js";
import { feedPage } from "../sheets/feed/feed-page.js";
import { highsSolver } from "../solvers/highs.js";
import { feedAnswer } from "./feed-answer.js";
import { feedText } from "./feed-text.js";
import { openFarm } from "./open.js";
import type { PlanOptions } from "./options.js";
import { refuseWhatIsThere, writeOut } from "./out-folder.js";
import type { Outcome } from "./outcome.js";
import type { Screen } from "./screen.js";

export interface FeedGiven extends Pick<PlanOptions, "out" | "changes"> {
  readonly farm: string;
  readonly replace: boolean;
}

const PICTURE = "feed-budget.html";

/** `inbye feed FARM`: grass against mouths by week; pinch weeks, what the land carries, cells to cut, what one more of each is worth. */
export async function feedCommand({ farm, out, replace, changes: files }: FeedGiven, screen: Screen): Promise<Outcome> {
  const { value: scenario, notes, changes } = openFarm(farm, files);
  if (out !== null) refuseWhatIsThere(out, [PICTURE], replace);
  const feed = await feedOf(scenario, highsSolver());
  const written = out === null ? [] : writeOut(out, [{ name: PICTURE, text: feedPage(scenario, feed) }], replace);
  const seen = { scenario, feed, changes, files: written, notes };
  return { exit: 0, text: feedText(seen, screen), answer: { shape: "feed-answer", value: feedAnswer(seen) } };
}
