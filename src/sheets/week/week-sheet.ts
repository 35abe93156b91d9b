import { addDays, type IsoDate } from "../../quantity/calendar.js";
import type { Scenario } from "../../farm/scenario.js";
import type { Words } from "../../words/words.js";
import { fittingPt } from "../fit.js";
import { escaped, mm } from "../grid/svg.js";
import type { Sheet } from "../made.js";
import { headWords } from "../marks.js";
import { pageRule, printable, SHEET_FORM, type PaperName } from "../paper.js";
import { plate } from "../plate.js";
import { printedPage } from "../printed-page.js";
import { shutGround } from "../shut-ground.js";
import { WEEK_CSS } from "./css.js";
import { columnsMm, pagesOf } from "./pages.js";
import { mondayOf, weekRows, type WeekLine, type WeekRow } from "./rows.js";

export interface WeekGiven {
  /** Any day of the week. */
  readonly week: IsoDate;
  readonly paper: PaperName;
}

/** Head and foot of a sheet, mm. */
const ROUND_MM = 46;

/** A week, day by day: what to do in the morning and in the evening, where all stand at night, counts and notes to write. It comes back as the record. */
export function weekSheetHtml(sheet: Sheet, words: Words, { week, paper }: WeekGiven): string {
  const rows = weekRows(sheet, words, week);
  const { w, h } = printable(paper, SHEET_FORM);
  const columns = columnsMm(w);
  const { pt, pages, dayMm } = pagesOf(rows, columns, h - ROUND_MM);
  const title = weekTitle(rows, words, week);
  const made = words.say("week.head", { farm: sheet.scenario.farm, made: words.fullDay(sheet.made.madeOn), version: sheet.made.version });
  const body = pages.map((page, i) => `<section class="page" style="font-size:${pt}pt"><header><h1>${escaped(title)}</h1><p>${escaped(pages.length > 1 ? `${made}, ${words.say("month.part", { number: i + 1, of: pages.length })}` : made)}</p></header>
${tableOf(page, columns, dayMm, words)}
${footOf(sheet, words, week, page)}</section>`);
  return printedPage(`${sheet.scenario.farm}: ${title}`, `${WEEK_CSS}\n${pageRule(paper, SHEET_FORM)}`, body.join("\n"), words.locale);
}

/** "Mon 21 Jun to Sun 27 June 2027"; as far as the season has days of the week. */
export function weekTitle(rows: readonly WeekRow[], words: Words, week: IsoDate): string {
  const first = rows[0]?.day ?? mondayOf(week);
  const last = rows.at(-1)?.day ?? addDays(mondayOf(week), 6);
  return words.say("week.title", { from: words.weekdayDay(first), to: words.weekdayDay(last), year: last.slice(0, 4) });
}

function tableOf(rows: readonly WeekRow[], columns: readonly number[], dayMm: number, words: Words): string {
  const heads = [words.say("month.day"), words.say("week.morning"), words.say("week.evening"), words.say("week.night"), words.say("week.counted"), words.say("week.note")];
  return `<table style="width:${mm(columns.reduce((sum, one) => sum + one, 0))}mm"><colgroup>${columns.map((wide) => `<col style="width:${mm(wide)}mm"/>`).join("")}</colgroup>
<thead><tr>${heads.map((head, i) => `<th scope="col" style="font-size:${fittingPt(head, columns[i]! - 2, 10, 6, true)}pt">${escaped(head)}</th>`).join("")}</tr></thead>
<tbody>
${rows.map((row) => rowOf(row, columns, dayMm, words)).join("\n")}
</tbody></table>`;
}

