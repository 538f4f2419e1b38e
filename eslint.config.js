const officeAddins = require("eslint-plugin-office-addins");
const tseslint = require("typescript-eslint");

// eslint-plugin-office-addins' own presets bring a second TypeScript and a formatter along; its rules alone are wanted.
const officeRules = Object.fromEntries(
  Object.keys(officeAddins.rules).map((name) => [`office-addins/${name}`, "error"]),
);

// A pane may not open these (the host blocks them), and text from a cell must never become markup or code.
const NO_DIALOGS = "alert, confirm and prompt are blocked in a pane: say it in the page";
const NO_MARKUP = "text from a cell must never become markup: use textContent";
const forbidden = [
  { selector: "CallExpression[callee.name=/^(alert|confirm|prompt)$/]", message: NO_DIALOGS },
  { selector: "CallExpression[callee.property.name=/^(alert|confirm|prompt)$/]", message: NO_DIALOGS },
  {
    selector: "MemberExpression[property.name=/^(innerHTML|outerHTML|insertAdjacentHTML|srcdoc)$/]",
    message: NO_MARKUP,
  },
  { selector: "MemberExpression[object.name='document'][property.name=/^(write|writeln)$/]", message: NO_MARKUP },
  { selector: "JSXAttribute[name.name=/^(dangerouslySetInnerHTML|srcDoc)$/]", message: NO_MARKUP },
  {
    selector: "CallExpression[callee.property.name='waitForFunction'] > :function[async=true]",
    message: "a promise is never false, so this does not wait: see scripts/bench/until.ts",
  },
];

module.exports = tseslint.config(
  { ignores: ["dist/**", "coverage/**", "node_modules/**"] },
  {
    files: ["**/*.{ts,tsx}"],
    extends: [...tseslint.configs.recommendedTypeChecked, ...tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { project: "./tsconfig.json", tsconfigRootDir: __dirname } }, // a tenth quicker than the service for editors
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      eqeqeq: ["error", "always", { null: "ignore" }],
      "no-console": ["error", { allow: ["warn", "error"] }], // a fault that has no place in the sheet
      "no-eval": "error",
      "no-implied-eval": "off", // its typed twin is in the preset
      "no-restricted-syntax": ["error", ...forbidden],
      "no-var": "error",
      "prefer-const": "error",
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/no-non-null-assertion": "off", // noUncheckedIndexedAccess leaves no shorter word for "just checked"
      "@typescript-eslint/no-unsafe-enum-comparison": "off", // the local sheet's library exports its enums as types only
      "@typescript-eslint/prefer-for-of": "off", // some lists grow while they are walked
      "@typescript-eslint/prefer-nullish-coalescing": ["error", { ignorePrimitives: true }],
      "@typescript-eslint/prefer-optional-chain": "off", // its undefined is not our null
      "@typescript-eslint/require-await": "off", // a host's method may promise what another host answers at once
      "@typescript-eslint/switch-exhaustiveness-check": "error",
    },
  },
  {
    files: ["src/functions/**/*.ts", "src/hosts/excel/**/*.ts", "src/taskpane/**/*.{ts,tsx}"],
    plugins: { "office-addins": officeAddins },
    rules: officeRules,
  },
  {
    // The host's error is its own class, not the language's.
    files: ["src/functions/cellErrors.ts"],
    rules: { "@typescript-eslint/only-throw-error": "off" },
  },
  {
    // A test hands over what no type allows.
    files: ["test/**/*.{ts,tsx}"],
    rules: {
      "@typescript-eslint/no-explicit-any": "off",
      "@typescript-eslint/no-unsafe-argument": "off",
      "@typescript-eslint/no-unsafe-assignment": "off",
      "@typescript-eslint/no-unsafe-member-access": "off",
      "@typescript-eslint/no-unsafe-return": "off",
    },
  },
  {
    files: ["scripts/**/*.ts"],
    rules: { "no-console": "off" },
  },
  {
    files: ["**/*.{js,cjs}"],
    languageOptions: { sourceType: "commonjs" },
    rules: { "no-undef": "off", "no-var": "error", "prefer-const": "error", eqeqeq: "error" },
  },
);
