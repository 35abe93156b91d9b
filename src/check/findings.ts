import { useOf, type Cell, type Group, type Scenario } from "../farm/scenario.js";
import type { Breach, Charge, RuleId } from "../rules/rule.js";
import { ruleOf } from "../rules/index.js";
import type { SeasonDays } from "./season-days.js";
import type { CellStay } from "./stays.js";

/** Money below this is rounding, not a charge. */
const LEAST_MONEY = 1e-9;

export interface Where {
  readonly group: Group | null;
  readonly cell: Cell | null;
  /** Positions in the season, both counted. */
  readonly first: number;
  readonly last: number;
}

/** The days and place of a stay. */
export function stayWhere(scenario: Scenario, { group, cell, first, last }: CellStay): Where {
  return { group: scenario.groups[group]!, cell: scenario.cells[cell]!, first, last };
}

/** A day of the whole farm. */
export function farmDay(t: number): Where {
  return { group: null, cell: null, first: t, last: t };
}

/** What is at fault on some days. */
export interface Fault {
  readonly found: string;
  readonly allowed: string;
  /** How far off, in any one unit: of days in a row the worst is told. Left out where there is no worse or better. */
  readonly by?: number;
}

/** What some days cost. */
interface Price {
  readonly money: number;
  /** What there is of it, summed over days in a row; only for the words. */
  readonly amount?: number;
  /** Words of one charge, or of days in a row that are charged as one. */
  readonly found: string | ((days: number, amount: number) => string);
  /** What would cost nothing, said when the rule is made hard. */
  readonly allowed: string;
}

export interface Judged {
  readonly breaches: Breach[];
  readonly charges: Charge[];
}

interface OpenFault extends Where {
  readonly found: string;
  readonly allowed: string;
  readonly by: number | undefined;
}

interface OpenPrice extends Where {
  readonly money: number;
  readonly amount: number;
  readonly found: string | ((days: number, amount: number) => string);
  readonly allowed: string;
}

/** Collects what one rule finds. */
export interface Findings {
  breach(where: Where, fault: Fault): void;
  charge(where: Where, price: Price): void;
  judged(): Judged;
}

/**
 * The one place where "off" and "hard" are asked: a rule that is off says nothing; one that may be charged, and that
 * the owner made hard, turns each charge into a breach.
 */
export function findingsOf(scenario: Scenario, rule: RuleId, days: SeasonDays): Findings {
  const chargeable = ruleOf(rule).uses.includes("charged");
  const faults = runsBy<OpenFault>((fault) => (fault.by === undefined ? fault.found : ""), worse);
  const prices = runsBy<OpenPrice>(() => "", together);
  const use = (where: Where) => useOf(scenario, rule, where.cell?.field ?? null, where.group?.name ?? null);
  return {
    breach(where, fault) {
      if (use(where) === "off") return;
      const { group, cell, first, last } = where;
      faults.add({ group, cell, first, last, found: fault.found, allowed: fault.allowed, by: fault.by });
    },
    charge(where, price) {
      if (price.money <= LEAST_MONEY || use(where) === "off") return;
      const { group, cell, first, last } = where;
      prices.add({ group, cell, first, last, money: price.money, amount: price.amount ?? 0, found: price.found, allowed: price.allowed });
    },
    judged() {
      const breaches = faults.all().map((fault) => breachOf(rule, fault, fault.found, days));
      const charges: Charge[] = [];
      for (const price of prices.all()) {
        const found = wordsOf(price);
        if (chargeable && use(price) === "hard") breaches.push(breachOf(rule, price, found, days));
        else charges.push(chargeOf(rule, price, found, days));
      }
      return { breaches, charges };
    },
  };
}

function wordsOf({ found, first, last, amount }: OpenPrice): string {
  return typeof found === "string" ? found : found(last - first + 1, amount);
}

function breachOf(rule: RuleId, { group, cell, first, last, allowed }: Where & { readonly allowed: string }, found: string, { dates }: SeasonDays): Breach {
  return { rule, group: group?.name ?? null, cell: cell?.name ?? null, firstDay: dates[first]!, lastDay: dates[last]!, found, allowed };
}

function chargeOf(rule: RuleId, { group, cell, first, last, money }: OpenPrice, found: string, { dates }: SeasonDays): Charge {
  return { rule, group: group?.name ?? null, cell: cell?.name ?? null, firstDay: dates[first]!, lastDay: dates[last]!, money, found };
}

/** The same fault on days in a row, told by the worse day. */
function worse(before: OpenFault, next: OpenFault): OpenFault {
  const told = (next.by ?? 0) > (before.by ?? 0) ? next : before;
  return { ...told, first: before.first, last: Math.max(before.last, next.last) };
}

/** Charges with words of their own stay apart; days in a row that are told together are one. */
function together(before: OpenPrice, next: OpenPrice): OpenPrice | null {
  if (typeof before.found === "string" || typeof next.found === "string") return null;
  return { ...before, last: next.last, money: before.money + next.money, amount: before.amount + next.amount };
}

/** Joins entries of one group, cell and allowance that follow on each other; entries come in order of their days. */
function runsBy<T extends Where & { readonly allowed: string }>(kind: (entry: T) => string, join: (before: T, next: T) => T | null) {
  const entries: T[] = [];
  const latest = new Map<string, number>();
  return {
    add(next: T): void {
      const key = `${next.group?.name ?? ""}|${next.cell?.name ?? ""}|${next.allowed}|${kind(next)}`;
      const at = latest.get(key);
      const before = at === undefined ? undefined : entries[at];
      const touching = before !== undefined && next.first <= before.last + 1 && next.first >= before.first;
      const joined = touching ? join(before, next) : null;
      if (joined) entries[at!] = joined;
      else latest.set(key, entries.push(next) - 1);
    },
    all: (): readonly T[] => entries,
  };
}
