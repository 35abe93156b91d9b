/** Grids through a real spreadsheet and back: LibreOffice without its windows. Skipped where it is not on the machine. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Scenario } from "../../src/farm/scenario.js";
import { readTableFile } from "../../src/files/read.js";
import type { Plan } from "../../src/plan/plan.js";
import { GRID_FORMS, readGrid } from "../../src/plan/read-grid.js";
import { planOfStandings, type Standing } from "../../src/plan/standings.js";
import { addDays } from "../../src/quantity/calendar.js";
import { gridCsv } from "../../src/sheets/grid-csv.js";
import { plannedFarm } from "../fixtures/planned-farm.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { newDesk, OFFICE, savedAs } from "./office-here.js";

const LONG = 240_000;
const DAYS = Array.from({ length: 12 }, (_, i) => addDays("2027-05-25", i));

/** A small farm with the names that spreadsheets spoil, each of which has somebody in it. */
function oddlyNamed(): { scenario: Scenario; plan: Plan } {
  const names = ["007", "1E3", "3/4", "1-2", "MAR1", "=1+1", "-1", "@A1", "10", "2.50", "'8", "Ж1"];
  const groups = [group("True", { letter: "T" }), group('=HYPERLINK("x")', { letter: "H" }), group('Коровы "🐄", <b>', { letter: "K" })];
  const scenario = tinyFarm({ firstDay: DAYS[0]!, days: DAYS.length, cells: names.map((name) => cell(name)), groups });
  const standings = groups.flatMap(({ name }, g) => DAYS.map((day, d): Standing => ({ group: name, cell: names[(d + g * 4) % names.length]!, yard: null, day })));
  return { scenario, plan: planOfStandings(standings, [{ cell: "=1+1", cut: "hay", day: DAYS[3]! }, { cell: "-1", cut: "topping", day: DAYS[3]! }], scenario) };
}

const FARMS = { "withy-end": plannedFarm("withy-end"), "rushy-leys": plannedFarm("rushy-leys"), odd: oddlyNamed() } as const;
type FarmName = keyof typeof FARMS;
const FILES = (Object.keys(FARMS) as FarmName[]).flatMap((farm) => GRID_FORMS.map((form) => ({ farm, form, name: `${farm}-${form}` })));
const named = (ending: string): string[] => FILES.map(({ name }) => `${name}.${ending}`);

function readBack(path: string, scenario: Scenario) {
  const text = readTableFile(path);
  if (!text.ok) throw new Error(JSON.stringify(text.findings));
  return readGrid(text.value, scenario, "back.csv");
}

/** The plan with one group elsewhere for one night. */
function moved({ stays, cuts }: Plan, scenario: Scenario, who: string, day: string, to: string): Plan {
  const nights = stays.flatMap(({ firstDay, lastDay, ...stay }): Standing[] => {
    const all: Standing[] = [];
    for (let on = firstDay; on <= lastDay; on = addDays(on, 1)) all.push(stay.group === who && on === day ? { group: who, cell: to, yard: null, day } : { ...stay, day: on });
    return all;
  });
  return planOfStandings(nights, cuts, scenario);
}

/** A flat workbook with its days shown in another form, and one box with another text. */
function changedWorkbook(workbook: string, shown: string, day: string, text: string): string {
  const style = workbook.replace(/(<number:date-style style:name="N49")>[\s\S]*?(<\/number:date-style>)/, `$1 ${shown}$2`);
  const at = style.indexOf("<text:p>", style.indexOf("</table:table-cell>", style.indexOf(`office:date-value="${day}"`))) + "<text:p>".length;
  return style.slice(0, at) + text + style.slice(style.indexOf("</text:p>", at));
}

const sign = (text: string): string => `<number:text>${text}</number:text>`;
const SHOWN = {
  german: `number:language="de" number:country="DE"><number:day number:style="long"/>${sign(".")}<number:month number:style="long"/>${sign(".")}<number:year number:style="long"/>`,
  american: `number:language="en" number:country="US"><number:month/>${sign("/")}<number:day/>${sign("/")}<number:year/>`,
} as const;
const EDITS = [
  { farm: "withy-end", shown: SHOWN.german, form: "day, month, year" },
  { farm: "rushy-leys", shown: SHOWN.american, form: "month, day, year" },
] as const;

