/**
 * What a spreadsheet does not leave as it stands when it opens a CSV file. An apostrophe before such a text keeps it: spreadsheets then
 * show it with its apostrophe, write it back the same, and run no formula. Source for formulas: OWASP Application Security Verification
 * Standard 5.0, requirement 1.2.10 (=, +, -, @, tab and null at the head escaped with a single quote), and CWE-1236; the wide forms of
 * the same signs are taken along. Numbers, days, hours and the words true and false: seen in LibreOffice, common practice for Excel.
 */
const FORMULA = /^[=+\-@\t\r\0\uFF1D\uFF0B\uFF0D\uFF20]/;
const TRUTH = /^(true|false)$/i;
const PLAIN_NUMBER = /^(0|[1-9]\d{0,8})$/;
const FIGURES_ONLY = /^[\d\s.,:/%()\p{Sc}+-]*\d[\d\s.,:/%()\p{Sc}+-]*$/u;
const HOUR = /^\d{1,2}(:\d\d){0,2}(\s+[ap]|\s*[ap]m)$/i;
const MONTH = "(jan(uary)?|feb(ruary)?|mar(ch)?|apr(il)?|may|june?|july?|aug(ust)?|sept?(ember)?|oct(ober)?|nov(ember)?|dec(ember)?)";
const DAY_IN_MONTH = new RegExp(`^(\\d{1,4}[\\s./,-]*${MONTH}|${MONTH}[\\s./,-]*\\d{1,4})([\\s./,-]+\\d{1,4})?$`, "i");

/** Whether a spreadsheet may take a text for a formula, a number, a day, an hour, or true and false. A plain whole number stays what it is. */
export function takenForOther(text: string): boolean {
  if (FORMULA.test(text) || TRUTH.test(text)) return true;
  if (PLAIN_NUMBER.test(text)) return false;
  return FIGURES_ONLY.test(text.replaceAll(/(?<=\d)e(?=[+-]?\d)/gi, "")) || HOUR.test(text) || DAY_IN_MONTH.test(text);
}

/** A text as a spreadsheet leaves it: `'007` for 007. One that begins with an apostrophe before such a text gets one more. */
export function guardBox(text: string): string {
  return takenForOther(text.replace(/^'+/, "")) ? `'${text}` : text;
}

/** Takes back what `guardBox` put before a text; others come back as they are. */
export function unguardBox(text: string): string {
  return text.startsWith("'") && takenForOther(text.replace(/^'+/, "")) ? text.slice(1) : text;
}
