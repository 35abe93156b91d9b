import { LineCounter, isMap, isPair, isScalar, parseDocument, type Document } from "yaml";
import { z } from "zod";
import { inFileOrder, type Finding, type Result } from "../farm/finding.js";
import { listOr, nearNames } from "../farm/near-names.js";
import type { Scenario } from "../farm/scenario.js";
import { otherFile } from "./other-file.js";
import type { PlanFile } from "./plan-file.js";
import type { Stay } from "./plan.js";

const name = z.string().min(1);
const day = z.iso.date();
const dayCounts = z.record(z.string(), z.number().nonnegative());
const stayShape = z.strictObject({
  group: name, cell: name.optional(), yard: name.optional(), "first-day": day, "last-day": day,
  positions: z.string().regex(/^\d+(-\d+)?$/).optional(), held: name.optional(),
});

/** The shape of plan.json. What lies between two keys (days in order, one place, names of the farm) is asked after it. */
export const planFileShape = z.strictObject({
  inbye: z.literal("plan 1"), farm: name, version: z.int().positive(), replaces: z.int().positive().nullable(),
  "made-on": day, "firm-to": day, "likely-to": day, "farm-print": name,
  "farm-file": z.record(z.string(), z.unknown()).optional().meta({ description: "the farm file in long form, as it was when this plan was made" }), changes: z.array(z.string()),
  stays: z.array(stayShape),
  cuts: z.array(z.strictObject({ cell: name, cut: z.enum(["hay", "topping"]), day, held: name.optional() })),
  measures: z.record(z.string(), z.string()), charges: z.record(z.string(), z.string()), cost: z.string(),
  bound: z.string().nullable(), "hand-rule": z.string().nullable(),
  "yard-days": z.strictObject({ dry: dayCounts, usual: dayCounts, wet: dayCounts }).nullable(),
  assumed: z.array(z.strictObject({ key: z.string(), value: z.string(), source: z.string(), status: z.string() })),
});
type Written = z.infer<typeof planFileShape>;

/** The text with its places, so that a finding can point at a line. */
interface Source {
  readonly file: string;
  readonly document: Document.Parsed;
  readonly lines: LineCounter;
}

/**
 * Reads plan.json.
 *
 * @param text the whole file
 * @param file its name, for findings
 * @param scenario when given, groups, cells and yards must be this farm's
 */
export function readPlanFile(text: string, file: string, scenario: Scenario | null = null): Result<PlanFile> {
  const lines = new LineCounter();
  const source = { file, document: parseDocument(text, { lineCounter: lines, schema: "json", strict: true, uniqueKeys: true }), lines };
  const other = otherFile(text, file);
  if (other) return { ok: false, findings: [other] };
  const broken = layoutFindings(source, text);
  if (broken.length > 0) return { ok: false, findings: broken };
  const read = planFileShape.safeParse(source.document.toJS());
  if (!read.success) return { ok: false, findings: inFileOrder(read.error.issues.map((issue) => shapeFinding(source, issue))) };
  const unknown = scenario ? nameFindings(source, read.data, scenario) : [];
  const stranger = scenario && read.data.farm !== scenario.farm ? strangerFinding(source, read.data, scenario) : null;
  if (stranger && unknown.length > 0) return { ok: false, findings: [stranger] };
  const findings = [...stayFindings(source, read.data), ...unknown];
  return findings.length > 0 ? { ok: false, findings: inFileOrder(findings) } : { ok: true, value: planFileOf(read.data), notes: stranger ? [stranger] : [] };
}

/** The plan of another farm: a finding where its names differ, and a note where all of them are there, as after a new name for the farm. */
function strangerFinding(source: Source, written: Written, scenario: Scenario): Finding {
  const found = `this plan is for ${written.farm}, the farm file is of ${scenario.farm}`;
  return findingAt(source, offsetOf(source, ["farm"]), "other-farm", found, "a plan is judged against the farm that it was made for", `name the farm file of ${written.farm}, or a plan of ${scenario.farm}`);
}

/** JSON's own reader says whether the text is JSON; the reader of YAML also sees a key written twice. */
function layoutFindings(source: Source, text: string): readonly Finding[] {
  const mend = ["JSON as inbye writes it", "mend the line, or plan again"] as const;
  try {
    JSON.parse(text);
  } catch (error) {
    const told = /position (\d+)/.exec(String(error))?.[1] ?? (/end of JSON/.test(String(error)) ? text.length : undefined);
    const offset = Number(told ?? source.document.errors[0]?.pos[0] ?? 0);
    return [findingAt(source, offset, "layout", "here the file stops being JSON", ...mend)];
  }
  return source.document.errors.map((error) => findingAt(source, error.pos[0], "layout", lowerFirst(error.message.split("\n")[0]!.replace(/ at line .*$/, "")), ...mend));
}

