import { HELD_FACES, HELD_FAMILY } from "../held-fonts.js";
import { PLATE_CSS } from "../plate.js";

/** Style of a week sheet: pure black on white, weekends grey; a screen shows the same sheet. */
export const WEEK_CSS = `${HELD_FACES}
*{box-sizing:border-box;-webkit-print-color-adjust:exact;print-color-adjust:exact}
body{margin:0;padding:12px;background:#fff;color:#000;font:11pt/1.18 ${HELD_FAMILY};font-variant-numeric:tabular-nums}
.page{break-after:page;overflow-x:auto}.page:last-child{break-after:auto}
header{display:flex;justify-content:space-between;align-items:baseline;gap:6mm;margin:0 0 2mm}h1{font-size:16pt;margin:0;white-space:nowrap}header p{margin:0;font-size:9pt;text-align:right}
table{border-collapse:collapse;table-layout:fixed}
th{text-align:left;font-size:10pt;padding:0 0 1mm 1.5mm;border-bottom:.5mm solid #000}
td{vertical-align:top;padding:1.2mm 1.5mm;border-bottom:.3mm solid #000;border-left:.15mm solid #000;overflow-wrap:break-word}td:first-child{border-left:0}
tr{break-inside:avoid}.weekend td{background:#e8e8e8}
.day b{display:block}.day p{margin:0}.day .people{margin-top:1.2mm;font-size:9.5pt}
.line{display:flex;gap:1.4mm;align-items:flex-start;margin:0 0 .8mm}.move{white-space:nowrap;display:flex;gap:1.2mm;align-items:center;margin:0 0 1.2mm;font-size:13pt}
.tick{flex:none;width:3.8mm;height:3.8mm;border:.3mm solid #000;background:#fff;margin-top:.3mm}.move .tick{width:5.6mm;height:5.6mm}
.stand{white-space:nowrap;display:flex;gap:1.4mm;align-items:center;margin:0 0 .6mm}.stand .moved{font-weight:700;text-decoration:underline;text-underline-offset:.8mm}.stand small{font-size:9pt}
.count{display:flex;justify-content:space-between;border-bottom:.2mm solid #000;height:5.6mm;white-space:nowrap;align-items:flex-end;margin:0}.count small{font-size:9pt}
.key{display:flex;flex-wrap:wrap;gap:1.5mm 5mm;align-items:center;margin:2mm 0 1mm;font-size:10pt}.key span{display:inline-flex;gap:1.5mm;align-items:center}
.foot{margin:0 0 .8mm;font-size:10pt}
@media print{body{padding:0}.page{overflow:visible}}
${PLATE_CSS}`;
