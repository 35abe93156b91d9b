import type { Job } from "../../work/job.js";
import { countSteps, headsOf, isNotAlone } from "./animals.js";
import { groupOf, staysTo, type Day } from "./context.js";
import { line, minutesOf, step, type Draft } from "./draft.js";
import { feedStep, waterStep } from "./feed-and-water.js";
import { takeStep } from "./told.js";
import { stripWords } from "./strips.js";
import { isFenced, offStep, onSteps, stillOnSteps } from "./fence.js";
import type { Line, Step } from "./model.js";

/** Groups that stay where they are that day: looked at, pens pulled on by hand, pigs onto their next strip. */
export function stayTask(day: Day, look: Job, onward: Job | undefined): Draft {
  const { words } = day;
  const group = look.group!;
  const place = look.to!;
  const last = staysTo(day, group);
  const until = { to: words.weekdayDay(last), today: last === day.day ? "yes" : "no" };
  const number = look.positions?.first ?? 0;
  const titled: Readonly<Record<"step" | "strip" | "look", () => string>> = {
    step: () => words.say("day.title.step", { group, cell: place.name, number }),
    strip: () => words.say("day.title.strip", { group, cell: place.name, number }),
    look: () => (look.positions === null ? words.say("day.title.stay", { group, place: place.name, ...until }) : words.say("day.title.stay-strip", { group, cell: place.name, number, ...until })),
  };
  const kind = onward?.kind === "step" || onward?.kind === "strip" ? onward.kind : "look";
  const lines = { step: penOn, strip: stripOn, look: looked }[kind](day, look);
  const names = [group, ...look.company];
  return {
    key: `stay:${group}`, part: "morning", jobs: onward ? [look, onward] : [look], group, title: titled[kind](), minutes: minutesOf([look, onward]), timedWith: null,
    people: onward?.people ?? 1, tow: false, notAlone: isNotAlone(day, names), from: place, to: place, lines, after: [], rightAfter: null,
  };
}

function looked(day: Day, { group, company, to }: Job): readonly Line[] {
  const { words } = day;
  const bird = groupOf(day, group!).strip?.pen != null || /layers|broilers|turkeys|ducks|geese/.test(groupOf(day, group!).kind);
  return [
    ...line(words, "take", [feedStep(day, group!, to!)]),
    ...line(words, "do", bird ? [deadOut(day), step(null, words.pieces("day.do.let-out", { animals: headsOf(day, groupOf(day, group!)) }))] : []),
    ...line(words, "fence", stillOnSteps(day, group!, to!)),
    ...line(words, "water", [waterStep(day, group!, to!)]),
    ...line(words, "count", [...countSteps(day, [group!, ...company]), bird ? null : step(null, words.pieces("day.count.well"))]),
  ];
}

export function deadOut({ words }: Day): Step {
  return step("dead-out", words.pieces("day.do.dead-out"));
}

function penOn(day: Day, { group: name, to, positions }: Job): readonly Line[] {
  const { words } = day;
  const group = groupOf(day, name!);
  const netted = isFenced(group, to);
  const pens = group.strip?.each?.count ?? 1;
  const strip = stripWords(day, name!, to!, positions!.first);
  return [
    ...line(words, "take", [takeStep(day, name!), feedStep(day, name!, to!)]),
    ...line(words, "do", [
      netted ? offStep(day) : null, deadOut(day),
      step("net", netted ? words.pieces("day.do.net-on", { strip }) : words.pieces("day.do.pull-on", { pens, strip })),
    ]),
    ...line(words, "fence", netted ? onSteps(day, name!) : []),
    ...line(words, "water", [waterStep(day, name!, to!)]),
    ...line(words, "count", [...countSteps(day, [name!]), netted ? step("doors", words.pieces("day.do.door-last")) : null]),
  ];
}

function stripOn(day: Day, { group: name, to, positions }: Job): readonly Line[] {
  const { words } = day;
  return [
    ...line(words, "take", [feedStep(day, name!, to!)]),
    ...line(words, "do", [offStep(day), step("net", words.pieces("day.do.strip-fence", { strip: stripWords(day, name!, to!, positions!.first) }))]),
    ...line(words, "fence", [...onSteps(day, name!), step("stock-in", words.pieces("day.do.strip-in"))]),
    ...line(words, "water", [waterStep(day, name!, to!)]),
    ...line(words, "count", countSteps(day, [name!])),
  ];
}
