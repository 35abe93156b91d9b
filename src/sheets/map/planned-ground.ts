/** On paper: mm from the drawing's upper left corner. */
export type Point = readonly [x: number, y: number];

/** Room that marks stand in, mm: round its middle, or from its left edge. */
export interface MarkRoom {
  readonly at: Point;
  readonly w: number;
  readonly h: number;
  readonly from: "middle" | "left";
}

export interface PlannedCell {
  readonly name: string;
  readonly rings: readonly (readonly Point[])[];
  /** Middle of the room for its name and numbers, and that room, mm. */
  readonly at: Point;
  readonly room: { readonly w: number; readonly h: number };
}

/** Words of a field or yard at a place. */
export interface PlannedName {
  readonly name: string;
  readonly at: Point;
  readonly anchor: "start" | "middle";
  /** Room for it, mm; none where it may run on. */
  readonly room: number;
}

/** The farm's ground as it is drawn. */
export interface GroundPlan {
  readonly w: number;
  readonly h: number;
  /** Paper's mm to a metre of ground where shapes and places are those of the farm's map; null where cells are blocks. */
  readonly mmPerM: number | null;
  readonly cells: readonly PlannedCell[];
  readonly fields: readonly PlannedName[];
  readonly yard: MarkRoom;
  /** Where a field's or cell's gate is; only where the map has it. */
  readonly gates: Readonly<Record<string, Point>>;
}

export interface PlanRoom {
  readonly w: number;
  readonly h: number;
}
