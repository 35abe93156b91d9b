import { dirname } from "node:path";
import { checkPlan } from "../check/check-plan.js";
import type { Finding } from "../farm/finding.js";
import type { OutFile } from "../files/write.js";
import { madeOfRead, todayHere } from "./made.js";
import { openCalls, openFarm, openPlanFile, openWords } from "./open.js";
import { refuseWhatIsThere, writeOut } from "./out-folder.js";
import { commandLineFinding, type Outcome } from "./outcome.js";
import { widthOf, type Screen } from "./screen.js";
import { sheetsAnswer, usualPaper, type SheetsSeen } from "./sheets-answer.js";
import { stretchesAsked, type SheetsOptions } from "./sheets-options.js";
import { browserToPrint, NO_PDF, printAll } from "./sheets-pdf.js";
import { SHEET_KINDS, TAKES, type SheetInput } from "./sheets-table.js";
import { sheetsText } from "./sheets-text.js";

export interface SheetsGiven extends SheetsOptions {
  readonly farm: string;
  readonly plan: string;
  readonly replace: boolean;
}

/** `inbye sheets FARM PLAN`: sheets of a plan on the paper asked for, as files, or as text on the terminal. */
export async function sheetsCommand(given: SheetsGiven, screen: Screen): Promise<Outcome> {
  const words = openWords(given.language);
  const farm = openFarm(given.farm, given.changes);
  const scenario = farm.value;
  const { value: { plan, file }, notes } = openPlanFile(given.plan, scenario);
  const today = todayHere();
  const days = stretchesAsked(given, TAKES, scenario.season, today);
  const report = checkPlan(scenario, plan);
  const made = madeOfRead(scenario, file, report, today);
  const input: Omit<SheetInput, "day"> = { scenario, plan, report, made, words, paper: given.paper ?? usualPaper(scenario), printedOn: today, calls: openCalls(given.farm, given.calls) };
  const asked = given.sheets.map((name, i) => ({ kind: SHEET_KINDS[name]!, input: { ...input, day: days[i]! } }));
  const done = await madeAs(given, asked, screen);
  const said = [...farm.notes, ...notes, ...(file === null ? [undated(given.plan)] : []), ...done.notes];
  const seen: SheetsSeen = { scenario, made, asked: given, files: done.files, text: done.text, rulesBroken: report.breaches.length, notes: said };
  return { exit: done.notes.some(({ code }) => NO_PDF.includes(code)) ? 2 : report.breaches.length > 0 ? 3 : 0, text: sheetsText(seen, widthOf(screen), screen), answer: { shape: "sheets-answer", value: sheetsAnswer(seen) } };
}

type Asked = readonly { readonly kind: (typeof SHEET_KINDS)[string]; readonly input: SheetInput }[];
type Done = Pick<SheetsSeen, "files" | "text"> & { readonly notes: readonly Finding[] };

async function madeAs(given: SheetsGiven, asked: Asked, screen: Screen): Promise<Done> {
  const folder = given.out ?? dirname(given.plan);
  const names = asked.flatMap(({ kind, input: { scenario, plan, day } }) => kind.names(scenario, plan, day));
  const columns = given.columns ?? widthOf(screen);
  if (given.as === "txt") {
    const texts = asked.map(({ kind, input }) => kind.txt(input, screen, columns));
    if (given.out === null) return { files: [], text: texts.join("\n"), notes: [] };
    const files = texts.map((text, i) => ({ name: `${textName(given.sheets[i]!, asked[i]!)}.txt`, text }));
    return { files: writtenOut(folder, files, given.replace), text: null, notes: [] };
  }
  const browser = given.as === "pdf" ? browserToPrint() : null;
  const ending = browser !== null && "path" in browser ? "pdf" : "html";
  refuseWhatIsThere(folder, names.map((name) => `${name}.${ending}`), given.replace);
  const pages = asked.flatMap(({ kind, input }) => kind.html(input)).map((html, i) => ({ name: names[i]!, html }));
  if (browser !== null && "path" in browser) return printAll(browser.path, pages, folder, given.replace);
  const files = writtenOut(folder, pages.map(({ name, html }) => ({ name: `${name}.html`, text: html })), given.replace);
  return { files, text: null, notes: browser === null ? [] : [browser.finding] };
}

/** As its page is called; of a sheet with several pages, as the sheet is. */
function textName(sheet: string, { kind, input: { scenario, plan, day } }: Asked[number]): string {
  const names = kind.names(scenario, plan, day);
  return names.length === 1 ? names[0]! : sheet;
}

function writtenOut(folder: string, files: readonly OutFile[], replace: boolean): SheetsSeen["files"] {
  return writeOut(folder, files, replace).map((file) => ({ file, pages: null }));
}

/** A grid says neither when it was made nor which version it is. */
function undated(path: string): Finding {
  const found = `${path} does not say when it was made`;
  return commandLineFinding("grid-undated", found, "the sheets say made today, version 1, and firm for two weeks from today or from the season's first day", "print from plan.json where the grid is as it was planned");
}
