import { RULES } from "../rules/index.js";
import type { Parameter, Rule, Use } from "../rules/rule.js";

const USE_WORDS: Readonly<Record<Use, string>> = { hard: "never broken", charged: "at a price", off: "off" };

/** Every rule as a row: name, sentence, how it holds, and the figures that the owner may change. */
export function rulesTable(): string {
  const head = ["| rule | what it says | held | figures you may change |", "|---|---|---|---|"];
  return [...head, ...RULES.map(ruleRow)].join("\n");
}

function ruleRow(rule: Rule): string {
  const others = rule.uses.filter((use) => use !== rule.use);
  const held = others.length === 0 ? USE_WORDS[rule.use] : `${USE_WORDS[rule.use]} (or \`use: ${others.join("`, `use: ")}\`)`;
  return `| \`${rule.id}\` | ${escaped(rule.sentence)} | ${held} | ${rule.parameters.map(figureWords).join("<br>")} |`;
}

function figureWords(parameter: Parameter): string {
  const value = parameter.usual === null ? "not set" : `${parameter.usual}${parameter.unit === "" ? "" : ` ${parameter.unit}`}`;
  return `\`${parameter.key}\` ${value}: ${escaped(parameter.meaning)}`;
}

/** A bar would end the table's box. */
function escaped(text: string): string {
  return text.replaceAll("|", "\\|");
}
