import { BIRDS } from "../../farm/scenario.js";
import { dayNumber, isoDate } from "../../quantity/calendar.js";
import type { Season } from "../../season/season.js";
import { NEVER, type CellState } from "../cell-state.js";
import { figures, voice, type Half } from "../half.js";

/** Asked when a group enters and when hay is cut: what used the ground before, and how long ago. */
export const cleanGroundHalf: Half = {
  id: "clean-ground",
  bindCell(season) {
    const say = voice(season, "clean-ground");
    const names = ["turkeys after layers", "turkeys after broilers", "worms", "worms-price", "young-pigs-next-year", "hay-after-birds"];
    const [layers, broilers, worms, wormsPrice, youngPigs, hay] = names.map((key) => figures(season, "clean-ground", key));
    const past = pastUses(season);
    const groups = season.scenario.groups;
    const lastOfKinds = (s: CellState, kinds: readonly string[]): number => {
      let last = NEVER;
      for (const use of past[s.cell]) if (kinds.includes(use.by)) last = Math.max(last, use.day);
      groups.forEach((group, g) => (kinds.includes(group.kind) ? (last = Math.max(last, s.lastOf[g])) : 0));
      return last;
    };
    const keeps = (s: CellState, g: number, first: number, kind: string, interval: number): void => {
      const rest = first - lastOfKinds(s, [kind]) - 1;
      if (rest < interval) say.breach(s, g, Math.min(30, interval - rest));
    };
    return {
      enter(s, g, first) {
        const { kind, animalClass } = groups[g];
        if (kind === "turkeys") {
          keeps(s, g, first, "layers", layers(s.cell, g));
          keeps(s, g, first, "broilers", broilers(s.cell, g));
        }
        if (kind === "sheep" || kind === "goats") {
          const rest = first - lastOfKinds(s, ["sheep", "goats"]) - 1;
          say.charge(s, g, (worms(s.cell, g) - rest) * wormsPrice(s.cell, g));
        }
        if (kind === "pigs" && youngPigs(s.cell, g) >= 1 && ["weaner", "grower"].includes(animalClass) && pigsTheYearBefore(season, past[s.cell], first)) say.breach(s, g, 10);
      },
      mow(s, day, _byOwner, makesHay) {
        if (!makesHay || hay(s.cell, -1) < 1) return;
        const last = lastOfKinds(s, BIRDS);
        if (last >= day - season.dayOfYear[day] + 1) say.breach(s, -1, 10);
      },
    };
  },
};

function pigsTheYearBefore(season: Season, past: readonly PastDay[], first: number): boolean {
  const yearStart = first - season.dayOfYear[first] + 1;
  return past.some((use) => use.by === "pigs" && use.share >= 0.5 && use.day < yearStart && yearOf(season, use.day) === yearOf(season, first) - 1);
}

const yearOf = (season: Season, day: number): number => Number(isoDate(season.firstDay + day).slice(0, 4));

interface PastDay {
  readonly by: string;
  readonly day: number;
  readonly share: number;
}

function pastUses(season: Season): PastDay[][] {
  return season.scenario.cells.map((cell) => cell.past.map((use) => ({ by: use.by, day: dayNumber(use.lastDay) - season.firstDay, share: use.share })));
}
