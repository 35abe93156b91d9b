/** JSON with the place of everything in it, or where and why it is none. Offsets count signs from 0. */
export type JsonRead =
  | { readonly ok: true; readonly value: unknown; readonly offsetOf: (path: readonly PropertyKey[]) => number }
  | { readonly ok: false; readonly offset: number; readonly found: string };

const BLANK = /[ \t\n\r]*/y;
const STRING = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const PLAIN = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
const MOST_LEVELS = 40;

interface Reader {
  readonly text: string;
  at: number;
  level: number;
  readonly offsets: Map<unknown, number>;
}

/** Where reading stops. */
class Stop extends Error {
  constructor(readonly offset: number, readonly found: string) {
    super(found);
  }
}

/** Reads JSON. Source: RFC 8259. */
export function readJson(text: string): JsonRead {
  const reader: Reader = { text, at: 0, level: 0, offsets: new Map() };
  try {
    const value = valueAt(reader);
    skipBlanks(reader);
    if (reader.at < text.length) throw new Stop(reader.at, "something stands after the end");
    return { ok: true, value, offsetOf: (path) => offsetOf(reader, value, path) };
  } catch (error) {
    if (error instanceof Stop) return { ok: false, offset: error.offset, found: error.found };
    throw error;
  }
}

/** Of texts and figures the place of the list or braces that hold them. */
function offsetOf({ offsets }: Reader, root: unknown, path: readonly PropertyKey[]): number {
  let node = root;
  let offset = offsets.get(root) ?? 0;
  for (const step of path) {
    node = typeof node === "object" && node !== null ? (node as Record<PropertyKey, unknown>)[step] : undefined;
    if (typeof node !== "object" || node === null) break;
    offset = offsets.get(node) ?? offset;
  }
  return offset;
}

function skipBlanks(reader: Reader): void {
  BLANK.lastIndex = reader.at;
  BLANK.exec(reader.text);
  reader.at = BLANK.lastIndex;
}

function valueAt(reader: Reader): unknown {
  skipBlanks(reader);
  const sign = reader.text[reader.at];
  if (sign === "{" || sign === "[") {
    if (reader.level === MOST_LEVELS) throw new Stop(reader.at, "the braces are nested too deep");
    reader.level++;
    const value = sign === "{" ? mapAt(reader) : listAt(reader);
    reader.level--;
    return value;
  }
  return JSON.parse(sign === '"' ? token(reader, STRING, "a text that does not end, or holds a sign that may not stand in it") : token(reader, PLAIN, "no value stands here"));
}

function token(reader: Reader, form: RegExp, fault: string): string {
  form.lastIndex = reader.at;
  const match = form.exec(reader.text);
  if (match === null) throw new Stop(reader.at, reader.at >= reader.text.length ? "the file ends too soon" : fault);
  reader.at = form.lastIndex;
  return match[0];
}

function listAt(reader: Reader): unknown {
  const list: unknown[] = [];
  reader.offsets.set(list, reader.at++);
  while (!closes(reader, "]", list.length > 0)) list.push(valueAt(reader));
  return list;
}

function mapAt(reader: Reader): unknown {
  const map: Record<string, unknown> = Object.create(null) as Record<string, unknown>;
  reader.offsets.set(map, reader.at++);
  let first = true;
  while (!closes(reader, "}", !first)) {
    first = false;
    skipBlanks(reader);
    const key = JSON.parse(token(reader, STRING, "a name in double quotes is missing")) as string;
    skipBlanks(reader);
    if (reader.text[reader.at] !== ":") throw new Stop(reader.at, "a colon is missing after the name");
    reader.at++;
    map[key] = valueAt(reader);
  }
  return map;
}

/** True at the end of a list or braces; past the comma where one is due. */
function closes(reader: Reader, end: string, comma: boolean): boolean {
  skipBlanks(reader);
  const sign = reader.text[reader.at];
  if (sign === end) {
    reader.at++;
    return true;
  }
  if (!comma) return false;
  if (sign !== ",") throw new Stop(reader.at, reader.at >= reader.text.length ? "the file ends too soon" : "a comma is missing");
  reader.at++;
  skipBlanks(reader);
  if (reader.text[reader.at] === end) throw new Stop(reader.at, "nothing stands after the comma");
  return false;
}
