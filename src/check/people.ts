import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { farmDay, findingsOf, type Findings, type Judged } from "./findings.js";
import type { Move } from "./labour.js";
import { hasPen, haulMoney, labourMoney } from "./labour-money.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { counted, over, plain, shortOf } from "./words.js";

/** Each day's work fits the people at home, tow moves have somebody who tows, and moves have their price. */
export function checkPeople(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "people", replay.days);
  const { minutes, minutesAtHome, moves, steps, towersAtHome } = replay.labour;
  minutes.forEach((needed, t) => {
    const most = minutesAtHome[t]!;
    if (needed <= most + TOLERANCE) return;
    findings.breach(farmDay(t), { found: `${plain(over(needed))} min`, allowed: `at most ${plain(shortOf(most))} min`, by: needed });
  });
  for (const move of moves) judgeMove(scenario, replay, move, findings);
  for (const { group, day, towed } of steps) {
    if (towed && towersAtHome[day]! === 0) nobodyTows(scenario, group, day, findings);
  }
  return findings.judged();
}

function judgeMove(scenario: Scenario, { labour }: Replay, move: Move, findings: Findings): void {
  const group = scenario.groups[move.group]!;
  const cell = move.to >= 0 ? scenario.cells[move.to]! : null;
  const people = labour.peopleAtHome[move.day]!;
  if (people < group.peopleToMove) {
    findings.breach(
      { group, cell: null, first: move.day, last: move.day },
      { found: `${plain(people)} at home for a move`, allowed: `at least ${counted(group.peopleToMove, "person", "people")}` },
    );
  }
  if (group.needsTow && labour.towersAtHome[move.day]! === 0) nobodyTows(scenario, move.group, move.day, findings);
  const haul = hasPen(group) ? 0 : move.haulMinutes;
  findings.charge({ group, cell, first: move.day, last: move.day }, {
    money: labourMoney(scenario, move.minutes) + (hasPen(group) ? 0 : haulMoney(scenario, move)),
    found: `a move of ${plain(move.minutes + haul)} min`, allowed: "no move",
  });
}

function nobodyTows(scenario: Scenario, group: number, day: number, findings: Findings): void {
  findings.breach(
    { group: scenario.groups[group]!, cell: null, first: day, last: day },
    { found: "nobody at home who tows", allowed: "somebody who tows" },
  );
}
