import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { createServer as createSecureServer } from "node:https";
import type { AddressInfo } from "node:net";
import path from "node:path";

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
 * Serves the files of one folder on this machine only.
 *
 * @param folder whose files are served; nothing outside it is
 * @param port the port to take; 0 takes any free one
 * @param secure with it the server speaks https, as Excel asks for
 */
export async function serve(folder: string, port: number, secure?: Secure): Promise<Serving> {
  const root = path.resolve(folder);
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

async function respond(root: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const file = fileOf(root, request.url ?? "/");
  const found = file === null ? null : await stat(file).catch(() => null);
  if (request.method !== "GET" && request.method !== "HEAD")
    return refuse(response, 405, "Only GET and HEAD are answered here.");
  if (file === null || found === null || !found.isFile()) return refuse(response, 404, "There is no such file here.");
  response.writeHead(200, {
    "Content-Type": TYPES[path.extname(file)] ?? "application/octet-stream",
    "Content-Length": found.size,
    // a build made a minute ago must never be mixed with an older one; icons must be storable for Excel's ribbon
    "Cache-Control": path.extname(file) === ".png" ? "max-age=60" : "no-store",
    "X-Content-Type-Options": "nosniff",
  });
  if (request.method === "HEAD") return void response.end();
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" }).end(sentence);
}

/** The file that a request means, or null where it would leave the folder. */
function fileOf(root: string, url: string): string | null {
  let wanted: string;
  try {
    wanted = decodeURIComponent(url.split(/[?#]/)[0]!);
  } catch {
    return null;
  }
  if (wanted.includes("\0")) return null;
  const file = path.join(root, wanted.endsWith("/") ? `${wanted}index.html` : wanted);
  return file.startsWith(root + path.sep) ? file : null;
}
