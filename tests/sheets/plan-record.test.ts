import { describe, expect, it } from "vitest";
import { writePlanFile } from "../../src/plan/plan-file.js";
import { readPlanFile } from "../../src/plan/read-plan-file.js";
import { gridCsv } from "../../src/sheets/grid-csv.js";
import { planRecord } from "../../src/sheets/plan-record.js";
import { expectGolden } from "../golden/golden.js";
import { TINY, TINY_MADE, TINY_PLAN, TINY_REPORT } from "../golden/tiny-season.js";

const record = planRecord(TINY, TINY_PLAN, { ...TINY_REPORT, chargesByRule: { ...TINY_REPORT.chargesByRule, "demand-met": 36 } }, TINY_MADE, { replaces: 2, changes: ["Two more cows"] });

describe("files kept of a plan", () => {
  it("are the ones that were looked at", () => {
    expectGolden("tiny/plan.json", writePlanFile(TINY, record));
    expectGolden("tiny/grid.csv", gridCsv(TINY, TINY_PLAN));
    expectGolden("tiny/grid-by-day.csv", gridCsv(TINY, TINY_PLAN, "day"));
  });

  it("carry figures with units, rounded once, and come back", () => {
    expect(record).toMatchObject({ cost: "71.40 GBP", bound: "64.20 GBP", handRule: "120.00 GBP", charges: { "demand-met": "36.00 GBP" }, measures: { "hay-fed": "412 kg" } });
    expect(readPlanFile(writePlanFile(TINY, record), "plan.json", TINY)).toEqual({ ok: true, value: record, notes: [] });
  });
});
