import { isGrazer, type Cell, type Group, type Scenario } from "../../farm/scenario.js";
import type { Breach } from "../../rules/rule.js";
import { changeText, keyText, type Sort } from "./way.js";

/** Shares of a middling cell that are tried as one more, and how many whole ones. */
const PARTS = [0.5, 1] as const;
const CELLS = [2, 3, 4] as const;

/** More cells like the middling one of those that the groups at fault may enter: half of one, one, and up to four. */
export function moreCells(scenario: Scenario, breaches: readonly Breach[]): Sort {
  const groups = atFault(scenario, breaches);
  const open = scenario.cells.filter((cell) => groups.some((group) => group.mayEnter.includes(cell.name)));
  const like = [...open].sort((a, b) => a.areaHa - b.areaHa || (a.name < b.name ? -1 : 1))[Math.floor(open.length / 2)];
  if (!like) return [];
  const sized = (areaHa: number, count: number) => ({
    words: `${count === 1 ? "one more cell" : `${count} more cells`} of ${areaHa.toFixed(2)} ha in ${like.field}, grass as in ${like.name}`,
    scenario: withCells(scenario, { ...like, areaHa }, count),
    change: null,
  });
  return [...PARTS.map((part) => sized(Math.round(like.areaHa * part * 100) / 100, 1)), ...CELLS.map((count) => sized(like.areaHa, count))];
}

function withCells(scenario: Scenario, like: Cell, count: number): Scenario {
  const fresh = Array.from({ length: count }, (_, i) => ({ ...like, name: `more ${i + 1}`, closed: [], past: [], pastNitrogen: [], boundary: null }));
  const names = fresh.map((cell) => cell.name);
  return {
    ...scenario,
    cells: [...scenario.cells, ...fresh],
    fields: scenario.fields.map((field) => (field.name === like.field ? { ...field, cells: [...field.cells, ...names] } : field)),
    groups: scenario.groups.map((group) => (group.mayEnter.includes(like.name) ? { ...group, mayEnter: [...group.mayEnter, ...names] } : group)),
  };
}

/** Ever fewer head of each group of grazers at fault. */
export function fewerHead(scenario: Scenario, breaches: readonly Breach[]): readonly Sort[] {
  return atFault(scenario, breaches).filter((group) => isGrazer(group.kind) && group.head > 1).map((group) =>
    countsBelow(group.head).map((fewer) => {
      const words = `${fewer} fewer head of ${group.name}`;
      return {
        words,
        scenario: { ...scenario, groups: scenario.groups.map((g) => (g === group ? withHead(g, g.head - fewer) : g)) },
        change: changeText(words, [`groups: { ${keyText(group.name)}: { head: ${group.head - fewer} } }`]),
      };
    }));
}

/** 1, 2, 3, 4, 6, 8, 12, ... below a count. */
function countsBelow(head: number): number[] {
  const counts: number[] = [];
  for (let n = 1; n < head; n += Math.max(1, 2 ** Math.floor(Math.log2(n)) / 2)) counts.push(Math.floor(n));
  return [...new Set(counts)];
}

/** A group of so many head, with no more young than that. */
function withHead(group: Group, head: number): Group {
  return { ...group, head, young: group.young && { ...group.young, head: Math.min(group.young.head, head) } };
}

/** Groups named where rules are broken; where none is, the grazers. */
function atFault(scenario: Scenario, breaches: readonly Breach[]): readonly Group[] {
  const named = scenario.groups.filter((group) => breaches.some((breach) => breach.group === group.name));
  return named.length > 0 ? named : scenario.groups.filter((group) => isGrazer(group.kind));
}
