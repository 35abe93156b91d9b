import { defineConfig } from "vitest/config";

/** Where the continuous run wants its counts; nothing is written unless asked. */
const report = process.env["INBYE_TEST_REPORT"];

export default defineConfig({
  root: `${import.meta.dirname}/..`,
  test: {
    include: ["tests/**/*.test.ts"],
    isolate: false,
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    reporters: report ? ["default", ["json", { outputFile: report }]] : ["default"],
  },
});
