import { isBird } from "../../farm/scenario.js";
import type { Job } from "../../work/job.js";
import { countSteps } from "./animals.js";
import { groupOf, jobOf, standingOf, type Day } from "./context.js";
import { line, minutesOf, step, type Draft } from "./draft.js";
import { stillOnSteps } from "./fence.js";
import { secondLook } from "./ground-tasks.js";

/** A house shut at dusk and counted; birds that are towed in the morning stay shut in. */
export function duskTask(day: Day, dusk: Job): Draft {
  const { words } = day;
  const [name, place] = [dusk.group!, dusk.to!];
  const shut = jobOf(day, "shut-in", name);
  return {
    key: `dusk:${name}`, part: "dusk", jobs: shut ? [dusk, shut] : [dusk], group: name, minutes: minutesOf([dusk, shut]), timedWith: null, people: 1, tow: false, notAlone: false,
    title: words.say("day.title.dusk", { group: name, place: place.name }), from: place, to: place, after: [], rightAfter: null,
    lines: [
      ...line(words, "count", [...countSteps(day, [name, ...dusk.company]), step(null, words.pieces("day.do.door-shut"))]),
      ...line(words, "do", shut ? [step(null, words.pieces("day.do.keep-in"))] : []),
      ...line(words, "fence", stillOnSteps(day, name, place)),
    ].sort((a, b) => ORDER.indexOf(a.name) - ORDER.indexOf(b.name)),
  };
}

const ORDER = ["first", "take", "do", "fence", "water", "count"];

/** All that have four legs, where they stand at night. */
export function secondLookTasks(day: Day): readonly Draft[] {
  const { words, work } = day;
  const groups = work.standing.filter(({ group, host }) => host === null && !isBird(groupOf(day, group).kind) && !jobOf(day, "leave", group)).map(({ group }) => group);
  return secondLook(day, (name) => {
    const { place } = standingOf(work, name)!;
    const company = work.standing.filter(({ host }) => host === name).map(({ group }) => group);
    return [step(null, words.pieces("day.look-again", { place: place.name })), ...countSteps(day, [name, ...company]), ...stillOnSteps(day, name, place)];
  }, groups);
}
