// npm start: builds, serves dist/ on this machine only and opens the page. --no-build, --https: see README.
import { spawn } from "node:child_process";
import path from "node:path";
import { buildIfNeeded } from "./buildIfNeeded";
import { certificates } from "./certificates";
import { command } from "./command";
import { serve, type Serving } from "./serve";

const root = path.resolve(__dirname, "..");
const dist = path.join(root, "dist");
const USAGE = "npm start -- [--no-build] [--https]";
const USUAL_PORT = 3000;
const PORTS_TRIED = 20;
const FOR_EXCEL = `Excel can now sideload dist/manifest.xml; docs/in-excel.md says how, for each platform.
Excel on the web: Chrome and Edge ask whether its page may reach apps on this device. Choose Allow, or it finds no functions.
The certificate lasts 30 days, and \`npx office-addin-dev-certs uninstall\` takes it away again.`;

async function start(options: readonly string[]): Promise<void> {
  const unknown = options.find((option) => !["--no-build", "--https"].includes(option));
  if (unknown !== undefined) throw new Error(`${unknown} is not known here: use --no-build or --https`);
  await buildIfNeeded(root, options.includes("--no-build"));
  const secure = options.includes("--https");
  const serving = secure ? await serveForExcel() : await serveNear(USUAL_PORT);
  const moved = serving.port === USUAL_PORT ? "" : ` (port ${USUAL_PORT} is taken by another program)`;
  console.log(`Duct Ledger is at ${serving.address}/${moved} - Ctrl-C stops it.`);
  if (secure) console.log(FOR_EXCEL);
  else openBrowser(`${serving.address}/`);
  process.once("SIGINT", () => void serving.stop().then(() => process.exit(0)));
  process.once("SIGTERM", () => void serving.stop().then(() => process.exit(0)));
}

/** The manifest names one address, so Excel's port is not a choice. */
async function serveForExcel(): Promise<Serving> {
  const secure = await certificates();
  return serve(dist, USUAL_PORT, secure).catch((error: unknown) => {
    if (!isTaken(error)) throw error;
    throw new Error(
      `port ${USUAL_PORT} is taken by another program, and the manifest points Excel at it: end that program first`,
    );
  });
}

async function serveNear(first: number): Promise<Serving> {
  for (let port = first; port < first + PORTS_TRIED; port++) {
    try {
      return await serve(dist, port);
    } catch (error) {
      if (!isTaken(error)) throw error;
    }
  }
  return serve(dist, 0);
}

const isTaken = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === "EADDRINUSE";

/** Only where there is a desktop; that it may not work is no reason to fail, since the address is on the screen. */
function openBrowser(address: string): void {
  const desktop =
    process.platform !== "linux" || process.env.DISPLAY !== undefined || process.env.WAYLAND_DISPLAY !== undefined;
  if (!desktop) return;
  const [command, ...args] =
    process.platform === "win32"
      ? ["cmd", "/c", "start", "", address]
      : [process.platform === "darwin" ? "open" : "xdg-open", address];
  const child = spawn(command, args, { stdio: "ignore", detached: true });
  child.on("error", () => undefined);
  child.unref();
}

command(USAGE, start, "Duct Ledger did not start: ");
