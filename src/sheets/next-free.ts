import { addDays, daysBetween, spanHolds, type IsoDate } from "../quantity/calendar.js";
import { figureOf, isGrazer, type Cell } from "../farm/scenario.js";
import type { Stay } from "../plan/plan.js";
import type { Words } from "../words/words.js";
import { pluralWords } from "./marks.js";
import type { Sheet } from "./made.js";
import { shutGround } from "./shut-ground.js";

/** The day as of which sheets say what ground is free: the day of planning, or the season's first. */
export function asOf({ scenario, made }: Sheet): IsoDate {
  const { firstDay, lastDay } = scenario.season;
  if (made.madeOn < firstDay) return firstDay;
  return made.madeOn > lastDay ? lastDay : made.madeOn;
}

/** When a cell may next be grazed: "ready", "in use", "27 Jun", or who comes first, "pigs 28 Jun". */
export function nextFree(sheet: Sheet, cell: Cell, words: Words): string {
  const { scenario, plan } = sheet;
  const today = asOf(sheet);
  const stays = plan.stays.filter((stay) => stay.cell === cell.name);
  if (stays.some((stay) => spanHolds(stay, today))) return words.say("free.in-use");
  const readyOn = firstReady(sheet, cell, stays, today, words);
  const next = stays.filter((stay) => stay.firstDay > today).sort((a, b) => a.firstDay.localeCompare(b.firstDay))[0];
  if (next && (readyOn === null || next.firstDay < readyOn || worksGround(sheet, next))) return userWords(sheet, next, words);
  if (readyOn === today) return words.say("free.ready");
  return readyOn === null ? words.say("free.after", { day: words.dayMonth(scenario.season.lastDay) }) : words.dayMonth(readyOn);
}

/** First day, from a day on, when cover for a grazing stay stands and the ground is open and empty. */
function firstReady(sheet: Sheet, cell: Cell, stays: readonly Stay[], from: IsoDate, words: Words): IsoDate | null {
  const { scenario, report } = sheet;
  const cover = report.cells.find((days) => days.cell === cell.name)?.coverKgPerHa ?? [];
  const shut = shutGround(sheet, cell, words).filter((span) => span.openShare === 0);
  for (let t = daysBetween(scenario.season.firstDay, from); t <= daysBetween(scenario.season.firstDay, scenario.season.lastDay); t += 1) {
    const day = addDays(scenario.season.firstDay, t);
    const free = !shut.some((span) => spanHolds(span, day)) && !stays.some((stay) => spanHolds(stay, day));
    if (free && (cover[t] ?? 0) >= entryCover(sheet, cell, day)) return day;
  }
  return null;
}

/** The first pass of spring has its own, lower figure. */
function entryCover({ scenario, plan }: Sheet, cell: Cell, day: IsoDate): number {
  const figure = (key: string): number => figureOf(scenario, "entry-cover", key, cell.field, null) ?? 0;
  const grazers = scenario.groups.filter((group) => isGrazer(group.kind)).map((group) => group.name);
  const grazed = plan.stays.some((stay) => stay.cell === cell.name && grazers.includes(stay.group) && stay.firstDay < day);
  const first = !grazed && daysBetween(scenario.season.firstDay, day) < figure("first-pass-days");
  return first ? Math.min(figure("first-pass"), figure("grazers")) : figure("grazers");
}

/** Pigs and birds that follow nobody take the cell from the grazers, ready or not. */
function worksGround({ scenario }: Sheet, stay: Stay): boolean {
  const group = scenario.groups.find((one) => one.name === stay.group);
  return group !== undefined && !isGrazer(group.kind) && group.follows === null;
}

function userWords({ scenario }: Sheet, stay: Stay, words: Words): string {
  const kind = scenario.groups.find((group) => group.name === stay.group)?.kind;
  const day = words.dayMonth(stay.firstDay);
  return kind && !isGrazer(kind) ? words.say("free.who", { who: pluralWords(kind, words), day }) : day;
}
