import { accessSync, constants, existsSync, mkdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";

/** A file to be: its name inside the folder, and its text or bytes. */
export interface OutFile {
  readonly name: string;
  readonly text: string | Uint8Array;
}

/** Why nothing can be written to a folder; null when it can. */
export type NotWritable = { readonly why: "file-exists" | "not-a-folder" | "not-allowed"; readonly path: string };

/** Says before any long work what would stand in the way of writing these files. */
export function whatStandsInTheWay(folder: string, names: readonly string[], replace: boolean): NotWritable[] {
  const place = nearestThere(resolve(folder));
  if (!statSync(place).isDirectory()) return [{ why: "not-a-folder", path: place }];
  if (!mayWrite(place)) return [{ why: "not-allowed", path: place }];
  const there = names.map((name) => join(folder, name)).filter((path) => existsSync(path));
  return there.flatMap((path): NotWritable[] => {
    if (!statSync(path).isFile()) return [{ why: "not-a-folder", path }];
    return replace ? [] : [{ why: "file-exists", path }];
  });
}

/**
 * Writes all files or, when something stands in the way, none. Each is written under another name first and then
 * renamed, so that a reader never sees half a file.
 */
export function writeFiles(folder: string, files: readonly OutFile[], replace: boolean): readonly NotWritable[] {
  const inTheWay = whatStandsInTheWay(folder, files.map((file) => file.name), replace);
  if (inTheWay.length > 0) return inTheWay;
  mkdirSync(folder, { recursive: true });
  const halfway = files.map((file) => ({ ...file, temporary: join(folder, `.${file.name}.${process.pid}.part`) }));
  try {
    for (const file of halfway) writeFileSync(file.temporary, file.text, { flag: "wx" });
    for (const file of halfway) renameSync(file.temporary, join(folder, file.name));
  } finally {
    for (const file of halfway) rmSync(file.temporary, { force: true });
  }
  return [];
}

/** The folder itself, or the nearest one above it that is there. */
function nearestThere(path: string): string {
  return existsSync(path) ? path : nearestThere(dirname(path));
}

function mayWrite(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}
