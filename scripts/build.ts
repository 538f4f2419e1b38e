// npm run build: writes dist/ anew.
import { spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";

/** The functions, then the help, which computes with them; the pages beside these; last the licences that all came under. */
export async function build(root: string): Promise<void> {
  rmSync(path.join(root, "dist"), { recursive: true, force: true }); // pieces of an earlier build would stay for ever
  const { resolve } = createRequire(path.join(root, "package.json"));
  const bundle = (name: string): Promise<void> =>
    run(root, [resolve("webpack/bin/webpack.js"), "--stats", "errors-warnings", "--config-name", name]);
  const script = (name: string): Promise<void> => run(root, [resolve("tsx/cli"), path.join(root, "scripts", name)]);
  await Promise.all([bundle("pages"), bundle("functions").then(() => script("help.ts"))]);
  await script("licences.ts");
}

async function run(root: string, command: readonly string[]): Promise<void> {
  const status = await new Promise<number | null>((resolve, reject) => {
    const child = spawn(process.execPath, command, { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
    child.on("error", reject);
    child.on("exit", resolve);
  });
  if (status !== 0) throw new Error("the build failed; its messages stand above");
}

if (require.main === module)
  build(path.join(__dirname, "..")).catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  });
