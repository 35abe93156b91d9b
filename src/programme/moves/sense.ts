import type { Season } from "../../season/season.js";
import { farmFigure, isOff } from "../half.js";

/** What the moves need to know of a season, worked out once. */
export interface MoveSense {
  readonly season: Season;
  /** Cells each group may enter. */
  readonly cellsOf: readonly (readonly number[])[];
  /** The same by field. */
  readonly near: readonly (readonly (readonly number[])[])[];
  /** Next day from a day on which the group can be moved, or the season's end. */
  readonly nextOk: readonly Int16Array[];
  /** Groups, each as often as it is worth trying. */
  readonly draw: readonly number[];
  readonly followers: readonly number[];
  readonly mowable: readonly number[];
  /** Shortest rest of ground, and the share of changes tried although they cut it short. */
  readonly rest: number;
  readonly bold: number;
}

export function moveSense(season: Season): MoveSense {
  const cellsOf = season.groups.map((group) => season.cells.map((_, c) => c).filter((c) => group.mayEnter[c]));
  const nextOk = season.groups.map((group) => {
    const next = new Int16Array(season.days + 1).fill(season.days);
    for (let t = season.days - 1; t >= 0; t--) next[t] = group.moveOk[t] ? t : next[t + 1];
    return next;
  });
  const draw = season.groups.flatMap((group, g) => (group.present.includes(1) && cellsOf[g].length ? Array<number>(group.grazer ? 4 : group.bird ? 2 : 1).fill(g) : []));
  return {
    season, cellsOf, nextOk, draw,
    near: cellsOf.map((cells) => season.scenario.fields.map((_, f) => cells.filter((c) => season.cells[c].field === f))),
    followers: season.groups.map((_, g) => g).filter((g) => season.groups[g].leader >= 0 && draw.includes(g)),
    mowable: season.cells.map((_, c) => c).filter((c) => season.cells[c].mow),
    rest: isOff(season, "rest-period") ? 0 : farmFigure(season, "rest-period", "floor"),
    bold: 0.1,
  };
}
