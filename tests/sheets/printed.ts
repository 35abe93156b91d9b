import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const BROWSERS = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
/** A browser that prints pages, or undefined where the machine has none. */
export const BROWSER = BROWSERS.find((path) => existsSync(path));

const FLAGS = [
  "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
  "--disable-component-update", "--disable-sync", "--no-pdf-header-footer",
];

/** Prints a page and counts: sheets, and the size of each in points. */
export function printed(html: string): { readonly pages: number; readonly size: readonly [number, number] } {
  const folder = mkdtempSync(join(tmpdir(), "inbye-print-"));
  try {
    writeFileSync(join(folder, "page.html"), html);
    execFileSync(BROWSER!, [...FLAGS, `--user-data-dir=${join(folder, "profile")}`, `--print-to-pdf=${join(folder, "page.pdf")}`, `file://${join(folder, "page.html")}`], { stdio: "ignore", timeout: 60_000 });
    const pdf = readFileSync(join(folder, "page.pdf"), "latin1");
    const box = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/.exec(pdf)!;
    return { pages: [...pdf.matchAll(/\/Type\s*\/Page\b/g)].length, size: [Math.round(Number(box[1])), Math.round(Number(box[2]))] };
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
