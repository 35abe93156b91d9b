/** Printing through a browser of the machine: which is found, what is printed, and what becomes of one that hangs. */
import { chmodSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../src/files/browser.js";
import { printPdf } from "../../src/files/print-pdf.js";
import { BROWSER } from "../sheets/browser-here.js";
import { freshFolder } from "../cli/inbye.js";

const folder = freshFolder();
// a place of its own for what is made on the way, so that only this file's leftovers are seen
const usual = process.env["TMPDIR"];
beforeAll(() => {
  mkdirSync(join(folder.path, "made"));
  process.env["TMPDIR"] = join(folder.path, "made");
});
afterAll(() => {
  if (usual === undefined) delete process.env["TMPDIR"];
  else process.env["TMPDIR"] = usual;
  folder.done();
});

const only = (...there: readonly string[]) => (path: string): boolean => there.includes(path.replaceAll("\\", "/"));
const leftovers = (): readonly string[] => readdirSync(tmpdir());

describe("the browser that prints", () => {
  it("is the one that is named; one that is not there is told", () => {
    expect(findBrowser({ INBYE_BROWSER: "/opt/my/chrome" }, "linux", only("/opt/my/chrome", "/usr/bin/chromium"))).toEqual({ path: "/opt/my/chrome" });
    expect(findBrowser({ INBYE_BROWSER: "/opt/my/chrome" }, "linux", only("/usr/bin/chromium"))).toEqual({ missing: "/opt/my/chrome" });
  });

  it.each([
    ["linux", { PATH: "/bin:/home/me/bin" }, "/home/me/bin/google-chrome"], ["linux", {}, "/snap/bin/chromium"],
    ["darwin", {}, "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"], ["darwin", { HOME: "/Users/me" }, "/Users/me/Applications/Chromium.app/Contents/MacOS/Chromium"],
    ["win32", { ProgramFiles: "C:/Program Files" }, "C:/Program Files/Google/Chrome/Application/chrome.exe"], ["win32", { "ProgramFiles(x86)": "C:/Program Files (x86)" }, "C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe"],
  ] as const)("is found on %s %o", (platform, environment, path) => {
    expect(findBrowser(environment, platform, only(path))).toEqual({ path });
  });

  it("is none where there is none", () => {
    expect(findBrowser({ PATH: "/bin" }, "linux", () => false)).toBe(null);
  });
});

describe("printing", () => {
  const hangs = join(folder.path, "hangs");
  const fails = join(folder.path, "fails");
  writeFileSync(hangs, "#!/bin/sh\nexec sleep 30\n");
  writeFileSync(fails, "#!/bin/sh\nexit 7\n");
  for (const path of [hangs, fails]) chmodSync(path, 0o755);

  it.skipIf(!BROWSER)("gives a PDF with as many pages as the page asks for, and leaves nothing behind", async () => {
    const page = (count: number): string => `<!DOCTYPE html><style>@page{size:A4}p{break-after:page}p:last-child{break-after:auto}</style>${"<p>Cows</p>".repeat(count)}`;
    for (const count of [1, 3]) expect(await printPdf(page(count), BROWSER!)).toMatchObject({ pages: count });
    expect(leftovers()).toEqual([]);
  });

  it.skipIf(process.platform === "win32")("ends a browser that hangs, tells of one that fails or is not there, and leaves nothing behind", async () => {
    expect(await printPdf("<p>Cows</p>", hangs, 300)).toEqual({ why: "too-long" });
    expect(await printPdf("<p>Cows</p>", fails)).toEqual({ why: "no-pdf" });
    expect(await printPdf("<p>Cows</p>", join(folder.path, "none"))).toEqual({ why: "no-pdf" });
    expect(leftovers()).toEqual([]);
  });
});
