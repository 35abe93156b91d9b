import { BROWSER_VARIABLE, findBrowser } from "../files/browser.js";
import { printPdf, type Printed } from "../files/print-pdf.js";
import type { Finding } from "../farm/finding.js";
import type { OutFile } from "../files/write.js";
import { writeOut } from "./out-folder.js";
import { commandLineFinding } from "./outcome.js";
import type { SheetsSeen } from "./sheets-answer.js";

/** Codes of findings for which a PDF that was asked for is not there. */
export const NO_PDF: readonly string[] = ["no-browser", "not-printed"];

const BY_HAND = "open the HTML file in any browser and print it from there (to paper, or choose PDF as the printer), scale 100 %, without headers and footers";

/** The browser that prints, or why there is none. */
export function browserToPrint(): { readonly path: string } | { readonly finding: Finding } {
  const found = findBrowser();
  if (found !== null && "path" in found) return found;
  const what = found === null ? "no Chromium or Chrome was found on this machine, so no PDF could be printed" : `${BROWSER_VARIABLE} is ${found.missing}, and no program is there`;
  const next = `${BY_HAND}; or name a Chromium or Chrome in the environment variable ${BROWSER_VARIABLE}`;
  return { finding: commandLineFinding("no-browser", what, "the sheets were written as HTML, with all that is on them", next) };
}

interface Page {
  readonly name: string;
  readonly html: string;
}

/** Prints every page, then writes all; one that does not print is written as HTML. */
export async function printAll(browser: string, pages: readonly Page[], folder: string, replace: boolean): Promise<Pick<SheetsSeen, "files" | "text"> & { readonly notes: readonly Finding[] }> {
  const done: { readonly file: OutFile; readonly printed: Printed }[] = [];
  for (const { name, html } of pages) {
    const printed = await printPdf(html, browser);
    done.push({ printed, file: "pdf" in printed ? { name: `${name}.pdf`, text: printed.pdf } : { name: `${name}.html`, text: html } });
  }
  const paths = writeOut(folder, done.map(({ file }) => file), replace);
  return {
    text: null, files: done.map(({ printed }, i) => ({ file: paths[i]!, pages: "pdf" in printed ? printed.pages : null })),
    notes: done.flatMap(({ printed }, i) => ("pdf" in printed ? [] : [notPrinted(browser, paths[i]!, printed.why)])),
  };
}

function notPrinted(browser: string, file: string, why: "too-long" | "no-pdf"): Finding {
  const found = why === "too-long" ? `${browser} did not end within a minute and was ended` : `${browser} ended without a PDF`;
  return commandLineFinding("not-printed", found, `${file} was written as HTML instead`, BY_HAND);
}
