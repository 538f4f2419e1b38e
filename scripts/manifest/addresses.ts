import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { PNG } from "pngjs";
import { valueOf, resourcesOf } from "./resources";
import { child, every, type XmlElement } from "./xml";

const RIBBON_SIZES = [16, 32, 80]; // px: the host refuses a button without them

/** The address of the folder that holds the pane, with its closing slash. */
const homeOf = (manifest: XmlElement): string => paneUrl(manifest).replace(/[^/]*$/, "");

export const paneUrl = (manifest: XmlElement): string =>
  child(child(manifest, "DefaultSettings"), "SourceLocation")?.attributes.DefaultValue ?? "";

/** Addresses that are not https, elsewhere than the pane, or name a file that is not in the folder. */
export function addressFaults(manifest: XmlElement, site: string): string[] {
  const home = homeOf(manifest);
  const direct = ["IconUrl", "HighResolutionIconUrl"].map(
    (name) => child(manifest, name)?.attributes.DefaultValue ?? "",
  );
  const resources = resourcesOf(manifest).filter(({ kind }) => kind === "Images" || kind === "Urls");
  const addresses = new Set([paneUrl(manifest), ...direct, ...resources.map(({ value }) => value)]);
  return [...addresses].flatMap((address) => {
    if (!address.startsWith("https://")) return [`${address} must begin with https://`];
    if (!address.startsWith(home)) return [`${address} must lie under ${home}`];
    return existsSync(fileOf(address, home, site)) ? [] : [`${address} names a file that is not there`];
  });
}

/** Icons whose picture has another size than the manifest says, and icon sizes that a button lacks. */
export function iconFaults(manifest: XmlElement, site: string): string[] {
  const home = homeOf(manifest);
  const direct = (name: string, size: number): Claim => ({
    name,
    size,
    address: child(manifest, name)?.attributes.DefaultValue ?? "",
  });
  const inIcons = every(manifest, "Icon").flatMap((icon) =>
    icon.children.map(({ attributes: { resid = "", size } }): Claim => {
      return { name: resid, size: Number(size), address: valueOf(manifest, resid) ?? "" };
    }),
  );
  const claims = [direct("IconUrl", 32), direct("HighResolutionIconUrl", 64), ...inIcons];
  const distinct = new Map(claims.map((claim) => [JSON.stringify(claim), claim]));
  const wrong = [...distinct.values()].flatMap((claim) => sizeFaults(claim, fileOf(claim.address, home, site)));
  const lacking = every(manifest, "Icon").flatMap((icon) => {
    const sizes = icon.children.map(({ attributes }) => Number(attributes.size));
    return RIBBON_SIZES.filter((size) => !sizes.includes(size)).map(
      (size) => `Icon (line ${icon.line}) needs a picture of ${size} px`,
    );
  });
  return [...wrong, ...lacking];
}

interface Claim {
  readonly name: string;
  readonly size: number; // px
  readonly address: string;
}

function sizeFaults({ name, size, address }: Claim, file: string): string[] {
  if (!address.endsWith(".png")) return [`${name} must be a .png picture`];
  if (!existsSync(file)) return []; // addressFaults says so
  const { width, height } = PNG.sync.read(readFileSync(file));
  const fault = `${name} must be ${size} px square; its picture is ${width} x ${height}`;
  return width === size && height === size ? [] : [fault];
}

const fileOf = (address: string, home: string, site: string): string => path.join(site, address.slice(home.length));
