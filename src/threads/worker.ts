import { parentPort, workerData } from "node:worker_threads";
import { runJob, type Job } from "../programme/jobs.js";
import { highsSolver } from "../solvers/highs.js";

const { job, flag } = workerData as { job: Job; flag: Int32Array };
const answer = await runJob(job, { stop: () => Atomics.load(flag, 0) === 1, news: (news) => parentPort?.postMessage({ news }) }, highsSolver());
parentPort?.postMessage({ answer });
