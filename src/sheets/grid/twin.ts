import { cautionsFor } from "../../plan/cautions.js";
import { daysBetween } from "../../quantity/calendar.js";
import { spanWords, weekdayMonth, dayMonth } from "../day-words.js";
import { aboutMoney, areaWords, nitrogenFigure, nitrogenUnit } from "../figure-words.js";
import { SURE_WORDS, sureOf, type Sheet } from "../made.js";
import { asOf, nextFree } from "../next-free.js";
import { costWords, type Notes, type SumNote } from "../notes.js";
import { shutGround, shutWords } from "../shut-ground.js";
import { escaped } from "./svg.js";

/** All that the drawings say, as tables and lists for screen and screen reader. */
export function twin(sheet: Sheet, notes: Notes): string {
  return `<div class="twin">${[stays(sheet), ground(sheet), shut(sheet), prices(sheet, notes), cautions(sheet)].join("\n")}</div>`;
}

function section(id: string, title: string, body: string): string {
  return `<section aria-labelledby="${id}"><h2 id="${id}">${escaped(title)}</h2>${body}</section>`;
}

function table(caption: string, heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const head = heads.map((one) => `<th scope="col">${escaped(one)}</th>`).join("");
  const body = rows.map(([first, ...others]) => `<tr><th scope="row">${escaped(first!)}</th>${others.map((one) => `<td>${escaped(one)}</td>`).join("")}</tr>`).join("\n");
  return `<table><caption>${escaped(caption)}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table>`;
}

function list(kind: "ol" | "ul", items: readonly string[]): string {
  return items.length === 0 ? "<p>None.</p>" : `<${kind}>${items.map((item) => `<li>${escaped(item)}</li>`).join("")}</${kind}>`;
}

function stays({ scenario, plan, made }: Sheet): string {
  const rank = new Map([...scenario.cells, ...scenario.yards].map((place, i) => [place.name, i]));
  const rows = [...plan.stays]
    .sort((a, b) => rank.get(a.cell ?? a.yard!)! - rank.get(b.cell ?? b.yard!)! || a.firstDay.localeCompare(b.firstDay))
    .map(({ cell, yard, group, firstDay, lastDay }) =>
      [cell ?? yard!, weekdayMonth(firstDay), weekdayMonth(lastDay), String(daysBetween(firstDay, lastDay) + 1), group, SURE_WORDS[sureOf(firstDay, made)]]);
  const cuts = plan.cuts.map((cut) => [cut.cell, weekdayMonth(cut.day), weekdayMonth(cut.day), "1", cut.cut === "hay" ? "cut for hay" : "topped", SURE_WORDS[sureOf(cut.day, made)]]);
  return section("stays", "Who stands where", table("Every stay and cut of the season, by cell.", ["Cell", "From", "To", "Days", "Group", "How sure"], [...rows, ...cuts]));
}

function ground(sheet: Sheet): string {
  const { scenario, report } = sheet;
  const nitrogen = (name: string): string => `about ${nitrogenFigure(report.cells.find((days) => days.cell === name)?.nitrogenKgPerHa ?? 0, scenario.units)}`;
  const rows = scenario.cells.map((cell) => [cell.name, cell.field, areaWords(cell.areaHa, scenario.units), nextFree(sheet, cell), nitrogen(cell.name)]);
  return section("ground", "Ground", table(`Next free as of ${dayMonth(asOf(sheet))}.`, ["Cell", "Field", "Area", "Next free", nitrogenUnit(scenario.units)], rows));
}

function shut(sheet: Sheet): string {
  const rows = sheet.scenario.cells.flatMap((cell) => shutGround(sheet, cell).map((span) => [cell.name, spanWords(span.firstDay, span.lastDay), shutWords(span)]));
  return section("shut", "Ground left alone", table("Closed ground, and ground that pigs or birds worked.", ["Cell", "Days", "Why"], rows));
}

function prices(sheet: Sheet, { numbered, others, running }: Notes): string {
  const { currency } = sheet.made;
  const right = numbered.filter((note) => note.black).map((note) => `To put right, number ${note.number}. ${note.text}`);
  const priced = numbered.filter((note) => !note.black).map((note) => `Allowed at a price, number ${note.number}. ${note.text}`);
  const sum = (one: SumNote): string => `${one.words}${one.times > 1 ? `, ${one.times} times` : ""}: ${aboutMoney(one.money, currency)}`;
  const sums = `<h3>Others</h3>${list("ul", others.map(sum))}<h3>Running costs</h3>${list("ul", running.map(sum))}`;
  return section("prices", "Prices", `<p>${escaped(costWords(sheet))}</p>${list("ul", [...right, ...priced])}${sums}`);
}

function cautions(sheet: Sheet): string {
  const items = cautionsFor(sheet.scenario, sheet.plan).map(({ text, days }) => `${text}${days ? ` ${spanWords(days.firstDay, days.lastDay)}.` : ""}`);
  return section("cautions", "Cautions", list("ul", items));
}
