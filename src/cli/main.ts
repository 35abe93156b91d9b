#!/usr/bin/env node
import { runCommandLine } from "./run.js";
import { terminalScreen } from "./screen.js";

// a reader that has seen enough (| head) closes the pipe: that is no fault
process.stdout.on("error", (fault: NodeJS.ErrnoException) => process.exit(fault.code === "EPIPE" ? 0 : 1));

process.exitCode = await runCommandLine(process.argv.slice(2), terminalScreen());
