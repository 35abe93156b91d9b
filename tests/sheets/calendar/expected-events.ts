import type { Scenario } from "../../../src/farm/scenario.js";
import type { Plan, Stay } from "../../../src/plan/plan.js";
import { addDays, daysBetween } from "../../../src/quantity/calendar.js";

/** What is known of Withy End's groups from its farm file: cows and pigs are fenced, the layers' house is towed every so many days, broilers step daily. */
const FENCED = ["Cows", "Pigs"];
const TOWED = "Layers";

/** "2027-04-12 Cows H3 → F1": the events of a plan of Withy End, counted from its stays alone. */
export function expectedOf(scenario: Scenario, { stays, cuts }: Plan): string[] {
  const { firstDay, lastDay } = scenario.season;
  const walks = Array.from({ length: daysBetween(firstDay, lastDay) + 1 }, (_, i) => i).filter((i) => i > 0 && i % 7 === 0);
  return [
    ...stays.flatMap((stay) => ofStay(scenario, stays, stay)),
    ...cuts.map(({ day, cell, cut }) => `${day} ${cut === "hay" ? `Mow ${cell} (hay)` : `Top ${cell}`}`),
    ...walks.map((i) => `${addDays(firstDay, i)} Walk: look at the grass of every cell`),
  ].sort();
}

function ofStay({ season, groups }: Scenario, stays: readonly Stay[], stay: Stay): string[] {
  const { group, cell, firstDay, lastDay } = stay;
  const place = (one: Stay): string => (one.cell ?? one.yard)!;
  const own = stays.filter((one) => one.group === group);
  const was = own.find((one) => one.lastDay === addDays(firstDay, -1));
  const stayed = was !== undefined && place(was) === place(stay);
  const comes = was === undefined && (firstDay > season.firstDay || cell !== null);
  const goes = lastDay < season.lastDay && !own.some((one) => one.firstDay === addDays(lastDay, 1));
  return [
    ...(was && !stayed ? [`${firstDay} ${group} ${place(was)} → ${place(stay)}`] : []),
    ...(comes ? [`${firstDay} ${group} come to ${place(stay)}`] : []),
    ...(goes ? [`${lastDay} ${group} leave, evening`] : []),
    ...(stayed ? [] : beforeAndAfter(stay, was)),
    ...onward(groups.find(({ name }) => name === group)?.strip?.days ?? 0, stays, stay),
  ];
}

/** Fence and water set the evening before, hens shut in for the tow, the cows' kit fetched afterwards. */
function beforeAndAfter({ group, cell, firstDay }: Stay, was: Stay | undefined): string[] {
  const evening = addDays(firstDay, -1);
  return [
    ...(FENCED.includes(group) && cell !== null ? [`${evening} Set ${cell} for ${group}, evening`] : []),
    ...(group === "Cows" && was?.cell ? [`${firstDay} Fetch kit from ${was.cell}`] : []),
    ...(group === TOWED && was ? [`${evening} ${group} shut in, dusk`] : []),
  ];
}

/** Steps of the house, each with the hens shut in before it; pigs' strips, numbered on over the season. */
function onward(every: number, stays: readonly Stay[], { group, cell, firstDay, lastDay }: Stay): string[] {
  if (cell === null || every < 2) return [];
  const days = (one: { firstDay: string; lastDay: string }): number => daysBetween(one.firstDay, one.lastDay) + 1;
  const before = stays.filter((one) => one.group === group && one.cell === cell && one.firstDay < firstDay).reduce((sum, one) => sum + Math.ceil(days(one) / every), 0);
  const steps = Array.from({ length: Math.ceil(days({ firstDay, lastDay }) / every) - 1 }, (_, i) => ({ day: addDays(firstDay, (i + 1) * every), number: before + i + 2 }));
  return steps.flatMap(({ day, number }) => (group === TOWED ? [`${day} Step ${group}`, `${addDays(day, -1)} ${group} shut in, dusk`] : [`${day} ${group}: strip ${number}`]));
}
