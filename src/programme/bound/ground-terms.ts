import type { Season } from "../../season/season.js";
import { askedIn, figures } from "../half.js";
import { stripsOnce } from "./cell-terms.js";

/**
 * What a cell's nitrogen and strips cost over the whole season, as straight lines below the true curve: at any slope
 * inside its limits, slope x amount + constant is never more than the true charge.
 */
export interface GroundTerms {
  readonly area: number;
  /** Limits of the slope a kg N. */
  readonly nitrogenLeast: number;
  readonly nitrogenMost: number;
  /** Constant for a slope, and the amount of N at which line and curve touch. */
  nitrogen(slope: number): { readonly constant: number; readonly touch: number };
  /** Worth of a hectare of strips, by group, where the cell wants it; and the constant for leaving all undone. */
  readonly worth: readonly number[];
  readonly undone: number;
  /** Fresh ground for pigs and for birds, ha; Infinity where strips cannot be priced. */
  readonly freshForPigs: number;
  readonly freshForBirds: number;
}

export function groundTerms(season: Season, cell: number): GroundTerms {
  const area = season.cells[cell].areaHa;
  const { wants } = season.scenario.cells[cell];
  const price = (want: "opening" | "scratching" | "fertility"): number => (wants.includes(want) && askedIn(season, "ground-wants", cell, -1) ? figures(season, "ground-wants", `${want}-price`)(cell, -1) : 0);
  const target = figures(season, "ground-wants", "fertility-target")(cell, -1);
  const feed = (price("fertility") / target) * area;
  const ceiling = nitrogenCeiling(season, cell);
  const curve = (kg: number): number => feed * Math.max(0, target - kg / area) + ceiling.price * Math.max(0, kg - ceiling.most * area);
  const touches = [0, target * area, ...(Number.isFinite(ceiling.most) ? [ceiling.most * area] : [])];
  const opened = figures(season, "pig-pressure", "opened");
  return {
    area,
    nitrogenLeast: -feed / area,
    nitrogenMost: ceiling.price,
    nitrogen(slope) {
      let best = { constant: Infinity, touch: 0 };
      for (const kg of touches) if (curve(kg) - slope * kg < best.constant) best = { constant: curve(kg) - slope * kg, touch: kg };
      return best;
    },
    worth: season.scenario.groups.map((group, g) => {
      if (season.groups[g].bird) return price("scratching");
      const opens = group.strip && (group.head * group.strip.days) / group.strip.areaHa >= opened(cell, g);
      return season.groups[g].pig && opens ? price("opening") : 0;
    }),
    undone: area * (price("opening") + price("scratching")),
    freshForPigs: fresh(season, cell, (g) => season.groups[g].pig),
    freshForBirds: fresh(season, cell, (g) => season.groups[g].bird),
  };
}

/** Windows of twelve months hold the whole season only while it is no longer than that. */
function nitrogenCeiling(season: Season, cell: number): { most: number; price: number } {
  if (!askedIn(season, "nitrogen-ceiling", cell, -1) || season.days > 365) return { most: Infinity, price: 0 };
  return { most: figures(season, "nitrogen-ceiling", "cell")(cell, -1), price: figures(season, "nitrogen-ceiling", "price")(cell, -1) };
}

function fresh(season: Season, cell: number, counts: (group: number) => boolean): number {
  const groups = season.groups.map((_, g) => g).filter(counts);
  return stripsOnce(season, cell, groups) ? season.cells[cell].areaHa : Infinity;
}