/** A night in the middle of a stay of the first group, and a cell in which it does not stand then. */
function oneNight({ scenario, plan }: { scenario: Scenario; plan: Plan }) {
  const who = scenario.groups[0]!.name;
  const stay = plan.stays.find((one) => one.group === who && one.cell !== null && addDays(one.firstDay, 2) <= one.lastDay)!;
  return { who, day: addDays(stay.firstDay, 1), to: scenario.cells.find(({ name }) => name !== stay.cell)!.name };
}

describe.skipIf(!OFFICE)("a grid through LibreOffice", () => {
  const desk = OFFICE ? newDesk() : null;
  const inDesk = (...path: string[]): string => join(desk!.folder, ...path);

  beforeAll(() => {
    mkdirSync(inDesk("ours"));
    for (const { farm, form, name } of FILES) writeFileSync(inDesk("ours", `${name}.csv`), gridCsv(FARMS[farm].scenario, FARMS[farm].plan, form));
    desk!.convert("ours", named("csv"), "xlsx", "xlsx");
    desk!.convert("xlsx", named("xlsx"), "from-xlsx", savedAs(",", "UTF-8", false));
    desk!.convert("ours", named("csv"), "ods", "ods");
    desk!.convert("ods", named("ods"), "from-ods", savedAs(";", "UTF-8", true));
    desk!.convert("ours", named("csv"), "from-csv", savedAs("\t", "UTF-16", false));
    desk!.convert("ours", [...EDITS.map(({ farm }) => `${farm}-day.csv`), "odd-day.csv", "odd-group.csv", "odd-cell.csv"], "fods", "fods");
    mkdirSync(inDesk("edited"));
    for (const { farm, shown } of EDITS) {
      const { day, to } = oneNight(FARMS[farm]);
      writeFileSync(inDesk("edited", `${farm}.fods`), changedWorkbook(readFileSync(inDesk("fods", `${farm}-day.fods`), "utf8"), shown, day, to));
    }
    desk!.convert("edited", EDITS.map(({ farm }) => `${farm}.fods`), "from-edited", savedAs(";", "UTF-8", false));
  }, LONG);
  afterAll(() => desk?.clear());

  const trips = [["as .xlsx, saved with commas", "from-xlsx"], ["as .ods, saved with semicolons and quotes", "from-ods"], ["saved with tabs in UTF-16", "from-csv"]] as const;
  describe.each(trips)("%s", (_name, folder) => {
    it.each(FILES)("$name is the same plan, and the same file again", ({ farm, form, name }) => {
      const { scenario, plan } = FARMS[farm];
      const back = readBack(inDesk(folder, `${name}.csv`), scenario);
      expect(back.ok ? back.value : back.findings).toEqual(plan);
      expect(back.ok && gridCsv(scenario, back.value, form)).toBe(readFileSync(inDesk("ours", `${name}.csv`), "utf8"));
    });
  });

  it.each(GRID_FORMS)("runs no name as a formula, form %s", (form) => {
    const workbook = readFileSync(inDesk("fods", `odd-${form}.fods`), "utf8");
    expect(workbook).toContain("=1+1");
    expect(workbook).not.toContain("table:formula");
  });

  it.each(EDITS)("reads one night changed in the workbook of $farm, days shown as $form", ({ farm, form }) => {
    const { scenario, plan } = FARMS[farm];
    const { who, day, to } = oneNight(FARMS[farm]);
    const back = readBack(inDesk("from-edited", `${farm}.csv`), scenario);
    expect(back.ok ? back.value : back.findings).toEqual(moved(plan, scenario, who, day, to));
    expect(back.ok && back.notes.filter(({ code }) => code === "days-read").map(({ found }) => found)).toEqual([expect.stringContaining(`days are read as ${form}: `)]);
  });
});
