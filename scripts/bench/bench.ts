// npm run bench [-- --before FOLDER]: measures, prints, and writes docs/bench.md. FOLDER is an older checkout, built.
import { execFileSync } from "node:child_process";
import { existsSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { parseArgs } from "node:util";
import { buildSync } from "esbuild";
import { format } from "prettier";
import { buildIfNeeded } from "../buildIfNeeded";
import { recalculatedCopies } from "./clubCopy";
import { pages } from "./pages";
import { type Row, shownGoal, shownSpread, shownValue, verdict } from "./row";
import { changedInput } from "./sheet";
import { sizes } from "./sizes";

const root = path.join(__dirname, "../..");
const QUIET = 0.25; // of the cores in use
const dist = path.join(root, "dist");

async function bench(): Promise<void> {
  const { before } = parseArgs({ options: { before: { type: "string" } } }).values;
  const older = before === undefined ? null : path.join(path.resolve(before), "dist");
  if (older !== null && !existsSync(path.join(older, "functions.js")))
    throw new Error(`${before} has no dist: build it first`);
  const load = os.loadavg()[0]! / os.cpus().length;
  await buildIfNeeded(root, true);
  console.debug = () => undefined; // the grid reports each step
  const rows = [
    ...core(older),
    ...changedInput(),
    ...(await recalculatedCopies()),
    ...sizes(dist),
    ...(await pages(root)),
  ];
  console.table(
    rows.map((row) => ({
      ...{ what: row.what, against: row.against, value: shownValue(row), spread: shownSpread(row) },
      ...{ goal: shownGoal(row), verdict: verdict(row) },
    })),
  );
  writeFileSync(path.join(root, "docs/bench.md"), await format(report(rows, load), { parser: "markdown" }));
}

function core(older: string | null): Row[] {
  const outfile = path.join(root, "coverage/bench.js");
  const entry = path.join(__dirname, "core.ts");
  buildSync({ entryPoints: [entry], bundle: true, platform: "node", packages: "external", outfile });
  const said = execFileSync(process.execPath, [outfile, dist, ...(older === null ? [] : [older])], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  return JSON.parse(said) as Row[];
}

const report = (rows: readonly Row[], load: number): string => `# Measured speed

Written by \`npm run bench\` on ${new Date().toISOString().slice(0, 10)}, with Node ${process.versions.node} on ${os.cpus().length} cores. When it began, ${
  load < QUIET ? "the machine was quiet" : "the machine was busy with other work too: take its times with care"
} (load ${(load * os.cpus().length).toFixed(1)}).

A value beside a yardstick is how many times as long the first takes as the second, both taken in turn in the same run, so that it means the same on any machine. Seconds and sizes are those of this run. Each is the middle of several; between the two numbers of the spread lies the middle half of them.

| What | Over | Value | Spread | Goal | |
| --- | --- | ---: | --- | --- | --- |
${rows.map((row) => `| ${row.what} | ${row.against} | ${shownValue(row)} | ${shownSpread(row)} | ${shownGoal(row)} | ${verdict(row)} |`).join("\n")}
`;

bench().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
