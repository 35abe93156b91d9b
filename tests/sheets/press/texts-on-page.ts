/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** A piece of text as it is laid out for print, px at 96 to the inch from the page's upper left corner. */
export interface TextBox {
  readonly words: string;
  /** Where its ink may be, from the font's own measures: [left, top, right, bottom]. */
  readonly ink: readonly [number, number, number, number];
  readonly colour: string;
  /** What cuts it off, if something does: same order. */
  readonly within: readonly [number, number, number, number] | null;
}

export interface PageLaidOut {
  readonly texts: readonly TextBox[];
  /** Width of all that is laid out; over the page's own it is cut. */
  readonly wide: number;
  /** Height of the tallest drawing. */
  readonly drawing: number;
}

/** Runs inside the browser: every text that is drawn, with the box of its ink. */
export function textsOnPage(): PageLaidOut {
  type Box = readonly [number, number, number, number];
  const pen = document.createElement("canvas").getContext("2d")!;

  const inkOf = (element: Element, words: string): { up: number; down: number; above: number; below: number } => {
    const { fontStyle, fontWeight, fontFamily, fontSize } = getComputedStyle(element);
    const size = parseFloat(fontSize);
    pen.font = `${fontStyle} ${fontWeight} 100px ${fontFamily}`;
    const measured = pen.measureText(words);
    const scaled = (value: number): number => (value * size) / 100;
    const [up, down] = [scaled(measured.actualBoundingBoxAscent), scaled(measured.actualBoundingBoxDescent)];
    return { up, down, above: scaled(measured.fontBoundingBoxAscent), below: scaled(measured.fontBoundingBoxDescent) };
  };

  const cutBy = (element: Element): Box | null => {
    for (let one: Element | null = element; one; one = one.parentElement) {
      if (one instanceof SVGGraphicsElement && !(one instanceof SVGSVGElement)) continue;
      if (getComputedStyle(one).overflow === "visible" || one === document.documentElement || one === document.body) continue;
      const { left, top, right, bottom } = one.getBoundingClientRect();
      return [left, top, right, bottom];
    }
    return null;
  };

  const boxRound = (corners: readonly DOMPoint[]): Box => {
    const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
    return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  };

  const drawn = (element: SVGTextContentElement, words: string): TextBox[] => {
    const count = element.getNumberOfChars();
    if (count === 0) return [];
    const { up, down } = inkOf(element, words);
    const [start, end] = [element.getStartPositionOfChar(0), element.getEndPositionOfChar(count - 1)];
    const toPage = element.getScreenCTM()!;
    const corners = [start.x, end.x].flatMap((x) => [start.y - up, start.y + down].map((y) => new DOMPoint(x, y).matrixTransform(toPage)));
    return [{ words, ink: boxRound(corners), colour: getComputedStyle(element).fill, within: cutBy(element) }];
  };

  const written = (node: Text, element: Element, words: string): TextBox[] => {
    const range = document.createRange();
    range.selectNodeContents(node);
    const { up, down, above, below } = inkOf(element, words);
    const level = getComputedStyle(element).writingMode === "horizontal-tb";
    return [...range.getClientRects()].filter(({ width, height }) => width > 0.5 && height > 0.5).map(({ left, top, right, bottom }): TextBox => {
      const base = top + ((bottom - top) * above) / (above + below);
      const ink: Box = level ? [left, base - up, right, base + down] : [left, top, right, bottom];
      return { words, ink, colour: getComputedStyle(element).color, within: cutBy(element) };
    });
  };

  const texts: TextBox[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement!;
    const words = (node.textContent ?? "").replace(/\s+/g, " ").trim();
    const style = getComputedStyle(element);
    if (words === "" || style.visibility !== "visible" || style.display === "none" || !element.checkVisibility()) continue;
    if (element instanceof SVGElement && !(element instanceof SVGTextContentElement)) continue;
    texts.push(...(element instanceof SVGTextContentElement ? drawn(element, words) : written(node as Text, element, words)));
  }
  return {
    texts, wide: document.documentElement.scrollWidth,
    drawing: Math.max(0, ...[...document.querySelectorAll("svg")].map((svg) => svg.getBoundingClientRect().height)),
  };
}

/** Runs inside the browser: margins of the page's own rule, as written. */
export function marginOfPage(): string {
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]).flatMap((rule) => (rule instanceof CSSMediaRule ? [...rule.cssRules] : [rule]));
  const page = rules.find((rule): rule is CSSPageRule => rule instanceof CSSPageRule);
  return page?.style.getPropertyValue("margin-left") ?? "";
}
