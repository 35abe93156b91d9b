import { convert } from "convert";
import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { readAmount, readPair, showAmount } from "../../src/quantity/amount.js";
import { showMoney } from "../../src/quantity/show-amount.js";
import { KG_PER_LB, M2_PER_ACRE, parameterUnit, QUANTITIES, UNITS, type QuantityName } from "../../src/quantity/units.js";

function valueOf(text: string, quantity: QuantityName): number {
  const read = readAmount(text, quantity);
  if (!read.ok) throw new Error(`${text}: ${read.code}`);
  return read.value;
}

describe("readAmount", () => {
  it.each([
    ["0.28 ha", "area", 0.28], ["1.4 ac", "area", 1.4 * 0.40468564224], ["600 m2", "area", 0.06],
    ["7 in", "length", 0.1778], ["900 ft", "length", 274.32], ["9 cm", "length", 0.09], ["6 ft 3 in", "length", 1.905],
    ["580 kg", "weight", 580], ["3 t", "weight", 3000], ["1250 lb", "weight", 566.9904625], ["2 short ton", "weight", 1814.36948],
    ["2200 kg/ha", "cover", 2200], ["57 g/d", "rate", 0.057], ["-0.2 kg/d", "rate", -0.2],
    ["1 h 30 min", "time", 90], ["90min", "time", 90], ["3 yr", "days", 1095], ["2 wk 3 d", "days", 17],
    ["55 %", "share", 0.55], ["55%", "share", 0.55], ["20 US gal", "volume", 75.70823568], ["20 imp gal", "volume", 90.9218],
    ["68 L/d", "volume-rate", 68], ["50 m/min", "pace", 50], ["3600 pig-days/ha", "pig-pressure", 3600], ["5 kg/ha/d", "growth", 5],
    ["12", "count", 12], ["40 GBP", "money", 40],
    ["150 GBP/t", "money-per-weight", 0.15], ["14 GBP/h", "money-per-hour", 14], ["4 GBP/d", "money-per-day", 4],
    ["180 GBP/ha", "money-per-area", 180], ["60 USD/ac", "money-per-area", 60 / 0.40468564224],
  ] as const)("reads %s as %s", (text, quantity, value) => {
    expect(valueOf(text, quantity)).toBeCloseTo(value, 8);
  });

  it("keeps the currency", () => {
    expect(readAmount("150 GBP/t", "money-per-weight")).toEqual({ ok: true, value: 0.15, currency: "GBP" });
  });

  it.each([
    ["0.28", "area", "unit-missing", "0.28 ha"],
    ["0.55", "share", "unit-missing", "55 %"],
    ["620 cm", "weight", "unit-wrong", "620 kg"],
    ["14 GBP/t", "money-per-hour", "unit-wrong", "14 GBP/h"],
    ["40 GBP/t", "money", "unit-wrong", "40 GBP"],
    ["12 kg", "count", "unit-wrong", "12"],
    ["0.3 hectare", "area", "unit-unknown", "0.3 ha"],
    ["2 KG", "weight", "unit-unknown", "2 kg"],
    ["2 kilos/hectare", "cover", "unit-unknown", "2 kg/ha"],
    ["90 gal", "volume", "unit-unknown", "90 US gal"],
    ["1 toString", "weight", "unit-unknown", "1 kg"],
    ["1 GBP/fortnight", "money-per-day", "unit-unknown", "1 GBP/d"],
    ["650 g", "rate", "unit-half", "650 g/d"],
    ["2200 kg", "cover", "unit-half", "2200 kg/ha"],
    ["150 GBP", "money-per-weight", "unit-half", "150 GBP/t"],
    ["0,28 ha", "area", "comma", "0.28 ha"],
    ["2,300 kg/ha", "cover", "comma", "2300 kg/ha"],
    ["2,5 h", "time", "comma", "2.5 h"],
    ["1 h 7,5 min", "time", "comma", "1 h 7.5 min"],
    ["0,28 hectare", "area", "comma", "0.28 ha"],
    ["1,234,567 kg", "weight", "comma", "1234567 kg"],
    ["2 300 kg/ha", "cover", "number-form", "2300 kg/ha"],
    ["010", "count", "number-form", "10"],
    ["3.5", "count", "number-form", "4"],
    ["1e3 kg/ha", "cover", "number-form", "1000 kg/ha"],
    ["£150/t", "money-per-weight", "number-form", "150 GBP/t"],
    ["-0.3 ha", "area", "number-form", "0.3 ha"],
    ["30 min 1 h", "time", "number-form", "30 min"],
    ["1 ha 2 ac", "area", "number-form", "1 ha"],
  ] as const)("refuses %j as %s: %s, write %s", (text, quantity, code, next) => {
    const read = readAmount(text, quantity);
    expect(read).toMatchObject({ ok: false, code, next });
    // What to write is read back as it stands.
    expect(readAmount(next, quantity).ok).toBe(true);
  });

  it.each([["three", "count"], ["lots", "area"], ["heavy", "weight"], ["", "area"]] as const)("invents no number for %j", (text, quantity) => {
    expect(readAmount(text, quantity)).toMatchObject({ ok: false, code: "number-form", next: "" });
  });

  it("says what was found and what is allowed", () => {
    expect(readAmount("620 cm", "weight")).toMatchObject({ found: "cm is a length", allowed: "weights are in kg, g, t, lb or short ton" });
    expect(readAmount("0.28", "area")).toMatchObject({ found: "0.28 has no unit", allowed: "areas are in ha, ac or m2" });
  });

  it("never throws, and what it says to write can be read", () => {
    const pieces = fc.constantFrom("1", "0.5", "0,5", "010", "-3", "ha", "kg", "kg/ha", "gal", "GBP", "GBP/t", "/", " ", "x", "%", "e3", "m2", "£", "1 h");
    fc.assert(fc.property(fc.array(pieces, { maxLength: 6 }), fc.constantFrom(...QUANTITIES), (words, quantity) => {
      const read = readAmount(words.join(" "), quantity);
      if (!read.ok && read.next !== "") expect(readAmount(read.next, quantity), `${words.join(" ")} -> ${read.next}`).toMatchObject({ ok: true });
    }));
  });
});

