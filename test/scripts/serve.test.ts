import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import http from "node:http";
import os from "node:os";
import path from "node:path";
import { serve, type Serving } from "../../scripts/serve";

let folder: string;
let serving: Serving;

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "serve-"));
  const site = path.join(folder, "site");
  mkdirSync(path.join(site, "inner"), { recursive: true });
  writeFileSync(path.join(folder, "secret.txt"), "secret");
  mkdirSync(path.join(folder, "site-next"));
  writeFileSync(path.join(folder, "site-next", "secret.txt"), "secret");
  writeFileSync(path.join(site, "index.html"), "<p>hello");
  writeFileSync(path.join(site, "functions.js"), "1");
  writeFileSync(path.join(site, "inner", "data.json"), "{}");
  for (const name of ["functions.json", "manifest.xml", "taskpane.html", "pane.html", "assets/icon-16.png"]) {
    mkdirSync(path.dirname(path.join(site, name)), { recursive: true });
    writeFileSync(path.join(site, name), "1");
  }
  symlinkSync(path.join(folder, "secret.txt"), path.join(site, "link.txt"));
  symlinkSync(path.join(folder, "site-next"), path.join(site, "next"), "junction");
  symlinkSync(path.join(site, "inner"), path.join(site, "within"), "junction");
  serving = await serve(site, 0);
});

afterAll(async () => {
  await serving.stop();
  rmSync(folder, { recursive: true });
});

/** Asks for a path as it stands: fetch would tidy up the dots. */
const ask = (
  target: string,
  method = "GET",
  host?: string,
): Promise<{ status: number; body: string; headers: http.IncomingHttpHeaders }> =>
  new Promise((resolve, reject) => {
    const headers = host === undefined ? {} : { Host: host };
    const request = http.request(
      { host: "127.0.0.1", port: serving.port, path: target, method, headers },
      (response) => {
        let body = "";
        response.on("data", (part: Buffer) => (body += part.toString()));
        response.on("end", () => resolve({ status: response.statusCode ?? 0, body, headers: response.headers }));
      },
    );
    request.on("error", reject);
    request.end();
  });

describe("the static server", () => {
  test.each([
    ["/", "text/html; charset=utf-8", "<p>hello"],
    ["/?x=1", "text/html; charset=utf-8", "<p>hello"],
    ["/functions.js", "text/javascript; charset=utf-8", "1"],
    ["/inner/data.json", "application/json; charset=utf-8", "{}"],
  ])("answers %s as %s and lets no old copy be kept", async (target, type, body) => {
    const answer = await ask(target);
    expect(answer).toMatchObject({ status: 200, body });
    expect(answer.headers).toMatchObject({
      "content-type": type,
      "cache-control": "no-store",
      "x-content-type-options": "nosniff",
    });
  });

  test.each([
    "/../secret.txt",
    "/..%2fsecret.txt",
    "/%2e%2e/secret.txt",
    "/inner/../../secret.txt",
    "/..\\secret.txt",
    "/../site-next/secret.txt",
    "//../secret.txt",
    "/%00",
    "/%zz",
    "/inner",
    "/none.js",
    "/link.txt",
    "/next/secret.txt",
    "/next/",
  ])("gives nothing for %s", async (target) => {
    const answer = await ask(target);
    expect(answer.status).toBe(404);
    expect(answer.body).toBe("There is no such file here.");
  });

  test("follows a link that stays in the folder", async () => {
    expect(await ask("/within/data.json")).toMatchObject({ status: 200, body: "{}" });
  });

  test.each(["localhost", "LOCALHOST:3000", "127.0.0.1:3000", "[::1]:3000"])("answers to %s", async (host) => {
    expect((await ask("/", "GET", host)).status).toBe(200);
  });

  // A name of the web that its owner points at this machine: what answers would be of that name's origin.
  test.each(["evil.example", "evil.example:3000", "localhost.evil.example", "127.0.0.1.evil.example", "0.0.0.0"])(
    "refuses whoever asks for %p",
    async (host) => {
      expect(await ask("/functions.js", "GET", host)).toMatchObject({
        status: 421,
        body: "Only localhost and 127.0.0.1 are served here.",
      });
    },
  );

  test.each(["/functions.json", "/functions.js", "/manifest.xml", "/assets/icon-16.png"])(
    "lets Excel's page read %s, which is the same for everybody",
    async (target) => {
      expect((await ask(target)).headers["access-control-allow-origin"]).toBe("*");
      expect((await ask(target, "HEAD")).headers["access-control-allow-origin"]).toBe("*");
    },
  );

  test.each(["/", "/pane.html", "/inner/data.json"])("lets no other page read %s", async (target) => {
    expect((await ask(target)).headers).not.toHaveProperty("access-control-allow-origin");
  });

  test("answers no other method", async () => {
    expect((await ask("/", "POST")).status).toBe(405);
    expect(await ask("/", "HEAD")).toMatchObject({ status: 200, body: "" });
  });

  test("listens on this machine only, and says when a port is taken", async () => {
    expect(serving.address).toBe(`http://127.0.0.1:${serving.port}`);
    const others = Object.values(os.networkInterfaces()).flatMap((cards) => cards ?? []);
    for (const { address } of others.filter(({ internal, family }) => !internal && family === "IPv4")) {
      await expect(fetch(`http://${address}:${serving.port}/`)).rejects.toThrow("fetch failed");
    }
    await expect(serve(folder, serving.port)).rejects.toMatchObject({ code: "EADDRINUSE" });
  });
});
