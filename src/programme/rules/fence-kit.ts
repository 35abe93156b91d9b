import { farmWide, figures, type DayRow, type Half } from "../half.js";

/** Nets, reels and energisers in use and set ahead, day by day, where the farm counts them. */
export const fenceKitHalf: Half = {
  id: "fence-kit",
  bindRows(season) {
    if (!farmWide(season, "fence-kit")) return [];
    const { kit, groups, cells } = season.scenario;
    const each = figures(season, "fence-kit", "energisers-each");
    const row = (name: string, owned: number | null, more: Pick<DayRow, "stand" | "start">): DayRow[] =>
      owned === null ? [] : [{ rule: "fence-kit", name, unit: name, limit: new Float64Array(season.days).fill(owned), weight: 1, ...more }];
    const reels = (g: number, place: number): number => (place >= 0 && season.groups[g].grazer ? Math.ceil(cells[place].fenceM / kit.reelM) : 0);
    const nets = groups.map((group) => group.strip?.nets ?? 0);
    const fenced = season.groups.map((group, g) => group.grazer || group.pig || nets[g] > 0);
    return [
      ...row("energisers", kit.energisers, { stand: (g, place) => (place >= 0 && fenced[g] ? each(place, g) : 0) }),
      ...row("reels", kit.reels, { stand: reels, start: reels }),
      ...row("nets", kit.nets, { stand: (g, place) => (place >= 0 ? nets[g] : 0) }),
    ];
  },
};
