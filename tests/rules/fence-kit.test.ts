import type { Kit } from "../../src/farm/scenario.js";
import { cell } from "../fixtures/tiny-farm.js";
import { cows, ewes, hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

const kit = (more: Partial<Kit>) => ({ nets: null, reels: null, reelM: 200, energisers: null, ...more });
const farm = (own: Partial<Kit>, groups = [cows()], fenceM = 110) => ({
  days: 5, cells: [cell("A", { fenceM }), cell("B", { fenceM }), cell("C")], groups, more: { kit: kit(own) },
});
const breach = (days: [number, number], found: string, allowed: string) => ({ group: null, cell: null, days, found, allowed: `at most ${allowed}` });

ruleCases("fence-kit", {
  keeps: [
    { name: "a reel round the cell, one set ahead on the day of a move", farm: farm({ reels: 2 }), rows: { Cows: "A*2 B*3" } },
    { name: "reels in the store while they are in the yard", farm: farm({ reels: 0 }), rows: { Cows: "yard*5" } },
    { name: "a fence as long as a reel", farm: farm({ reels: 2 }, [cows()], 200), rows: { Cows: "A*5" } },
    { name: "an energiser for each of two fenced groups", farm: farm({ energisers: 2 }, [cows(), pigs()]), rows: { Cows: "A*5", Pigs: "B*5" } },
    { name: "a pen without net has no fence", farm: farm({ energisers: 0, nets: 0 }, [hens({}, { nets: 0 })]), rows: { Hens: "A*5" } },
    { name: "nets in the store while the hens are in the yard", farm: farm({ nets: 0 }, [hens()]), rows: { Hens: "yard*5" } },
    { name: "no reels for hens and pigs", farm: farm({ reels: 0 }, [hens(), pigs()]), rows: { Hens: "A*5", Pigs: "yard B*4" } },
    { name: "kit that is not counted", farm: farm({}, [cows(), ewes(), hens()]), rows: { Cows: "A*5", Ewes: "B*5", Hens: "C*5" } },
    { name: "off", farm: { ...farm({ reels: 0 }), rules: { "fence-kit": { use: "off" } } }, rows: { Cows: "A*5" } },
  ],
  breaks: [
    { name: "one reel does not set ahead", farm: farm({ reels: 1 }), rows: { Cows: "yard A*2 B*2" }, breaches: [breach([2, 2], "2 reels", "1 reel"), breach([4, 4], "2 reels", "1 reel")] },
    { name: "a metre more than a reel", farm: farm({ reels: 3 }, [cows()], 201), rows: { Cows: "A*5" }, breaches: [breach([1, 1], "4 reels", "3 reels")] },
    { name: "one energiser for two groups, on the days both are out", farm: farm({ energisers: 1 }, [cows(), hens()]), rows: { Cows: "A*5", Hens: "yard C*2 yard*2" }, breaches: [breach([2, 3], "2 energisers", "1 energiser")] },
    { name: "one net for two", farm: farm({ nets: 1 }, [hens({}, { nets: 2 })]), rows: { Hens: "yard*3 C*2" }, breaches: [breach([4, 5], "2 nets", "1 net")] },
  ],
});
