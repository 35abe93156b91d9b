/** Feed budgets of farms on a bad day: always an answer that adds up and reads, never a fault. */
import { describe, expect, it } from "vitest";
import { feedAnswer, feedAnswerShape } from "../../src/cli/feed-answer.js";
import { feedText } from "../../src/cli/feed-text.js";
import { feedOf, type Feed } from "../../src/decide/feed.js";
import { z } from "zod";
import type { Scenario } from "../../src/farm/scenario.js";
import { feedPage } from "../../src/sheets/feed/feed-page.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { COWS, farmText, FIELDS, HENS, OWNER, PEN_AND_OWNER } from "../bad-days/farms.js";
import { scenarioOf } from "../farm/read-text.js";
import { faultsOf } from "../sheets/well-formed.js";

const SCREEN = { say: () => undefined, aside: () => undefined, columns: 80, live: false, heading: (text: string) => text, soft: (text: string) => text };
const shape = feedAnswerShape(z.any());

/** The budget, its words on one line, after text, answer and picture are looked over. */
async function told(text: string): Promise<{ scenario: Scenario; feed: Feed; words: string }> {
  const scenario = scenarioOf(text);
  const feed = await feedOf(scenario, highsSolver());
  const seen = { scenario, feed, changes: [], files: [], notes: [] };
  const words = feedText(seen, SCREEN);
  expect(words).not.toMatch(/NaN|Infinity|undefined|null|-0\b/);
  expect(words.split("\n").filter((line) => line.length > 80)).toEqual([]);
  expect(shape.safeParse(feedAnswer(seen)).error).toBeUndefined();
  const page = feedPage(scenario, feed);
  expect(faultsOf(page)).toEqual([]);
  expect(page).not.toMatch(/NaN|Infinity|undefined|<script|https?:/);
  return { scenario, feed, words: words.replace(/\s+/g, " ") };
}

const hayDays = (feed: Feed): number => feed.weeks.reduce((sum, { groups }) => sum + groups.reduce((days, one) => days + one.hayDays, 0), 0);

describe("a feed budget", { timeout: 120_000 }, () => {
  it("of a farm without grazers names no short week and carries nothing", async () => {
    const { feed, words } = await told(farmText({ groups: HENS.replace(", follows: Cows", "") }));
    expect([feed.pinches, feed.carries, feed.tightest]).toEqual([[], [], null]);
    expect(words).toContain("No grazers are out in this season");
  });

  it("of a group that is never out says that its dates keep it in", async () => {
    const { feed, words } = await told(farmText({ groups: `${COWS}  Bull: { kind: cattle, class: bull, head: 1, weight: 900 kg, turnout: 2027-05-29, people-to-move: 1 }\n`, rest: OWNER }));
    expect(feed.weeks.reduce((sum, { groups }) => sum + groups[1]!.keptInDays, 0)).toBe(28);
    expect(words).toContain("Bull: kept in by your own dates for 28 days");
  });

  it("where nothing grows runs short when what stands is eaten, and hay makes it up", async () => {
    const { feed } = await told(farmText({ season: "2027-05-01 to 2027-08-31", top: "growth: plains-cool\ngrowth-scale: 30 %\n", groups: COWS.replace("head: 3", "head: 6"), rest: OWNER }));
    expect(hayDays(feed)).toBeGreaterThan(20);
    expect(feed.pinches.length).toBeGreaterThan(0);
    expect(feed.carries[0]!.withoutHay.head[0]!).toBeLessThan(6);
  });

  it("of a herd that eats more than grows in any week is still met from what stands", async () => {
    const { feed } = await told(farmText({ season: "2027-05-01 to 2027-05-28", groups: COWS.replace("head: 3", "head: 9"), fields: FIELDS.replace("2300", "3400").replace("2100", "3400"), rest: OWNER }));
    expect(feed.weeks.some(({ grownKg, eatenKg }) => eatenKg > grownKg)).toBe(true);
    expect(feed.weeks[0]!.eatenKg).toBeGreaterThan(0);
  });

  it("of a season of one week has one week, and of eight days a second of one day", async () => {
    const week = await told(farmText({ season: "2027-05-01 to 2027-05-07" }));
    expect(week.feed.weeks.length).toBe(1);
    const eight = await told(farmText({ season: "2027-05-01 to 2027-05-08" }));
    expect(eight.feed.weeks.length).toBe(2);
    const [first, last] = eight.feed.weeks.map(({ groups }) => groups[0]!.grassKg);
    expect(first! / last!).toBeCloseTo(7, 1);
  });

  it("in US units tells pounds, acres and short tons, and no kilograms", async () => {
    const { words } = await told(farmText({ top: "units: US\n", season: "2027-05-01 to 2027-09-30" }));
    expect(words).toContain("lb of dry matter");
    expect(words).toContain("One more acre");
    expect(words).not.toMatch(/\bkg\b|\bha\b/);
  });

  it("of a farm whose ground is all closed for three weeks feeds hay in these, and says so", async () => {
    const { feed } = await told(farmText({ fields: FIELDS.replaceAll("    cells:", "    closed: { flood: until 2027-05-21 }\n    cells:"), rest: PEN_AND_OWNER }));
    expect(feed.pinches).toMatchObject([{ from: 0, to: 2 }]);
    expect(feed.weeks.map(({ groups }) => groups[0]!.grassKg > 1)).toEqual([false, false, false, true]);
  });

  it("sees a late turnout: days before it are the owner's, not the grass's", async () => {
    const { feed } = await told(farmText({ groups: COWS.replace("weight: 550 kg", "weight: 550 kg, turnout: 2027-05-11"), rest: OWNER }));
    expect(feed.weeks.map(({ groups }) => groups[0]!.keptInDays)).toEqual([7, 3, 0, 0]);
  });
});
