// Starts the thread of the tests from its source.
import { register } from "tsx/esm/api";

register();
await import("./faulty-job.ts");
