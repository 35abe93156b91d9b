import { NEAR_UNITS, QUANTITIES, QUANTITY_WORDS, UNITS, type QuantityName } from "./units.js";

export type AmountFault = "unit-missing" | "unit-wrong" | "unit-unknown" | "unit-half" | "comma" | "number-form";

/**
 * What is amiss with a written amount. `found` and `allowed` are clauses without a full stop ("0.28 has no unit";
 * "areas are in ha, ac or m2"); `next` is the amount as it should be written, ready to copy ("0.28 ha"), or empty where
 * nothing typed says which number is meant.
 */
export interface AmountRefused {
  readonly ok: false;
  readonly code: AmountFault;
  readonly found: string;
  readonly allowed: string;
  readonly next: string;
}

/** An amount in the quantity's base unit: ha, m, kg, kg/ha, kg/d, min, d, share 0..1, L, money for one kg, h, d, ha. */
export interface AmountRead {
  readonly ok: true;
  readonly value: number;
  /** Three letters; only with money. */
  readonly currency?: string;
}

export type Amount = AmountRead | AmountRefused;

/** One number with its unit, as typed. */
interface Part {
  readonly number: string;
  readonly unit: string;
}

const PLAIN_NUMBER = /^-?(0|[1-9]\d*)(\.\d+)?$/;
const COMPOUND: readonly QuantityName[] = ["time", "days", "length", "weight"];
const CURRENCY_SIGNS: Readonly<Record<string, string>> = { "£": "GBP", "$": "USD", "€": "EUR" };

/**
 * Reads an amount with its unit: "0.28 ha", "1 h 30 min", "55 %", "150 GBP/t".
 *
 * @param text as typed
 * @param quantity what the amount must measure
 * @returns the value in the quantity's base unit, or what is amiss and what to write
 */
export function readAmount(text: string, quantity: QuantityName): Amount {
  const read = readAsTyped(text, quantity);
  return read.ok ? read : { ...read, next: mended(read.next, quantity, 3) };
}

/** An amount may have several faults: the one to write has none. */
function mended(text: string, quantity: QuantityName, tries: number): string {
  const read = readAsTyped(text, quantity);
  if (read.ok) return text;
  return tries > 0 && read.next !== "" ? mended(read.next, quantity, tries - 1) : "";
}

function readAsTyped(text: string, quantity: QuantityName): Amount {
  const parts = partsOf(text.trim());
  if (typeof parts === "string") return numberForm(text.trim(), quantity, parts);
  const split = parts.findIndex((part, i) => part.unit === "" && i < parts.length - 1);
  if (split >= 0) return numberForm(text.trim(), quantity, writeParts(joinThousands(parts)));
  for (const [i, part] of parts.entries()) {
    const fault = numberFault(part, quantity);
    if (fault) return { ...fault, next: withPart(parts, i, fault.next) };
  }
  const first = parts[0]!;
  if (quantity === "count") return readCount(first);
  if (first.unit === "") return unitMissing(first, quantity);
  if (quantity.startsWith("money")) return readMoney(first, quantity);
  return sumOf(parts, quantity);
}

/** Reads two lengths, "3.6 m x 4.0 m", in metres. */
export function readPair(text: string): { readonly ok: true; readonly value: readonly [number, number] } | AmountRefused {
  const sides = text.trim().split(/\s*[x×]\s*/);
  if (sides.length !== 2 || sides.some((side) => side === "")) {
    return { ok: false, code: "number-form", found: `${text.trim()} is not two lengths`, allowed: "a size is two lengths with an x between", next: "3.6 m x 4.0 m" };
  }
  const [a, b] = [readAmount(sides[0]!, "length"), readAmount(sides[1]!, "length")];
  if (!a.ok) return { ...a, next: pairOf(a.next, b.ok ? sides[1]! : b.next) };
  if (!b.ok) return { ...b, next: pairOf(sides[0]!, b.next) };
  return { ok: true, value: [a.value, b.value] };
}

function pairOf(a: string, b: string): string {
  return a === "" || b === "" ? "" : `${a} x ${b}`;
}

/** Splits at numbers: "1 h 30 min" into two parts. A text where a number does not come first gives what to write instead. */
function partsOf(text: string): readonly Part[] | string {
  const parts: Part[] = [];
  for (const word of text.split(/\s+/)) {
    const number = /^([-+]?[\d.,_']*\d[\d.,_']*(?:[eE][-+]?\d+)?)(.*)$/.exec(word);
    const last = parts.at(-1);
    if (number) parts.push({ number: number[1]!, unit: number[2]! });
    else if (last) parts[parts.length - 1] = { number: last.number, unit: `${last.unit} ${word}`.trim() };
    else return numberLast(text);
  }
  return parts;
}

