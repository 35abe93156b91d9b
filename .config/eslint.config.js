import tseslint from "typescript-eslint";

/** Rules with types: what breaks silently at run time. */
const typed = {
  "@typescript-eslint/no-floating-promises": "error",
  "@typescript-eslint/no-misused-promises": "error",
  "@typescript-eslint/await-thenable": "error",
  "@typescript-eslint/switch-exhaustiveness-check": "error",
  "@typescript-eslint/prefer-readonly": "error",
  "@typescript-eslint/no-unsafe-argument": "error",
  "@typescript-eslint/require-array-sort-compare": ["error", { ignoreStringArrays: true }],
};

/** Rules that keep code short, plain and free of shared state. */
const plain = {
  "@typescript-eslint/no-explicit-any": "error",
  "@typescript-eslint/no-non-null-assertion": "off",
  "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
  "@typescript-eslint/ban-ts-comment": "error",
  "no-restricted-syntax": [
    "error",
    { selector: "ExportDefaultDeclaration", message: "Exports have names." },
    { selector: "TSEnumDeclaration", message: "Use a readonly list and its union." },
    { selector: "ExportNamedDeclaration > VariableDeclaration[kind='let']", message: "No shared state: export a constant or a function." },
  ],
  complexity: ["error", 20],
  "max-depth": ["error", 5],
  "max-params": ["error", 8],
  eqeqeq: ["error", "always", { null: "ignore" }],
  "no-console": "error",
  "prefer-const": "error",
  "no-var": "error",
};

/** Formatting, mended by `npm run lint:fix`; the few of the linter's own rules that matter when two people edit one file. */
const format = {
  semi: "error",
  quotes: ["error", "double", { avoidEscape: true }],
  "max-len": ["error", { code: 180, ignoreUrls: true, ignoreTemplateLiterals: true, ignoreStrings: true }],
  "eol-last": "error",
  "linebreak-style": "error",
  "no-tabs": "error",
  "no-trailing-spaces": "error",
  "no-multiple-empty-lines": ["error", { max: 1 }],
  "object-curly-spacing": ["error", "always"],
  "comma-spacing": "error",
  "keyword-spacing": "error",
  "space-before-blocks": "error",
  "arrow-spacing": "error",
};

const lengths = {
  "max-lines": ["error", { max: 250 }],
  "max-lines-per-function": ["error", { max: 40 }],
};

export default tseslint.config(
  { ignores: ["dist/**", "plans/**", "coverage/**", "node_modules/**", "**/*.cjs", ".config/**"] },
  {
    files: ["src/**/*.ts", "tests/**/*.ts"],
    plugins: { "@typescript-eslint": tseslint.plugin },
    languageOptions: { parser: tseslint.parser, parserOptions: { project: ["./tsconfig.json", "./tests/tsconfig.json"], tsconfigRootDir: `${import.meta.dirname}/..` } },
    rules: { ...typed, ...plain, ...format },
  },
  { files: ["src/**/*.ts"], rules: lengths },
  { files: ["src/bench/**/*.ts", "src/make/**/*.ts"], rules: { "no-console": "off" } },
);
