import { PLATE_CSS } from "../plate.js";

/** Style of a day sheet: pure black on white, 11 pt; a screen shows the same sheet. */
export const DAY_CSS = `*{box-sizing:border-box;-webkit-print-color-adjust:exact;print-color-adjust:exact}
body{margin:0;padding:12px;background:#fff;color:#000;font:11pt/5.2mm system-ui,"Liberation Sans",Arial,sans-serif;font-variant-numeric:tabular-nums;overflow-wrap:anywhere}
p{margin:0}h1{font-size:21pt;line-height:9.5mm;margin:0 0 1.5mm}.again h1{font-size:13pt;line-height:6mm;margin:0 0 1mm;display:flex;justify-content:space-between;gap:5mm}
.page{break-after:page}.page:last-child{break-after:auto}
.before{border:.6mm solid #000;padding:1.4mm 2mm;margin:0 0 1.6mm}.before .ask{font-size:12pt;line-height:5.8mm}.before .boxes{display:flex;flex-wrap:wrap;gap:0 6mm;line-height:5.8mm}
.top{display:flex;gap:4mm;align-items:flex-start;margin:0 0 1.6mm}.top .said{flex:1;min-width:0}.top .said p{margin:0 0 .8mm}.top .map{flex:none;line-height:0}
h2.bar{display:flex;justify-content:space-between;align-items:baseline;gap:5mm;background:#000;color:#fff;font-size:11.5pt;line-height:5.8mm;padding:.3mm 2mm;margin:0 0 .8mm}h2.bar span:last-child{font-weight:400;text-align:right}
.task{display:grid;grid-template-columns:9mm 1fr 11mm;border-bottom:.4mm solid #000;padding:.6mm 0 1mm;margin:0 0 .8mm;break-inside:avoid;min-height:10.5mm}
.task .number{font-size:17pt;line-height:6.5mm;font-weight:700}.task .tickbox{justify-self:end;width:8.6mm;height:8.6mm;border:.35mm solid #000;margin-top:.4mm}
.task h3{display:flex;gap:2mm;align-items:flex-start;font-size:12.5pt;line-height:6.1mm;margin:0}.task h3 .what{flex:1;min-width:0}.task h3 .right{font-size:11pt;font-weight:400;white-space:nowrap}.task h3 svg{margin-top:.5mm}
.lines{display:flex;flex-wrap:wrap;column-gap:4mm}.line{display:flex;max-width:100%}.line>b{flex:none;width:16mm}.line>span{min-width:0}
.nb{white-space:nowrap}.box,.tick{display:inline-block;border:.3mm solid #000;background:#fff}.box{width:12mm;height:4.5mm;margin:0 1mm;vertical-align:-1mm}.tick{width:3.8mm;height:3.8mm;vertical-align:-.5mm;margin-right:1mm}
.write{display:inline-block;width:42mm;border-bottom:.25mm solid #000;height:4mm;margin:0 1mm;vertical-align:-.6mm}
.waits{margin:1.2mm 0 0;padding:0 0 1mm;border-bottom:.4mm solid #000}
.foot{display:grid;grid-template-columns:1fr 1fr;gap:8mm;margin:1mm 0 1mm}.foot h2{font-size:12.5pt;line-height:6mm;margin:0}.foot .call{display:flex;justify-content:space-between;gap:3mm;border-bottom:.25mm solid #000;padding:0 0 .3mm;margin:0 0 .5mm;font-weight:700}
.foot .call span:last-child{font-weight:400;text-align:right}.foot .call .not{background:#000;color:#fff;font-weight:700;padding:0 2mm;white-space:nowrap}.foot .call span:first-child{flex:none;max-width:60%}
.cautions{font-size:10pt;line-height:4.6mm}.version{font-size:9pt;line-height:4.2mm;margin-top:.6mm}.overleaf{margin:1mm 0 0}
.task svg{flex:none}
@media print{body{padding:0}}
${PLATE_CSS}`;
