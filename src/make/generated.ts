import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { ANSWERS } from "../cli/answers.js";
import { typedFarmShape } from "../farm/shape.js";
import { planFileShape } from "../plan/read-plan-file.js";
import { rulesTable } from "./rules-table.js";

export interface Generated {
  /** From the top of the repository. */
  readonly path: string;
  readonly text: string;
}

/** All files that are made from the source, as they should stand; a test compares them with what stands there. */
export function generatedFiles(root: string): readonly Generated[] {
  return [...schemaFiles(), readme(root)];
}

/** Every published shape: what --json prints, and the files that people and programs pass on. */
function schemaFiles(): readonly Generated[] {
  return Object.entries(SHAPES).map(([name, shape]) => {
    const { $schema, ...rest } = z.toJSONSchema(shape, { io: "input" });
    const schema = { $schema, $id: `inbye/${name}`, title: name, ...rest };
    return { path: `schemas/${name}.schema.json`, text: `${JSON.stringify(schema, null, 2)}\n` };
  });
}

const SHAPES: Readonly<Record<string, z.ZodType>> = { ...ANSWERS, farm: typedFarmShape, "plan-file": planFileShape };

function readme(root: string): Generated {
  const text = readFileSync(join(root, "README.md"), "utf8");
  return { path: "README.md", text: withPart(text, "rules", rulesTable()) };
}

/** Puts a made part between its two marks. */
export function withPart(text: string, name: string, part: string): string {
  const [start, end] = [`<!-- ${name}: made by npm run make -->`, `<!-- end of ${name} -->`];
  const [from, to] = [text.indexOf(start), text.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`README.md has no part for ${name}`);
  return `${text.slice(0, from + start.length)}\n${part}\n${text.slice(to)}`;
}
