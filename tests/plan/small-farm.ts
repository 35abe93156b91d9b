import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";

/** Five cells, three groups (one with a name of two words), two yards, ten days. */
export const SMALL = tinyFarm({
  days: 10,
  firstDay: "2027-05-01",
  cells: [cell("H1"), cell("H2"), cell("10", { field: "Far" }), cell("Long 1", { field: "Far" }), cell("F3", { field: "Far" })],
  groups: [
    group("Cows", { yard: "Barn lot" }),
    group("Young cows", { letter: "Cy", yard: "Barn lot" }),
    group("Layers", { kind: "layers", yard: "Hen barn", here: [{ firstDay: "2027-05-03", lastDay: "2027-05-10" }] }),
  ],
  more: {
    yards: ["Barn lot", "Hen barn"].map((name) => ({ name, costPerDay: 0, room: null, open: [{ firstDay: "2027-05-01", lastDay: "2027-05-10" }] })),
  },
});

export const DAYS = Array.from({ length: 10 }, (_, i) => `2027-05-${String(i + 1).padStart(2, "0")}`);
