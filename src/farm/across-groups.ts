import { spanHolds } from "../quantity/calendar.js";
import { rowOf } from "../science/tables.js";
import { tooSmall } from "./across-land.js";
import { spansInWords } from "./across-people.js";
import { note, say, type Desk } from "./desk.js";
import { daysOf } from "./read-days.js";
import type { Pen } from "./read-pens.js";
import { figureOf, useOf, type Group, type Scenario } from "./scenario.js";
import { child, entriesOf, type MapNode, type Place } from "./tree.js";

/** Faults that show only when groups are laid beside one another, their pens and the farm's kit. */
export function checkGroups(desk: Desk, root: MapNode, scenario: Scenario, pens: readonly Pen[]): void {
  for (const group of scenario.groups) {
    const entry = entriesOf(child(root, "groups")).find((e) => e.key === group.name)!;
    const at = (key: string): Place => child(entry.value, key) ?? entry.at;
    checkCircle(desk, scenario, group, "follows", (g) => g.follows, at("follows"));
    checkCircle(desk, scenario, group, "runs-with", (g) => g.runsWith?.with ?? null, at("runs-with"));
    checkHost(desk, scenario, group, at("runs-with"));
    if (group.kind === "pigs") checkPressure(desk, scenario, group, at("strip"));
    const pen = pens.find((p) => p.name === group.strip?.pen);
    if (pen) checkPen(desk, scenario, group, pen);
    const small = tooSmall(scenario, group);
    if (small.length > 0) {
      note(desk, entry.at, { code: "cell-small", found: `${group.name}: ${small.join(", ")} cannot feed them for one whole day`, allowed: "stays are whole days", next: "put two cells together" });
    }
  }
}

function checkCircle(desk: Desk, scenario: Scenario, group: Group, key: string, next: (group: Group) => string | null, at: Place): void {
  const names = [group.name];
  for (let name = next(group); name !== null; ) {
    if (names.includes(name)) {
      // Said once, at the first of the circle in farm order.
      const ring = names.slice(names.indexOf(name));
      if (scenario.groups.find((g) => ring.includes(g.name)) !== group) return;
      say(desk, at, { code: "circle", found: `${[...ring, name].join(` ${key} `)}`, allowed: "one of them goes first", next: `take ${key} out of one` });
      return;
    }
    names.push(name);
    const other = scenario.groups.find((g) => g.name === name);
    name = other ? next(other) : null;
  }
}

/** The group that another runs with must be here on those days, and go its own way. */
function checkHost(desk: Desk, scenario: Scenario, group: Group, at: Place): void {
  const host = scenario.groups.find((g) => g.name === group.runsWith?.with);
  if (!host || host.runsWith?.with === group.name) return;
  const together = group.runsWith!.days.flatMap(daysOf).filter((day) => group.here.some((span) => spanHolds(span, day)));
  const away = together.filter((day) => !host.here.some((span) => spanHolds(span, day)));
  if (away.length > 0) {
    say(desk, at, { code: "host-away", found: `${group.name} runs with ${host.name}, which is not here on ${spansInWords(away)}`, allowed: "groups run together while both are here", next: "write runs-with: { group: ..., days: ... }" });
  }
  const led = host.runsWith?.days.flatMap(daysOf).find((day) => together.includes(day));
  if (led !== undefined) {
    say(desk, at, { code: "host-led", found: `${group.name} runs with ${host.name}, which itself runs with ${host.runsWith!.with}`, allowed: "a group runs with one that goes its own way", next: `write runs-with: ${host.runsWith!.with}` });
  }
}

/** Pigs on their strip for its whole days. */
function checkPressure(desk: Desk, scenario: Scenario, group: Group, at: Place): void {
  if (!group.strip || useOf(scenario, "pig-pressure", null, group.name) === "off") return;
  const most = figureOf(scenario, "pig-pressure", "most", null, group.name) ?? Infinity;
  const pressure = (group.head * group.strip.days) / group.strip.areaHa;
  if (!(pressure > most * (1 + 1e-9))) return;
  const m2 = Math.ceil(((group.head * group.strip.days) / most) * 10_000);
  say(desk, at, { code: "pigs-crowded", found: `${group.name}: ${group.strip.days} d on ${Math.round(group.strip.areaHa * 10_000)} m2 are ${Math.round(pressure)} pig-days/ha`, allowed: `at most ${most} pig-days/ha`, next: `write strip: ${m2} m2` });
}

function checkPen(desk: Desk, scenario: Scenario, group: Group, pen: Pen): void {
  checkCrowd(desk, group, pen);
  const owned = scenario.kit.nets;
  if (owned !== null && pen.strip.nets > owned) {
    const node = child(pen.node, "net") ?? pen.at;
    say(desk, node, { code: "net-short", found: `${pen.name} needs ${pen.strip.nets} ${pen.strip.nets === 1 ? "net" : "nets"} at once, the farm has ${owned}`, allowed: "nets in use are nets owned", next: "make the net shorter, or write more under kit" });
  }
  if (useOf(scenario, "pen-steps", null, group.name) === "off") return;
  const [least, most] = ["least-step", "most-step"].map((key) => figureOf(scenario, "pen-steps", key, null, group.name) ?? 0) as [number, number];
  if (pen.strip.days < least || pen.strip.days > most) {
    say(desk, child(pen.node, "step") ?? pen.at, { code: "out-of-reach", found: `${pen.name}: step is ${pen.strip.days} d`, allowed: `rule pen-steps has ${least} to ${most} d`, next: `write ${Math.min(most, Math.max(least, pen.strip.days))} d` });
  }
}

/** Ground a bird: in a pen its floor, in a net the ground inside. */
function checkCrowd(desk: Desk, group: Group, pen: Pen): void {
  const { poultry } = desk.tables;
  const inNet = pen.strip.nets > 0 && group.kind !== "broilers";
  const row = rowOf(poultry, inNet ? "layers.in-use" : "pen-floor");
  const each = (pen.strip.areaHa * 10_000) / group.head;
  if (!(each < row.value - 1e-9)) return;
  const most = Math.floor((pen.strip.areaHa * 10_000) / row.value + 1e-9);
  const next = inNet ? `keep ${most}, or a longer net: ${Math.ceil((4 * Math.sqrt(row.value * group.head)) / 10) * 10} m` : `keep ${most}, or write count: ${Math.ceil(group.head / Math.max(1, most))}`;
  say(desk, child(pen.node, inNet ? "net" : "size") ?? pen.at, { code: "birds-crowded", found: `${pen.name}: ${group.head} ${group.kind} have ${each.toFixed(2)} m2 each`, allowed: `each has ${row.value} m2 at least`, next });
}
