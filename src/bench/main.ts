import { mkdirSync, writeFileSync } from "node:fs";
import { arch, availableParallelism, loadavg, platform, totalmem } from "node:os";
import { parseArgs } from "node:util";
import { columnsOf } from "../cli/table.js";
import { apart, handBack, type Task } from "./apart.js";
import { FARM_SETS, farmOf, farmsIn, SIZE, sizeWords, USUAL_SETS } from "./farms.js";
import { GROWN, GROWTH_STEPS, growthOf, type Growth } from "./growth.js";
import { measured, type FarmMeasured, type Measured } from "./measured.js";
import { alongTable, farmTable, growthTable, markdown, type Table } from "./tables.js";
import { WAYS, type Settings } from "./ways.js";

const USAGE = `npm run bench [-- --farms T,S,M,L,XL,scenarios,12/3/90] [--all] [--seconds 60] [--effort quick|usual|long] [--no-growth]
`;

interface Asked extends Settings {
  readonly sets: readonly string[];
  readonly growth: boolean;
}

function asked(): Asked {
  const { values } = parseArgs({
    options: { farms: { type: "string" }, all: { type: "boolean" }, seconds: { type: "string" }, effort: { type: "string" }, "no-growth": { type: "boolean" } },
  });
  const sets = values.all ? FARM_SETS : (values.farms?.split(",") ?? USUAL_SETS);
  const seconds = Number(values.seconds ?? 60);
  const effort = (["quick", "usual", "long"] as const).find((name) => name === (values.effort ?? "usual"));
  const unknown = sets.filter((name) => !FARM_SETS.includes(name) && !SIZE.test(name));
  if (unknown.length > 0 || !(seconds > 0) || !effort) throw new Error(`${unknown.length > 0 ? `no farms are called ${unknown.join(", ")}` : "seconds or effort is wrong"}\n${USAGE}`);
  return { sets, seconds, effort, growth: !values["no-growth"] };
}

/** Seconds that any one process may take before it is ended: solvers do not always mind their limit. */
const MOST_SECONDS = 3600;
const GRACE_SECONDS = 60;

async function measureFarm(farm: string, { effort, seconds }: Settings): Promise<FarmMeasured> {
  const ways: Measured[] = [];
  for (const what of Object.keys(WAYS)) {
    const timed = what === "highs" || what === "javascript";
    const done = await apart<readonly Measured[]>({ what, farm, effort, seconds }, timed ? seconds * 1.5 + GRACE_SECONDS : MOST_SECONDS);
    ways.push(...("answer" in done ? done.answer : [measured(timed ? `day by day, ${what}` : what, { note: done.why })]));
  }
  return { farm, size: sizeWords(farmOf(farm)), ways };
}

async function measureGrowth(print: (table: Table) => void): Promise<void> {
  for (const { title, farms } of GROWN) {
    const grown: Growth[] = [];
    for (const farm of farms) {
      const done = await apart<Growth>({ what: "growth", farm, effort: "usual", seconds: 0 }, MOST_SECONDS);
      if ("answer" in done) grown.push(done.answer);
    }
    print(growthTable(title, grown));
  }
}

/** The machine in a line, without its name. */
function machine(): string {
  const gigabytes = Math.round(totalmem() / 1024 ** 3);
  return `${availableParallelism()} cores, ${gigabytes} GB, ${platform()} ${arch()}, Node ${process.version}; load at the start ${loadavg()[0].toFixed(1)}`;
}

async function bench(): Promise<void> {
  const settings = asked();
  const head = [
    `Machine: ${machine()}.`,
    `Effort ${settings.effort}, seed 1. Windows and each solver of the day-indexed programme have ${settings.seconds} s; all else is counted in steps.`,
    `Gap and saving are against the best bound in the farm's own table, for plans without a broken rule. Growth tables: search ${GROWTH_STEPS.search} steps, bound ${GROWTH_STEPS.bound}.`,
  ];
  const folder = new URL("../../bench-results/", import.meta.url);
  const name = `${settings.sets.join("-").replaceAll("/", ".")}.md`;
  const file = new URL(name, folder);
  const written: string[] = ["# Measured", "", ...head, ""];
  console.log(head.join("\n"));
  mkdirSync(folder, { recursive: true });
  const print = (table: Table): void => {
    console.log(`\n${table.title}\n${columnsOf([table.head, ...table.rows], [0, table.head.indexOf("work"), table.head.indexOf("note")]).join("\n")}`);
    written.push(markdown(table));
    writeFileSync(file, written.join("\n"));
  };
  const farms: FarmMeasured[] = [];
  for (const farm of farmsIn(settings.sets)) {
    farms.push(await measureFarm(farm, settings));
    print(farmTable(farms[farms.length - 1]));
  }
  print(alongTable(farms));
  if (settings.growth) await measureGrowth(print);
  console.log(`\nWritten to bench-results/${name}`);
}

async function doTask({ what, farm, effort, seconds }: Task): Promise<void> {
  const scenario = farmOf(farm);
  handBack(what === "growth" ? await growthOf(scenario, farm) : await WAYS[what](scenario, { effort: effort as Settings["effort"], seconds }));
}

if (process.argv[2] === "--task") await doTask(JSON.parse(process.argv[3]) as Task);
else {
  await bench().catch((fault: unknown) => {
    console.error(fault instanceof Error ? fault.message : fault);
    process.exitCode = 1;
  });
}
