/** Plans the largest farm that may be written, in a process of its own so that its memory is its own; says what came of it as one line. */
import { setEnvironmentData } from "node:worker_threads";
import { checkPlan } from "../../src/check/check-plan.js";
import { planSeason } from "../../src/decide/plan-season.js";
import { daysBetween } from "../../src/quantity/calendar.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { nodeThreads } from "../../src/threads/node-threads.js";
import { scenarioOf } from "../farm/read-text.js";
import { largestFarm } from "./farms.js";

const SECONDS = 12;

setEnvironmentData("fault", "none");
const scenario = scenarioOf(largestFarm());
const threads = nodeThreads(new URL("../threads/faulty-worker.mjs", import.meta.url));
const steps = { seeds: 1, search: 2000, polishes: 1, bound: 2, windowRounds: 0 };
const effort = { name: "quick", seed: 1, capSeconds: SECONDS, steps } as const;
const { kind, plan, cost, bound, handRuleCost, notes } = await planSeason(scenario, { threads, solver: highsSolver() }, effort, () => undefined, { asked: false });
const days = plan.stays.reduce((sum, stay) => sum + daysBetween(stay.firstDay, stay.lastDay) + 1, 0);
const size = [scenario.cells.length, scenario.groups.length, daysBetween(scenario.season.firstDay, scenario.season.lastDay) + 1];
const breaches = checkPlan(scenario, plan).breaches.length;
const rssMb = Math.round(process.resourceUsage().maxRSS / 1024);
process.stdout.write(JSON.stringify({ kind, size, days, breaches, cheaper: cost <= handRuleCost, below: bound <= cost, notes, rssMb }));
