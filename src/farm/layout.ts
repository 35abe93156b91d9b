import type { Finding } from "./finding.js";

/** Text with its layout faults mended line by line, so that reading can go on and say the rest too. */
export interface Mended {
  readonly text: string;
  readonly findings: readonly Finding[];
  /** False when a brace never closes: what follows it cannot be told apart. */
  readonly closed: boolean;
}

interface State {
  /** Braces and brackets open at the line's end. */
  depth: number;
  /** Indentation of the key whose text block runs on, or -1. */
  block: number;
  /** Where the outermost open brace stands. */
  opened: readonly [line: number, column: number];
}

/**
 * Faults of layout that a reader of YAML would report in its own words or read as something else: tabs, a colon
 * without a space, a colon inside a text, a hash that cuts a text off.
 */
export function mendLayout(text: string, file: string): Mended {
  const findings: Finding[] = [];
  const state: State = { depth: 0, block: -1, opened: [1, 1] };
  const lines = text.split(/\r\n|\n|\r/).map((line, i) => {
    const say = (column: number, code: string, found: string, next: string): void => {
      findings.push({ file, line: i + 1, column, code, found, allowed: ALLOWED[code]!, next });
    };
    return mendLine(line, i + 1, state, say);
  });
  if (state.depth > 0) {
    const [line, column] = state.opened;
    findings.push({ file, line, column, code: "layout", found: "a brace or bracket is opened here and never closed", allowed: "every one opened is closed", next: "close it" });
  }
  return { text: lines.join("\n"), findings, closed: state.depth === 0 };
}

type Say = (column: number, code: string, found: string, next: string) => void;

const ALLOWED: Readonly<Record<string, string>> = {
  tab: "lines are set in with spaces",
  "colon-missing": "a colon stands between a name and what it is",
  "colon-space": "a space stands after the colon",
  "colon-inside": "a text with a colon in it stands in quotes",
  hash: "what follows a hash is not read",
};

function mendLine(written: string, number: number, state: State, say: Say): string {
  const typed = mendTabs(written, number, say);
  const line = state.depth === 0 && state.block < 0 ? mendBrace(typed, say) : typed;
  const indent = line.length - line.trimStart().length;
  if (line.trim() === "") return line;
  if (state.block >= 0) {
    if (indent > state.block) return line;
    state.block = -1;
  }
  if (line.trimStart().startsWith("#")) return line;
  const startDepth = state.depth;
  const bare = bareParts(line, number, state);
  const spaced = mendColons(line, bare, startDepth, say);
  if (startDepth > 0 || state.depth > 0) return spaced;
  return mendValue(spaced, indent, state, say);
}

function mendTabs(line: string, number: number, say: Say): string {
  const lead = /^[ \t]*/.exec(line)![0];
  if (!lead.includes("\t") || line.trim() === "") return line;
  say(lead.indexOf("\t") + 1, "tab", `line ${number} starts with a tab`, "use spaces");
  return lead.replaceAll("\t", "  ") + line.slice(lead.length);
}

/** "Cows { kind: cattle }": a name, and braces with keys in them or running on, without a colon between. */
function mendBrace(line: string, say: Say): string {
  const match = /^(\s*)([^\s:#"'{}[\],&*!|>%-][^:#"'{}[\],]*?)(\s*)\{(?=[^:{}]*:\s|\s*$)/.exec(line);
  if (!match) return line;
  const [lead, name, gap] = [match[1]!, match[2]!, match[3]!];
  say(lead.length + name.length + 1, "colon-missing", `there is no colon after ${name}`, `write ${name}: {`);
  return `${lead}${name}:${gap || " "}${line.slice(lead.length + name.length + gap.length)}`;
}

/** Depth of braces at each character outside quotes and remarks; -1 inside them. Moves `state` to the line's end. */
function bareParts(line: string, number: number, state: State): readonly number[] {
  const depths: number[] = [];
  let quote = "";
  for (let i = 0; i < line.length; i++) {
    const c = line[i]!;
    const before = line[i - 1] ?? " ";
    if (!quote && c === "#" && /\s/.test(before)) return [...depths, ...Array<number>(line.length - i).fill(-1)];
    depths.push(quote ? -1 : state.depth);
    if (quote) quote = c === quote && before !== "\\" ? "" : quote;
    else if ((c === "'" || c === '"') && /[\s{[,:]/.test(before)) quote = c;
    else countBrace(c, before, [number, i + 1], state);
  }
  return depths;
}

function countBrace(c: string, before: string, at: readonly [number, number], state: State): void {
  if ((c === "}" || c === "]") && state.depth > 0) state.depth--;
  if ((c !== "{" && c !== "[") || (state.depth === 0 && !/[\s:-]/.test(before))) return;
  if (state.depth === 0) state.opened = at;
  state.depth++;
}

/** "H1:0.28 ha" where a key may stand: at a line's start, and after a brace or comma inside braces. */
function mendColons(line: string, bare: readonly number[], startDepth: number, say: Say): string {
  const keys = startDepth > 0 ? /(^\s*|[{,]\s*)([^\s:{}[\],#"'][^:{}[\],#"']*):(?=[\w£$€-])/g : /(^\s*|[{,]\s*)([^\s:{}[\],#"'-][^:{}[\],#"']*):(?=[\w£$€-])/g;
  return line.replace(keys, (whole: string, lead: string, key: string, at: number) => {
    const depth = bare[at + whole.length - 1]!;
    if (depth < 0 || (depth === 0 && at > 0) || (depth === 0 && startDepth === 0 && at === 0 && lead.trim() !== "")) return whole;
    say(at + whole.length, "colon-space", `no space after ${key}:`, `write ${key}: ${/^[^,}\]#]*/.exec(line.slice(at + whole.length))![0].trim()}`);
    return `${whole} `;
  });
}

/** A value outside braces: a colon or a hash inside it, or the start of a text block. */
function mendValue(line: string, indent: number, state: State, say: Say): string {
  const match = /^(\s*(?:- )?[^\s:#"'{[][^:#]*:\s+)(\S.*)$/.exec(line);
  if (!match) return line;
  const [, lead, value] = [match[0], match[1]!, match[2]!];
  if (/^[|>]/.test(value)) {
    state.block = indent;
    return line;
  }
  if (/^["'{[#&*!]/.test(value)) return line;
  const cut = /\s#(?=[^\s#])/.exec(value);
  if (cut) say(lead.length + cut.index + 2, "hash", `only "${value.slice(0, cut.index)}" is read`, 'put the text in "quotes", or a space after the hash');
  const said = value.replace(/\s+#.*$/, "");
  const inside = /:(\s|$)/.exec(said);
  if (!inside) return line;
  const key = lead.trim().replace(/:$/, "");
  say(lead.length + inside.index + 1, "colon-inside", `${key}: a colon stands inside the text`, `write ${key}: "${said}"`);
  return `${lead}${JSON.stringify(said)}`;
}
