// npm run bench [-- --before FOLDER]: measures, prints, and writes docs/bench.md. FOLDER is an older checkout, built.
import { writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { parseArgs } from "node:util";
import { format } from "prettier";
import { buildIfNeeded } from "../buildIfNeeded";
import { accuracy } from "./accuracy";
import { type Checkout, checkoutIn, saidBy } from "./ofCheckout";
import { throughOffice } from "./office";
import { pages } from "./pages";
import { beside, type Row, shownBefore, shownGoal, shownSpread, shownValue, verdict } from "./row";
import { sizes } from "./sizes";

const root = path.join(__dirname, "../..");
const QUIET = 0.25; // of the cores in use

async function bench(): Promise<void> {
  const { before } = parseArgs({ options: { before: { type: "string" } } }).values;
  const older = before === undefined ? [] : [checkoutIn(before)];
  const load = os.loadavg()[0]! / os.cpus().length;
  await buildIfNeeded(root, true);
  const builds = [checkoutIn(root), ...older];
  const functions = await saidBy("functions", builds[0]!, ...builds.map(({ dist }) => dist));
  const rows = [
    ...(await rowsOf("solver", builds)),
    ...(await accuracy(builds)),
    ...(JSON.parse(functions) as Row[]),
    ...(await rowsOf("books", builds)),
    ...(await throughOffice(builds)),
    ...sidesOf(builds.map(({ dist }) => sizes(dist))),
    ...(await pages(builds)),
  ];
  console.table(
    rows.map((row) => ({
      ...{ what: row.what, against: row.against, before: shownBefore(row), value: shownValue(row) },
      ...{ spread: shownSpread(row), goal: shownGoal(row), verdict: verdict(row) },
    })),
  );
  writeFileSync(
    path.join(root, "docs/bench.md"),
    await format(report(rows, load, await versionOf(older[0])), { parser: "markdown" }),
  );
}

/** What a script prints of each build's sources. */
async function rowsOf(script: string, builds: readonly Checkout[]): Promise<Row[]> {
  const said: Row[][] = [];
  for (const build of builds) said.push(JSON.parse(await saidBy(script, build)) as Row[]);
  return sidesOf(said);
}

const sidesOf = ([now, before = []]: readonly Row[][]): Row[] => beside(now!, before);

async function versionOf(older: Checkout | undefined): Promise<string | null> {
  if (older === undefined) return null;
  return (JSON.parse(await readFile(path.join(older.root, "package.json"), "utf8")) as { version: string }).version;
}

const report = (rows: readonly Row[], load: number, before: string | null): string => `# Measured speed

Written by \`npm run bench\` on ${new Date().toISOString().slice(0, 10)}, with Node ${process.versions.node} on ${os.cpus().length} cores. When it began, ${
  load < QUIET ? "the machine was quiet" : "the machine was busy with other work too: take its times with care"
} (load ${(load * os.cpus().length).toFixed(1)}).

A value beside a yardstick is how many times as long the first takes as the second, both taken in turn in the same run, so that it means the same on any machine. Seconds and sizes are those of this run. Each is the middle of several; between the two numbers of the spread lies the middle half of them.${
  before === null
    ? ""
    : ` "Before" is what version ${before} needed for the same, measured in the same way and in the same run; it stays empty where that version could not do it.`
}

| What | Over | Before | Now | Spread | Goal | |
| --- | --- | ---: | ---: | --- | --- | --- |
${rows.map((row) => `| ${row.what} | ${row.against} | ${shownBefore(row)} | ${shownValue(row)} | ${shownSpread(row)} | ${shownGoal(row)} | ${verdict(row)} |`).join("\n")}
`;

bench().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
