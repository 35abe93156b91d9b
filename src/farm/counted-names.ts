/** "K1 to K6" as names: a name alone, or the names that a count from one to another gives; null where "to" joins names that do not count on. */
export function countedNames(text: string): readonly string[] | null {
  if (!/\sto\s/.test(text)) return [text];
  const match = /^(.*?)(\d{1,4})\s+to\s+(.*?)(\d{1,4})$/.exec(text);
  if (!match || match[1] !== match[3]) return null;
  const [from, to] = [Number(match[2]), Number(match[4])];
  const width = match[2]!.startsWith("0") || match[4]!.startsWith("0") ? match[2]!.length : 0;
  const step = from <= to ? 1 : -1;
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => `${match[1]}${String(from + i * step).padStart(width, "0")}`);
}
