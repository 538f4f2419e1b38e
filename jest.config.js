// Three suites: "unit" is the fast loop; "built" runs what `npm run build` wrote; "browser" drives it in Chromium.
const swc = ["@swc/jest", { jsc: { parser: { syntax: "typescript", tsx: true }, target: "es2022" } }];
const suite = (displayName, folders) => ({
  displayName,
  testEnvironment: "node",
  transform: { "\\.(tsx?|mjs)$": swc },
  transformIgnorePatterns: ["/node_modules/(?!hucre/)"], // it comes as modules only, which jest cannot require as they are
  setupFiles: ["<rootDir>/test/support/laws.ts"],
  testMatch: folders.map((folder) => `<rootDir>/test/${folder}/**/*.test.ts`),
});

module.exports = {
  testSequencer: "<rootDir>/test/support/slowestFirst.js",
  projects: [
    suite("unit", ["core", "reference", "functions", "sheets", "share", "hosts", "taskpane", "published", "scripts"]),
    suite("built", ["built"]),
    suite("browser", ["browser"]),
  ],
};
