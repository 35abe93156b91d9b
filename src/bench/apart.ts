import { execFile } from "node:child_process";
import { fileURLToPath } from "node:url";

/** What a process of the bench is asked to do, and for how long at most. */
export interface Task {
  readonly what: string;
  readonly farm: string;
  readonly effort: string;
  readonly seconds: number;
}

/** The mark before the answer: solvers may print lines of their own. */
const ANSWER = "bench-answer:";

/** Does a task in a process of its own, so that memory is its own and a hang or a crash is one line of the table. */
export function apart<T>(task: Task, mostSeconds: number): Promise<{ readonly answer: T } | { readonly why: string }> {
  const main = fileURLToPath(new URL("./main.js", import.meta.url));
  return new Promise((resolve) => {
    const options = { timeout: mostSeconds * 1000, killSignal: "SIGKILL" as const, maxBuffer: 64 * 1024 * 1024 };
    execFile(process.execPath, [main, "--task", JSON.stringify(task)], options, (fault, stdout, stderr) => {
      const line = stdout.split("\n").find((own) => own.startsWith(ANSWER));
      if (line) resolve({ answer: JSON.parse(line.slice(ANSWER.length)) as T });
      else resolve({ why: fault?.killed ? `ended from outside after ${mostSeconds} s` : `broke down: ${faultLine(stderr)}` });
    });
  });
}

/** The first line of a trace that says what was wrong, without where it happened. */
function faultLine(stderr: string): string {
  return (stderr.split("\n").find((line) => /Error|error|memory/.test(line)) ?? "no answer").trim().slice(0, 120);
}

/** Hands a task's answer to the process that asked. */
export function handBack(answer: unknown): void {
  process.stdout.write(`\n${ANSWER}${JSON.stringify(answer)}\n`);
}
