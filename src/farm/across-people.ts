import { spanHolds, weekdayOf, type IsoDate } from "../quantity/calendar.js";
import { say, type Desk } from "./desk.js";
import { daysOf } from "./read-days.js";
import { isBird, type Group, type Person, type Scenario } from "./scenario.js";
import { child, entriesOf, type MapNode, type Place } from "./tree.js";

/** Minutes that a person has on a day: none when away. */
export function minutesOn(person: Person, day: IsoDate): number {
  if (person.away.some((span) => spanHolds(span, day))) return 0;
  return person.minutesByDay[day] ?? person.minutesByWeekday[weekdayOf(day)]!;
}

/** Days with nobody, days too short for the chores alone, and moves that nobody can ever make. */
export function checkPeople(desk: Desk, root: MapNode, scenario: Scenario): void {
  const at: Place = entriesOf(root).find((entry) => entry.key === "people")?.at ?? root;
  const stocked = daysOf(scenario.season).filter((day) => groupsHere(scenario, day).length > 0);
  const minutes = (day: IsoDate): number => scenario.people.reduce((sum, person) => sum + minutesOn(person, day), 0);
  const empty = stocked.filter((day) => minutes(day) === 0);
  if (empty.length > 0) {
    say(desk, at, { code: "nobody-home", found: `nobody is at home on ${spansInWords(empty)}`, allowed: "every group is seen every day", next: "give somebody minutes on those days" });
  }
  checkChores(desk, scenario, at, stocked.filter((day) => minutes(day) > 0), minutes);
  checkMovers(desk, root, scenario, at, stocked);
}

function groupsHere(scenario: Scenario, day: IsoDate): readonly Group[] {
  return scenario.groups.filter((group) => group.here.some((span) => spanHolds(span, day)));
}

/** Minutes of the chores alone: the morning round, each group, birds at dusk. */
export function choresOn(scenario: Scenario, day: IsoDate): number {
  const here = groupsHere(scenario, day);
  if (here.length === 0) return 0;
  const own = here.filter((group) => !group.runsWith?.days.some((span) => spanHolds(span, day)));
  const figure = (key: string): number => scenario.rules.farm.people.figures[key] ?? 0;
  return figure("morning") + figure("each-group") * own.length + (here.some((group) => isBird(group.kind)) ? figure("dusk") : 0);
}

function checkChores(desk: Desk, scenario: Scenario, at: Place, days: readonly IsoDate[], minutes: (day: IsoDate) => number): void {
  if (scenario.rules.farm.people.use === "off") return;
  const short = days.filter((day) => choresOn(scenario, day) > minutes(day));
  if (short.length === 0) return;
  const worst = short.reduce((most, day) => (choresOn(scenario, day) - minutes(day) > choresOn(scenario, most) - minutes(most) ? day : most));
  say(desk, at, { code: "too-few-minutes", found: `the chores alone take longer than the people have on ${spansInWords(short)}`, allowed: `on ${worst} they take ${choresOn(scenario, worst)} min, there are ${minutes(worst)}`, next: `give ${choresOn(scenario, worst)} min or more on those days` });
}

function checkMovers(desk: Desk, root: MapNode, scenario: Scenario, at: Place, stocked: readonly IsoDate[]): void {
  const home = (day: IsoDate): readonly Person[] => scenario.people.filter((person) => minutesOn(person, day) > 0);
  const most = Math.max(0, ...stocked.map((day) => home(day).length));
  const tows = stocked.some((day) => home(day).some((person) => person.tows));
  for (const group of scenario.groups) {
    const entry = entriesOf(child(root, "groups")).find((e) => e.key === group.name)!;
    if (group.needsTow && !tows && most > 0) {
      say(desk, at, { code: "nobody-tows", found: `${group.name} goes by tow, and nobody tows`, allowed: "a towed pen needs somebody at home who tows", next: "write tows: yes for one of the people" });
    }
    if (group.peopleToMove > most && most > 0) {
      say(desk, entry.at, { code: "never-enough", found: `${group.name} needs ${group.peopleToMove} people to move, and there are never more than ${most}`, allowed: "a move needs its people at home on one day", next: `write people-to-move: ${most} if that is safe, or give somebody else minutes` });
    }
  }
}

/** "2027-05-03 to 2027-05-09, 2027-06-01 and 14 days more". */
export function spansInWords(days: readonly IsoDate[]): string {
  const spans: [IsoDate, IsoDate][] = [];
  for (const day of days) {
    const last = spans.at(-1);
    if (last && Date.parse(day) - Date.parse(last[1]) === 86_400_000) last[1] = day;
    else spans.push([day, day]);
  }
  const words = spans.slice(0, 3).map(([a, b]) => (a === b ? a : `${a} to ${b}`));
  return spans.length > 3 ? `${words.join(", ")} and ${spans.length - 3} more times` : words.join(", ");
}