describe("readPair", () => {
  it.each([["3.6 m x 4.0 m", [3.6, 4]], ["10 ft x 20 ft", [3.048, 6.096]], ["250 cm × 4 m", [2.5, 4]]])("reads %s", (text, value) => {
    expect(readPair(text)).toEqual({ ok: true, value });
  });

  it.each([["3.6 m", "number-form"], ["3.6 x 4.0 m", "unit-missing"], ["3.6 m x 4 kg", "unit-wrong"], ["3,6 m x 4 m", "comma"]])("refuses %s", (text, code) => {
    const read = readPair(text);
    expect(read).toMatchObject({ ok: false, code });
    if (!read.ok) expect(readPair(read.next).ok).toBe(true);
  });

  it("invents no side", () => {
    expect(readPair("wide m x 4 m")).toMatchObject({ ok: false, next: "" });
  });
});

describe("showAmount", () => {
  it.each([
    [0.28, "area", "metric", "0.28 ha"], [0.28, "area", "US", "0.69 ac"], [620, "weight", "metric", "620 kg"], [2200, "cover", "US", "1963 lb/ac"],
    [0.057, "rate", "metric", "57 g/d"], [90, "time", "metric", "1 h 30 min"], [59.7, "time", "metric", "1 h"], [5, "time", "US", "5 min"],
    [0.55, "share", "metric", "55 %"], [14, "days", "metric", "14 d"], [-0.001, "weight", "metric", "0 kg"], [8, "count", "metric", "8"],
  ] as const)("prints %s of %s (%s) as %s", (value, quantity, system, text) => {
    expect(showAmount(value, quantity, system)).toBe(text);
  });

  it("prints money bare and as a price", () => {
    expect(showMoney(40, "GBP")).toBe("40.00 GBP");
    expect(showMoney(0.15, "GBP", "money-per-weight")).toBe("150.00 GBP/t");
    expect(showMoney(180, "USD", "money-per-area", "US")).toBe("72.84 USD/ac");
  });

  it("is read back as it was printed", () => {
    const printed = QUANTITIES.filter((quantity) => !quantity.startsWith("money") && quantity !== "count" && quantity !== "time");
    const value = fc.double({ min: 0.001, max: 5000, noNaN: true });
    fc.assert(fc.property(fc.constantFrom(...printed), fc.constantFrom("metric" as const, "US" as const), value, (quantity, system, amount) => {
      const back = valueOf(showAmount(amount, quantity, system, 9), quantity);
      expect(Math.abs(back - amount)).toBeLessThan(1e-6);
    }));
  });

  it("prints whole minutes that come back", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 10_000 }), (minutes) => valueOf(showAmount(minutes, "time", "metric"), "time") === minutes));
  });
});

describe("parameterUnit", () => {
  it.each([
    ["kg/ha", "cover", 1], ["%", "share", 0.01], ["d", "days", 1], ["money/t", "money-per-weight", 0.001], ["money/ha", "money-per-area", 1],
    ["money/d", "money-per-day", 1], ["money", "money", 1], ["kg/ha/d", "growth", 1], ["m/min", "pace", 1], ["pig-days/ha", "pig-pressure", 1],
  ] as const)("%s is %s", (unit, quantity, size) => {
    expect(parameterUnit(unit)?.quantity).toBe(quantity);
    expect(parameterUnit(unit)?.size).toBeCloseTo(size, 12);
  });

  it("has no quantity for bare figures", () => {
    expect(["", "day of year", "month"].map(parameterUnit)).toEqual([null, null, null]);
  });
});

describe("outside truth: units", () => {
  // The package `convert` has its own factors, written independently.
  it.each([
    ["area", "ac", convert(1, "acre").to("m2") / 10_000], ["length", "ft", convert(1, "ft").to("m")], ["length", "in", convert(1, "inch").to("m")],
    ["weight", "lb", convert(1, "lb").to("kg")], ["weight", "short ton", convert(1, "short ton").to("kg")], ["volume", "US gal", convert(1, "gallon").to("liter")],
    ["volume", "imp gal", convert(1, "imp gal").to("liter")],
    ["days", "wk", convert(1, "week").to("day")], ["time", "h", convert(1, "hour").to("minute")],
  ] as const)("%s in %s agrees with convert", (quantity, unit, size) => {
    expect(UNITS[quantity][unit]).toBeCloseTo(size, 12);
  });

  it("keeps the exact definitions", () => {
    expect(KG_PER_LB).toBe(0.45359237); // international yard and pound agreement, 1959
    expect(M2_PER_ACRE).toBeCloseTo(43_560 * 0.3048 ** 2, 10); // 43,560 square feet
    expect(UNITS.volume["US gal"]).toBeCloseTo(231 * 2.54 ** 3 / 1000, 12); // 231 cubic inches
    expect(UNITS.volume["imp gal"]).toBe(4.54609); // UK Weights and Measures Act 1985
  });

  it("agrees with printed conversions", () => {
    expect(UNITS.cover["lb/ac"]).toBeCloseTo(1.12085, 5);
    expect(1 / UNITS.cover["lb/ac"]!).toBeCloseTo(0.892179, 6);
    // Defra leaflet: 276 ac = 112 ha
    expect(Math.round(valueOf("276 ac", "area"))).toBe(112);
  });
});
