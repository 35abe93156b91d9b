import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { generatedFiles } from "./generated.js";

/** Writes everything that is made from the source: the schemas, and the made parts of README.md. */
const root = join(import.meta.dirname, "../..");

for (const { path, text } of generatedFiles(root)) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
  console.log(path);
}
