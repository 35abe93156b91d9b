import type { IsoDate } from "../quantity/calendar.js";

/** One group in one place from first day to last day, both counted. */
export interface Stay {
  readonly group: string;
  /** Exactly one of cell and yard is not null. */
  readonly cell: string | null;
  readonly yard: string | null;
  readonly firstDay: IsoDate;
  readonly lastDay: IsoDate;
}

/** A cell mown at the end of a day. */
export interface Cut {
  readonly cell: string;
  readonly cut: "hay" | "topping";
  readonly day: IsoDate;
}

/** Where every group stands, by first day, then group in farm order; and the cuts by day. */
export interface Plan {
  readonly stays: readonly Stay[];
  readonly cuts: readonly Cut[];
}
