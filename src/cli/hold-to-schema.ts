import { readFileSync } from "node:fs";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import ajvFormats from "ajv-formats";

/** The published shapes lie beside the compiled program's folder. */
const SCHEMAS = new URL("../../schemas/", import.meta.url);

// ajv-formats is CommonJS: under Node its default import is the module, not the function
const addFormats = (ajvFormats as unknown as { default?: typeof ajvFormats.default }).default ?? (ajvFormats as unknown as typeof ajvFormats.default);

const compiled = new Map<string, ValidateFunction>();

/**
 * Throws when a value that is about to leave does not have the shape published under that name: other programs
 * rely on it, so a departure is a fault of ours.
 */
export function holdToSchema(name: string, value: unknown): void {
  const validate = compiled.get(name) ?? compile(name);
  if (validate(value)) return;
  const places = (validate.errors ?? []).map((error) => `${error.instancePath || "/"} ${error.message ?? ""}`);
  throw new Error(`the answer does not keep to schemas/${name}.schema.json: ${places.join("; ")}`);
}

function compile(name: string): ValidateFunction {
  const ajv = new Ajv2020({ strict: true, strictRequired: false, allErrors: true });
  addFormats(ajv);
  const validate = ajv.compile(JSON.parse(readFileSync(new URL(`${name}.schema.json`, SCHEMAS), "utf8")) as object);
  compiled.set(name, validate);
  return validate;
}
