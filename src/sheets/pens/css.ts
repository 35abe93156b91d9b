import { pageRule, type PageForm, type PaperName } from "../paper.js";

const FORM: PageForm = { turned: "portrait", marginMm: 12 };

/** Style of a pen's sheet: black on white, on screen as on paper, so that a drawing keeps its scale. */
export function penCss(paper: PaperName): string {
  return `
:root{--ink:#000;--paper:#fff;--line:#000;--fill:#fff}
*{box-sizing:border-box;-webkit-print-color-adjust:exact;print-color-adjust:exact}
body{margin:0;padding:12px;max-width:210mm;background:var(--paper);color:var(--ink);font:15px/1.4 system-ui,"Liberation Sans",Arial,sans-serif;font-variant-numeric:tabular-nums}
h1{font-size:21px;margin:0 0 8px}h2{font-size:17px;margin:0 0 6px}
section{margin:0 0 24px;border-top:3px solid var(--ink);padding-top:10px}
p,ul{margin:0 0 8px}ul{padding-left:24px}
table{border-collapse:collapse}th,td{text-align:right;padding:2px 0 2px 6px;border-bottom:1px solid var(--ink)}
th:first-child,td:first-child{text-align:left;padding-left:0}
.scroll{overflow-x:auto}
svg{display:block;height:auto;font-family:"Liberation Sans",Arial,Helvetica,system-ui,sans-serif}
svg text{fill:var(--ink)}
svg .rim{paint-order:stroke;stroke:var(--paper);stroke-width:.9;stroke-linejoin:round}
svg .ground{fill:none;fill-rule:evenodd;stroke:var(--ink);stroke-width:.7}
svg .as-if{stroke-dasharray:2 1.2}
svg .box{fill:var(--paper);stroke:var(--ink)}
svg .stroke{fill:none;stroke:var(--ink)}
svg .ink{fill:var(--ink)}
svg .pl{fill:none;stroke:var(--line)}
svg .pf{fill:var(--line)}
svg .walk{fill:none;stroke:var(--ink);stroke-width:.22}
svg .lane{stroke-dasharray:.2 .9;stroke-linecap:round;stroke-width:.35}
svg .brought{stroke-dasharray:2.4 1}
svg .peg{fill:none;stroke:var(--ink);stroke-width:.35}
h3{font-size:15px;margin:10px 0 4px}
.steps{list-style:none;margin:0 0 8px;padding:0;columns:3;column-gap:4mm}
.steps li{display:flex;gap:5px;align-items:center;padding:1.5px 0;break-inside:avoid;white-space:nowrap;font-size:13px}
.steps b{min-width:24px;text-align:right}.steps .peg{min-width:74px}
.steps .lane-head{font-weight:700;break-after:avoid}
.tick{flex:none;width:13px;height:13px;border:1px solid var(--ink)}
${pageRule(paper, FORM)}
@media print{body{padding:0}.drawn,.care{break-inside:avoid}h2,h3,h3+p{break-after:avoid}}`.trim();
}
