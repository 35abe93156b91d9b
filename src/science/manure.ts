/**
 * Nitrogen that a group drops in some days.
 *
 * @param head animals
 * @param kgPerHeadDay kg N a head and day as excreted
 * @param days days
 * @returns kg N
 */
export function nitrogenKgPerStay(head: number, kgPerHeadDay: number, days: number): number {
  return head * kgPerHeadDay * days;
}
