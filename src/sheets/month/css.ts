import { HELD_FACES, HELD_FAMILY } from "../held-fonts.js";
import { PLATE_CSS } from "../plate.js";

/** Style of a month sheet: pure black on white, weekends grey; a screen shows the same sheet. */
export const MONTH_CSS = `${HELD_FACES}
*{box-sizing:border-box;-webkit-print-color-adjust:exact;print-color-adjust:exact}
body{margin:0;padding:12px;background:#fff;color:#000;font:11pt/1.15 ${HELD_FAMILY};font-variant-numeric:tabular-nums}
.page{break-after:page;overflow-x:auto}.page:last-child{break-after:auto}
header{display:flex;justify-content:space-between;align-items:baseline;gap:6mm;margin:0 0 2mm}h1{font-size:20pt;margin:0}header p{margin:0;font-size:9pt;text-align:right}
table{border-collapse:collapse;table-layout:fixed}
th{text-align:left;vertical-align:bottom;padding:0 0 1mm 1mm;font-size:9pt;font-weight:400;border-bottom:.7mm solid #000;overflow:hidden}th b{display:block;font-size:10pt}
td{padding:0 0 0 1.2mm;border-bottom:.15mm solid #000;vertical-align:middle;white-space:nowrap;overflow:hidden}
td.group{border-left:.15mm solid #000;padding:0}td.home,td.jobs{border-left:.15mm solid #000}td.home{text-align:center;padding:0}
.weekend td{background:#e2e2e2}
.day b{display:inline-block;width:7mm;text-align:right;font-size:13pt}.day{font-size:10pt}
.stay{display:flex;align-items:center;gap:1.2mm}.stay .place{flex:1}
.tick{flex:none;width:3.6mm;height:3.6mm;border:.3mm solid #000;background:#fff;margin-right:.8mm}
.jobs span{white-space:normal;display:block}
.foot{font-size:9pt;margin:1.5mm 0 0}
@media print{body{padding:0}.page{overflow:visible}}
${PLATE_CSS}`;
