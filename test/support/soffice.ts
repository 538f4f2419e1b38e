import { spawnSync } from "node:child_process";
import path from "node:path";

/**
 * LibreOffice gives large pieces of memory back to the system and fetches them anew, a gigabyte in its start alone, which is more than
 * half of what a start costs. With these settings of the C library on Linux it keeps what it has; elsewhere they mean nothing.
 */
const KEEPS_MEMORY = { MALLOC_MMAP_THRESHOLD_: "2000000000", MALLOC_TRIM_THRESHOLD_: "2000000000" }; // bytes

/** Runs LibreOffice with the profile of a folder to its end. */
export function soffice(folder: string, ...args: readonly string[]): void {
  const profile = `-env:UserInstallation=file://${path.join(folder, "profile")}`;
  const env = { ...process.env, ...KEEPS_MEMORY };
  const { status, stderr } = spawnSync("soffice", [profile, "--headless", ...args], { encoding: "utf8", env });
  if (status !== 0) throw new Error(`soffice failed: ${stderr}`);
}
