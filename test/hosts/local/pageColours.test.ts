import { readFileSync } from "node:fs";
import path from "node:path";
import { contrast } from "../../support/contrast";

const css = readFileSync(path.join(__dirname, "../../../src/hosts/local/page.css"), "utf8");

/** The colours that the page is drawn in, by their names: as it stands, and where the reader asked for a dark one. */
const [light, dark] = [...css.matchAll(/:root \{([^}]*)\}/g)].map(
  ([, block]) => new Map([...block!.matchAll(/--([\w-]+): (#\w+);/g)].map(([, name, hex]) => [name!, six(hex!)])),
);

/** #fff as #ffffff. */
function six(hex: string): string {
  return hex.length === 4 ? `#${[...hex.slice(1)].map((digit) => digit + digit).join("")}` : hex;
}

test("the bars have a colour of each name for the light and the dark page", () => {
  expect(light!.size).toBeGreaterThan(8);
  expect([...dark!.keys()]).toEqual([...light!.keys()]);
  expect(css).toMatch(/@media \(prefers-color-scheme: dark\) \{\s*:root/);
});

describe.each([
  ["light", () => light!],
  ["dark", () => dark!],
])("on the %s page", (_, colours) => {
  test.each([
    ["ink", "paper", 4.5],
    ["soft-ink", "paper", 4.5],
    ["alarm", "paper", 4.5],
    ["ink", "raised", 4.5],
    ["ink", "touched", 4.5],
    ["ink", "warning", 4.5],
    ["accent", "paper", 3],
    ["accent", "touched", 3],
    ["accent", "warning", 3],
  ])("%s on %s has a contrast of at least %p", (text, ground, least) => {
    expect(contrast(colours().get(text)!, colours().get(ground)!)).toBeGreaterThanOrEqual(least);
  });
});

test("nothing outside of the grid has a colour of its own that would stay light", () => {
  const withoutRoots = css.replace(/:root \{[^}]*\}/g, "").replace(/\/\*[^]*?\*\//g, "");
  const rules = [...withoutRoots.matchAll(/([^{}]+)\{([^{}]*#[0-9a-f]{3,6}\b[^{}]*)\}/g)].map(([, selector]) =>
    selector!.trim(),
  );
  expect(rules.filter((selector) => !selector.includes("#sheet"))).toEqual([]);
});
