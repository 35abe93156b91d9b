import { usualEms, widestEms } from "./grid/letter-widths.js";
import { MM_PER_PT } from "./grid/svg.js";

/** How much smaller a wide sans is drawn, upright and bold, so that it takes no more room than the usual one. */
const SHRUNK = { upright: 0.87, bold: 0.82 };

/** A machine that has none of the usual sans draws its wide one smaller; a sheet laid out for the usual then holds on every machine. */
export const HELD_FACES = `@font-face{font-family:"Held Sans";src:local("DejaVu Sans"),local("Verdana");size-adjust:${SHRUNK.upright * 100}%}
@font-face{font-family:"Held Sans";font-weight:700;src:local("DejaVu Sans Bold"),local("DejaVuSans-Bold"),local("Verdana Bold"),local("Verdana-Bold");size-adjust:${SHRUNK.bold * 100}%}`;

export const HELD_FAMILY = "\"Liberation Sans\",Arial,Helvetica,\"Held Sans\",sans-serif";

/** A screen of few dots fits each letter to them, which makes a line up to a fiftieth wider. */
const FITTED_TO_DOTS = 1.02;

/** The most that a text in these fonts is wide, mm. */
export function heldMm(words: string, pt: number, bold = false): number {
  const shrunk = bold ? SHRUNK.bold : SHRUNK.upright;
  return Math.max(usualEms(words, bold), shrunk * widestEms(words, bold)) * pt * MM_PER_PT * FITTED_TO_DOTS;
}
