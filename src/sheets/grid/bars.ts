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
  /** What it may say, each in lines: the letter, "P 3" for a strip, "C+Cb" for groups that run together. The first that fits is taken. */
  readonly labels: readonly (readonly string[])[];
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
  const { box, sure } = one;
  const room = box.w - (sure === "likely" && onSolid ? Math.min(1.4, box.w * 0.4) : 0.5);
  const label = fittingLabel(one.labels, room, box.h);
  if (label === null) return "";
  const thrice = sure === "outline" ? [1, 3, 5].map((part) => box.x + (box.w * part) / 6) : [box.x + 4, box.x + box.w / 2, box.x + box.w - 4];
  return (box.w > LONG ? thrice : [box.x + box.w / 2]).map((x) => letter(one, x, label, onSolid)).join("");
}

/** Words of a bar as they fit it: in one or more lines, or on end. */
interface Label {
  readonly lines: readonly string[];
  readonly pt: number;
  readonly onEnd: boolean;
}

/** Smallest sizes that can still be read: a letter alone, more letters, letters one under the other, on end. */
const LEAST_PT = { letter: 4, line: 5.5, lines: 3.8, onEnd: 5 } as const;

function fittingLabel(labels: Bar["labels"], wide: number, high: number): Label | null {
  const sized = (lines: readonly string[], [across, up]: readonly [number, number]): number => {
    const full = Math.min(LETTER_PT, ((up / lines.length) * 0.72) / MM_PER_PT) * (lines.join("").length > 2 && lines.length === 1 ? 0.88 : 1);
    return Math.min(full, ...lines.map((words) => across / textWidth(words, 1, true)));
  };
  for (const lines of labels) {
    const pt = sized(lines, [wide, lines.length > 1 ? high * 1.2 : high]);
    const least = lines.length > 1 ? LEAST_PT.lines : lines[0]!.length === 1 ? LEAST_PT.letter : LEAST_PT.line;
    if (pt >= least) return { lines, pt, onEnd: false };
    const endPt = sized(lines, [high - 0.4, wide * 1.1]);
    if (lines.length === 1 && /^\S\S+$/.test(lines[0]!) && endPt >= LEAST_PT.onEnd) return { lines, pt: endPt, onEnd: true };
  }
  return null;
}

/** Letters on a plate; where a plate does not fit, the plate takes all of the bar's width. */
function letter({ box, sure }: Bar, x: number, label: Label, onSolid: boolean): string {
  const words = labelText(label, x, box.y + box.h / 2, onSolid ? "reverse" : "");
  if (onSolid || sure === "outline") return words;
  const wide = Math.max(...label.lines.map((one) => textWidth(one, label.pt, true))) + 0.9;
  const narrow = label.onEnd || label.lines.length > 1 || wide > box.w - 0.8;
  const plate = narrow ? inset(box, Math.min(0.3, box.w / 8)) : { x: x - wide / 2, y: box.y + box.h * 0.12, w: wide, h: box.h * 0.76 };
  return rect(plate, 'class="plate"') + words;
}

function labelText({ lines, pt, onEnd }: Label, x: number, middle: number, as: string): string {
  const size = pt * MM_PER_PT;
  if (onEnd) return text(x + size * 0.36, middle, lines[0]!, { pt, bold: true, anchor: "middle", turn: -90, as });
  const pitch = size * 0.92;
  const first = middle + size * 0.36 - (pitch * (lines.length - 1)) / 2;
  return lines.map((words, i) => text(x, first + i * pitch, words, { pt, bold: true, anchor: "middle", as })).join("");
}