function lowerFirst(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}

function findingAt(source: Source, offset: number, code: string, found: string, allowed: string, next: string): Finding {
  const { line, col } = source.lines.linePos(offset);
  return { file: source.file, line: Math.max(1, line), column: Math.max(1, col), code, found, allowed, next };
}

/** Where a path begins in the text; a key that is not there begins where its map begins. */
function offsetOf(source: Source, path: readonly PropertyKey[]): number {
  for (let length = path.length; length >= 0; length -= 1) {
    const parent = length === 0 ? source.document.contents : source.document.getIn(path.slice(0, length - 1), true);
    if (length > 0 && isMap(parent)) {
      const pair = parent.items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === path[length - 1]);
      if (pair && isScalar(pair.key)) return pair.key.range?.[0] ?? 0;
    }
    const node = source.document.getIn(path.slice(0, length), true);
    if (node !== undefined && node !== null && typeof node === "object" && "range" in node) return (node.range as number[] | null)?.[0] ?? 0;
  }
  return 0;
}

function shapeFinding(source: Source, issue: z.core.$ZodIssue): Finding {
  const extra = issue.code === "unrecognized_keys" ? issue.keys[0] : undefined;
  const path = extra === undefined ? issue.path : [...issue.path, extra];
  const where = path.map(String).join(" ") || "the file";
  const code = extra === undefined ? "plan-form" : "key-unknown";
  const missing = source.document.getIn(path, true) === undefined;
  const found = extra !== undefined ? `${where}: no such key in a plan` : missing ? `${where} is missing` : `${where}: ${issue.message.toLowerCase()}`;
  return findingAt(source, offsetOf(source, path), code, found, "a plan as inbye writes it", "mend it, or plan again");
}

function stayFindings(source: Source, written: Written): Finding[] {
  return written.stays.flatMap((stay, i) => {
    const at = offsetOf(source, ["stays", i]);
    const findings: Finding[] = [];
    if ((stay.cell === undefined) === (stay.yard === undefined)) findings.push(findingAt(source, at, "one-place", `a stay of ${stay.group} names ${stay.cell === undefined ? "no place" : "a cell and a yard"}`, "a cell or a yard", "take one of the two out, or add one"));
    if (stay["last-day"] < stay["first-day"]) findings.push(findingAt(source, at, "days-reversed", `a stay of ${stay.group} ends before it begins`, "first day before last day", `"first-day": "${stay["last-day"]}", "last-day": "${stay["first-day"]}"?`));
    return findings;
  });
}

/** Each name that the farm does not have, at its first stay. */
function nameFindings(source: Source, written: Written, scenario: Scenario): Finding[] {
  const known = { group: scenario.groups, cell: scenario.cells, yard: scenario.yards };
  const asked = [...written.stays.map((stay, i) => ({ stay, path: ["stays", i] })), ...written.cuts.map((cut, i) => ({ stay: { cell: cut.cell }, path: ["cuts", i] }))];
  const said = new Set<string>();
  return asked.flatMap(({ stay, path }) =>
    (["group", "cell", "yard"] as const).flatMap((what) => {
      const typed = (stay as Partial<Record<typeof what, string>>)[what];
      const names = known[what].map((one) => one.name);
      if (typed === undefined || names.includes(typed) || said.has(`${what} ${typed}`)) return [];
      said.add(`${what} ${typed}`);
      const near = nearNames(typed, names);
      return [findingAt(source, offsetOf(source, [...path, what]), "name-unknown", `${scenario.farm} has no ${what} ${typed}`, `${what}: ${names.join(", ")}`, near.length > 0 ? `${listOr(near)}?` : "was the plan made for another farm?")];
    }));
}

function planFileOf(written: Written): PlanFile {
  const stays = written.stays.map((stay): Stay => ({ group: stay.group, cell: stay.cell ?? null, yard: stay.yard ?? null, firstDay: stay["first-day"], lastDay: stay["last-day"] }));
  return {
    farm: written.farm, version: written.version, replaces: written.replaces, madeOn: written["made-on"], firmTo: written["firm-to"],
    likelyTo: written["likely-to"], farmPrint: written["farm-print"],
    farmForm: written["farm-file"] === undefined ? null : JSON.stringify(written["farm-file"]), changes: written.changes,
    plan: { stays, cuts: written.cuts.map(({ cell, cut, day: on }) => ({ cell, cut, day: on })) },
    measures: written.measures, charges: written.charges, cost: written.cost, bound: written.bound, handRule: written["hand-rule"],
    yardDays: written["yard-days"], assumed: written.assumed,
  };
}
