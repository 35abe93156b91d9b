import { PAPERS } from "../sheets/paper.js";
import { fullDay } from "../sheets/day-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import { findingsText } from "./findings-text.js";
import type { Screen } from "./screen.js";
import { usualPaper, type SheetsSeen } from "./sheets-answer.js";
import { countWords } from "./words.js";

/** Where the sheets lie, for people; or the sheets themselves, where they are text for the terminal. */
export function sheetsText(seen: SheetsSeen, columns: number, screen: Screen): string {
  const { scenario, made, asked, files, text, rulesBroken, notes } = seen;
  const part = (title: string, rows: readonly string[]) => (rows.length === 0 ? [] : ["", screen.heading(title), ...rows]);
  const paper = asked.as === "txt" ? "" : `, for ${PAPERS[asked.paper ?? usualPaper(scenario)].words}`;
  const head = `${scenario.farm}: plan of ${fullDay(made.madeOn)}, version ${made.version}${paper}`;
  return [
    ...(text === null ? [screen.heading(wrapped(head, columns))] : [text.trimEnd()]),
    ...part("The sheets", files.map(({ file, pages }) => `  ${file}${pages === null ? "" : ` (${countWords(pages, "page")})`}`)),
    ...(files.length === 0 && text === null ? ["", "There is nothing to draw: no group here takes ground by pen, net or strip."] : []),
    ...part("Worth knowing", [
      ...(rulesBroken > 0 ? [wrapped(`  - This plan breaks a rule in ${countWords(rulesBroken, "place")}: see inbye check. The season grid marks them in black.`, columns, 4)] : []),
      ...(notes.length > 0 ? [findingsText(notes, columns).trimEnd()] : []),
    ]),
    "",
  ].join("\n");
}
