import type { Job } from "../programme/jobs.js";
import type { Trouble } from "../programme/trouble.js";

const PART: Partial<Record<Job["kind"], string>> = { search: "One of the searches", bound: "The sum that no plan can cost less than" };

const ENDED: Partial<Record<Trouble, string>> = {
  "out-of-memory": "ran out of memory and was ended early",
  "broke-down": "broke down and ended early",
  hung: "gave no sign of life any more and was ended",
};

const STEP: Partial<Record<Trouble, string>> = {
  "solve-failed": "Steps of the planning broke down; each was left out, and the plan from before it stands.",
  "solve-wrong": "Steps of the planning came to wrong answers; none was used, and the plan from before stands.",
  "solve-slow": "A step of the planning took too long here and was left out; a faster machine may find another plan.",
};

/** What went wrong in a part of the planning, and what that means for the plan: one plain sentence. */
export function troubleWords(job: Job["kind"], trouble: Trouble): string {
  const step = STEP[trouble];
  if (step) return step;
  const what = `${PART[job] ?? "A part of the planning"} ${ENDED[trouble]}`;
  return job === "bound" ? `${what}: it could be higher than printed, the plan is not touched.` : `${what}; the best plan found before stands.`;
}
