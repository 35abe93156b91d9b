import type { FarmRule, Totals } from "./half.js";

/** What a rule of the whole farm came to. */
export interface Judged {
  readonly money: number;
  readonly over: number;
}

/** Rules of the whole farm, as last judged. */
export class FarmBook {
  judged: readonly Judged[] = [];

  constructor(private readonly rules: readonly FarmRule[]) {}

  settle(totals: Totals): void {
    this.judged = this.rules.map((rule) => rule.judge(totals));
  }

  /** How much worse these rules are sure to be once cells change: hay fed since, less all that the cells could still win. */
  sureWorse(totals: Totals, mown: boolean, sameHay: boolean, penalty: number): number {
    let worse = 0;
    this.rules.forEach((rule, i) => {
      const before = this.judged[i].money + penalty * this.judged[i].over;
      // Hay in store turns on the cells only where they are mown.
      if (rule.rule !== "hay-stock" || mown) worse -= before;
      else if (!sameHay) {
        const { money, over } = rule.judge(totals);
        worse += money + penalty * over - before;
      }
    });
    return worse;
  }
}
