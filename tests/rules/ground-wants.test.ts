import type { Want } from "../../src/farm/scenario.js";
import { cell } from "../fixtures/tiny-farm.js";
import { cows, hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

const wanting = (want: Want, areaHa: number, groups: ReturnType<typeof cows>[]) => ({ days: 14, cells: [cell("A", { areaHa, wants: [want] })], groups });
const charge = (money: number, found: string) => ({ group: null, cell: "A", days: [1, 14] as [number, number], money, found: `${found}, all of it wished` });

ruleCases("ground-wants", {
  keeps: [
    // eight pigs, 7 days, 0.02 ha: 2,800 pig-days/ha open it
    { name: "all opened by two full strips", farm: wanting("opening", 0.04, [pigs()]), rows: { Pigs: "A*14" } },
    { name: "all scratched", farm: wanting("scratching", 0.09, [hens()]), rows: { Hens: "A*7 yard*7" } },
    // 5 x 0.24 kg a day on 0.2 ha: 6 kg/ha a day, 60 in ten days
    { name: "fed to the target", farm: wanting("fertility", 0.2, [cows({ nitrogenKgPerHeadDay: 0.24 })]), rows: { Cows: "A*10 yard*4" } },
    { name: "nothing wanted", farm: { ...wanting("opening", 0.1, [pigs()]), cells: [cell("A")] }, rows: { Pigs: "yard*14" } },
    { name: "off", farm: { ...wanting("opening", 0.1, [pigs()]), rules: { "ground-wants": { use: "off" } } }, rows: { Pigs: "yard*14" } },
  ],
  breaks: [
    { name: "nothing opened: 0.1 ha at 60", farm: wanting("opening", 0.1, [pigs()]), rows: { Pigs: "yard*14" }, charges: [charge(6, "0 % opened")] },
    { name: "two full strips of five", farm: wanting("opening", 0.1, [pigs()]), rows: { Pigs: "A*14" }, charges: [charge(3.6, "40 % opened")] },
    { name: "a strip held a day too short opens nothing", farm: wanting("opening", 0.1, [pigs()]), rows: { Pigs: "A*13 yard" }, charges: [charge(4.8, "20 % opened")] },
    // seven pigs: 2,450 pig-days/ha, under the 2,500 that open
    { name: "too few pigs open nothing", farm: wanting("opening", 0.1, [pigs({ head: 7 })]), rows: { Pigs: "A*14" }, charges: [charge(6, "0 % opened")] },
    { name: "half scratched: 0.09 ha of 0.18 at 40", farm: wanting("scratching", 0.18, [hens()]), rows: { Hens: "A*7 yard*7" }, charges: [charge(3.6, "50 % scratched")] },
    {
      name: "a day short of the target: a tenth of 0.2 ha at 40", farm: wanting("fertility", 0.2, [cows({ nitrogenKgPerHeadDay: 0.24 })]), rows: { Cows: "A*9 yard*5" },
      charges: [charge(0.8, "90 % fed")],
    },
  ],
});
