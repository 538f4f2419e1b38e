import { readFileSync } from "node:fs";
import path from "node:path";
import { version } from "../../package.json";
import { headedChangelog, UNRELEASED, versionedManifest, versionedReadme } from "../../scripts/release";

const read = (name: string): string => readFileSync(path.join(__dirname, "../..", name), "utf8");

describe("a release", () => {
  const changelog = "# What changed\n\n## Unreleased\n\n- A line.\n\n## 1.0.0\n\n- An older line.\n";

  test("heads the open lines with its number and day, and leaves the older ones", () => {
    expect(headedChangelog(changelog, "1.1.0", "2030-01-31")).toBe(
      "# What changed\n\n## 1.1.0 (2030-01-31)\n\n- A line.\n\n## 1.0.0\n\n- An older line.\n",
    );
  });

  test.each([
    { with: "no open part", text: "# What changed\n\n## 1.0.0\n\n- A line.\n" },
    { with: "an open part without a line", text: "# What changed\n\n## Unreleased\n\n## 1.0.0\n\n- A line.\n" },
  ])("is refused with $with", ({ text }) => {
    expect(() => headedChangelog(text, "1.1.0", "2030-01-31")).toThrow(
      new Error('CHANGELOG.md has no line under "## Unreleased", so there is nothing to release'),
    );
  });

  test("is refused where the changelog has its number already", () => {
    const text = "# What changed\n\n## Unreleased\n\n- A line.\n\n## 1.1.0 (2030-01-01)\n";
    expect(() => headedChangelog(text, "1.1.0", "2030-01-31")).toThrow(
      new Error("CHANGELOG.md has a heading for 1.1.0 already"),
    );
  });

  test("writes the manifest's version as four numbers", () => {
    expect(versionedManifest("<a/><Version>1.0.0.0</Version><b/>", "1.1.0")).toBe("<a/><Version>1.1.0.0</Version><b/>");
  });

  test("names its number in the README's sentence", () => {
    expect(versionedReadme("One. This is release 1.0.0. Two.", "1.1.0")).toBe("One. This is release 1.1.0. Two.");
    expect(() => versionedReadme("One.", "1.1.0")).toThrow(
      new Error('README.md has no sentence "This is release ..."'),
    );
  });

  test.each([
    ["1.1", "a version is three numbers, such as 1.1.0; got 1.1"],
    ["1.0.0", "manifest.xml has no other version than 1.0.0"],
  ])("refuses the number %s for the manifest", (number, sentence) => {
    expect(() => versionedManifest("<Version>1.0.0.0</Version>", number)).toThrow(new Error(sentence));
  });
});

test("the newest released heading of the changelog is the version of the package, and open lines stand above it", () => {
  const headings = [...read("CHANGELOG.md").matchAll(/^## .*$/gm)].map(([line]) => line);
  const released = headings.filter((line) => line !== UNRELEASED);
  expect(released[0]).toMatch(new RegExp(`^## ${version.replaceAll(".", "\\.")}( \\(\\d{4}-\\d\\d-\\d\\d\\))?$`));
  expect(headings.indexOf(UNRELEASED)).toBeLessThanOrEqual(0);
});

test("the README names the version of the package where it says what works", () => {
  expect(read("README.md")).toContain(`This is release ${version}.`);
});
