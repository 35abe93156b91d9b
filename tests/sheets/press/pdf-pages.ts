const MM_PER_POINT = 25.4 / 72;

/** Pages of a PDF as Chromium writes them, and the size of the first. */
export function pagesOf(pdf: Uint8Array): { readonly pages: number; readonly sizeMm: readonly [number, number] } {
  const text = Buffer.from(pdf).toString("latin1");
  const box = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/.exec(text)!;
  return { pages: [...text.matchAll(/\/Type\s*\/Page\b/g)].length, sizeMm: [Number(box[1]) * MM_PER_POINT, Number(box[2]) * MM_PER_POINT] };
}
