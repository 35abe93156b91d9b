import { OWNER, TOWS, VET, type Calls } from "../../farm/calls.js";
import type { IsoDate } from "../../quantity/calendar.js";
import { cautionsOn } from "../../plan/cautions.js";
import type { Job } from "../../work/job.js";
import { cautionText } from "../caution-words.js";
import { heldMm } from "../held-fonts.js";
import type { Day } from "./context.js";
import { kitRun } from "./kit.js";
import type { Bits, CallLine, Task } from "./model.js";

/** Who is called, in the order of the sheet; what nobody filled in is null. */
export function callLines({ words }: Day, { calls, whereWeAre }: Calls, tows: boolean): readonly CallLine[] {
  const known = [OWNER, TOWS, VET];
  const of = (key: string): string | null => calls[key] ?? null;
  const others = Object.entries(calls).filter(([name]) => !known.includes(name)).map(([who, what]) => ({ who, what }));
  return [
    { who: words.say("day.call.owner"), what: of(OWNER) },
    ...(tows || of(TOWS) !== null ? [{ who: words.say("day.call.tows"), what: of(TOWS) }] : []),
    { who: words.say("day.call.vet"), what: of(VET) },
    ...others,
    { who: words.say("day.call.where"), what: whereWeAre },
  ];
}

export function phoneWords({ words }: Day, { phone }: Calls): Bits {
  return phone === null ? words.pieces("day.phone.blank") : words.pieces("day.phone", { phone });
}

/** What may wait a day and what never does. */
export function waitWords(day: Day, tasks: readonly Task[]): Bits {
  const { words } = day;
  const { fetchedFor } = kitRun(day);
  // kit that is set again tonight must be there by then
  const wanted = new Set(day.work.jobs.flatMap(({ id }) => fetchedFor.get(id)?.id ?? []));
  const may = tasks.filter(({ key, jobs }) => /^(collect|walk|cut)/.test(key) && !jobs.some(({ id }) => wanted.has(id))).map(({ number }) => String(number));
  return [...words.pieces("day.never-waits"), { text: " ", strong: false }, ...(may.length === 0 ? words.pieces("day.may-wait.none") : words.pieces("day.may-wait", { tasks: words.list(may), n: may.length }))];
}

const FENCING: readonly Job["kind"][] = ["set", "collect", "strip", "step", "move", "arrive"];

/** A caution that says all that another does. */
const SAID_BY: Readonly<Record<string, string>> = { "public-path": "public-path-cattle" };

/** Cautions of work that is not done every day: printed when it is. Tasks themselves tell of towing, pushing a pen and shutting birds in. */
const AT_WORK: Readonly<Record<string, (job: Job) => boolean>> = {
  "fence": ({ kind }) => FENCING.includes(kind),
  "plants": ({ kind, to }) => (kind === "move" || kind === "arrive") && to?.yard === false,
  "tow": () => false,
  "pen": () => false,
  "dusk": () => false,
};

/** Room for cautions, mm of a line: what hurts people always stands there, the rest as far as it goes. */
const CAUTIONS_MM = 540;

/** The cautions of these animals on this day, and always the last. */
export function cautionWords({ scenario, words, sheet, day, work }: Day): Bits {
  const all = cautionsOn(scenario, sheet.plan, day);
  const isSaid = (topic: string): boolean => all.some((one) => one.topic === SAID_BY[topic]);
  const today = all.filter(({ topic }) => !isSaid(topic) && (AT_WORK[topic] === undefined || work.jobs.some(AT_WORK[topic])));
  const [last] = today.slice(-1);
  let used = 0;
  const told = today.slice(0, -1).filter((caution) => {
    used += heldMm(cautionText(words, caution), 10);
    return caution.rank === 1 || used <= CAUTIONS_MM;
  });
  const more = told.length < today.length - 1 ? [words.say("day.cautions.more")] : [];
  return words.pieces("day.cautions", { cautions: [...told.map((one) => cautionText(words, one)), ...more, cautionText(words, last!)].join(" ") });
}

/** Where the sheet is from, and what tomorrow brings. */
export function footWords(day: Day, printedOn: IsoDate): Bits {
  const { words, scenario, sheet: { made } } = day;
  return words.pieces("day.foot", { farm: scenario.farm, made: words.weekdayDay(made.madeOn), version: made.version, printed: words.weekdayDay(printedOn), tomorrow: tomorrow(day) });
}

function tomorrow({ words, after }: Day): string {
  if (!after) return words.say("day.tomorrow.end");
  const told = after.jobs.flatMap((job) => tomorrowOf(words, job));
  return told.length === 0 ? words.say("day.tomorrow.nothing") : told.join("; ");
}

function tomorrowOf(words: Day["words"], { kind, group, from, to }: Job): readonly string[] {
  const [g, f, t] = [group ?? "", from?.name ?? "", to?.name ?? ""];
  switch (kind) {
    case "move": return [words.say("day.tomorrow.move", { group: g, from: f, to: t })];
    case "arrive": return [words.say("day.tomorrow.arrive", { group: g, to: t })];
    case "leave": return [words.say("day.tomorrow.leave", { group: g })];
    case "join": case "part": return [words.say("day.tomorrow.changes", { group: g, to: t })];
    case "step": case "strip": return [words.say("day.tomorrow.step", { group: g })];
    case "set": return [words.say("day.tomorrow.set", { to: t })];
    case "cut": return [words.say("day.tomorrow.cut", { to: t })];
    case "collect": case "shut-in": case "look": case "dusk": case "walk": return [];
  }
}
