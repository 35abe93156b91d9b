import { z } from "zod";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { PAPER_NAMES } from "../sheets/paper.js";
import type { Made } from "../sheets/made.js";
import { day, finding, season } from "./answer-parts.js";
import type { SheetsOptions } from "./sheets-options.js";
import { FORMATS } from "./sheets-options.js";

export const sheetsAnswerShape = z.strictObject({
  farm: z.string(),
  season,
  plan: z.strictObject({ version: z.number().int().min(1), madeOn: day, firmTo: day, likelyTo: day }),
  sheets: z.array(z.string()).meta({ description: "those asked for, in that order" }),
  paper: z.enum(PAPER_NAMES as [string, ...string[]]),
  as: z.enum(FORMATS).meta({ description: "as asked for; where no PDF could be printed the files are HTML, and a note says why" }),
  files: z.array(z.strictObject({ file: z.string(), pages: z.number().int().min(1).nullable().meta({ description: "of a PDF" }) })),
  text: z.string().nullable().meta({ description: "what would stand on the terminal: text sheets without --out" }),
  rulesBroken: z.number().int().min(0).meta({ description: "places in which the plan breaks a rule; see check" }),
  notes: z.array(finding),
});

type SheetsAnswer = z.infer<typeof sheetsAnswerShape>;

/** What `sheets` made. */
export interface SheetsSeen {
  readonly scenario: Scenario;
  readonly made: Made;
  readonly asked: SheetsOptions;
  readonly files: SheetsAnswer["files"];
  readonly text: string | null;
  readonly rulesBroken: number;
  readonly notes: readonly Finding[];
}

/** The same as one object. */
export function sheetsAnswer({ scenario, made, asked, files, text, rulesBroken, notes }: SheetsSeen): SheetsAnswer {
  const { version, madeOn, firmTo, likelyTo } = made;
  return {
    farm: scenario.farm, season: scenario.season, plan: { version, madeOn, firmTo, likelyTo }, sheets: [...asked.sheets],
    paper: asked.paper ?? usualPaper(scenario), as: asked.as, files, text, rulesBroken, notes: [...notes],
  };
}

/** What a farm's printer most likely holds. */
export function usualPaper({ units }: Scenario): "letter" | "a4" {
  return units === "US" ? "letter" : "a4";
}
