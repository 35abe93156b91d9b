import { isBird, isGrazer } from "../../farm/scenario.js";
import type { Job } from "../../work/job.js";
import { countSteps, hasYoung, isNotAlone } from "./animals.js";
import { groupOf, type Day } from "./context.js";
import { line, minutesOf, step, type Draft } from "./draft.js";
import { feedStep, waterStep } from "./feed-and-water.js";
import { isFenced, offStep, onSteps, readingStep } from "./fence.js";
import type { Line, Step } from "./model.js";
import { deadOut } from "./stay-tasks.js";
import { netStep } from "./tow-tasks.js";
import { stripLies, stripWords } from "./strips.js";
import { takeStep, wayWords } from "./told.js";

/** Groups walked, or pens pushed by hand, to other ground; groups that come, join another and part from it. */
export function moveTask(day: Day, moved: Job, look: Job | undefined): Draft {
  const { words } = day;
  const name = moved.group!;
  const names = [name, ...moved.company];
  const [from, to] = [moved.from, moved.to!];
  const bird = isBird(groupOf(day, name).kind);
  const way = wayWords(day, from, to);
  const titled: Readonly<Record<string, () => string>> = {
    arrive: () => words.say("day.title.arrive", { group: name, to: to.name }),
    join: () => words.say("day.title.join", { group: name, to: to.name }),
    part: () => words.say("day.title.part", { group: name, to: to.name }),
    move: () => words.say("day.title.move", { group: words.list(names), from: from?.name ?? "", to: to.name, way }),
  };
  return {
    key: `move:${name}`, part: "morning", jobs: look ? [moved, look] : [moved], group: name, title: titled[moved.kind]!(), minutes: minutesOf([moved, look]), timedWith: null,
    people: moved.people, tow: moved.tow, notAlone: isNotAlone(day, names) || moved.tow, from, to,
    lines: bird ? birdLines(day, moved) : walkedLines(day, moved, names), after: [], rightAfter: null,
  };
}

/** Reading first: no gate opens before the new ground's fence is live. */
function walkedLines(day: Day, { group: name, from, to, kind }: Job, names: readonly string[]): readonly Line[] {
  const { words } = day;
  const group = groupOf(day, name!);
  const said = { from: from?.name ?? "", to: to!.name };
  const live = isFenced(group, to);
  const off = isFenced(group, from) && (kind === "move" || kind === "part");
  const set = [live ? step("on", words.pieces("day.first.live", said)) : null, live ? readingStep(day, name!) : null];
  return [
    ...line(words, "first", [...set, waterStep(day, name!, to!), step(null, words.pieces("day.first.gate", said))]),
    ...line(words, "take", [takeStep(day, name!), to!.yard ? feedStep(day, name!, to!) : null]),
    ...line(words, "do", [
      off && kind === "move" ? step("off", words.pieces("day.do.old-off", said)) : null,
      from ? step("net", words.pieces("day.do.open", said)) : null,
      step("stock-in", walkWords(day, names, from === null)),
      step(null, words.pieces("day.do.shut-gates")),
    ]),
    ...line(words, "count", [...countSteps(day, names), step(null, words.pieces("day.count.well"))]),
  ];
}

function walkWords(day: Day, names: readonly string[], come: boolean): Step["bits"] {
  const { words } = day;
  if (come) return words.pieces("day.do.unload");
  if (hasYoung(day, names)) return words.pieces("day.do.walk-young", { young: words.say(`day.young-ones.${groupOf(day, names[0]!).kind}`), mother: words.say(`day.mother.${groupOf(day, names[0]!).kind}`) });
  return groupOf(day, names[0]!).kind === "pigs" ? words.pieces("day.do.walk-pigs") : words.pieces("day.do.walk");
}

function birdLines(day: Day, { group: name, from, to, positions, kind }: Job): readonly Line[] {
  const { words } = day;
  const group = groupOf(day, name!);
  const [fromNet, toNet] = [isFenced(group, from), isFenced(group, to)];
  const pens = group.strip?.each?.count ?? 1;
  const comes = kind === "arrive";
  const at = positions?.first ?? 1;
  return [
    ...line(words, "take", [takeStep(day, name!), feedStep(day, name!, to!)]),
    ...line(words, "do", [
      fromNet ? offStep(day) : null, comes ? null : deadOut(day),
      fromNet ? step("net", words.pieces("day.do.roll-net", { nets: group.strip?.nets ?? 0 })) : null,
      to!.yard ? step(null, words.pieces("day.do.birds-yard", { to: to!.name })) : step("net", words.pieces("day.do.pens-stand", { pens, strip: stripWords(day, name!, to!, at), to: to!.name })),
      stripLies(day, name!, to!, at),
      toNet ? netStep(day, name!) : null,
    ]),
    ...line(words, "fence", toNet ? onSteps(day, name!) : []),
    ...line(words, "water", [waterStep(day, name!, to!)]),
    ...line(words, "count", [
      step("stock-in", comes ? words.pieces("day.do.birds-in") : words.pieces("day.do.birds-there")), ...countSteps(day, [name!]),
      toNet ? step("doors", words.pieces("day.do.door-last")) : null,
    ]),
  ];
}

/** Animals that leave the farm that day. */
export function leaveTask(day: Day, job: Job): Draft {
  const { words } = day;
  const name = job.group!;
  const netted = isFenced(groupOf(day, name), job.from);
  return {
    key: `leave:${name}`, part: "evening", jobs: [job], group: name, title: words.say("day.title.leave", { group: name, from: job.from?.name ?? "" }), minutes: job.minutes,
    timedWith: null, people: job.people, tow: job.tow, notAlone: isNotAlone(day, [name]), from: job.from, to: job.from, after: [], rightAfter: null,
    lines: [
      ...line(words, "do", [netted ? offStep(day) : null, step("net", words.pieces("day.do.load"))]),
      ...line(words, "count", [...countSteps(day, [name]), step(null, words.pieces("day.count.papers"))]),
    ],
  };
}

/** Whether a group needs a fence set before it comes. */
export function needsKit(day: Day, name: string): boolean {
  return isGrazer(groupOf(day, name).kind);
}
