import { checkPlan } from "../check/check-plan.js";
import { weatherSummary } from "../decide/weather/weather-summary.js";
import { walkYears } from "../decide/weather/weather-years.js";
import { whatFlips } from "../decide/weather/what-flips.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { weatherHtml } from "../sheets/weather-html.js";
import { openFarm, openPlan } from "./open.js";
import { refuseWhatIsThere, writeOut } from "./out-folder.js";
import type { Outcome } from "./outcome.js";
import { widthOf, type Screen } from "./screen.js";
import { planningServices } from "./services.js";
import { stopOnInterrupt } from "./stop.js";
import { weatherAnswer, type WeatherSeen } from "./weather-answer.js";
import { weatherText } from "./weather-text.js";
import { countWords } from "./words.js";

export interface WeatherGiven {
  readonly farm: string;
  readonly plan: string;
  readonly changes: readonly string[];
  readonly years: number;
  readonly seed: number;
  readonly figures: boolean;
  readonly out: string | null;
  readonly replace: boolean;
}

const PICTURE = "weather.html";

/** `inbye weather FARM PLAN`: the plan walked through many made-up years, and what of it the figures decide. */
export async function weatherCommand(given: WeatherGiven, screen: Screen): Promise<Outcome> {
  const farm = openFarm(given.farm, given.changes);
  const scenario = farm.value;
  const { value: plan, notes } = openPlan(given.plan, scenario);
  if (given.out !== null) refuseWhatIsThere(given.out, [PICTURE], given.replace);
  const { lived, figures } = await walkWatched(scenario, plan, given, screen);
  const summary = weatherSummary(scenario, lived.years);
  const files = given.out === null ? [] : writeOut(given.out, [{ name: PICTURE, text: weatherHtml(scenario, summary) }], given.replace);
  const broken = checkPlan(scenario, plan).breaches.length;
  const seen: WeatherSeen = { scenario, given, lived, summary, figures, broken, files, notes: [...farm.notes, ...notes] };
  return { exit: broken > 0 ? 3 : 0, text: weatherText(seen, widthOf(screen), screen), answer: { shape: "weather-answer", value: weatherAnswer(seen) } };
}

/** Walks the years with progress on the terminal and Ctrl-C minded. */
async function walkWatched(scenario: Scenario, plan: Plan, { years, seed, figures }: WeatherGiven, screen: Screen): Promise<Pick<WeatherSeen, "lived" | "figures">> {
  const line = (text: string): void => (screen.live ? screen.aside(`\r\u001b[2K${text}`) : undefined);
  const { stop, release } = stopOnInterrupt(() => screen.aside("\nStopping with the years tried so far; Ctrl-C again quits.\n"));
  const { threads } = planningServices();
  try {
    const lived = await walkYears(scenario, plan, { years, seed }, threads, (done) => line(`${countWords(done, "year")} of ${years} tried  (Ctrl-C keeps them)`), stop);
    if (!figures || stop.asked) return { lived, figures: null };
    line("Planning again with each figure halved and doubled  (Ctrl-C leaves it out)");
    return { lived, figures: await whatFlips(scenario, plan, threads, { seed }, stop) };
  } finally {
    line("");
    release();
  }
}
