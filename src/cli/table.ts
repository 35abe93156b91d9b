import stringWidth from "string-width";

/** Rows as columns, two blanks between and before; right-aligned, but for the columns named in `left`. */
export function columnsOf(rows: readonly (readonly string[])[], left: readonly number[] = [0]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => stringWidth(row[i] ?? ""))));
  return rows.map((row) => `  ${row.map((box, i) => padded(box, widths[i] ?? 0, left.includes(i))).join("  ").trimEnd()}`);
}

function padded(text: string, width: number, left: boolean): string {
  const blanks = " ".repeat(Math.max(0, width - stringWidth(text)));
  return left ? text + blanks : blanks + text;
}
