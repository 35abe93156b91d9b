import { z } from "zod";
import { inFileOrder, type Finding, type Result } from "./finding.js";
import { nearNames } from "./near-names.js";
import { parseTree } from "./parse-tree.js";
import { nearest, plainOf, type MapNode } from "./tree.js";

/** Whom to call and where: from a file of the owner's own that is never shared. */
export interface Calls {
  /** Names and numbers, as written. */
  readonly calls: Readonly<Record<string, string>>;
  /** How the farm is found by somebody who comes to help. */
  readonly whereWeAre: string | null;
  /** Where the nearest phone is. */
  readonly phone: string | null;
}

export const NO_CALLS: Calls = { calls: {}, whereWeAre: null, phone: null };

/** Names that the day sheet has a line for even when nobody has filled them in. */
export const OWNER = "Owner";
export const TOWS = "Neighbour who tows";
export const VET = "Vet";

const KEYS = ["calls", "where-we-are", "phone"] as const;
const text = z.string().trim().min(1).max(120);
const number = z.string().trim().regex(/^\+?[\d ()/.-]{3,30}$/);
const callsShape = z.strictObject({ calls: z.record(z.string().min(1).max(40), number).optional(), "where-we-are": text.optional(), phone: text.optional() });

/** Reads a file of calls; every finding at once. */
export function readCalls(source: string, file: string): Result<Calls> {
  const { tree, findings } = parseTree(source, file);
  if (tree === null) return { ok: false, findings };
  const parsed = callsShape.safeParse(plainOf(tree));
  const all = [...findings, ...(parsed.success ? [] : parsed.error.issues.flatMap((issue) => findingsOf(issue, tree)))];
  if (!parsed.success || all.length > 0) return { ok: false, findings: inFileOrder(all) };
  const { calls = {}, "where-we-are": whereWeAre = null, phone = null } = parsed.data;
  return { ok: true, value: { calls, whereWeAre, phone }, notes: [] };
}

function findingsOf(issue: z.core.$ZodIssue, tree: MapNode): readonly Finding[] {
  const path = issue.path as readonly string[];
  const place = ({ file, line, column }: Finding | MapNode["entries"][number]["at"]): Pick<Finding, "file" | "line" | "column"> => ({ file, line, column });
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => {
      const near = nearNames(key, KEYS)[0];
      return { ...place(tree.entries.find((entry) => entry.key === key)!.at), code: "key-unknown", found: `${key} is not read`, allowed: `a file of calls has ${KEYS.join(", ")}`, next: near ? `write ${near}` : "put names and numbers under calls" };
    });
  }
  const { at } = nearest(tree, path);
  if (path[0] !== "calls") return [{ ...place(at), code: "text", found: `${path[0] ?? "the file"} is not a short text`, allowed: "1 to 120 letters on one line", next: "write it shorter, in quotes" }];
  if (path.length < 2) return [{ ...place(at), code: "calls", found: "calls has no names under it", allowed: "a name, a colon, a number on each line", next: `write ${OWNER}: 01632 960014` }];
  return [{ ...place(at), code: "number", found: `${path[1]} has no number that can be called`, allowed: "figures, blanks and + ( ) - / .", next: `write ${path[1]}: 01632 960014` }];
}
