import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { licenceFaults, notices, type Shipped, shippedPackages } from "../../scripts/licences";
import { dist } from "./loadBundle";

const built: Shipped = { name: "some-package", version: "1.2.3", licence: "MIT", text: "Some licence.", builtIn: true };

describe("the licences of what ships", () => {
  test("allow how it ships", () => {
    expect(licenceFaults(shippedPackages())).toEqual([]);
  });

  test("are those of packages that are built in and of packages that lie beside", () => {
    const packages = shippedPackages();
    const builtIn = (name: string): boolean | undefined => packages.find((one) => one.name === name)?.builtIn;
    expect(builtIn("psychrolib")).toBe(true);
    expect(builtIn("react")).toBe(true);
    expect(builtIn("@odoo/o-spreadsheet")).toBe(false);
  });

  test("are none of what tests alone may use: office.js is loaded from its maker's server, and nothing of it ships", () => {
    expect(shippedPackages().map(({ name }) => name)).not.toContain("@microsoft/office-js");
    const files = readdirSync(dist, { recursive: true, encoding: "utf8" }).map((file) => path.basename(file));
    expect(files.filter((file) => /^(office|excel-|custom-functions-runtime)/i.test(file))).toEqual([]);
  });

  test("would be refused: LGPL inside our own files", () => {
    const inside = { ...built, licence: "LGPL-3.0-only" };
    const fault = "some-package is built into our files, which its licence (LGPL-3.0-only) does not allow here";
    expect(licenceFaults([inside])).toEqual([fault]);
    expect(licenceFaults([{ ...inside, builtIn: false }])).toEqual([]);
  });

  test("would be refused: one that we do not know, and one without a text", () => {
    const unknown = { ...built, licence: "none stated", text: "", builtIn: false };
    expect(licenceFaults([unknown])).toEqual([
      "some-package is shipped beside our files, which its licence (none stated) does not allow here",
      "some-package comes without a licence text",
    ]);
  });

  test("stand in the notices with their text, and those in the build", () => {
    expect(readFileSync(path.join(dist, "licences.txt"), "utf8")).toBe(notices(shippedPackages()));
    expect(notices([built])).toBe("some-package 1.2.3 (MIT), built in\n\nSome licence.\n");
  });
});
