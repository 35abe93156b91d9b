import type { Scenario } from "../farm/scenario.js";
import type { GroundNews, Job } from "../work/job.js";
import type { Words } from "../words/words.js";

interface Named {
  readonly group: string;
  readonly from: string;
  readonly to: string;
}

const TELL: Readonly<Record<Job["kind"], (words: Words, named: Named, job: Job) => string>> = {
  arrive: (words, { group, to }) => words.say("job.arrive", { group, to }),
  leave: (words, { group }) => words.say("job.leave", { group }),
  join: (words, { group, to }) => words.say("job.join", { group, to }),
  part: (words, { group, to }) => words.say("job.part", { group, to }),
  move: (words, { group, from, to }) => words.say("job.move", { group, from, to }),
  step: (words, { group }) => words.say("job.step", { group }),
  strip: (words, { group }, { positions }) => words.say("job.strip", { group, number: positions?.first ?? 0 }),
  set: (words, { to }) => words.say("job.set", { to }),
  collect: (words, { from }) => words.say("job.collect", { from }),
  "shut-in": (words, { group }) => words.say("job.shut-in", { group }),
  look: (words, { group }) => words.say("job.look", { group }),
  dusk: (words, { group }) => words.say("job.dusk", { group }),
  walk: (words) => words.say("job.walk"),
  cut: (words, { to }, { cut }) => (cut === "hay" ? words.say("job.mow", { to }) : words.say("job.top", { to })),
};

/** A job in two or three words: "Set K2", "Layers shut in", "Pigs: strip 6". */
export function jobWords(job: Job, words: Words): string {
  return TELL[job.kind](words, { group: job.group ?? "", from: job.from?.name ?? "", to: job.to?.name ?? "" }, job);
}

/** "K2 opens (nesting over)", "F3 shut: hay". */
export function groundWords({ cell, news, reason }: GroundNews, words: Words): string {
  const why = reason === "ours" ? words.say("job.rented") : reason;
  return news === "opens" ? words.say("job.opens", { cell, why }) : words.say("job.shuts", { cell, why });
}

/** Pens that step every day are told once, not day by day. */
export function isDaily(job: Job, { groups }: Scenario): boolean {
  return job.kind === "step" && groups.find((group) => group.name === job.group)?.strip?.days === 1;
}
