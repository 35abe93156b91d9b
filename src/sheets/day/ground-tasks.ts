import type { Job } from "../../work/job.js";
import { groupOf, type Day } from "./context.js";
import { amountWords } from "./amounts.js";
import { line, step, type Draft } from "./draft.js";
import { waterStep } from "./feed-and-water.js";
import { offStep, onSteps, reelsOf } from "./fence.js";
import type { KitRun } from "./kit.js";
import type { Step } from "./model.js";
import { kitLiesStep } from "./told.js";
import { stripLies, stripWords } from "./strips.js";
import { needsKit } from "./move-tasks.js";

const ON_GROUND = { timedWith: null, people: 1, tow: false, notAlone: false, after: [], rightAfter: null } as const;

/** Fence and water made ready the evening before. */
export function setTask(day: Day, job: Job, kit: KitRun): Draft {
  const { words } = day;
  const [name, to] = [job.group!, job.to!];
  const { fenceM } = reelsOf(day, to.name);
  const round = fenceM > 0 && needsKit(day, name);
  const at = strip(day, job);
  return {
    ...ON_GROUND, key: `set:${name}`, part: "evening", jobs: [job], group: name, minutes: job.minutes, from: to, to,
    title: words.say("day.title.set", { to: to.name, group: name, day: words.weekday(job.for!) }),
    lines: [
      ...line(words, "take", kitSteps(day, job, kit)),
      ...line(words, "do", [
        offStep(day),
        step("net", round ? words.pieces("day.do.set-fence", { m: amountWords(day, "length", fenceM) }) : words.pieces("day.do.set-strip", { strip: stripWords(day, name, to, at) })),
        round ? null : stripLies(day, name, to, at),
      ]),
      ...line(words, "fence", onSteps(day, name)),
      ...line(words, "water", [waterStep(day, name, to), step(null, words.pieces("day.do.gates-shut"))]),
    ],
  };
}

/** Strip that a set for pigs is of: the first of the stay that it is for. */
function strip(day: Day, { group, for: then }: Job): number {
  const move = day.season.find((one) => one.day === then)?.jobs.find((one) => one.group === group && one.positions !== null);
  return move?.positions?.first ?? 1;
}

function kitSteps(day: Day, job: Job, { fetchedFor }: KitRun): readonly Step[] {
  const { words } = day;
  if (!needsKit(day, job.group!)) return [kitLiesStep(day)];
  const { reels, reelM } = reelsOf(day, job.to!.name);
  const kit = step(null, words.pieces("day.take.kit", { reels, m: amountWords(day, "length", reelM) }));
  const fetched = fetchedFor.get(job.id);
  return [kit, fetched ? step(null, words.pieces("day.take.from", { to: job.to!.name, cell: fetched.from!.name })) : kitLiesStep(day)];
}

/** Fence kit fetched from ground that was left. */
export function collectTask(day: Day, job: Job, kit: KitRun): Draft {
  const { words } = day;
  const cell = job.from!.name;
  const { reels, reelM } = reelsOf(day, cell);
  const next = kit.setOf.get(job.id);
  const bring = next ? words.pieces("day.do.bring", { to: next.to!.name, day: words.weekdayDay(next.for!), tonight: next.day === day.day ? "yes" : "no" }) : words.pieces("day.do.bring-home");
  return {
    ...ON_GROUND, key: `collect:${job.group!}`, part: "morning", jobs: [job], group: job.group, minutes: job.minutes, timedWith: `move:${job.group!}`, from: job.from, to: job.from,
    endsAt: next?.to ?? { name: "", yard: true }, title: words.say("day.title.collect", { cell }), after: [`move:${job.group!}`],
    lines: [
      ...line(words, "do", [step("off", words.pieces("day.fence.empty-off", { cell })), step("net", words.pieces("day.do.take-down", { reels, m: amountWords(day, "length", reelM) })), step(null, bring)]),
    ],
  };
}

export function cutTask(day: Day, job: Job): Draft {
  const { words } = day;
  const cell = job.to!.name;
  const hay = job.cut === "hay";
  return {
    ...ON_GROUND, key: `cut:${cell}`, part: "evening", jobs: [job], group: null, minutes: job.minutes, from: job.from, to: job.to,
    title: hay ? words.say("day.title.hay", { cell }) : words.say("day.title.topping", { cell }),
    lines: line(words, "do", [step(null, words.pieces("day.do.cut"))]),
  };
}

export function walkTask(day: Day, job: Job): Draft {
  const { words } = day;
  return {
    ...ON_GROUND, key: "walk", part: "morning", jobs: [job], group: null, minutes: job.minutes, timedWith: null, from: null, to: null,
    title: words.say("day.title.walk"), lines: line(words, "do", [step(null, words.pieces("day.do.walk-grass"))]),
  };
}

/** Grazers and pigs seen again before dark, in one round. */
export function secondLook(day: Day, steps: (group: string) => readonly Step[], groups: readonly string[]): readonly Draft[] {
  const { words } = day;
  if (groups.length === 0) return [];
  return [{
    ...ON_GROUND, key: "second-look", part: "evening", jobs: [], group: groups.length === 1 ? groups[0]! : null, minutes: 0, from: null, to: null,
    title: words.say("day.title.second-look", { groups: words.list(groups.map((name) => groupOf(day, name).name)) }),
    lines: groups.flatMap((name) => line(words, "count", steps(name))),
  }];
}
