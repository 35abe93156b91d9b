import type { Kind } from "../../farm/scenario.js";
import type { Sure } from "../made.js";
import type { GroupMark } from "../marks.js";
import { patternFigures } from "./patterns.js";
import { inset, mm, rect, text, textWidth, MM_PER_PT, type Box } from "./svg.js";

const LETTER_PT = 9.6;
/** Bars longer than this carry their letter three times. */
const LONG = 34;
const SET_IN = 0.6;

export interface Bar {
  readonly kind: Kind;
  readonly mark: GroupMark;
  readonly sure: Sure;
  /** The letter, "P 3" for a strip, or the letters of groups that run together. */
  readonly label: string;
  readonly box: Box;
}

/** A stay: framed, pattern and letter; how sure it is lies in the frame. */
export function bar(one: Bar): string {
  const { sure, box, mark, kind } = one;
  if (sure === "outline") return `<g class="bar">${rect(inset(box, 0.12), 'class="paper outline"')}${letters(one, false)}</g>`;
  const likely = sure === "likely";
  const ground = inset(box, likely ? Math.min(SET_IN, box.w * 0.16) : 0.2);
  return [
    `<g class="bar k-${kind}">`, likely ? rect(inset(box, 0.08), 'class="paper"') : "", rect(ground, 'class="fill"'),
    patternFigures(mark.pattern, ground), mark.second ? notch(ground) : "",
    rect(inset(box, likely ? 0.08 : 0.2), `class="frame" stroke-width="${likely ? 0.16 : 0.4}"`),
    letters(one, mark.pattern === "solid"), "</g>",
  ].join("");
}

/** The second group of a kind: its lower left corner is cut off. */
function notch({ x, y, h, w }: Box): string {
  const side = Math.min(1.5, h / 2, w / 2);
  return `<path class="paper notch" d="M${mm(x)} ${mm(y + h - side)}L${mm(x + side)} ${mm(y + h)}H${mm(x)}z"/>`;
}

function letters(one: Bar, onSolid: boolean): string {
  const { box, label } = one;
  const middlesX = box.w > LONG && one.sure !== "outline" ? [box.x + 4, box.x + box.w / 2, box.x + box.w - 4] : box.w > LONG ? [1, 3, 5].map((part) => box.x + (box.w * part) / 6) : [box.x + box.w / 2];
  return middlesX.map((x) => letter(one, x, label, onSolid)).join("");
}

/** A letter on its plate; where a plate does not fit, the letter alone with a rim of paper. */
function letter({ box, sure }: Bar, x: number, label: string, onSolid: boolean): string {
  const most = box.h * 0.72 / MM_PER_PT;
  const full = Math.min(LETTER_PT, most) * (label.length > 2 ? 0.88 : 1);
  const room = box.w - (sure === "likely" && onSolid ? Math.min(1.4, box.w * 0.4) : 0.5);
  const pt = Math.max(4.5, Math.min(full, (full * room) / textWidth(label, full, true)));
  const wide = textWidth(label, pt, true);
  const y = box.y + box.h / 2 + pt * MM_PER_PT * 0.36;
  if (onSolid) return text(x, y, label, { pt, bold: true, anchor: "middle", as: "reverse" });
  if (sure === "outline") return text(x, y, label, { pt, bold: true, anchor: "middle" });
  const plate: Box = { x: x - wide / 2 - 0.45, y: box.y + box.h * 0.12, w: wide + 0.9, h: box.h * 0.76 };
  if (plate.w > box.w - 0.8) return text(x, y, label, { pt, bold: true, anchor: "middle", as: "rim" });
  return rect(plate, 'class="plate"') + text(x, y, label, { pt, bold: true, anchor: "middle" });
}
