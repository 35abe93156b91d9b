/** Lines as RFC 5545 (iCalendar) has them on the wire. */

/** RFC 5545 3.1: octets of a line, its end not counted; a following line's blank is. */
const MOST_OCTETS = 75;

/**
 * A value of type TEXT (RFC 5545 3.3.11): backslash, semicolon and comma behind a backslash, a new line as `\n`. Control characters have no
 * place in it and no shape on a screen; they are left out, but for the tab.
 */
export function escapedText(text: string): string {
  const lines = text.replaceAll(/\r\n?/g, "\n");
  const kept = Array.from(lines).filter((letter) => letter === "\t" || letter === "\n" || !isControl(letter.codePointAt(0)!));
  return kept.join("").replaceAll(/[\\;,]/g, (letter) => `\\${letter}`).replaceAll("\n", "\\n");
}

function isControl(code: number): boolean {
  return code < 0x20 || code === 0x7f;
}

/** One property, folded at 75 octets (RFC 5545 3.1) and ended; a letter of several octets is never cut. */
export function contentLine(name: string, value: string): string {
  let line = "";
  let octets = 0;
  const lines: string[] = [];
  for (const letter of `${name}:${value}`) {
    const more = octetsOf(letter.codePointAt(0)!);
    if (octets + more > MOST_OCTETS) {
      lines.push(line);
      [line, octets] = [" ", 1];
    }
    line += letter;
    octets += more;
  }
  return `${[...lines, line].join("\r\n")}\r\n`;
}

/** Octets of a letter in UTF-8 (RFC 3629, section 3). */
function octetsOf(code: number): number {
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/** Properties between BEGIN and END of a component, which may hold others. */
export function component(name: string, properties: readonly (readonly [string, string])[], inside: readonly string[] = []): string {
  const lines = [["BEGIN", name] as const, ...properties].map(([key, value]) => contentLine(key, value));
  return [...lines, ...inside, contentLine("END", name)].join("");
}

/** "20270410" of an ISO date: a value of type DATE (RFC 5545 3.3.4). */
export function dateValue(day: string): string {
  return day.replaceAll("-", "");
}
