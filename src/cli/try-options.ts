import { CHANGE_OPTION, flag, JSON_OPTION, valued } from "./command-line.js";
import { EFFORTS } from "./options.js";

/** Options of `try`. */
export const TRY_OPTIONS = {
  together: flag("Try all changes laid over the farm together as well"),
  effort: valued(`How hard to look: ${EFFORTS.join(", ")}; usual unless given`),
  seed: valued("Number that the searches start from, 1 unless given; same farm, seed and effort, same answer"),
  seconds: valued("Stop after so many seconds with the best plans found"),
  from: valued("A plan.json or grid.csv of the farm as it is, to start from"),
  out: valued("Folder for the plans and sheets of the farm as it is and of each change; nothing is written unless given"),
  replace: flag("Write over sheets that are there"),
  columns: valued("Width of what is printed, in characters"),
  change: { ...CHANGE_OPTION.change, describe: "Change file that belongs to the farm as it is; several with commas between" },
  ...JSON_OPTION,
};
