import { highsSolver } from "../solvers/highs.js";
import { serveJob } from "./serve-job.js";

await serveJob(highsSolver());
