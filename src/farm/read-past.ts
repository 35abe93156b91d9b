import { isIsoDate, type IsoDate, type Span } from "../quantity/calendar.js";
import { AMOUNT_KEYS } from "./amount-keys.js";
import { amountAt, say, take, type Desk, type Thing } from "./desk.js";
import { dayAt, spansAt } from "./read-days.js";
import { BIRDS, type Closure, type PastUse } from "./scenario.js";
import { child, entriesOf, itemsOf, textOf, type Entry, type Tree } from "./tree.js";

/** Entries of a field's map with a cell's own laid over, by key. */
function laidOver(things: readonly Thing[], key: string): readonly { readonly entry: Entry; readonly name: string }[] {
  const [cell, field] = things;
  const own = entriesOf(child(cell?.map, key)).map((entry) => ({ entry, name: cell!.name }));
  const theirs = entriesOf(child(field?.map, key)).map((entry) => ({ entry, name: field!.name }));
  return [...theirs.filter(({ entry }) => !own.some((o) => o.entry.key === entry.key)), ...own];
}

/** Uses before the season, by kind; the latest of each kind decides most rules. */
export function pastOf(desk: Desk, things: readonly Thing[], season: Span, subject: string): readonly PastUse[] {
  return laidOver(things, "last").flatMap(({ entry, name }) =>
    itemsOf(entry.value).flatMap((node): PastUse[] => {
      const use = useAt(desk, node, `${name}: last ${entry.key}`, season);
      if (!use) return [];
      const worked = entry.key === "pigs" || (BIRDS as readonly string[]).includes(entry.key);
      if (use.share === undefined && worked) take(desk, `share used by ${entry.key} before`, subject, "100 %", "judgement", "judgement");
      return [{ by: entry.key as PastUse["by"], lastDay: use.lastDay, share: use.share ?? 1 }];
    }),
  );
}

function useAt(desk: Desk, node: Tree, label: string, season: Span): { readonly lastDay: IsoDate; readonly share: number | undefined } | undefined {
  const text = textOf(node);
  if (text === undefined || text === "null") return undefined;
  const parts = /^(\S+)(?:\s+on\s+(.+))?$/.exec(text);
  const lastDay = dayAt(desk, node.kind === "text" ? { ...node, text: parts?.[1] ?? text } : node, label);
  if (lastDay === undefined) return undefined;
  if (lastDay >= season.firstDay) {
    say(desk, node, { code: "last-late", found: `${label} is ${lastDay}, in the season`, allowed: `last uses lie before the season, which begins on ${season.firstDay}`, next: "write the last day before it" });
    return undefined;
  }
  const share = parts?.[2] === undefined || node.kind !== "text" ? undefined : amountAt(desk, { ...node, text: parts[2] }, `${label}: share`, AMOUNT_KEYS.share);
  return { lastDay, share };
}

/** Closed days, each with its reason. */
export function closedOf(desk: Desk, things: readonly Thing[], season: Span): readonly Closure[] {
  return laidOver(things, "closed").flatMap(({ entry, name }) =>
    spansAt(desk, entry.value, `${name}: closed for ${entry.key}`, season).map(({ firstDay, lastDay }) => ({ reason: entry.key, firstDay, lastDay })),
  );
}

/** Nitrogen laid down before the season. */
export function pastNitrogenOf(desk: Desk, things: readonly Thing[], season: Span): readonly { readonly day: IsoDate; readonly kgPerHa: number }[] {
  return laidOver(things, "nitrogen").flatMap(({ entry, name }) => {
    const kgPerHa = amountAt(desk, entry.value, `${name}: nitrogen`, AMOUNT_KEYS["past nitrogen"]);
    if (isIsoDate(entry.key) && entry.key < season.firstDay) return [{ day: entry.key, kgPerHa }];
    const at: Tree = { kind: "text", text: entry.key, plain: true, ...entry.at };
    if (dayAt(desk, at, `${name}: nitrogen`) !== undefined) {
      say(desk, entry.at, { code: "last-late", found: `${name}: nitrogen of ${entry.key} lies in the season`, allowed: `it is what was laid down before ${season.firstDay}`, next: "take it out: the plan counts the season's own" });
    }
    return [];
  });
}
