import { addDays, type Span } from "../quantity/calendar.js";
import { nameAt, note, say, type Desk, type Thing } from "./desk.js";
import { takeOwn } from "./own-defaults.js";
import { dayAt, plainSpans, spansAt } from "./read-days.js";
import type { Group } from "./scenario.js";
import { child, isNothing, type Entry } from "./tree.js";

/** Days on the farm within the season. */
export function hereOf(desk: Desk, thing: Thing, entry: Entry, season: Span): readonly Span[] {
  const node = child(thing.map, "here");
  if (node === undefined || isNothing(node)) {
    takeOwn(desk, "here", thing.name, season, "the whole season");
    return [season];
  }
  const said = desk.findings.length;
  const spans = spansAt(desk, node, `${thing.name}: here`, season);
  const inside = spans.flatMap((span) => {
    const within = { ...span, firstDay: max(span.firstDay, season.firstDay), lastDay: min(span.lastDay, season.lastDay) };
    if (within.firstDay <= within.lastDay) return [within];
    note(desk, span.at, { code: "outside-season", found: `${thing.name}: ${span.firstDay} to ${span.lastDay} lies outside the season`, allowed: "days outside the season are not planned", next: "" });
    return [];
  });
  for (const [i, span] of inside.entries()) {
    const before = inside[i - 1];
    if (!before || span.firstDay > addDays(before.lastDay, 1)) continue;
    say(desk, span.at, { code: "spans-touch", found: `${thing.name}: a span begins on ${span.firstDay}, and one before it ends on ${before.lastDay}`, allowed: "a day at least lies between two spans", next: `from ${addDays(before.lastDay, 2)}?` });
  }
  if (inside.length === 0 && desk.findings.length === said) {
    say(desk, entry.at, { code: "never-here", found: `${thing.name} is never here in the season`, allowed: `the season runs from ${season.firstDay} to ${season.lastDay}`, next: "change its days, or take the group out" });
  }
  return plainSpans(inside);
}

/** First and last day out on ground: from turnout to the day before housing. */
export function outOf(desk: Desk, thing: Thing, season: Span): Span {
  const [turnout, housing] = [child(thing.map, "turnout"), child(thing.map, "housing")];
  const firstDay = turnout && dayAt(desk, turnout, `${thing.name}: turnout`);
  const housed = housing && dayAt(desk, housing, `${thing.name}: housing`);
  if (!turnout) takeOwn(desk, "turnout", thing.name, season.firstDay, season.firstDay);
  if (!housing) takeOwn(desk, "housing", thing.name, null, "after the season");
  if (firstDay !== undefined && housed !== undefined && housed <= firstDay) {
    say(desk, housing!, { code: "days-reversed", found: `${thing.name} is housed on ${housed}, before it is turned out on ${firstDay}`, allowed: "turnout comes first", next: "change the two round?" });
    return season;
  }
  return { firstDay: firstDay ?? season.firstDay, lastDay: housed === undefined ? season.lastDay : addDays(housed, -1) };
}

/** The group this one runs with, and on which days. */
export function runsWithOf(desk: Desk, thing: Thing, names: readonly string[], season: Span): Group["runsWith"] {
  const node = child(thing.map, "runs-with");
  const group = child(node, "group");
  const partner = group && nameAt(desk, group, `${thing.name}: runs-with`, "groups", names);
  if (partner === undefined) return null;
  const days = child(node, "days");
  if (!days) takeOwn(desk, "runs-with days", thing.name, season, "the whole season");
  return { with: partner, days: days ? plainSpans(spansAt(desk, days, `${thing.name}: runs-with days`, season)) : [season] };
}

function max(a: string, b: string): string {
  return a > b ? a : b;
}

function min(a: string, b: string): string {
  return a < b ? a : b;
}
