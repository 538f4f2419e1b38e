/** What a person finds out who asks a command how it is used. */
import { spawnSync } from "node:child_process";
import path from "node:path";

const root = path.resolve(__dirname, "../..");

test.each([
  ["sheet", "--help", "npm run sheet -- --units SI --out my-budget.xlsx [--contents example] [--overwrite]"],
  ["share", "-h", "npm run share -- budget.xlsx club.xlsx [--values] [--overwrite]"],
  ["package", "--help", "npm run package -- --url https://example.org/ducts [--out package]"],
  ["start", "--help", "npm start -- [--no-build] [--https]"],
])("%s %s says how it is used, and does nothing else", (name, asked, usage) => {
  const tsx = path.join(root, "node_modules/tsx/dist/cli.mjs");
  const { status, stdout, stderr } = spawnSync(process.execPath, [tsx, `scripts/${name}.ts`, asked], {
    cwd: root,
    encoding: "utf8",
  });
  expect({ status, stdout: stdout.trim(), stderr }).toEqual({ status: 0, stdout: usage, stderr: "" });
});
