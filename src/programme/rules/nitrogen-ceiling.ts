import { useOf } from "../../farm/scenario.js";
import { dayNumber } from "../../quantity/calendar.js";
import { farmFigure, figures, voice, type Half } from "../half.js";

/** Nitrogen in any twelve months on a cell, and in each calendar year on the holding. */
export const nitrogenCeilingHalf: Half = {
  id: "nitrogen-ceiling",
  bindCell(season) {
    const say = voice(season, "nitrogen-ceiling");
    const [most, price] = ["cell", "price"].map((key) => figures(season, "nitrogen-ceiling", key));
    const past = season.scenario.cells.map((cell) => cell.pastNitrogen.flatMap((d) => [dayNumber(d.day) - season.firstDay, d.kgPerHa]));
    return {
      close(s) {
        const area = season.cells[s.cell].areaHa;
        const ceiling = most(s.cell, -1);
        // One sum is enough while the whole season lies in one window and nothing came before.
        const worst = season.days <= YEAR && past[s.cell].length === 0 ? s.nitrogen / area : worstWindow([...past[s.cell], ...s.deposits]);
        if (worst > ceiling) say.charge(s, -1, (worst - ceiling) * area * price(s.cell, -1));
      },
    };
  },
  bindFarm(season) {
    const use = useOf(season.scenario, "nitrogen-ceiling", null, null);
    if (use === "off") return [];
    const most = farmFigure(season, "nitrogen-ceiling", "holding") * season.cells.reduce((sum, cell) => sum + cell.areaHa, 0);
    const price = farmFigure(season, "nitrogen-ceiling", "holding-price");
    return [{
      rule: "nitrogen-ceiling",
      judge(totals) {
        let kg = 0;
        for (const year of totals.nitrogenByYear) kg += Math.max(0, year - most);
        return use === "hard" ? { money: 0, over: kg > 1e-9 ? 1 + kg / 10 : 0 } : { money: kg * price, over: 0 };
      },
    }];
  },
};

const YEAR = 365;

/** Largest sum within any 365 days, ending in the season, of (day, kg/ha) pairs. */
export function worstWindow(deposits: readonly number[]): number {
  const pairs: [number, number][] = [[0, 0]];
  for (let i = 0; i < deposits.length; i += 2) pairs.push([deposits[i], deposits[i + 1]]);
  pairs.sort((a, b) => a[0] - b[0]);
  let worst = 0;
  let sum = 0;
  let from = 0;
  for (const [day, kg] of pairs) {
    sum += kg;
    while (pairs[from][0] <= day - YEAR) sum -= pairs[from++][1];
    if (day >= 0) worst = Math.max(worst, sum);
  }
  return worst;
}
