/** README and licences say that the grid's own files lie beside the page: every byte is as it was installed. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { filesOf } from "../../scripts/package/files";
import vendorFiles from "../../src/hosts/local/vendorFiles.json";
import { dist } from "./loadBundle";

const packages = path.join(__dirname, "../../node_modules");

test.each(vendorFiles)("$to is the file that the package has", ({ from, to }) => {
  expect(readFileSync(path.join(dist, to)).equals(readFileSync(path.join(packages, from)))).toBe(true);
});

test("nothing else lies in vendor/", () => {
  const inVendor = (name: string): boolean => name.startsWith("vendor/");
  const listed = vendorFiles.map(({ to }) => to).filter(inVendor);
  expect(
    filesOf(dist)
      .map((file) => file.path)
      .filter(inVendor),
  ).toEqual(listed.sort());
});
