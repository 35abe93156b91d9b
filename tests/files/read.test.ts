import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { MOST_BYTES, readFarm, readTableFile, readTextFile, sha256 } from "../../src/files/read.js";
import { loadTables } from "../../src/files/tables.js";

const folder = mkdtempSync(join(tmpdir(), "inbye-read-"));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const codesOf = (path: string) => {
  const read = readTextFile(path);
  return read.ok ? [] : read.findings.map((f) => f.code);
};

describe("readTextFile", () => {
  it("reads UTF-8, with and without a mark at its head", () => {
    const read = [file("a.yaml", "farm: Bryn Glâs\n"), file("b.yaml", "\uFEFFfarm: Bryn Glâs\n")].map(readTextFile);
    expect(read.map((r) => r.ok && r.value)).toEqual(["farm: Bryn Glâs\n", "farm: Bryn Glâs\n"]);
  });

  it("refuses ten megabytes, bytes that are no UTF-8, folders, and what is not there", () => {
    expect(codesOf(file("big.yaml", "x".repeat(10 * 1024 * 1024)))).toEqual(["too-big"]);
    expect(codesOf(file("latin.yaml", Uint8Array.of(0x66, 0xe2, 0x6d)))).toEqual(["not-text"]);
    expect(codesOf(file("utf16.yaml", Uint8Array.of(0xff, 0xfe, 0x66, 0x00)))).toEqual(["not-text"]);
    expect(codesOf(folder)).toEqual(["no-file"]);
    expect(codesOf(join(folder, "none.yaml"))).toEqual(["no-file"]);
  });

  it("reads as much as it says it does", () => {
    expect(codesOf(file("just.yaml", "x".repeat(MOST_BYTES)))).toEqual([]);
    expect(codesOf(file("over.yaml", "x".repeat(MOST_BYTES + 1)))).toEqual(["too-big"]);
  });
});

describe("readTableFile", () => {
  const marked = (text: string): Buffer => Buffer.from(`\uFEFF${text}`, "utf16le");
  it("reads UTF-8 and, by its mark, UTF-16 of either order", () => {
    const text = "cell;2027-05-01\r\nЖ1;🐄\r\n";
    const paths = [file("a.csv", text), file("b.csv", `\uFEFF${text}`), file("c.csv", marked(text)), file("d.csv", marked(text).swap16())];
    expect(paths.map(readTableFile).map((r) => r.ok && r.value)).toEqual([text, text, text, text]);
  });

  it.each([
    ["half a letter", Uint8Array.of(0xff, 0xfe, 0x66)],
    ["half an emoji", Uint8Array.of(0xff, 0xfe, 0x3d, 0xd8)],
    ["no mark", Buffer.from("cell,2027-05-01", "utf16le")],
    ["no mark and more than ASCII", Buffer.from("cell,é1", "utf16le")],
    ["letters of Windows-1252", Uint8Array.of(0x63, 0xe9, 0x31)],
  ])("refuses %s", (_name, bytes) => {
    const read = readTableFile(file("odd.csv", bytes));
    expect(read.ok ? [] : read.findings).toMatchObject([{ code: "not-text", next: "in a spreadsheet, save it as CSV in UTF-8" }]);
  });

  it("knows a workbook", () => {
    const read = readTableFile(file("grid.xlsx", Uint8Array.of(0x50, 0x4b, 3, 4, 20, 0)));
    expect(read.ok ? [] : read.findings).toMatchObject([{ code: "not-text", found: "this is a workbook or another packed file" }]);
  });
});

describe("readFarm", () => {
  it("says what is amiss with every file", () => {
    const read = readFarm(join(folder, "none.yaml"), [join(folder, "no-change.yaml")], loadTables());
    expect(read.ok ? [] : read.findings.map((f) => f.file)).toEqual(["none.yaml", "no-change.yaml"]);
  });
});

describe("sha256", () => {
  it("is that of FIPS 180-4's example", () => {
    expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });
});
