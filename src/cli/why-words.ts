import { placeName } from "../decide/why-forced.js";
import { shortBy } from "../decide/why-short.js";
import type { Weighed } from "../decide/why-weigh.js";
import { spanHolds, type IsoDate } from "../quantity/calendar.js";
import type { Breach } from "../rules/rule.js";
import { dayMonth, spanWords } from "../sheets/day-words.js";
import { aboutMoney } from "../sheets/figure-words.js";

/** Money that is too little to tell. */
const NOTHING = 0.005;

/** "about £3 more", "under £1 more", "no more". */
export function moreWords(more: number, currency: string): string {
  return more <= NOTHING ? "no more" : `${aboutMoney(more, currency)} more`;
}

/** ISO days as people say them. */
export function withDays(words: string): string {
  return words.replace(/\d{4}-\d{2}-\d{2}/g, dayMonth);
}

/** What a forced stay breaks, place and days named where they are not those asked about: "8 days of rest; allowed at least 18 days of rest (10 days short) [rest-period]". */
export function brokenWords(breach: Breach, { question }: Weighed): string {
  const { rule, group, cell, firstDay, lastDay, found, allowed } = breach;
  const own = group === question.group && (cell === null || cell === question.place.cell) && spanHolds({ firstDay, lastDay }, question.day);
  const where = [group, cell].filter((one) => one !== null).join(" in ");
  const place = own ? "" : `${where === "" ? "" : `${where}, `}${spanWords(firstDay, lastDay)}: `;
  const short = shortBy(breach);
  return `${place}${withDays(found)}; allowed ${withDays(allowed)}${short === null ? "" : ` (${short})`} [${rule}]`;
}

/** Names at the left of a list, padded to one width, but never very wide. */
export function labelled(rows: readonly (readonly [label: string, words: string])[]): readonly string[] {
  const width = Math.min(16, Math.max(0, ...rows.map(([label]) => label.length)));
  return rows.map(([label, words]) => `  ${label.padEnd(width)}  ${words}`);
}

/** One stay that may be: at how much more, and whether others have to move for it. */
export function allowedWords(weighed: Weighed, currency: string): string {
  const { more, asItStands, replanned } = weighed;
  const price = more! <= NOTHING ? "no more" : `${replanned ? "" : "at most "}${moreWords(more!, currency)}`;
  const [first] = asItStands;
  return first ? `${price}; other stays have to move: as the plan stands, ${brokenWords(first, weighed)}` : `${price}; no other stay has to move`;
}

/** A stay for which no season was found. */
export function noneFoundWords(weighed: Weighed): string {
  const [first] = weighed.asItStands;
  return first ? `not as the plan stands: ${brokenWords(first, weighed)}` : "no season was found with it";
}

/** Stays that are never allowed that day, those for the same reason in one row. */
export function neverRows(never: readonly Weighed[], label: (one: Weighed) => string, until: (one: Weighed) => IsoDate | null): readonly (readonly [string, string])[] {
  const rows = new Map<string, string[]>();
  for (const one of never) {
    const opens = until(one);
    const words = one.never.map((breach) => brokenWords(breach, one)).join("; ") + (opens === null ? "" : `; open from ${dayMonth(opens)}`);
    rows.set(words, [...(rows.get(words) ?? []), label(one)]);
  }
  return [...rows].map(([words, names]) => [names.join(", "), words] as const);
}

export function placeLabel({ question }: Weighed): string {
  return placeName(question.place);
}
