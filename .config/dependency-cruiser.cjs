/** Which rooms each room may import; tests/structure/directions.test.ts holds the same table without this tool. */
const may = {
  quantity: [],
  words: ["quantity"],
  science: ["quantity"],
  rules: ["quantity"],
  farm: ["quantity", "science", "rules"],
  plan: ["quantity", "farm"],
  check: ["quantity", "science", "rules", "farm", "plan"],
  season: ["quantity", "science", "rules", "farm"],
  programme: ["quantity", "science", "rules", "farm", "plan", "season"],
  solvers: ["programme"],
  threads: ["programme", "solvers"],
  work: ["quantity", "farm", "plan", "check"],
  decide: ["quantity", "science", "rules", "farm", "plan", "check", "season", "programme"],
  sheets: ["quantity", "rules", "farm", "season", "plan", "check", "decide", "words", "work"],
  files: ["quantity", "science", "farm", "plan", "words"],
};

/** Rooms that may touch the machine: all others take what they need as arguments. */
const touchesNode = "files|solvers|threads|cli|make|bench";

/** A room may see itself, its rooms and packages; never another room of the house. */
const directions = Object.entries(may).map(([room, rooms]) => ({
  name: `${room}-sees-only-its-rooms`,
  severity: "error",
  from: { path: `^src/${room}/` },
  to: { path: "^src/", pathNot: `^src/(${[room, ...rooms].join("|")})/` },
}));

module.exports = {
  forbidden: [
    ...directions,
    { name: "no-circle", severity: "error", from: {}, to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } } },
    { name: "core-has-no-node", severity: "error", from: { path: "^src/", pathNot: `^src/(${touchesNode})/` }, to: { dependencyTypes: ["core"] } },
    { name: "nothing-imports-make-or-bench", severity: "error", from: { path: "^src/(?!(make|bench)/)" }, to: { path: "^src/(make|bench)/" } },
    { name: "one-package-one-adapter", severity: "error", from: { path: "^src/", pathNot: "^src/solvers/" }, to: { path: "node_modules/(highs|javascript-lp-solver)/" } },
    { name: "resolvable", severity: "error", from: {}, to: { couldNotResolve: true } },
    { name: "no-development-package", severity: "error", from: { path: "^src/" }, to: { dependencyTypes: ["npm-dev"] } },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "require", "node", "default", "types"] },
  },
};
