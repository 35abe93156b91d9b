import { accessSync, constants, statSync } from "node:fs";
import { delimiter, join } from "node:path";

/** Names by which a Chromium or Chrome is started. */
const COMMANDS = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "microsoft-edge"] as const;

const MAC = ["Google Chrome", "Chromium", "Microsoft Edge"] as const;
const WINDOWS = [["Google", "Chrome", "Application", "chrome.exe"], ["Chromium", "Application", "chrome.exe"], ["Microsoft", "Edge", "Application", "msedge.exe"]] as const;

/** Environment variable that names the browser to print with. */
export const BROWSER_VARIABLE = "INBYE_BROWSER";

type Environment = Readonly<Record<string, string | undefined>>;

/** A browser that can print a page to PDF; one that was named and is not there; or none. */
export type FoundBrowser = { readonly path: string } | { readonly missing: string } | null;

/**
 * Looks for a browser of the Chromium family: the one that the environment names, else in the folders of PATH, else in the usual places.
 *
 * @param isProgram whether there is a file at the path that may be run
 */
export function findBrowser(environment: Environment = process.env, platform: NodeJS.Platform = process.platform, isProgram: (path: string) => boolean = mayRun): FoundBrowser {
  const named = environment[BROWSER_VARIABLE]?.trim();
  if (named) return isProgram(named) ? { path: named } : { missing: named };
  const path = [...onPath(environment, platform), ...usualPlaces(environment, platform)].find(isProgram);
  return path === undefined ? null : { path };
}

function onPath(environment: Environment, platform: NodeJS.Platform): readonly string[] {
  const folders = (environment["PATH"] ?? environment["Path"] ?? "").split(platform === "win32" ? ";" : delimiter).filter((folder) => folder !== "");
  return COMMANDS.flatMap((command) => folders.map((folder) => join(folder, platform === "win32" ? `${command}.exe` : command)));
}

function usualPlaces(environment: Environment, platform: NodeJS.Platform): readonly string[] {
  const under = (...names: readonly string[]): readonly string[] => names.flatMap((name) => environment[name] ?? []);
  if (platform === "win32") return under("ProgramFiles", "ProgramFiles(x86)", "LOCALAPPDATA").flatMap((folder) => WINDOWS.map((parts) => join(folder, ...parts)));
  if (platform === "darwin") return ["", ...under("HOME")].flatMap((home) => MAC.map((name) => `${home}/Applications/${name}.app/Contents/MacOS/${name}`));
  return ["/usr/bin", "/usr/local/bin", "/snap/bin", "/opt/google/chrome", "/var/lib/flatpak/exports/bin"].flatMap((folder) => COMMANDS.map((command) => `${folder}/${command}`));
}

function mayRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
