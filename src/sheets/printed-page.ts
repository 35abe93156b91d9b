import { escaped } from "./grid/svg.js";

/** A page that needs nothing beside itself, to print and to read on a screen: its title, the rules of its look, and all that stands on it. */
export function printedPage(title: string, css: string, body: string): string {
  return `<!DOCTYPE html>
<html lang="en">
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
