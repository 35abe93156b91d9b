import { createHash } from "node:crypto";
import { existsSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { mapsAskedFor, readChanged, type Changed, type FarmText } from "../farm/change.js";
import { inFileOrder, type Finding, type Result } from "../farm/finding.js";
import type { MapText } from "../farm/map/map-feature.js";

/** Larger than any farm, small enough to read at once. */
export const MOST_BYTES = 2 * 1024 * 1024;

/** What `readChanged` takes; the tables come from `files/tables`. */
type Tables = Parameters<typeof readChanged>[2];

/** SHA-256 of a text's UTF-8, as lower-case hexadecimal (FIPS 180-4). */
export function sha256(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("hex");
}

/** Whether there is a file of that name. */
export function isThere(path: string): boolean {
  return existsSync(path);
}

/** Reads a text file in UTF-8, with or without a mark at its head. */
export function readTextFile(path: string): Result<string> {
  return readText(path, "save it as plain text, UTF-8", decoded);
}

/** The same of a file that a spreadsheet may have saved: also UTF-16 with its mark, as "Unicode text" is. */
export function readTableFile(path: string): Result<string> {
  return readText(path, "in a spreadsheet, save it as CSV in UTF-8", decodedAsMarked);
}

function readText(path: string, next: string, decode: (bytes: Buffer) => string | null): Result<string> {
  const file = basename(path);
  const refuse = (code: string, found: string, allowed: string, next: string): Result<string> => {
    return { ok: false, findings: [{ file, line: 1, column: 1, code, found, allowed, next }] };
  };
  const stats = statSync(path, { throwIfNoEntry: false });
  if (!stats) return refuse("no-file", "there is no such file", "a file that is there is read", "look at its name and folder");
  if (!stats.isFile()) return refuse("no-file", "this is a folder", "one file is read at a time", "name the file in it");
  if (stats.size > MOST_BYTES) {
    return refuse("too-big", `the file has ${Math.ceil(stats.size / 1024 / 1024)} MB`, `files of up to ${MOST_BYTES / 1024 / 1024} MB are read`, "look whether it is the right file");
  }
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch {
    return refuse("no-file", "the file cannot be opened", "files that you may read are read", "look at its permissions");
  }
  const text = decode(bytes);
  if (text !== null) return { ok: true, value: text, notes: [] };
  const found = isZip(bytes) ? "this is a workbook or another packed file" : "there are signs in the file that are no letters";
  return refuse("not-text", found, "files are plain text in UTF-8", next);
}

/** Workbooks (.xlsx, .ods) are ZIP files, and those begin with PK (ISO/IEC 21320-1). */
function isZip(bytes: Buffer): boolean {
  return bytes.subarray(0, 4).equals(Buffer.from([0x50, 0x4b, 3, 4]));
}

/** By the byte order mark at the head (Unicode Standard, 23.8); UTF-8 where there is none. Nulls are of UTF-16 without its mark. */
function decodedAsMarked(bytes: Buffer): string | null {
  const mark = bytes.subarray(0, 2).toString("hex");
  const text = decoded(bytes, mark === "fffe" ? "utf-16le" : mark === "feff" ? "utf-16be" : "utf-8");
  return text?.includes("\0") ? null : text;
}

/** The text, or null when the bytes are none in that encoding. */
function decoded(bytes: Buffer, encoding = "utf-8"): string | null {
  if (isZip(bytes)) return null;
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Reads a farm file with the maps it names and with changes laid over it in turn, those not on disk last. */
export function readFarm(path: string, changePaths: readonly string[], tables: Tables, more: readonly FarmText[] = []): Result<Changed> {
  const paths = [path, ...changePaths];
  const texts = paths.map((p) => ({ file: basename(p), read: readTextFile(p) }));
  const findings = texts.flatMap(({ read }): readonly Finding[] => (read.ok ? [] : read.findings));
  if (findings.length > 0) return { ok: false, findings: inFileOrder(findings, texts.map(({ file }) => file)) };
  const [farm, ...changes] = texts.map(({ file, read }): FarmText => ({ file, text: read.ok ? read.value : "" }));
  const maps = mapsAskedFor(farm!, [...changes, ...more]).flatMap((file) => mapBeside(path, file));
  return readChanged(farm!, [...changes, ...more], tables, sha256, maps);
}

/** A map file in the folder of the farm file; nothing where there is none, which the farm's reader says at its name. */
function mapBeside(farmPath: string, file: string): readonly MapText[] {
  const path = join(dirname(farmPath), file);
  if (!existsSync(path)) return [];
  const read = readTextFile(path);
  return [read.ok ? { file, text: read.value } : { file, text: null, findings: read.findings }];
}

