import stringWidth from "string-width";

/** Rows as columns: the first column left-aligned, the others right-aligned, two blanks between and before. */
export function columnsOf(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => stringWidth(row[i] ?? ""))));
  return rows.map((row) => `  ${row.map((box, i) => padded(box, widths[i] ?? 0, i === 0)).join("  ").trimEnd()}`);
}

/** Text broken at blanks to a width, each row after the first set in. */
export function wrapped(text: string, columns: number, indent: string): readonly string[] {
  const rows: string[] = [];
  for (const word of text.split(" ")) {
    const last = rows.at(-1);
    if (last !== undefined && stringWidth(last) + 1 + stringWidth(word) <= columns) rows[rows.length - 1] = `${last} ${word}`;
    else rows.push(rows.length === 0 ? word : `${indent}${word}`);
  }
  return rows;
}

function padded(text: string, width: number, left: boolean): string {
  const blanks = " ".repeat(Math.max(0, width - stringWidth(text)));
  return left ? text + blanks : blanks + text;
}
