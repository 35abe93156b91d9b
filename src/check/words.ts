/** Figures in words. A figure at fault is rounded away from what is allowed, so that the two never print alike. */

const SLACK = 1e-9;

/** Rounded down to a step: for what falls short. */
export function shortOf(value: number, step = 1): number {
  return Math.floor(value / step + SLACK) * step;
}

/** Rounded up to a step: for what goes over. */
export function over(value: number, step = 1): number {
  return Math.ceil(value / step - SLACK) * step;
}

/** A number with at most so many decimals and no trailing noughts. */
export function plain(value: number, decimals = 0): string {
  return Number.isInteger(value) ? String(value) : String(Number(value.toFixed(decimals)));
}

/** "1 day", "24 days". */
export function daysText(count: number): string {
  return counted(count, "day", "days");
}

export function counted(count: number, one: string, many: string): string {
  return `${plain(count, 1)} ${count === 1 ? one : many}`;
}

/** Cover in words, kg DM/ha, to 10 kg below the figure. */
export function coverShort(kgPerHa: number): string {
  return `${plain(shortOf(kgPerHa, 10))} kg DM/ha`;
}

/** Cover in words, kg DM/ha, to 10 kg above the figure. */
export function coverOver(kgPerHa: number): string {
  return `${plain(over(kgPerHa, 10))} kg DM/ha`;
}

/** A rule's own cover figure, as the owner set it. */
export function coverSet(kgPerHa: number): string {
  return `${plain(kgPerHa, 1)} kg DM/ha`;
}

/** Ground in words, ha, to 10 square metres, above or below the figure. */
export function areaOver(ha: number): string {
  return `${plain(over(ha, 0.001), 3)} ha`;
}
export function areaShort(ha: number): string {
  return `${plain(shortOf(ha, 0.001), 3)} ha`;
}
