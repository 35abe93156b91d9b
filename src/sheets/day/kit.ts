import { isGrazer } from "../../farm/scenario.js";
import type { Job } from "../../work/job.js";
import type { Day } from "./context.js";

/** Where the fence kit of a set comes from, and where that of a cell left goes: each set takes what was fetched first, else from where kit lies. */
export interface KitRun {
  /** Fetched for a set, by the set's id; none where it comes from where kit lies. */
  readonly fetchedFor: ReadonlyMap<string, Job>;
  /** Set that a fetched kit is for, by the fetching's id; none where no set needs it. */
  readonly setOf: ReadonlyMap<string, Job>;
}

/** Follows kit through the season, each group's its own. */
export function kitRun({ season, scenario }: Day): KitRun {
  const fetchedFor = new Map<string, Job>();
  const setOf = new Map<string, Job>();
  for (const { name, kind } of scenario.groups) {
    if (!isGrazer(kind)) continue;
    const free: Job[] = [];
    for (const job of season.flatMap(({ jobs }) => jobs).filter((one) => one.group === name)) {
      if (job.kind === "collect") free.push(job);
      if (job.kind !== "set") continue;
      const fetched = free.shift();
      if (!fetched) continue;
      fetchedFor.set(job.id, fetched);
      setOf.set(fetched.id, job);
    }
  }
  return { fetchedFor, setOf };
}
