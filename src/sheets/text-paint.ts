import type { Kind } from "../farm/kinds.js";

/** What a piece of the text shows, for colouring. */
export type TextPart = "head" | "stay" | "shut" | "cut" | "weekend" | "note";

/** Colours a piece of text without changing its width; the kind tells whose stay it is. */
export type Paint = (text: string, part: TextPart, kind?: Kind) => string;
