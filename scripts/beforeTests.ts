// Before the tests: the checks and the build, two at a time, since one process uses one core. What each says comes when it has ended.
import { spawn } from "node:child_process";
import path from "node:path";

/** Scripts of package.json; those of one line one after the other, up to the first that fails. */
const LINES: readonly (readonly string[])[] = [
  ["lint", "rooms"],
  ["types", "build", "check:manifest", "format:check"],
];

const root = path.join(__dirname, "..");

interface Ended {
  readonly said: string;
  readonly isGood: boolean;
}

function run(script: string): Promise<Ended> {
  return new Promise((resolve) => {
    const child = spawn("npm", ["run", "--silent", script], { cwd: root, shell: process.platform === "win32" });
    let said = "";
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (text: Buffer) => (said += text.toString()));
    child.on("error", (error) => resolve({ said: error.message, isGood: false }));
    child.on("close", (status) => resolve({ said, isGood: status === 0 }));
  });
}

async function runLine(scripts: readonly string[]): Promise<boolean> {
  for (const script of scripts) {
    const began = performance.now();
    const { said, isGood } = await run(script);
    const seconds = Math.round((performance.now() - began) / 1000);
    console.log(
      `${said.trim() === "" ? "" : `${said.trim()}\n`}${script}: ${isGood ? "good" : "FAILED"} (${seconds} s)`,
    );
    if (!isGood) return false;
  }
  return true;
}

void Promise.all(LINES.map(runLine)).then((all) => {
  process.exitCode = all.every(Boolean) ? 0 : 1;
});
