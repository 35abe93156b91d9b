/** Names close to a written one, the closest first, two at most. Capitals do not count. */
export function nearNames(written: string, names: readonly string[]): readonly string[] {
  const most = Math.max(1, Math.floor(written.length / 3));
  return names
    .map((name) => ({ name, steps: stepsBetween(written.toLowerCase(), name.toLowerCase()) }))
    .filter(({ name, steps }) => steps <= most || (written.length >= 3 && name.toLowerCase().startsWith(written.toLowerCase())))
    .sort((a, b) => a.steps - b.steps)
    .slice(0, 2)
    .map(({ name }) => name);
}

/** The names closest to a written one, however far. */
export function nearestNames(written: string, names: readonly string[], count = 3): readonly string[] {
  const steps = (name: string): number => stepsBetween(written.toLowerCase(), name.toLowerCase());
  return [...names].sort((a, b) => steps(a) - steps(b)).slice(0, count);
}

/** Letters put in, taken out or changed to make one word of the other (Levenshtein's distance). */
export function stepsBetween(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 20) return 99;
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next.push(Math.min(next[j - 1]! + 1, row[j]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    row = next;
  }
  return row[b.length]!;
}

/** "a, b or c". */
export function listOr(words: readonly string[], last = "or"): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)!}`;
}
