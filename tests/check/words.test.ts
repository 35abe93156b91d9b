import { describe, expect, it } from "vitest";
import { areaOver, areaShort, counted, coverOver, coverSet, coverShort, daysText, over, plain, shortOf } from "../../src/check/words.js";

describe("figures in words", () => {
  it("never print what is at fault like what is allowed", () => {
    expect([coverShort(1499.9), coverSet(1500), coverOver(3000.1)]).toEqual(["1490 kg DM/ha", "1500 kg DM/ha", "3010 kg DM/ha"]);
    expect([areaShort(0.0899), areaOver(0.0901)]).toEqual(["0.089 ha", "0.091 ha"]);
  });

  it("leave figures on the step as they are, whatever their last digit", () => {
    expect([coverShort(0.1 * 3 * 5000), coverOver(0.1 * 3 * 5000)]).toEqual(["1500 kg DM/ha", "1500 kg DM/ha"]);
    expect([areaShort(0.03 * 3), areaOver(0.03 * 3)]).toEqual(["0.09 ha", "0.09 ha"]);
    expect([shortOf(94.5), over(93.2)]).toEqual([94, 94]);
  });

  it("count one and many", () => {
    expect([daysText(1), daysText(24), counted(2, "reel", "reels"), plain(12.3456, 2)]).toEqual(["1 day", "24 days", "2 reels", "12.35"]);
  });
});
