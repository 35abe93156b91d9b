import { spawn, type ChildProcess } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** A printed page, or why there is none: the browser took too long and was ended, or came to nothing. */
export type Printed = { readonly pdf: Uint8Array; readonly pages: number } | { readonly why: "too-long" | "no-pdf" };

const USUAL_LIMIT_MS = 60_000;

/** Headless, with a profile of its own, and nothing from or to the network. */
const FLAGS = [
  "--headless", "--disable-gpu", "--no-first-run", "--no-default-browser-check", "--disable-extensions", "--disable-sync", "--disable-background-networking",
  "--disable-component-update", "--disable-quic", "--host-resolver-rules=MAP * ~NOTFOUND", "--no-pdf-header-footer", "--print-to-pdf-no-header",
] as const;

/** Prints a page to PDF in a folder of its own, which is taken away after it, as is a browser that does not end by itself. */
export async function printPdf(html: string, browser: string, limitMs = USUAL_LIMIT_MS): Promise<Printed> {
  const folder = mkdtempSync(join(tmpdir(), "inbye-print-"));
  const [page, pdf] = [join(folder, "page.html"), join(folder, "page.pdf")];
  try {
    writeFileSync(page, html);
    const args = [...FLAGS, ...asRoot(), `--user-data-dir=${join(folder, "profile")}`, `--print-to-pdf=${pdf}`, pathToFileURL(page).href];
    const ended = await endOf(spawn(browser, args, { stdio: "ignore" }), limitMs);
    return ended === "too-long" ? { why: ended } : readPdf(pdf);
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** A browser run by root refuses its own sandbox; everybody else keeps it. */
function asRoot(): readonly string[] {
  return process.getuid?.() === 0 ? ["--no-sandbox"] : [];
}

/** Waits for a program to end; ends it where it takes too long, and with it on Ctrl-C. */
async function endOf(program: ChildProcess, limitMs: number): Promise<"ended" | "too-long"> {
  const kill = (): void => void program.kill("SIGKILL");
  let late = false;
  const timer = setTimeout(() => {
    late = true;
    kill();
  }, limitMs);
  process.once("SIGINT", kill);
  try {
    await new Promise<void>((resolve) => {
      program.once("exit", () => resolve());
      program.once("error", () => resolve());
    });
  } finally {
    clearTimeout(timer);
    process.off("SIGINT", kill);
  }
  return late ? "too-long" : "ended";
}

function readPdf(path: string): Printed {
  try {
    const pdf = readFileSync(path);
    const pages = [...pdf.toString("latin1").matchAll(/\/Type\s*\/Page\b/g)].length;
    return pages > 0 ? { pdf, pages } : { why: "no-pdf" };
  } catch {
    return { why: "no-pdf" };
  }
}
