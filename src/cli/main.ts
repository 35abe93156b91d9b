#!/usr/bin/env node
import { endBeforePlan } from "./stop.js";

const args = process.argv.slice(2);
if (args[0] === "plan" || args[0] === "try") endBeforePlan(args.includes("--json"));

// a reader that has seen enough (| head) closes the pipe: that is no fault
process.stdout.on("error", (fault: NodeJS.ErrnoException) => process.exit(fault.code === "EPIPE" ? 0 : 1));

// loaded only now: Ctrl-C is minded while it loads
const [{ runCommandLine }, { terminalScreen }] = await Promise.all([import("./run.js"), import("./screen.js")]);
process.exitCode = await runCommandLine(args, terminalScreen());
