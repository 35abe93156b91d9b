import { cautionsFor } from "../../plan/cautions.js";
import { daysBetween, type IsoDate } from "../../quantity/calendar.js";
import type { Words } from "../../words/words.js";
import { datedCaution } from "../caution-words.js";
import { roughMoney, toldArea, toldNitrogenUnit, toldSpan } from "../amounts.js";
import { nitrogenFigure } from "../figure-words.js";
import { sureOf, type Sheet } from "../made.js";
import { asOf, nextFree } from "../next-free.js";
import { costWords, type Notes, type SumNote } from "../notes.js";
import { shutGround, shutWords } from "../shut-ground.js";
import { escaped } from "./svg.js";

/** All that the drawings say, as tables and lists for screen and screen reader. */
export function twin(sheet: Sheet, notes: Notes, words: Words): string {
  return `<div class="twin">${[stays(sheet, words), ground(sheet, words), shut(sheet, words), prices(sheet, notes, words), cautions(sheet, words)].join("\n")}</div>`;
}

function section(id: string, title: string, body: string): string {
  return `<section aria-labelledby="${id}"><h2 id="${id}">${escaped(title)}</h2>${body}</section>`;
}

function table(caption: string, heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const head = heads.map((one) => `<th scope="col">${escaped(one)}</th>`).join("");
  const body = rows.map(([first, ...others]) => `<tr><th scope="row">${escaped(first!)}</th>${others.map((one) => `<td>${escaped(one)}</td>`).join("")}</tr>`).join("\n");
  return `<table><caption>${escaped(caption)}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table>`;
}

function list(kind: "ol" | "ul", items: readonly string[], words: Words): string {
  return items.length === 0 ? `<p>${escaped(words.say("season.none"))}</p>` : `<${kind}>${items.map((item) => `<li>${escaped(item)}</li>`).join("")}</${kind}>`;
}

function stays({ scenario, plan, made }: Sheet, words: Words): string {
  const rank = new Map([...scenario.cells, ...scenario.yards].map((place, i) => [place.name, i]));
  const sure = (day: IsoDate): string => (sureOf(day, made) === "outline" ? words.say("sure.outline-will") : words.say(`sure.${sureOf(day, made)}`));
  const rows = [...plan.stays]
    .sort((a, b) => rank.get(a.cell ?? a.yard!)! - rank.get(b.cell ?? b.yard!)! || a.firstDay.localeCompare(b.firstDay))
    .map(({ cell, yard, group, firstDay, lastDay }) =>
      [cell ?? yard!, words.weekdayDay(firstDay), words.weekdayDay(lastDay), words.figure(daysBetween(firstDay, lastDay) + 1), group, sure(firstDay)]);
  const cuts = plan.cuts.map(({ cell, day, cut }) =>
    [cell, words.weekdayDay(day), words.weekdayDay(day), "1", cut === "hay" ? words.say("season.cut-for-hay") : words.say("season.topped"), sure(day)]);
  const heads = [words.say("head.cell"), words.say("head.from"), words.say("head.to"), words.say("head.days"), words.say("head.group"), words.say("head.sure")];
  return section("stays", words.say("season.stays"), table(words.say("season.stays-words"), heads, [...rows, ...cuts]));
}

function ground(sheet: Sheet, words: Words): string {
  const { scenario, report } = sheet;
  const nitrogen = (name: string): string =>
    words.say("season.nitrogen-about", { figure: nitrogenFigure(report.cells.find((days) => days.cell === name)?.nitrogenKgPerHa ?? 0, scenario.units) });
  const rows = scenario.cells.map((cell) => [cell.name, cell.field, toldArea(cell.areaHa, scenario.units, words), nextFree(sheet, cell, words), nitrogen(cell.name)]);
  const heads = [words.say("head.cell"), words.say("head.field"), words.say("head.area"), words.say("head.next-free"), toldNitrogenUnit(scenario.units, words)];
  return section("ground", words.say("season.ground"), table(words.say("season.ground-words", { day: words.dayMonth(asOf(sheet)) }), heads, rows));
}

function shut(sheet: Sheet, words: Words): string {
  const rows = sheet.scenario.cells.flatMap((cell) =>
    shutGround(sheet, cell, words).map((span) => [cell.name, toldSpan(span.firstDay, span.lastDay, words), shutWords(span, words)]));
  return section("shut", words.say("season.shut"), table(words.say("season.shut-words"), [words.say("head.cell"), words.say("head.days"), words.say("head.why")], rows));
}

function prices(sheet: Sheet, { numbered, others, running }: Notes, words: Words): string {
  const { currency } = sheet.made;
  const right = numbered.filter((note) => note.black).map((note) => words.say("season.note-right", { number: note.number, note: note.text }));
  const priced = numbered.filter((note) => !note.black).map((note) => words.say("season.note-priced", { number: note.number, note: note.text }));
  const sum = (one: SumNote): string => words.say("season.sum", { what: one.words, times: one.times, money: roughMoney(one.money, currency, words) });
  const sums = [["season.others", others], ["season.running", running]] as const;
  const lists = sums.map(([key, of]) => `<h3>${escaped(words.say(key))}</h3>${list("ul", of.map(sum), words)}`).join("");
  return section("prices", words.say("season.prices"), `<p>${escaped(costWords(sheet, words))}</p>${list("ul", [...right, ...priced], words)}${lists}`);
}

function cautions(sheet: Sheet, words: Words): string {
  const items = cautionsFor(sheet.scenario, sheet.plan).map((caution) => datedCaution(words, caution));
  return section("cautions", words.say("season.cautions"), list("ul", items, words));
}
