import { test, fc } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { guardBox, takenForOther, unguardBox } from "../../src/plan/guarded-box.js";

describe("what a spreadsheet takes for something else", () => {
  // OWASP Application Security Verification Standard 5.0, requirement 1.2.10: signs at the head of a field that are escaped with a single quote
  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\0x", "=cmd|'/c calc'!A1", "＝1"])("a formula: %j", (text) => {
    expect(guardBox(text)).toBe(`'${text}`);
  });

  it.each(["007", "1.5", "1,000", "1E3", "2e-7", "1234567890", "10%", "(5)", "£5", "5€", "3/4", "1-2", "1.2.2027", "12:30", "5pm", "5 a", "TRUE", "false", "MAR1", "1may", "1-Mar", "Sept 5", "3 March 2027", "Dec 12, 2027"])(
    "a number, a day, an hour or truth: %s", (text) => {
      expect(takenForOther(text)).toBe(true);
    });

  it.each(["", "H1", "10", "0", "999999999", "5A", "1E", "1st", "Cows", "C", "C L cut", "H1>H2", "F3 hay; 10 hay", "3/4>H1", "March", "May", "Marsh1", "Maytree 2", "A1:B2", "yard: Barn lot", "away", "'s Morgens", "x'1", "Ж1"])(
    "none of these: %j", (text) => {
      expect(guardBox(text)).toBe(text);
    });

  it("has one apostrophe more before a name that begins with one", () => {
    expect([guardBox("'007"), unguardBox("''007"), unguardBox("'007"), unguardBox("'H1")]).toEqual(["''007", "'007", "007", "'H1"]);
  });

  const texts = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(..."'=+-@0123456789.,/:%eE() amyprj") }));
  test.prop([texts])("comes back the same, and is guarded at most once", (text) => {
    expect(unguardBox(guardBox(text))).toBe(text);
    expect([text, `'${text}`]).toContain(guardBox(text));
  });
});
