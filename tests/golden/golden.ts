import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";

/**
 * Compares a sheet with the one that was looked at and kept. One that differs, or is new, is written beside it as
 * `-changed`: look at it, then rename it.
 *
 * @param name path under tests/golden: "<scenario>/<sheet>.<ext>"
 */
export function expectGolden(name: string, text: string): void {
  const kept = fileURLToPath(new URL(name, import.meta.url));
  const changed = kept.replace(/(\.\w+)$/, "-changed$1");
  const same = existsSync(kept) && readFileSync(kept, "utf8") === text;
  if (same) {
    rmSync(changed, { force: true });
    return;
  }
  mkdirSync(dirname(kept), { recursive: true });
  writeFileSync(changed, text);
  const before = existsSync(kept) ? readFileSync(kept, "utf8").split("\n") : [];
  const at = text.split("\n").findIndex((line, i) => line !== before[i]);
  expect.fail(`${name} differs from line ${at + 1}; the new one is beside it as -changed`);
}
