import { createHash } from "node:crypto";
import type { PackagedFile } from "./files";

/** Names every file of a package with its sum, so that a later package replaces what this command wrote and nothing else. */
export const MARKER = "package-contents.txt";
const HEAD = "Duct Ledger package. Its files, each with its SHA-256; a later package replaces these and nothing else.";

const sumOf = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

export const markerOf = (files: readonly PackagedFile[]): string =>
  [HEAD, ...files.map(({ path, bytes }) => `${sumOf(bytes)}  ${path}`), ""].join("\n");

/** What keeps these files from being a package of ours as it was written, in words that follow "holds"; null if nothing does. */
export function strangerAmong(files: readonly PackagedFile[]): string | null {
  const marker = files.find(({ path }) => path === MARKER);
  const [head, ...lines] = marker === undefined ? [] : Buffer.from(marker.bytes).toString("utf8").split("\n");
  if (head !== HEAD) return "files of something else";
  const sums = new Map(lines.map((line) => [line.slice(66), line.slice(0, 64)]));
  const stranger = files.find(({ path, bytes }) => path !== MARKER && sums.get(path) !== sumOf(bytes));
  if (stranger === undefined) return null;
  return sums.has(stranger.path)
    ? `${stranger.path}, which was changed since it was packaged`
    : `${stranger.path}, which no package put there`;
}
