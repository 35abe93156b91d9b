import { escaped } from "./grid/svg.js";

/** Scripts in use today that run from right to left: ISO 15924. */
const RIGHT_TO_LEFT: readonly string[] = ["Arab", "Hebr", "Syrc", "Thaa", "Nkoo", "Adlm", "Rohg"];

/** A page that needs nothing beside itself, to print and to read on a screen: its title, the rules of its look, and all that stands on it; in what language (BCP 47). */
export function printedPage(title: string, css: string, body: string, locale: string): string {
  return `<!DOCTYPE html>
<html lang="${escaped(locale)}" dir="${directionOf(locale)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>
${css}
</style>
</head>
<body>
${body}
</body>
</html>
`;
}

/** Which way a language is written: by the script that its locale is most likely written in (Unicode CLDR, likely subtags). */
export function directionOf(locale: string): "ltr" | "rtl" {
  return RIGHT_TO_LEFT.includes(new Intl.Locale(locale).maximize().script ?? "") ? "rtl" : "ltr";
}
