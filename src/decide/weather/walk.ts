import type { Scenario } from "../../farm/scenario.js";
import { cellSimulator } from "../../programme/cell-simulator.js";
import type { PathTables } from "../../programme/path-tables.js";
import type { Snapshot } from "../../programme/snapshot.js";
import { regrown } from "../../season/build-season.js";
import { AWAY, FREE, YARD, type Season } from "../../season/season.js";
import { Ground } from "./ground.js";
import { DaysWork, type Going } from "./work.js";
import { WEEK, type Year } from "./year.js";

/** Why a group stands where the plan has it not: the ground or the work forbids it, a move was late, nobody was there. */
export const WHY = ["plan", "ground", "late", "away"] as const;

/** A plan laid out once, to be walked through many years. */
export interface WalkedPlan {
  readonly season: Season;
  readonly tables: PathTables;
  readonly plan: Pick<Snapshot, "place" | "cuts">;
}

/** A plan as it was kept to in one year. */
export interface Lived {
  readonly place: readonly Int16Array[];
  readonly cuts: readonly (readonly number[])[];
  /** By group and day, index in `WHY`. */
  readonly why: readonly Uint8Array[];
}

/** Days of its plan that a group looks ahead for ground that is ready. */
const LOOK_AHEAD = 21;
/** Days that a cut waits for grass. */
const CUT_WAITS = 14;

/**
 * Lives a plan through a year as somebody would who has it on the wall and knows nothing of the days to come. The plan
 * is kept as long as its rules allow. Where they do not, the group stays where it is; else it takes the next ground of
 * its plan that is ready; else it goes to its yard, and back to the plan as soon as that can be. A late move leaves it
 * standing; in the week with nobody it stays where the ground lasts the week, else it stands in its yard.
 *
 * @param farm the farm as the year has it, see `grownFarm`
 */
export function walkYear(walked: WalkedPlan, farm: Scenario, year: Year): Lived {
  const season = regrown(walked.season, farm);
  const walker = new Walker(season, walked.tables, walked.plan, year);
  for (let t = 0; t < season.days; t++) walker.liveDay(t);
  return walker.lived;
}

class Walker {
  readonly lived: { place: Int16Array[]; cuts: number[][]; why: Uint8Array[] };
  private readonly ground: Ground;
  private readonly work: DaysWork;
  /** By group: first day on which a late move may be made; where it stands in the week with nobody. */
  private readonly lateUntil: Int16Array;
  private readonly awayAt: Int16Array;
  /** By cell: the first of the plan's cuts that may still be made. */
  private readonly nextCut: Int16Array;
  /** By group: true once today's place is settled. */
  private readonly settled: Uint8Array;

  constructor(private readonly season: Season, tables: PathTables, private readonly plan: Pick<Snapshot, "place" | "cuts">, private readonly year: Year) {
    const { groups, cells, days } = season;
    this.ground = new Ground(cellSimulator(season));
    this.work = new DaysWork(season, tables);
    this.lived = {
      place: groups.map((group) => Int16Array.from(group.present, (present) => (present ? YARD : AWAY))),
      cuts: cells.map(() => []),
      why: groups.map(() => new Uint8Array(days)),
    };
    this.lateUntil = new Int16Array(groups.length);
    this.awayAt = new Int16Array(groups.length).fill(AWAY);
    this.nextCut = new Int16Array(cells.length);
    this.settled = new Uint8Array(groups.length);
  }

  liveDay(t: number): void {
    this.work.begin();
    this.season.groups.forEach((group, g) => (this.settled[g] = group.present[t] ? 0 : 1));
    for (let g = this.next(t); g >= 0; g = this.next(t)) {
      const { place, why } = this.choose(g, t);
      this.lived.place[g][t] = place;
      this.lived.why[g][t] = WHY.indexOf(why);
      this.settled[g] = 1;
      this.work.add(this.going(g, t, place));
      if (place >= 0) this.ground.stand(place, g, t);
    }
    this.mow(t);
  }

  /** Whose turn it is: first those who stay, then those who go by the plan, where nobody has to make room for them; who has to leave it comes last. */
  private next(t: number): number {
    const waiting = this.season.groups.flatMap((_, g) => (this.settled[g] ? [] : [g]));
    const wish = (g: number): number => this.plan.place[g][t];
    const stays = waiting.find((g) => wish(g) === this.before(g, t) && this.fits(g, t, wish(g)));
    return stays ?? waiting.find((g) => this.fits(g, t, wish(g))) ?? waiting.find((g) => this.free(g, wish(g), t)) ?? waiting[0] ?? -1;
  }

