/** Help texts: what each command does, and command lines that run in the folder of the program. */

export const WHAT_IT_IS = [
  "inbye plans where every group of animals stands on every day of the season.",
  "You write the farm down once, in one file; inbye decides the moves and draws the grid for the wall.",
].join("\n");

export const READ = "Read a farm file: what is wrong in it, what the land grows, and whether there are cells enough";
export const PLAN = "Plan the season and write the grid (HTML to print, CSV for a spreadsheet) and plan.json";
export const FEED = "Grass against mouths week by week: where it pinches, what the land carries, what to cut";
export const WEATHER = "Try a plan on dry, usual and wet years with late moves: in which week it fails, and what hay to hold";
export const CHECK = "Check a plan against all rules: plan.json, or a grid typed in a spreadsheet (CSV)";
export const PENS = "Pens, nets and pigs' strips by cell: positions that fit, ground covered, nitrogen, how long to stand; drawn to scale";
export const SHEETS = "Sheets of a plan for the wall and the pocket: season, month, week, day, pens; as HTML or PDF on your paper, or as text";
export const CALENDAR = "A plan for the phone: an iCalendar file of moves and jobs; after planning again, one that changes and calls off events";
export const TRY = "What if? Plan the farm as it is and with each change, and say what differs";
export const WHY = "Why a group is where it is on a day, why not elsewhere, or what a cell could be used for";

export interface Example {
  readonly line: string;
  readonly says: string;
}

export const EXAMPLES: Readonly<Record<"inbye" | "read" | "feed" | "plan" | "check" | "why" | "try" | "sheets" | "calendar" | "pens" | "weather", readonly Example[]>> = {
  inbye: [
    { line: "read scenarios/withy-end.yaml", says: "is the farm file right, and is there land enough?" },
    { line: "plan scenarios/withy-end.yaml", says: "plan the season; the sheets go to plans/withy-end" },
    { line: "check scenarios/withy-end.yaml plans/withy-end/grid.csv", says: "does a changed grid still keep the rules?" },
    { line: "try scenarios/withy-end.yaml scenarios/changes/two-more-cows.yaml", says: "what would two more cows change?" },
  ],
  read: [
    { line: "read scenarios/withy-end.yaml", says: "land, stock, cells needed, growth by year and week" },
    { line: "read scenarios/withy-end.yaml --assumed", says: "also every figure that was assumed, with its source" },
  ],
  plan: [
    { line: "plan scenarios/withy-end.yaml --effort quick", says: "a first plan within half a minute" },
    { line: "plan scenarios/withy-end.yaml --out wall --replace", says: "into wall/, over what is there" },
    { line: "plan scenarios/withy-end.yaml --json", says: "one JSON object, for programs" },
  ],
  weather: [
    { line: "weather scenarios/withy-end.yaml plans/withy-end/plan.json", says: "the plan in 200 made-up years" },
    { line: "weather scenarios/withy-end.yaml plans/withy-end/plan.json --figures", says: "also which figure the answer hangs on most" },
    { line: "weather scenarios/withy-end.yaml plans/withy-end/plan.json --out weather", says: "and a picture of the hay, to print" },
  ],
  check: [
    { line: "check scenarios/withy-end.yaml plans/withy-end/plan.json", says: "the plan as it was written" },
    { line: "check scenarios/withy-end.yaml plans/withy-end/grid.csv", says: "the grid after a change by hand" },
  ],
  pens: [
    { line: "pens scenarios/withy-end.yaml", says: "what each pen covers, cell by cell" },
    { line: "pens scenarios/withy-end.yaml plans/withy-end/plan.json --out pens", says: "with the positions that the plan takes, drawn into pens/" },
  ],
  sheets: [
    { line: "sheets scenarios/withy-end.yaml plans/withy-end/plan.json --sheet season --paper a3 --as pdf", says: "the season grid for the wall, as plans/withy-end/season-grid.pdf" },
    { line: "sheets scenarios/withy-end.yaml plans/withy-end/grid.csv --sheet season,pens --out wall", says: "a grid changed by hand, and the pens, into wall/" },
    { line: "sheets scenarios/withy-end.yaml plans/withy-end/plan.json --sheet month,week --month 2027-06 --week 2027-06-14", says: "June, and the week of the 14th" },
    { line: "sheets scenarios/withy-end.yaml plans/withy-end/plan.json --sheet season --as txt", says: "on the terminal" },
  ],
  calendar: [
    { line: "calendar scenarios/withy-end.yaml plans/withy-end/plan.json", says: "all moves and jobs, as plans/withy-end/calendar.ics" },
    { line: "calendar scenarios/withy-end.yaml plans/withy-end/plan.json --group Cows,Layers", says: "two groups' only" },
    { line: "calendar scenarios/withy-end.yaml plans/june/plan.json --since plans/withy-end/plan.json", says: "planned again: changes, and what is called off" },
  ],
  feed: [
    { line: "feed scenarios/sun-brae.yaml", says: "in which weeks grass runs short, and by how much" },
    { line: "feed scenarios/sun-brae.yaml --out plans/feed", says: "also draws it, as plans/feed/feed-budget.html" },
    { line: "feed scenarios/withy-end.yaml --change scenarios/changes/two-more-cows.yaml", says: "the same with two more cows" },
  ],
  try: [
    { line: "try scenarios/withy-end.yaml scenarios/changes/two-more-cows.yaml", says: "one change beside the farm as it is" },
    { line: "try scenarios/withy-end.yaml --change scenarios/changes/no-pigs.yaml scenarios/changes/add-pigs.yaml", says: "eight pigs, on the farm without any" },
    { line: "try scenarios/withy-end.yaml scenarios/changes/rented-field.yaml scenarios/changes/two-more-cows.yaml --together", says: "each alone, and both" },
  ],
  why: [
    { line: "why scenarios/withy-end.yaml plans/withy-end/plan.json --group Cows --day 2027-06-15", says: "why are they there, and what would every other place cost?" },
    { line: "why scenarios/withy-end.yaml plans/withy-end/plan.json --group Cows --day 2027-06-15 --not K1", says: "why not in K1?" },
    { line: "why scenarios/withy-end.yaml plans/withy-end/plan.json --cell K3 --day 2027-06-15", says: "why is it empty, and who could use it?" },
  ],
};

export const EXIT_CODES = "Exit codes: 0 done, 1 a fault of inbye, 2 something to put right in what was given, 3 no plan or rules broken.";
