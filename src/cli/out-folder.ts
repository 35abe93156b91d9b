import { basename, join } from "node:path";
import type { Finding } from "../farm/finding.js";
import { whatStandsInTheWay, writeFiles, type NotWritable, type OutFile } from "../files/write.js";
import { commandLineFinding, InputFault } from "./outcome.js";

/** Where a farm's sheets go unless the owner says otherwise: "plans/withy-end" for "withy-end.yaml" or "withy-end.farm.yaml". */
export function usualFolder(farmFile: string): string {
  return join("plans", basename(farmFile).replace(/(\.farm)?\.(ya?ml|json)$/i, ""));
}

/** Refuses before any long work what could not be written after it. */
export function refuseWhatIsThere(folder: string, names: readonly string[], replace: boolean): void {
  refuse(whatStandsInTheWay(folder, names, replace));
}

/** Writes all files or none; gives their paths. */
export function writeOut(folder: string, files: readonly OutFile[], replace: boolean): readonly string[] {
  refuse(writeFiles(folder, files, replace));
  return files.map((file) => join(folder, file.name));
}

function refuse(inTheWay: readonly NotWritable[]): void {
  if (inTheWay.length > 0) throw new InputFault(inTheWay.map(findingOf));
}

function findingOf({ why, path }: NotWritable): Finding {
  switch (why) {
    case "file-exists":
      return commandLineFinding(why, `${path} is there already`, "files are written over only when you say so", "add --replace, or name another folder with --out");
    case "not-a-folder":
      return commandLineFinding(why, `${path} is in the way`, "sheets are written as files into a folder", "name another folder with --out");
    case "not-allowed":
      return commandLineFinding(why, `${path} may not be written to`, "a folder of your own", "name another folder with --out");
  }
}
