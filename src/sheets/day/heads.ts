import { isBird } from "../../farm/scenario.js";
import type { DayWork, Job, Standing } from "../../work/job.js";
import { spanHolds, type IsoDate } from "../../quantity/calendar.js";
import { shutGround } from "../shut-ground.js";
import { isNotAlone, notAloneSort } from "./animals.js";
import { groupOf, type Day } from "./context.js";
import type { Bits, Task } from "./model.js";

/** Where every group should be before anything is done: a box each. */
export function checkBoxes(day: Day): readonly Bits[] {
  return standingBefore(day).filter(({ host }) => host === null).map((one) => boxOf(day, one));
}

/** Where groups stand before anything is done. */
export function standingBefore({ before, work }: Day): readonly Standing[] {
  if (before && before.standing.length > 0) return before.standing.filter(({ group }) => !before.jobs.some((job) => job.kind === "leave" && job.group === group));
  const come = (group: string): boolean => work.jobs.some((job) => job.group === group && job.kind === "arrive");
  return work.standing.filter(({ group }) => !come(group));
}

function boxOf(day: Day, { group, place, position }: Standing): Bits {
  const { words } = day;
  const company = (day.before?.standing ?? day.work.standing).filter(({ host }) => host === group).map((one) => one.group);
  const shut = day.work.jobs.some((job) => job.tow && job.group === group) && day.before?.jobs.some((job) => job.kind === "shut-in" && job.group === group);
  const bird = isBird(groupOf(day, group).kind);
  return [
    ...words.pieces("day.before.box", { group: words.list([group, ...company]), place: place.name }),
    ...(position === null ? [] : words.pieces(bird ? "day.before.pen" : "day.before.strip", { number: position })),
    ...(shut ? words.pieces("day.before.shut") : []),
  ];
}

const CHANGES: readonly Job["kind"][] = ["arrive", "join", "part", "move", "leave"];

/** "2 moves, 1 pen step. At home ... so much work", counted for all people together, and what is carried all day. */
export function workWords({ words, work }: Day, minutes: number): Bits {
  const moves = work.jobs.filter(({ kind }) => CHANGES.includes(kind)).length;
  const steps = work.jobs.filter(({ kind }) => kind === "step" || kind === "strip").length;
  const home = work.people.map(({ name, tows, minutes: own }) => words.say("day.head.person", { name, tows: tows ? "yes" : "no", time: timeWords(words, own) }));
  return [
    ...words.pieces("day.head.moves", { moves, steps }),
    ...(home.length === 0 ? words.pieces("day.head.nobody") : words.pieces("day.head.home", { people: words.list(home) })),
    ...words.pieces("day.head.work", { time: timeWords(words, minutes) }),
    ...words.pieces("day.head.carry"),
  ];
}

function timeWords(words: Day["words"], minutes: number): string {
  return words.say("day.time", { hours: Math.floor(minutes / 60), minutes: minutes % 60 });
}

/** Closed and worked ground, by reason and last day. */
export function leaveAlone({ sheet, scenario, words, day }: Day): Bits {
  const shut = scenario.cells.flatMap((cell) => shutGround(sheet, cell, words).filter((span) => spanHolds(span, day)).map((span) => ({ cell: cell.name, ...span })));
  const reasons = [...new Set(shut.map(whyShut))];
  const told = reasons.map((why) => {
    const cells = shut.filter((one) => whyShut(one) === why);
    const { reason, lastDay, openShare } = cells[0]!;
    return words.say("day.head.shut", {
      cells: words.list(cells.map(({ cell }) => cell)), why: reason, part: openShare > 0 ? "part" : "all",
      until: lastDay >= scenario.season.lastDay ? words.say("day.head.season") : words.dayMonth(lastDay),
    });
  });
  return told.length === 0 ? words.pieces("day.head.none-shut") : words.pieces("day.head.leave", { ground: told.join("; ") });
}

function whyShut({ reason, lastDay, openShare }: { readonly reason: string; readonly lastDay: IsoDate; readonly openShare: number }): string {
  return `${reason} ${lastDay} ${openShare > 0}`;
}

/** What nobody does alone, who tows, what takes two, and what must be live before a gate opens. */
export function alone(day: Day, tasks: readonly Task[]): readonly Bits[] {
  const { words, work } = day;
  const numbers = (those: readonly Task[]): string => words.list(those.map(({ number }) => String(number)));
  const never = tasks.filter((task) => task.notAlone || task.people > 1);
  const tow = tasks.filter((task) => task.tow);
  const two = tasks.filter((task) => task.people > 1);
  const towers = work.people.filter((one) => one.tows).map(({ name }) => name);
  const live = tasks.filter((task) => task.lines.some((line) => line.name === "first" && line.steps.some(({ deed }) => deed === "reading")));
  const [tows, twos] = [numbers(tow), numbers(two)];
  const who = orWords(words, towers);
  return [[
    ...(never.length === 0 ? words.pieces("day.alone.nothing") : words.pieces("day.alone.leave", { what: words.list(neverAlone(day, tow.length > 0)), tasks: numbers(never), n: never.length })),
    ...(tow.length === 0 ? [] : words.pieces("day.alone.tow")),
    ...(tow.length === 0 ? [] : towers.length === 0 ? words.pieces("day.tow.nobody", { tasks: tows }) : words.pieces("day.tow.who", { tasks: tows, who, two: tows === twos ? "yes" : "no" })),
    ...(two.length === 0 || (tows === twos && towers.length > 0) ? [] : words.pieces("day.two", { tasks: twos })),
    ...(two.some(({ people }) => people > work.people.length) ? words.pieces("day.two.too-few", { home: work.people.length }) : []),
    ...(live.length === 0 ? [] : words.pieces("day.live", { cells: words.list([...new Set(live.map(({ to }) => to!.name))]) })),
  ]];
}

/** What there is today that nobody does alone: a tow, and animals that are not gone in with alone. */
function neverAlone(day: Day, tow: boolean): readonly string[] {
  const { words, work } = day;
  const sorts = work.standing.flatMap(({ group }) => (isNotAlone(day, [group]) ? [notAloneSort(groupOf(day, group))] : []));
  return [...(tow ? [words.say("day.alone.a-tow")] : []), ...[...new Set(sorts)].map((sort) => words.say(`day.alone.${sort}`))];
}

function orWords({ locale }: Day["words"], names: readonly string[]): string {
  return new Intl.ListFormat(locale, { type: "disjunction" }).format(names);
}

/** What the evening before had to leave done for today: boxes. */
export function doneBefore(day: Day): readonly Bits[] {
  const { words, before } = day;
  const boxes = (before?.jobs ?? []).flatMap((job) => doneBox(day, before!, job));
  return boxes.length === 0 ? [] : [[...words.pieces("day.done.ask"), ...boxes.flat(), ...words.pieces("day.done.if-not")]];
}

function doneBox(day: Day, before: DayWork, job: Job): readonly Bits[] {
  const { words } = day;
  if (job.kind === "set" && job.for === day.day) return [words.pieces("day.done.set", { to: job.to!.name })];
  if (job.kind !== "dusk") return [];
  const shut = before.jobs.some((one) => one.kind === "shut-in" && one.group === job.group);
  return [words.pieces("day.done.counted", { group: job.group!, count: groupOf(day, job.group!).head, shut: shut ? "yes" : "no" })];
}
