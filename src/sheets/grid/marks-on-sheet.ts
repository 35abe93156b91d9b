import type { Group, Kind } from "../../farm/scenario.js";
import type { Stay } from "../../plan/plan.js";
import { sureOf, type Sure } from "../made.js";
import { shutGround } from "../shut-ground.js";
import type { Frame } from "./layout.js";
import { followStretch, groupOf, isSeen, piecesOf, restOf, runsBeside } from "./stay-facts.js";

/** Which marks one sheet shows, for its key. */
export interface MarksOnSheet {
  readonly sures: ReadonlySet<Sure>;
  /** Groups that stand somewhere, with the surest of their bars; "done" counts as firm. */
  readonly groups: readonly { readonly group: Group; readonly sure: Sure }[];
  /** "C+Cb", where groups that run together are seen. */
  readonly together: string | null;
  readonly shut: boolean;
  readonly partShut: boolean;
  readonly cut: boolean;
  /** A figure of rest that the sheet shows. */
  readonly rest: number | null;
  readonly followers: readonly Kind[];
}

/** Looks through the bars, wires and figures that the sheet will show. */
export function marksOnSheet(frame: Frame): MarksOnSheet {
  const { sheet, part } = frame;
  const cells = part.fields.flatMap((field) => field.cells);
  const staysIn = (name: string): readonly Stay[] => sheet.plan.stays.filter((stay) => (stay.cell ?? stay.yard) === name);
  const shutIn = new Map(cells.map((cell) => [cell.name, shutGround(sheet, cell, frame.words)]));
  const shut = [...shutIn.values()].flat().filter((span) => isSeen(frame, span));
  const rests = cells.flatMap((cell) => staysIn(cell.name).map((stay) => restOf(frame, stay, staysIn(cell.name), shutIn.get(cell.name)!)));
  const followers = cells.flatMap((cell) => staysIn(cell.name).filter((stay) => followStretch(frame, stay, staysIn(cell.name)) !== null));
  const names = new Set(cells.map((cell) => cell.name));
  return {
    ...barsOn(frame), together: togetherOn(frame),
    shut: shut.some((span) => span.openShare === 0), partShut: shut.some((span) => span.openShare > 0),
    cut: sheet.plan.cuts.some((cut) => names.has(cut.cell) && part.days.includes(cut.day)),
    rest: rests.find((rest) => rest !== null)?.days ?? null,
    followers: [...new Set(followers.map((stay) => groupOf(sheet, stay).kind))],
  };
}

function barsOn(frame: Frame): Pick<MarksOnSheet, "sures" | "groups"> {
  const { sheet } = frame;
  const pieces = sheet.plan.stays.flatMap((stay) => piecesOf(frame, stay, []).filter((piece) => isSeen(frame, piece)).map(({ firstDay }) => ({ name: stay.group, firstDay })));
  const firsts = new Map<string, string>();
  for (const { name, firstDay } of pieces) if (firstDay < (firsts.get(name) ?? "9")) firsts.set(name, firstDay);
  const sure = (day: string): Sure => (sureOf(day, sheet.made) === "done" ? "firm" : sureOf(day, sheet.made));
  const groups = sheet.scenario.groups.filter((group) => firsts.has(group.name)).map((group) => ({ group, sure: sure(firsts.get(group.name)!) }));
  return { sures: new Set(pieces.map(({ firstDay }) => sureOf(firstDay, sheet.made))), groups };
}

function togetherOn(frame: Frame): string | null {
  const { sheet } = frame;
  const hosts = sheet.plan.stays.filter((stay) => isSeen(frame, stay));
  for (const host of hosts) {
    const beside = sheet.plan.stays.filter((stay) => stay.cell === host.cell && stay.yard === host.yard && runsBeside(sheet, stay, host));
    if (beside.length > 0) return [host, ...beside].map((stay) => groupOf(sheet, stay).letter).join("+");
  }
  return null;
}