  private choose(g: number, t: number): { place: number; why: (typeof WHY)[number] } {
    const wish = this.plan.place[g][t];
    const before = this.before(g, t);
    if (this.season.groups[g].held[t] !== FREE) return { place: wish, why: "plan" };
    if (this.nobody(t)) {
      if (this.awayAt[g] === AWAY) this.awayAt[g] = this.lasts(g, t, before) ? before : YARD;
      return { place: this.awayAt[g], why: this.awayAt[g] === wish ? "plan" : "away" };
    }
    this.awayAt[g] = AWAY;
    if (this.late(g, t, before)) return { place: before, why: "late" };
    const place = [wish, before, ...this.ahead(g, t), YARD].find((one) => one !== AWAY && this.fits(g, t, one));
    if (place !== undefined) return { place, why: place === wish ? "plan" : "ground" };
    return { place: before === AWAY || this.badly(g, t, before) ? YARD : before, why: "ground" };
  }

  /** True when staying breaks rules of the ground, and the yard can be reached. */
  private badly(g: number, t: number, before: number): boolean {
    return this.work.allowed(this.going(g, t, YARD)) && !(this.work.allowed(this.going(g, t, before)) && (before < 0 || this.ground.fits(before, g, t)));
  }

  /** Where a group stood last night. */
  private before(g: number, t: number): number {
    return t > 0 && !this.season.groups[g].arrives[t] ? this.lived.place[g][t - 1] : AWAY;
  }

  private going(g: number, t: number, place: number): Going {
    return { group: g, day: t, before: this.before(g, t), place, first: place >= 0 ? this.ground.firstDay(place, g, t) : t };
  }

  private fits(g: number, t: number, place: number): boolean {
    if (!this.work.fits(this.going(g, t, place))) return false;
    return place < 0 || (this.free(g, place, t) && this.ground.fits(place, g, t));
  }

  /** True when no other group stands in a cell: those who have their place today, and those who were there last night. */
  private free(g: number, place: number, t: number): boolean {
    return place < 0 || this.season.groups.every((_, other) => other === g || (this.settled[other] ? this.lived.place[other][t] : this.before(other, t)) !== place);
  }

  /** Ground of the plan's coming days, in the order it comes. */
  private ahead(g: number, t: number): readonly number[] {
    const coming = this.plan.place[g].subarray(t + 1, t + 1 + LOOK_AHEAD);
    return [...new Set(coming)].filter((place) => place >= 0);
  }

  /** True while a move of the plan is late. */
  private late(g: number, t: number, before: number): boolean {
    const own = this.plan.place[g];
    if (before === AWAY) return false;
    if (t > 0 && own[t] !== own[t - 1] && own[t] !== before && t >= this.lateUntil[g]) this.lateUntil[g] = t + this.year.slips[g][t];
    return t < this.lateUntil[g];
  }

  private nobody(t: number): boolean {
    const { away } = this.year;
    return away !== null && t >= away && t < away + WEEK;
  }

  /** True when a group can stay where it is for the rest of the week, without a move or a step. */
  private lasts(g: number, t: number, before: number): boolean {
    if (before < 0) return false;
    const { present } = this.season.groups[g];
    const first = this.ground.firstDay(before, g, t);
    let to = t;
    for (let day = t; this.nobody(day) && day < this.season.days && present[day]; day++) {
      if (!this.work.allowed({ group: g, day, before, place: before, first }) || this.work.steps(g, day, before, first)) return false;
      to = day;
    }
    return this.ground.fits(before, g, t, to);
  }

  /** The evening's cuts: the owner's on their day, the plan's as soon as they are worth making and nobody stands there. */
  private mow(t: number): void {
    this.season.cells.forEach((cell, c) => {
      const owners = cell.ownerCuts.find((cut) => cut.day === t);
      if (owners) this.ground.mow(c, t, true, owners.makesHay);
      const due = this.plan.cuts[c].findIndex((day, i) => i >= this.nextCut[c] && day <= t && t <= day + CUT_WAITS);
      if (due < 0 || owners || this.nobody(t) || !this.ground.mow(c, t, false, true)) return;
      this.lived.cuts[c].push(t);
      this.nextCut[c] = due + 1;
    });
  }
}
