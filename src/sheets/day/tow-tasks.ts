import type { Job } from "../../work/job.js";
import { amountWords } from "./amounts.js";
import { countSteps, headsOf } from "./animals.js";
import { groupOf, type Day } from "./context.js";
import { line, minutesOf, step, type Draft } from "./draft.js";
import { feedStep, waterStep } from "./feed-and-water.js";
import { isFenced, netAreaM2, offStep, onSteps } from "./fence.js";
import type { Line, Step } from "./model.js";
import { deadOut } from "./stay-tasks.js";
import { stripLies, stripWords } from "./strips.js";
import { layerNeedM2, takeStep, wayWords } from "./told.js";

/** A house or pens towed: made ready and towed directly one after the other. `moved` is a move to other ground or a step on the same. */
export function towTasks(day: Day, moved: Job, look: Job | undefined): readonly Draft[] {
  const { words } = day;
  const name = moved.group!;
  const [from, to] = [moved.from, moved.to!];
  const ready = `ready:${name}`;
  const both = { part: "morning", group: name, people: moved.people, tow: true, notAlone: true } as const;
  const title = moved.kind === "step"
    ? words.say("day.title.tow-step", { group: name, cell: to.name, number: moved.positions?.first ?? 0 })
    : words.say("day.title.move", { group: name, from: from?.name ?? "", to: to.name, way: wayWords(day, from, to) });
  return [
    { ...both, key: ready, jobs: look ? [look] : [], title: words.say("day.title.ready", { group: name, place: from?.name ?? "" }), minutes: minutesOf([moved, look]),
      timedWith: null, from, to: from, lines: readyLines(day, moved), after: [], rightAfter: null },
    { ...both, key: `tow:${name}`, jobs: [moved], title, minutes: 0, timedWith: ready, from, to, lines: towLines(day, moved), after: [ready], rightAfter: ready },
  ];
}

function readyLines(day: Day, { group: name, from, to }: Job): readonly Line[] {
  const { words } = day;
  const group = groupOf(day, name!);
  const netted = isFenced(group, from);
  return [
    ...line(words, "take", [takeStep(day, name!), feedStep(day, name!, to!)]),
    ...line(words, "do", [
      netted ? offStep(day) : null, step(null, words.pieces("day.do.still-shut")), deadOut(day),
      netted ? step("net", words.pieces("day.do.roll-net", { nets: group.strip?.nets ?? 0 })) : null, step(null, words.pieces("day.do.hitch")),
    ]),
  ];
}

function towLines(day: Day, { group: name, to, positions }: Job): readonly Line[] {
  const { words } = day;
  const group = groupOf(day, name!);
  const netted = isFenced(group, to);
  const at = positions?.first ?? 1;
  return [
    ...line(words, "do", [
      step(null, words.pieces("day.do.nobody-between")),
      step(null, to!.yard ? words.pieces("day.do.set-down-yard") : words.pieces("day.do.set-down", { strip: stripWords(day, name!, to!, at) })),
      stripLies(day, name!, to!, at),
      netted ? netStep(day, name!) : null,
    ]),
    ...line(words, "fence", netted ? onSteps(day, name!) : []),
    ...line(words, "water", [waterStep(day, name!, to!)]),
    ...line(words, "count", [...countSteps(day, [name!]), step("doors", words.pieces("day.do.door-last"))]),
  ];
}

/** Nets laid as squares: what they hold, beside what the hens need. */
export function netStep(day: Day, name: string): Step {
  const { words } = day;
  const group = groupOf(day, name);
  const nets = group.strip?.nets ?? 0;
  const around = amountWords(day, "length", 4 * (group.strip?.each?.sidesM[0] ?? 0));
  const area = amountWords(day, "ground", netAreaM2(group) / 10_000, 0, (value) => Math.floor(value + 1e-6));
  const need = layerNeedM2(group);
  const told = { nets, around, area, houses: group.strip?.each?.count ?? 1 };
  const bits = need === null ? words.pieces("day.do.net", told) : words.pieces("day.do.net-need", { ...told, animals: headsOf(day, group), need: amountWords(day, "ground", need / 10_000, 0, (value) => Math.ceil(value - 1e-6)) });
  return step("net", bits);
}
