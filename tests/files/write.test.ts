/** Writing never takes away what is there, and never leaves half a file. */
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { whatStandsInTheWay, writeFiles } from "../../src/files/write.js";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "inbye-write-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const FILES = [{ name: "a.txt", text: "a\n" }, { name: "b.txt", text: "b\n" }];

describe("writeFiles", () => {
  it("makes the folder and writes every file, leaving nothing else", () => {
    expect(writeFiles(join(folder, "x/y"), FILES, false)).toEqual([]);
    expect(readdirSync(join(folder, "x/y"))).toEqual(["a.txt", "b.txt"]);
    expect(readFileSync(join(folder, "x/y/b.txt"), "utf8")).toBe("b\n");
  });

  it("writes none when one is there, and says which", () => {
    writeFileSync(join(folder, "b.txt"), "mine");
    expect(writeFiles(folder, FILES, false)).toEqual([{ why: "file-exists", path: join(folder, "b.txt") }]);
    expect(readdirSync(folder)).toEqual(["b.txt"]);
    expect(readFileSync(join(folder, "b.txt"), "utf8")).toBe("mine");
  });

  it("writes over what is there when told to", () => {
    writeFileSync(join(folder, "b.txt"), "mine");
    expect(writeFiles(folder, FILES, true)).toEqual([]);
    expect(readFileSync(join(folder, "b.txt"), "utf8")).toBe("b\n");
  });

  it("never takes a folder away, told or not", () => {
    mkdirSync(join(folder, "a.txt"));
    expect(writeFiles(folder, FILES, true)).toEqual([{ why: "not-a-folder", path: join(folder, "a.txt") }]);
    expect(existsSync(join(folder, "b.txt"))).toBe(false);
  });

  it("leaves no part behind when it cannot finish", () => {
    writeFileSync(join(folder, `.b.txt.${process.pid}.part`), "in the way");
    expect(() => writeFiles(folder, FILES, false)).toThrow("EEXIST");
    expect(existsSync(join(folder, "a.txt"))).toBe(false);
  });
});

describe("whatStandsInTheWay", () => {
  it("sees a file where the folder should be, however deep", () => {
    writeFileSync(join(folder, "plans"), "");
    expect(whatStandsInTheWay(join(folder, "plans/withy-end"), ["a.txt"], true)).toEqual([{ why: "not-a-folder", path: join(folder, "plans") }]);
  });

  // root may write anywhere, so there is nothing to see
  it.runIf(process.getuid?.() !== 0)("sees a folder that may not be written to", () => {
    chmodSync(folder, 0o500);
    expect(whatStandsInTheWay(join(folder, "x"), ["a.txt"], false)).toEqual([{ why: "not-allowed", path: folder }]);
    chmodSync(folder, 0o700);
  });

  it("makes nothing", () => {
    expect(whatStandsInTheWay(join(folder, "new"), ["a.txt"], false)).toEqual([]);
    expect(readdirSync(folder)).toEqual([]);
  });
});
