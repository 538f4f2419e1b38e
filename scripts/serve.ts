import { createReadStream } from "node:fs";
import { realpath, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { createServer as createSecureServer } from "node:https";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { accessHeaders } from "./site/headers";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".xml": "text/xml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".md": "text/plain; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
};

export interface Serving {
  readonly address: string; // "http://127.0.0.1:3000"
  readonly port: number;
  readonly stop: () => Promise<void>;
}

/** Key and certificate of an https server. */
export interface Secure {
  readonly key: string | Buffer;
  readonly cert: string | Buffer;
}

/**
 * Serves the files of one folder on this machine only, to whoever asks for this machine by its own name.
 *
 * @param folder whose files are served; nothing outside it is, also where a link leads there
 * @param port the port to take; 0 takes any free one
 * @param secure with it the server speaks https, as Excel asks for
 */
export async function serve(folder: string, port: number, secure?: Secure): Promise<Serving> {
  const root = await realpath(folder);
  const answer = (request: IncomingMessage, response: ServerResponse): void => void respond(root, request, response);
  const server: Server = secure === undefined ? createServer(answer) : createSecureServer(secure, answer);
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", resolve);
  });
  const taken = (server.address() as AddressInfo).port;
  return {
    address: secure === undefined ? `http://127.0.0.1:${taken}` : `https://localhost:${taken}`,
    port: taken,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/**
 * A page of the web whose own name is made to mean this machine would be of the same origin as ours; its requests carry
 * that name, so that they are told apart.
 */
const isForThisMachine = ({ headers: { host = "" } }: IncomingMessage): boolean =>
  /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i.test(host);

async function respond(root: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (!isForThisMachine(request)) return refuse(response, 421, "Only localhost and 127.0.0.1 are served here.");
  if (request.method !== "GET" && request.method !== "HEAD")
    return refuse(response, 405, "Only GET and HEAD are answered here.");
  const file = await fileOf(root, request.url ?? "/");
  const found = file === null ? null : await stat(file).catch(() => null);
  if (file === null || found === null || !found.isFile()) return refuse(response, 404, "There is no such file here.");
  response.writeHead(200, {
    "Content-Type": TYPES[path.extname(file)] ?? "application/octet-stream",
    "Content-Length": found.size,
    // a build made a minute ago must never be mixed with an older one; icons must be storable for Excel's ribbon
    "Cache-Control": path.extname(file) === ".png" ? "max-age=60" : "no-store",
    "X-Content-Type-Options": "nosniff",
    ...accessHeaders(path.relative(root, file).split(path.sep).join("/")),
  });
  if (request.method === "HEAD") return void response.end();
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" }).end(sentence);
}

/** The file that a request means, links followed, or null where there is none or it lies outside the folder. */
async function fileOf(root: string, url: string): Promise<string | null> {
  let wanted: string;
  try {
    wanted = decodeURIComponent(url.split(/[?#]/)[0]!);
  } catch {
    return null;
  }
  if (wanted.includes("\0")) return null;
  const named = path.join(root, wanted.endsWith("/") ? `${wanted}index.html` : wanted);
  const file = await realpath(named).catch(() => null);
  return file?.startsWith(root + path.sep) === true ? file : null;
}