function rowOf(row: WeekRow, columns: readonly number[], dayMm: number, words: Words): string {
  const { day, weekend, moves, morning, evening, stands } = row;
  const moved = moves.map(({ group, from, to }) => `<div class="move"><span class="tick"></span>${plate(group)}<span style="font-size:${fittingPt(`${from} → ${to}`, columns[1]! - 23, 13, 6, true)}pt">${escaped(from)} → <b>${escaped(to)}</b></span></div>`);
  const still = moves.length === 0 ? `<div class="line">${escaped(words.say("week.no-move"))}</div>` : "";
  const counts = stands.filter(({ count }) => count !== "").map(({ group, count }) =>
    `<p class="count"><span>${escaped(group.letter)}</span><small>${escaped(words.say("week.of", { count }))}</small></p>`);
  const nights = stands.map(({ group, place, note, moved: here }) =>
    `<div class="stand">${plate(group)}<span style="font-size:${fittingPt(`${place} ${note}`, columns[3]! - 16.5, 11, 5.5, here)}pt"${here ? ' class="moved"' : ""}>${escaped(place)}</span>${note === "" ? "" : `<small>${escaped(note)}</small>`}</div>`);
  const weekday = words.longWeekday(day);
  return `<tr style="height:${mm(dayMm)}mm"${weekend ? ' class="weekend"' : ""}><td class="day"><b style="font-size:${fittingPt(weekday, columns[0]! - 3, 11, 7, true)}pt">${escaped(weekday)}</b><p>${escaped(words.dayMonth(day))}</p>${peopleOf(row, words)}</td>
<td>${moved.join("")}${still}${morning.map(lineOf).join("")}</td>
<td>${evening.map(lineOf).join("")}</td>
<td>${nights.join("")}</td>
<td>${counts.join("")}</td>
<td></td></tr>`;
}

function peopleOf({ people, tow, two }: WeekRow, words: Words): string {
  const rows = [words.say("week.people", { count: people.length }), ...(tow ? [words.say("week.tow")] : []), ...(two ? [words.say("week.two")] : [])];
  return `<p class="people">${rows.map(escaped).join("<br>")}</p>`;
}

function lineOf({ words, strong, bare }: WeekLine): string {
  const told = strong ? `<b>${escaped(words)}</b>` : escaped(words);
  return `<div class="line">${bare ? "" : '<span class="tick"></span>'}<span>${told}</span></div>`;
}

/** Who is who, what is left alone all week, what nobody does alone, and who it was that did it. */
function footOf({ scenario, plan, report, made }: Sheet, words: Words, week: IsoDate, rows: readonly WeekRow[]): string {
  const here = scenario.groups.filter(({ name }) => rows.some(({ stands }) => stands.some(({ group }) => group.name === name)));
  const key = here.map((group) => `<span>${plate(group)} ${escaped(`${group.name}, ${headWords(group, words)}`)}</span>`).join("");
  const [from, to] = [mondayOf(week), addDays(mondayOf(week), 6)];
  const shut = scenario.cells.flatMap((cell) => {
    const span = shutGround({ scenario, plan, report, made }, cell, words).find((one) => one.openShare === 0 && one.firstDay <= from && one.lastDay >= to);
    return span ? [words.say("week.shut", { cell: cell.name, why: span.reason })] : [];
  });
  const told = [
    ...(shut.length > 0 ? words.pieces("week.leave-alone", { cells: shut.join(", ") }) : []),
    ...words.pieces("week.alone", { what: words.list(aloneWords(scenario, words)) }),
    ...words.pieces("week.how"),
  ];
  return `<p class="key">${key}</p>
<p class="foot">${told.map(({ text, strong }) => (strong ? `<b>${escaped(text)}</b>` : escaped(text))).join("")}</p>
<p class="foot">${escaped(words.say("week.done-by"))} ____________________________________________</p>`;
}

/** What nobody does alone on this farm: tow, bull, calving cow, and always what is not sure. */
export function aloneWords({ groups }: Pick<Scenario, "groups">, words: Words): readonly string[] {
  const some = (test: (group: Scenario["groups"][number]) => boolean, key: string): readonly string[] => (groups.some(test) ? [key] : []);
  return [
    ...some((group) => group.needsTow, words.say("week.alone-tow")),
    ...some((group) => /bull/.test(group.animalClass), words.say("week.alone-bull")),
    ...some((group) => group.kind === "cattle" && (group.young !== null || /calf|cow/.test(group.animalClass)), words.say("week.alone-calving")),
    ...some((group) => group.kind === "pigs" && /sow|boar/.test(group.animalClass), words.say("week.alone-sow")),
    words.say("week.alone-unsure"),
  ];
}
