/** Runs the built command, as an owner would, in a folder of its own. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import ajvFormats from "ajv-formats";
import { expect } from "vitest";

export const ROOT = resolve(import.meta.dirname, "../..");
export const MAIN = join(ROOT, "dist/cli/main.js");
const MS = 110_000;

export interface Ran {
  readonly exit: number | null;
  readonly out: string;
  readonly aside: string;
}

export function inbye(args: readonly string[], folder: string, env: Readonly<Record<string, string>> = {}): Ran {
  if (!existsSync(MAIN)) throw new Error("dist/ is not built: npm run build");
  const ran = spawnSync(process.execPath, [MAIN, ...args], { cwd: folder, encoding: "utf8", timeout: MS, env: { ...process.env, ...env } });
  expect(ran.stdout + ran.stderr).not.toMatch(/^\s+at .*\(?(file:|node:|\/).*:\d+:\d+\)?$/m);
  return { exit: ran.status, out: ran.stdout, aside: ran.stderr };
}

/** One JSON object on standard output, of a published shape. */
export function answer<T>(ran: Ran, shape: string): T {
  const lines = ran.out.trimEnd().split("\n");
  expect(lines.length).toBe(1);
  const value = JSON.parse(lines[0]!) as T;
  expect(faultsOfShape(shape, value)).toEqual([]);
  return value;
}

/** Where a value departs from a schema of ours, asked of ajv. */
export function faultsOfShape(shape: string, value: unknown): string[] {
  const ajv = new Ajv2020({ strict: true, strictRequired: false, allErrors: true });
  ((ajvFormats as unknown as { default?: typeof ajvFormats.default }).default ?? (ajvFormats as unknown as typeof ajvFormats.default))(ajv);
  const validate = ajv.compile(JSON.parse(readFileSync(join(ROOT, `schemas/${shape}.schema.json`), "utf8")) as object);
  return validate(value) ? [] : (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message ?? ""}`);
}

/** A folder for one test; the caller takes it away with `done`. */
export function freshFolder(): { readonly path: string; readonly done: () => void } {
  const path = mkdtempSync(join(tmpdir(), "inbye-"));
  return { path, done: () => rmSync(path, { recursive: true, force: true }) };
}