/** "£150/t" and "GBP 150/t" with the number in front. */
function numberLast(text: string): string {
  const money = /^([A-Z]{3}|[£$€])\s*(\d[\d.,]*)\s*(\/?.*)$/.exec(text);
  return money ? `${money[2]} ${CURRENCY_SIGNS[money[1]!] ?? money[1]}${money[3]}` : "";
}

function joinThousands(parts: readonly Part[]): readonly Part[] {
  const joined: Part[] = [];
  for (const part of parts) {
    const last = joined.at(-1);
    if (last && last.unit === "" && /^\d{3}(\.\d+)?$/.test(part.number)) joined[joined.length - 1] = { number: last.number + part.number, unit: part.unit };
    else joined.push(part);
  }
  return joined;
}

/** The whole amount with one part mended. */
function withPart(parts: readonly Part[], at: number, mendedPart: string): string {
  if (mendedPart === "") return "";
  return parts.map((part, i) => (i === at ? mendedPart : writeParts([part]))).join(" ");
}

function writeParts(parts: readonly Part[]): string {
  return parts.map((part) => `${part.number} ${part.unit}`.trim()).join(" ");
}

function numberForm(found: string, quantity: QuantityName, next: string): AmountRefused {
  return { ok: false, code: "number-form", found: found === "" ? "nothing is there" : `${found} is not read as a number`, allowed: allowedOf(quantity), next };
}

