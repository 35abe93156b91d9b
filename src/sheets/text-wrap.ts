/** Breaks text between words so that no line is wider than asked, where words allow, never between a figure and its %; later lines are set in. */
export function wrapped(text: string, width: number, indent = 2): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/(?<=\S) (?!%)/)) {
    const joined = line === "" ? word : `${line} ${word}`;
    if (joined.length <= width || line === "") line = joined;
    else {
      lines.push(line);
      line = `${" ".repeat(indent)}${word}`;
    }
  }
  return [...lines, line].join("\n");
}
