import { HELD_FACES, HELD_FAMILY } from "../held-fonts.js";
import { ASK_MM, BAR_MM, BESIDE_MM, CAUTION_MM, HEAD_MM, LABEL_MM, LINE_MM, NUMBER_MM, PARAGRAPH_MM, TICK_MM, TITLE_MM } from "./heights.js";
import { MAP_CSS } from "../map/map-drawing.js";
import { PLATE_CSS } from "../plate.js";

/** Style of a day sheet: pure black on white, 11 pt; a screen shows the same sheet. */
export const DAY_CSS = `${HELD_FACES}
*{box-sizing:border-box;-webkit-print-color-adjust:exact;print-color-adjust:exact}
body{margin:0;padding:12px;background:#fff;color:#000;font:11pt/${LINE_MM}mm ${HELD_FAMILY};font-variant-numeric:tabular-nums;overflow-wrap:anywhere}
p{margin:0}h1{font-size:19pt;line-height:${HEAD_MM - 1}mm;margin:0 0 1mm}.again h1{font-size:13pt;line-height:6mm;margin:0 0 1mm;display:flex;justify-content:space-between;gap:5mm}
.page{break-after:page;padding:.3mm}.page:last-child{break-after:auto}
.before{border:.6mm solid #000;padding:.8mm 2mm;margin:0 0 1.2mm;font-size:12pt;line-height:${ASK_MM}mm;display:flow-root}.before .at{display:inline-block;max-width:100%;padding-left:4mm}
.top{margin:0 0 1.2mm}.top::after{content:"";display:block;clear:both}.top>p{margin:0 0 ${PARAGRAPH_MM}mm}.top>.before{margin:0 0 1.2mm}.top .map{float:right;margin:0 0 0 ${BESIDE_MM}mm;font-size:7.5pt;line-height:3.3mm}.top .map p{margin:1mm 0 0}
h2.bar{display:flex;justify-content:space-between;align-items:baseline;gap:5mm;background:#000;color:#fff;font-size:11.5pt;line-height:${BAR_MM}mm;padding:.2mm 2mm;margin:0 0 .6mm}h2.bar span:last-child{font-weight:400;text-align:right}
.task{display:grid;grid-template-columns:${NUMBER_MM}mm 1fr ${TICK_MM}mm;border-bottom:.4mm solid #000;padding:.3mm 0 .6mm;margin:0 0 .4mm;break-inside:avoid;min-height:9.8mm}
.pair{display:grid;grid-template-columns:1fr 1fr;column-gap:${BESIDE_MM}mm}.task .number{font-size:17pt;line-height:6.5mm;font-weight:700}.task .tickbox{justify-self:end;width:8.4mm;height:8.4mm;border:.35mm solid #000;margin-top:.4mm}
.task h3{display:flex;gap:2mm;align-items:flex-start;font-size:12pt;line-height:${TITLE_MM}mm;margin:0}.task h3 .what{flex:1;min-width:0}.task h3 .right{font-size:11pt;font-weight:400;white-space:nowrap}.task h3 svg{margin-top:.5mm}
.lines{display:flex;flex-wrap:wrap;column-gap:4mm}.line{display:flex;max-width:100%}.line>b{flex:none;width:${LABEL_MM}mm}.line>span{min-width:0}
.nb{white-space:nowrap}.box,.tick{display:inline-block;border:.3mm solid #000;background:#fff}.box{width:12mm;height:4.2mm;margin:0 1mm;vertical-align:-1mm}.tick{width:3.8mm;height:3.8mm;vertical-align:-.5mm;margin-right:1mm}
.write{display:inline-block;width:42mm;border-bottom:.25mm solid #000;height:4mm;margin:0 1mm;vertical-align:-.6mm}
.waits{margin:.6mm 0 0;padding:0 0 .6mm;border-bottom:.4mm solid #000}
.foot{display:grid;gap:6mm;margin:.8mm 0 .8mm}.foot h2{font-size:12.5pt;line-height:5.6mm;margin:0}.foot .call{display:flex;justify-content:space-between;gap:3mm;border-bottom:.25mm solid #000;padding:0 0 .3mm;margin:0 0 .5mm;font-weight:700}
.foot .call span:last-child{font-weight:400;text-align:right}.foot .call .not{background:#000;color:#fff;font-weight:700;padding:0 2mm;white-space:nowrap}.foot .call span:first-child{flex:none;max-width:60%}
.cautions{font-size:10pt;line-height:${CAUTION_MM}mm}.version{font-size:9pt;line-height:3.9mm;margin-top:.4mm}.overleaf{margin:1mm 0 0}
.task svg{flex:none}
@media print{body{padding:0}}
${PLATE_CSS}
${MAP_CSS}`;