function numberFault(part: Part, quantity: QuantityName): AmountRefused | null {
  const unit = part.unit === "" ? recommended(quantity) : part.unit;
  if (part.number.includes(",")) {
    const thousands = /^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(part.number);
    const plain = thousands ? part.number.replaceAll(",", "") : part.number.replace(",", ".").replaceAll(",", "");
    const allowed = thousands ? "numbers are written without a comma" : "a point stands before the decimals";
    return { ok: false, code: "comma", found: `${part.number} has a comma`, allowed, next: `${plain} ${unit}`.trim() };
  }
  if (!PLAIN_NUMBER.test(part.number)) {
    const meant = Number(part.number.replaceAll(/[_']/g, ""));
    return numberForm(part.number, quantity, Number.isFinite(meant) ? `${plainDigits(meant)} ${unit}`.trim() : "");
  }
  // Only a rate may fall: animals lose weight.
  if (part.number.startsWith("-") && quantity !== "rate") {
    return { ...numberForm("", quantity, `${part.number.slice(1)} ${unit}`.trim()), found: `${part.number} is below nothing` };
  }
  return null;
}

/** Digits without an exponent. */
function plainDigits(value: number): string {
  return value.toLocaleString("en", { useGrouping: false, maximumFractionDigits: 12 });
}

function readCount(part: Part): Amount {
  if (part.unit !== "") {
    return { ok: false, code: "unit-wrong", found: `${part.unit} stands after a count`, allowed: allowedOf("count"), next: part.number };
  }
  if (part.number.includes(".")) return numberForm(part.number, "count", plainDigits(Math.round(Number(part.number))));
  return { ok: true, value: Number(part.number) };
}

function unitMissing(part: Part, quantity: QuantityName): AmountRefused {
  // 0.55 for a share means 55 % far more often than half of one per cent.
  const number = quantity === "share" && Number(part.number) <= 1 ? plainDigits(Number(part.number) * 100) : part.number;
  return { ok: false, code: "unit-missing", found: `${part.number} has no unit`, allowed: allowedOf(quantity), next: `${number} ${recommended(quantity)}` };
}

function sumOf(parts: readonly Part[], quantity: QuantityName): Amount {
  let value = 0;
  let before = Infinity;
  for (const part of parts) {
    const size = sizeOf(quantity, part.unit);
    if (size === undefined) return unitFault(part, quantity);
    if (size >= before || (parts.length > 1 && !COMPOUND.includes(quantity))) return numberForm(writeParts(parts), quantity, writeParts(parts.slice(0, 1)));
    before = size;
    value += Number(part.number) * size;
  }
  // One unit that is a whole part of the base unit divides exactly where multiplying by 0.01 would not.
  const only = parts.length === 1 ? sizeOf(quantity, parts[0]!.unit)! : 1;
  return { ok: true, value: only < 1 && Number.isInteger(1 / only) ? Number(parts[0]!.number) / (1 / only) : value };
}

function sizeOf(quantity: QuantityName, unit: string): number | undefined {
  return Object.hasOwn(UNITS[quantity], unit) ? UNITS[quantity][unit] : undefined;
}

function readMoney(part: Part, quantity: QuantityName): Amount {
  const money = /^([A-Z]{3})(?:\/(.+))?$/.exec(part.unit);
  if (!money) return unitFault(part, quantity);
  const [, currency, under] = money;
  if (under === undefined) {
    if (quantity === "money") return { ok: true, value: Number(part.number), currency: currency! };
    return { ok: false, code: "unit-half", found: `${part.number} ${currency} does not say for how much`, allowed: allowedOf(quantity), next: `${part.number} ${currency}/${Object.keys(UNITS[quantity])[0]}` };
  }
  const size = sizeOf(quantity, under);
  if (size !== undefined) return { ok: true, value: Number(part.number) / size, currency: currency! };
  const code = NEAR_UNITS[under.toLowerCase()] === undefined && quantityWith(under) === null ? "unit-unknown" : "unit-wrong";
  const next = quantity === "money" ? currency : `${currency}/${Object.keys(UNITS[quantity])[0]}`;
  return { ok: false, code, found: `${part.unit} is not ${QUANTITY_WORDS[quantity][1]}`, allowed: allowedOf(quantity), next: `${part.number} ${next}` };
}

/** A unit that does not fit: of another quantity, half of the right one, or not known at all. */
function unitFault(part: Part, quantity: QuantityName): AmountRefused {
  const { number, unit } = part;
  const allowed = allowedOf(quantity);
  const whole = Object.keys(UNITS[quantity]).find((u) => u.startsWith(`${unit}/`));
  if (whole) return { ok: false, code: "unit-half", found: `${number} ${unit} does not say ${whole.endsWith("/d") ? "in what time" : "on how much ground"}`, allowed, next: `${number} ${whole}` };
  const next = `${number} ${recommended(quantity)}`;
  const other = quantityWith(unit);
  if (other) return { ok: false, code: "unit-wrong", found: `${unit} is ${QUANTITY_WORDS[other][1]}`, allowed, next };
  if (/^gal(lons?)?(\/d)?$/.test(unit)) return { ok: false, code: "unit-unknown", found: `${unit}: US gal or imp gal`, allowed, next: `${number} US gal${unit.endsWith("/d") ? "/d" : ""}` };
  const near = nearUnit(unit, quantity);
  return { ok: false, code: "unit-unknown", found: `${unit} is not a unit known here`, allowed, next: near ? `${number} ${near}` : next };
}

function quantityWith(unit: string): QuantityName | null {
  if (/^[A-Z]{3}(\/.+)?$/.test(unit)) return "money";
  return QUANTITIES.find((quantity) => !quantity.startsWith("money") && sizeOf(quantity, unit) !== undefined) ?? null;
}

/** The quantity's own unit that a written one stands for, each side of a stroke by itself: "kilos/hectare" is kg/ha. */
function nearUnit(unit: string, quantity: QuantityName): string | null {
  const own = Object.keys(UNITS[quantity]);
  const meant = unit.toLowerCase().split(/\s*\/\s*|\s+per\s+/).map((word) => NEAR_UNITS[word] ?? word).join("/");
  return own.find((u) => u === meant || u.toLowerCase() === unit.toLowerCase()) ?? null;
}

/** "areas are in ha, ac or m2". */
function allowedOf(quantity: QuantityName): string {
  const many = QUANTITY_WORDS[quantity][0];
  if (quantity === "count") return "counts are whole numbers without a unit";
  if (quantity === "money") return `${many} are in a currency of three letters, such as GBP`;
  const units = Object.keys(UNITS[quantity]).map((unit) => (quantity.startsWith("money-") ? `GBP/${unit}` : unit));
  const list = units.length === 1 ? units[0] : `${units.slice(0, -1).join(", ")} or ${units.at(-1)}`;
  return `${many} are in ${list}`;
}

function recommended(quantity: QuantityName): string {
  if (quantity === "count") return "";
  if (quantity === "money") return "GBP";
  const unit = Object.keys(UNITS[quantity])[0]!;
  return quantity.startsWith("money-") ? `GBP/${unit}` : unit;
}

export { showAmount } from "./show-amount.js";
