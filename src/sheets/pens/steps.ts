import type { PenInCell } from "../../decide/pens/pens-of-farm.js";
import { stepsIn, type PenStep } from "../../decide/pens/steps.js";
import type { Strip } from "../../farm/scenario.js";
import type { Scenario } from "../../farm/scenario.js";
import type { Words } from "../../words/words.js";
import { escaped } from "../grid/svg.js";
import { lengthWords } from "./pen-words.js";

/** The run as it is walked: lane by lane the peg at which each position begins, its days, and a box to tick. Empty without a plan. */
export function stepList(one: PenInCell, strip: Strip, units: Scenario["units"], words: Words): string {
  const steps = stepsIn(one, strip.days);
  if (steps.length === 0) return "";
  return `<h3>${escaped(words.say("pens.steps"))}</h3>
<p>${escaped(pegWords(one, strip, units, words))}</p>
<ol class="steps">
${steps.map((step, i) => row(step, steps[i - 1] ?? null, units, words)).join("\n")}
</ol>`;
}

/** "12 pegs a lane" would be wrong in ground of any shape: what is said is how far apart they stand. */
function pegWords({ layout }: PenInCell, strip: Strip, units: Scenario["units"], words: Words): string {
  const apart = lengthWords(layout.alongM * layout.each, units, words);
  const days = words.say("pens.days-each", { days: strip.days });
  return layout.asIf ? words.say("pens.no-pegs", { days }) : words.say("pens.pegs", { apart, days });
}

function row({ number, firstDay, lastDay, lane }: PenStep, before: PenStep | null, units: Scenario["units"], words: Words): string {
  const day = words.weekdayDay(firstDay);
  const until = lastDay === firstDay ? day : words.say("pens.from-to", { from: day, to: words.dayMonth(lastDay) });
  const at = lane === null ? "" : `<span class="peg">${escaped(words.say("pens.peg", { far: lengthWords(lane.alongM, units, words) }))}</span>`;
  const fresh = lane !== null && lane.number !== before?.lane?.number;
  const head = fresh ? `<li class="lane-head">${escaped(words.say("pens.lane", { number: lane.number }))}</li>\n` : "";
  return `${head}<li><span class="tick"></span><b>${number}</b>${at}<span>${escaped(until)}</span></li>`;
}
