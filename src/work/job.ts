import type { IsoDate } from "../quantity/calendar.js";

/** A cell or a yard. */
export interface Place {
  readonly name: string;
  readonly yard: boolean;
}

/** Positions of a pen or net, or strips of pigs' ground, in the cell: numbered as they are taken over the season. */
export interface Positions {
  readonly first: number;
  readonly last: number;
}

/**
 * What has to be done with a group, or on the ground.
 *
 * arrive, leave: comes onto the farm, leaves it; join, part: begins or ends to run with another group; move: to another place;
 * step: a pen or net to its next position; strip: pigs to their next strip; set: fence and water made ready for a coming move;
 * collect: fence kit fetched from the cell that was left; shut-in: birds kept shut in for a tow the morning after;
 * look: seen, counted, fed and watered; dusk: house shut and birds counted; walk: grass walked and measured; cut: hay or topping.
 */
export const JOB_KINDS = ["arrive", "leave", "join", "part", "move", "step", "strip", "set", "collect", "shut-in", "look", "dusk", "walk", "cut"] as const;
export type JobKind = (typeof JOB_KINDS)[number];

export type PartOfDay = "morning" | "evening" | "dusk";

export interface Job {
  /** The same for the same job in another plan of the farm: kind, group or cell, and day. */
  readonly id: string;
  readonly kind: JobKind;
  readonly day: IsoDate;
  readonly part: PartOfDay;
  /** Null for the weekly walk and for cuts. */
  readonly group: string | null;
  /** Groups that run with it and come along. */
  readonly company: readonly string[];
  /** Where it is before and after; null off the farm. Of a set, `from` is null; of a cut and a collect, both are the cell. */
  readonly from: Place | null;
  readonly to: Place | null;
  /** What is taken from then on, of a pen, net or strip. */
  readonly positions: Positions | null;
  readonly cut: "hay" | "topping" | null;
  /** Of all people together; what is counted with another job is 0. */
  readonly minutes: number;
  /** People at home that it needs. */
  readonly people: number;
  readonly tow: boolean;
  /** Day of the move that a set or shutting in is for. */
  readonly for: IsoDate | null;
}

/** Where a group stands at night. */
export interface Standing {
  readonly group: string;
  readonly place: Place;
  /** Group that it runs with. */
  readonly host: string | null;
  /** Position of its pen, net or strip that day; null where it has none. */
  readonly position: number | null;
  /** It came here that day. */
  readonly moved: boolean;
}

export interface AtHome {
  readonly name: string;
  readonly tows: boolean;
  readonly minutes: number;
}

/** Ground that opens or shuts on the day, and why. */
export interface GroundNews {
  readonly cell: string;
  readonly news: "opens" | "shuts";
  readonly reason: string;
}

/** One day's work, morning to dusk. */
export interface DayWork {
  readonly day: IsoDate;
  readonly people: readonly AtHome[];
  /** By part of the day, then in the order of the kinds, then groups in the farm's order. */
  readonly jobs: readonly Job[];
  readonly standing: readonly Standing[];
  readonly ground: readonly GroundNews[];
  /** The walk round in the morning, besides what each group takes. */
  readonly roundMinutes: number;
}
