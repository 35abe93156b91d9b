/** The largest farm that may be written is slow to plan, and planned all the same, in the memory of a small machine. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";
import { daysBetween } from "../../src/quantity/calendar.js";
import { scenarioOf } from "../farm/read-text.js";
import { largestFarm } from "./farms.js";

const MOST_MB = 1000;

it("a hundred cells, twelve groups and four hundred days", { timeout: 300_000 }, () => {
  const ran = spawnSync(process.execPath, ["--import", "tsx", join(import.meta.dirname, "plan-largest.ts")], { encoding: "utf8", cwd: join(import.meta.dirname, "../..") });
  expect({ status: ran.status, aside: ran.stderr }).toEqual({ status: 0, aside: "" });
  const said = JSON.parse(ran.stdout) as { days: number; rssMb: number };
  const here = scenarioOf(largestFarm()).groups.flatMap((group) => group.here).reduce((sum, span) => sum + daysBetween(span.firstDay, span.lastDay) + 1, 0);
  expect(said).toMatchObject({ kind: "plan", size: [100, 12, 400], days: here, breaches: 0, cheaper: true, below: true, notes: expect.any(Array) as unknown[] });
  expect(said.rssMb).toBeLessThan(MOST_MB);
  if (process.env["INBYE_COUNTS"]) process.stdout.write(`${ran.stdout}\n`);
});
