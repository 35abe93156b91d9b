import { line, mm, text } from "../grid/svg.js";
import { fittingPt } from "../fit.js";
import { HELD_FAMILY } from "../held-fonts.js";
import type { GroundPlan, MarkRoom, PlannedCell, PlannedName, Point } from "./planned-ground.js";
import { marksAt, marksFit, titled, type Mark } from "./marks-in-cell.js";

/** What the map tells beside the ground. */
export interface OnMap {
  readonly title: string;
  readonly yard: string;
  /** By cell: letters of the groups that stand there, numbers of the tasks there; of the yard under null. */
  readonly marks: ReadonlyMap<string | null, readonly Mark[]>;
  /** Cells to be left alone. */
  readonly shut: readonly string[];
  /** Cells in the order in which they are come to, null for the yard; drawn only on a map of true shapes. */
  readonly way: readonly (string | null)[];
  /** Field of a cell. */
  readonly fieldOf: (cell: string) => string;
}

/** The farm's ground with tasks, animals and shut ground on it; size in mm is the plan's. */
export function mapDrawing(plan: GroundPlan, told: OnMap, id: string): string {
  const { w, h } = plan;
  return [
    `<svg class="ground-map" viewBox="0 0 ${mm(w)} ${mm(h)}" style="width:${mm(w)}mm;height:${mm(h)}mm" role="img" aria-labelledby="${id}">`,
    titled(told.title, id),
    ...plan.cells.map(outline),
    ...plan.cells.filter(({ name }) => told.shut.includes(name)).map(wire),
    ...plan.fields.map(fieldName),
    ...(plan.mmPerM === null ? [] : [...Object.values(plan.gates).map(gate), way(plan, told)]),
    ...marked(plan, told).map(({ room, marks }) => marksAt(room, marks)),
    "</svg>",
  ].join("");
}

/** Whether everything on it can be read. */
export function isReadable(plan: GroundPlan, told: OnMap): boolean {
  return marked(plan, told).every(({ room, marks }) => marksFit(room, marks));
}

function marked(plan: GroundPlan, told: OnMap): readonly { readonly room: MarkRoom; readonly marks: readonly Mark[] }[] {
  const cells = plan.cells.map(({ name, at, room }) => ({ room: { at, ...room, from: "middle" as const }, marks: [{ kind: "name" as const, words: name }, ...(told.marks.get(name) ?? [])] }));
  return [...cells, { room: plan.yard, marks: [{ kind: "name", words: told.yard }, ...(told.marks.get(null) ?? [])] }];
}

function outline({ rings }: PlannedCell): string {
  const d = rings.map((ring) => `M${ring.map(([x, y]) => `${mm(x)} ${mm(y)}`).join("L")}z`).join("");
  return `<path class="stroke" stroke-width=".3" fill-rule="evenodd" d="${d}"/>`;
}

/** Shut ground: a level wire with barbs below its name. */
function wire({ at: [x, y], room: { w, h } }: PlannedCell): string {
  const [half, low] = [Math.max(1, w / 2 - 0.5), y + Math.min(h / 2 - 0.7, 2.6)];
  const count = Math.max(2, Math.round((2 * half) / 2));
  const barbs = Array.from({ length: count }, (_, i) => x - half + ((i + 0.5) * 2 * half) / count).map((at) => `M${mm(at - 0.4)} ${mm(low - 0.4)}l.8 .8M${mm(at - 0.4)} ${mm(low + 0.4)}l.8 -.8`).join("");
  return `${line(x - half, low, x + half, low, 'class="stroke" stroke-width=".2"')}<path class="stroke" stroke-width=".2" d="${barbs}"/>`;
}

const FIELD_PT = 7;
const LEAST_PT = 5;

function fieldName({ name, at: [x, y], anchor, room }: PlannedName): string {
  return text(x, y, name, { pt: fittingPt(name, room, FIELD_PT, LEAST_PT), anchor, as: "ink", room });
}

function gate([x, y]: Point): string {
  return `<rect class="framed" stroke-width=".25" x="${mm(x - 0.7)}" y="${mm(y - 0.7)}" width="1.4" height="1.4"/>`;
}

/** Dashes from yard to gate to cell, in the order walked; each stretch once, or dashes would fill each other. */
function way(plan: GroundPlan, { way: over, fieldOf }: OnMap): string {
  const cellAt = (name: string): Point => plan.cells.find((cell) => cell.name === name)!.at;
  const gateOf = (name: string): Point | undefined => plan.gates[name] ?? plan.gates[fieldOf(name)];
  const points = over.flatMap((name, i): readonly Point[] => {
    if (name === null) return [plan.yard.at];
    const [last, next] = [over[i - 1] ?? null, over[i + 1] ?? null];
    const gates = gateOf(name);
    const comes = gates && (last === null || fieldOf(last) !== fieldOf(name)) ? [gates] : [];
    const goes = gates && (next === null || fieldOf(next) !== fieldOf(name)) ? [gates] : [];
    return [...comes, cellAt(name), ...goes];
  });
  const stretches = points.slice(1).map((to, i) => [points[i]!, to].map(([x, y]) => `${mm(x)} ${mm(y)}`).sort().join("L"));
  return stretches.length === 0 ? "" : `<path class="stroke" stroke-width=".3" stroke-dasharray="1 .8" d="${[...new Set(stretches)].map((one) => `M${one}`).join("")}"/>`;
}

/** Style of the map: pure black on white. */
export const MAP_CSS = `.ground-map{display:block;font-family:${HELD_FAMILY}}
.ground-map .stroke{fill:none;stroke:#000}.ground-map .white{fill:#fff}.ground-map .framed{fill:#fff;stroke:#000}.ground-map text{fill:#000}`;
