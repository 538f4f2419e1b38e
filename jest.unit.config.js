// `npm run test:unit` without a word behind it: the quick tests as one file for each folder of test/, so that what many of them import
// is loaded once and not once for each. A part that is named is run file by file, as `npm test` does.
const fs = require("node:fs");
const path = require("node:path");
const { projects, ...shared } = require("./jest.config.js");

const [unit] = projects;
const elsewhere = unit.testPathIgnorePatterns.map((pattern) => new RegExp(pattern.replace("<rootDir>/", "")));
const filesOf = (folder) =>
  fs
    .readdirSync(path.join("test", folder), { recursive: true, encoding: "utf8" })
    .map((file) => `${folder}/${file}`)
    .filter((file) => file.endsWith(".test.ts") && !elsewhere.some((pattern) => pattern.test(`test/${file}`)))
    .sort();
const namesAPart = process.argv.slice(2).some((word) => !word.startsWith("-"));
const folders = fs.readdirSync("test").filter((folder) => folder !== "support" && filesOf(folder).length > 0);

module.exports = {
  ...shared,
  projects: namesAPart
    ? [unit]
    : folders.map((folder) => ({
        ...unit,
        displayName: folder,
        rootDir: __dirname,
        testMatch: ["<rootDir>/test/support/together.js"],
        globals: { testsTogether: filesOf(folder) },
      })),
};
