/** Lines of RFC 5545 (Internet Calendaring and Scheduling, 2009): folding of section 3.1, TEXT of 3.3.11; read back by ical.js 2.2.1. */
import ICAL from "ical.js";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { component, contentLine, dateValue, escapedText } from "../../../src/sheets/calendar/ics-text.js";

const octets = (line: string): number => Buffer.byteLength(line, "utf8");
const unfolded = (text: string): string => text.replaceAll("\r\n ", "");

describe("a line of a calendar", () => {
  it("is escaped as in the example of 3.3.11", () => {
    expect(escapedText("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")).toBe("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
  });

  // 3.3.11: ESCAPED-CHAR is \\ or \; or \, or \N or \n; a colon and a double quote stand as they are
  it("has a backslash before backslash, semicolon and comma, and nothing else", () => {
    expect(escapedText('a\\b;c,d:"e"')).toBe('a\\\\b\\;c\\,d:"e"');
    expect(escapedText("a\r\nb\rc\nd\te")).toBe("a\\nb\\nc\\nd\te");
    expect(escapedText("a\u0000b\u0007c\u007fd")).toBe("abcd");
  });

  // 3.1: lines of text SHOULD NOT be longer than 75 octets, excluding the line break
  it("is folded after 75 octets, and not before", () => {
    expect(contentLine("X", "a".repeat(73))).toBe(`X:${"a".repeat(73)}\r\n`);
    expect(contentLine("X", "a".repeat(74))).toBe(`X:${"a".repeat(73)}\r\n a\r\n`);
    expect(contentLine("X", "a".repeat(73 + 74 + 1)).split("\r\n").map(octets)).toEqual([75, 75, 2, 0]);
  });

  // 3.1, note: a fold in the middle of a UTF-8 sequence is what simple programs do wrong
  it("is never folded inside a letter", () => {
    const lines = contentLine("X", `${"a".repeat(72)}жжж`).split("\r\n");
    expect(lines).toEqual([`X:${"a".repeat(72)}`, " жжж", ""]);
    expect(contentLine("X", "\u{1f404}".repeat(40)).split("\r\n").slice(0, -1).every((line) => octets(line) <= 75 && Buffer.from(line, "utf8").toString("utf8") === line)).toBe(true);
  });

  // 3.1: a long line split and unfolded is the line it was
  test.prop([fc.string({ unit: "grapheme", maxLength: 300 })])("unfolds to what it was, no line over 75 octets", (text) => {
    const line = contentLine("SUMMARY", escapedText(text));
    expect(unfolded(line)).toBe(`SUMMARY:${escapedText(text)}\r\n`);
    expect(line.split("\r\n").every((one) => octets(one) <= 75)).toBe(true);
  });

  test.prop([fc.string({ unit: fc.constantFrom("\\", ";", ",", "\n", "n", ":", "\"", "ж", "🐄", " ", "\t", "<script>", "a".repeat(60)), minLength: 1, maxLength: 40 })])(
    "is read back as it was written", (text) => {
      const read = new ICAL.Component(ICAL.parse(component("VCALENDAR", [["X-A", escapedText(text)], ["SUMMARY", escapedText(text)]])) as unknown[]);
      expect(read.getFirstPropertyValue("summary")).toBe(text);
    });

  it("writes a day without hyphens (3.3.4)", () => {
    expect(dateValue("1997-07-14")).toBe("19970714");
  });
});
