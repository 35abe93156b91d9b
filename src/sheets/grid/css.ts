import { KINDS } from "../../farm/scenario.js";
import { MARKS } from "../marks.js";
import { GRID_FORM, pageRule, type PaperName } from "../paper.js";
import { canvasOf } from "./layout.js";

/** On a screen the drawing takes the window's width, but for windows too narrow to read it in: there it scrolls. */
const LEAST_PX = 1080;
/** How much larger than on A4 it becomes at most. */
const SCREEN_MOST = 2;
/** The drawing counts its widths in this sans, and is held to them in any other; the page beside it takes the machine's own. */
const DRAWN_IN = '"Liberation Sans",Arial,Helvetica,system-ui,sans-serif';

const SCREEN = `
:root{--ink:#1B1A17;--soft:#55524A;--paper:#FBFAF5;--weekend:#EDEAE0;--rule:#8A867C;--pick:#14507A}
*{box-sizing:border-box}
body{margin:0;padding:12px;background:var(--paper);color:var(--ink);font:16px/1.45 system-ui,"Liberation Sans",Arial,sans-serif;font-variant-numeric:tabular-nums}
.sheet{overflow-x:auto;margin:0 0 32px;border-top:3px solid var(--ink);padding-top:12px}
.sheet:focus-visible{outline:3px solid var(--pick)}
h1{font-size:22px;margin:0 0 8px}h2{font-size:19px;margin:0 0 8px;border-top:3px solid var(--ink);padding-top:12px}h3{font-size:16px;margin:12px 0 8px}
.twin{max-width:1100px}.twin section{margin:0 0 32px}
table{border-collapse:collapse;width:100%}th,td{text-align:left;padding:4px 12px 4px 0;border-bottom:1px solid var(--rule);vertical-align:top}
thead th{border-bottom-width:2px}
caption{text-align:left;font-size:15px;color:var(--soft);padding:0 0 8px}
ol,ul{margin:0;padding-left:28px}`;

const DRAWING = `
.sheet svg{display:block;height:auto;font-family:${DRAWN_IN};font-variant-numeric:tabular-nums}
svg text{fill:var(--ink)}
svg .reverse{fill:var(--paper)}
svg .rim{paint-order:stroke;stroke:var(--paper);stroke-width:.7;stroke-linejoin:round}
svg .wide{stroke-width:1.4}
svg .ink{fill:var(--ink);stroke:var(--ink);stroke-width:.1}
svg .none{fill:none;stroke:var(--ink)}
svg .box{fill:var(--paper);stroke:var(--ink)}
svg .paper{fill:var(--paper);stroke:none}
svg .notch{stroke:var(--ink);stroke-width:.2}
svg .outline{stroke:var(--ink);stroke-width:.24;stroke-dasharray:.3 .5}
svg .plate{fill:var(--paper);stroke:var(--ink);stroke-width:.12}
svg .weekend{fill:var(--weekend)}
svg .stroke{fill:none;stroke:var(--ink)}
svg .soft{stroke:var(--rule)}
svg .dots{stroke:var(--rule);stroke-dasharray:.14 .85}
svg .dashes{stroke-dasharray:.9 .6}
svg .fill{fill:var(--fill)}
svg .frame{fill:none;stroke:var(--ink)}
svg .pl{fill:none;stroke:var(--line)}
svg .pf{fill:var(--line)}`;

const PRINT = `
:root{--ink:#000;--soft:#000;--paper:#fff;--weekend:#ddd;--rule:#000}
body{padding:0;background:#fff}
.screen,.twin{display:none}
.sheet{overflow:visible;margin:0;border:0;padding:0;break-after:page;break-inside:avoid}
.sheet:last-of-type{break-after:auto}
${KINDS.map((kind) => `.k-${kind}`).join(",")}{--fill:#fff;--line:#000}
*{-webkit-print-color-adjust:exact;print-color-adjust:exact}`;

/** Style of the page: colours on the screen, black on white in print, with grey only for weekends; the drawing as large as the paper takes it. */
export function gridCss(paper: PaperName): string {
  const { width, scale } = canvasOf(paper);
  const onScreen = `.sheet svg{width:100%;min-width:${LEAST_PX}px;max-width:${(width * SCREEN_MOST).toFixed(0)}mm}`;
  // rounded down: a hair too wide is cut
  const onPaper = `.sheet svg{width:${Math.floor(10 * width * scale + 1e-6) / 10}mm;min-width:0;max-width:none}`;
  const kinds = KINDS.map((kind) => `.k-${kind}{--fill:${MARKS[kind].fill};--line:${MARKS[kind].line}}`).join("\n");
  return `${SCREEN}${DRAWING}\n${onScreen}\n${kinds}\n${pageRule(paper, GRID_FORM)}\n@media print{${PRINT}\n${onPaper}\n}`.trim();
}
