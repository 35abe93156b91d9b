import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";

/** LibreOffice, or undefined where the machine has none. */
export const OFFICE = (process.env["PATH"] ?? "").split(delimiter).map((folder) => join(folder, "soffice")).find((path) => statSync(path, { throwIfNoEntry: false })?.isFile());

/** Text in commas, UTF-8, American English, "detect special numbers" on: what spoils most. Tokens as in its help, "CSV filter parameters". */
export const OPENED = "Text - txt - csv (StarCalc):44,34,76,1,,1033,false,true";

/** A file saved as text: separator and character set by number, every text in quotes or not, boxes as shown. */
export function savedAs(separator: "," | ";" | "\t", characters: "UTF-8" | "UTF-16", quoted: boolean): string {
  return `csv:Text - txt - csv (StarCalc):${separator.charCodeAt(0)},34,${characters === "UTF-8" ? 76 : 65535},1,,0,${quoted},true,false`;
}

/** A folder with an office of its own in it, so that none that is open is disturbed. */
export function newDesk(): { readonly folder: string; readonly convert: (from: string, names: readonly string[], to: string, target: string) => void; readonly clear: () => void } {
  const folder = mkdtempSync(join(tmpdir(), "inbye-office-"));
  const profile = `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`;
  const convert = (from: string, names: readonly string[], to: string, target: string): void => {
    mkdirSync(join(folder, to), { recursive: true });
    const opened = names.every((name) => name.endsWith(".csv")) ? [`--infilter=${OPENED}`] : [];
    const files = names.map((name) => join(folder, from, name));
    execFileSync(OFFICE!, [profile, "--headless", "--norestore", ...opened, "--convert-to", target, "--outdir", join(folder, to), ...files], { stdio: "pipe", timeout: 120_000 });
  };
  return { folder, convert, clear: () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }) };
}
