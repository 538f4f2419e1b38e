import { readFileSync } from "node:fs";
import type { BrowserContextOptions, Page } from "playwright-core";

interface Axe {
  run(options: { runOnly?: string[] }): Promise<Record<"violations" | "passes", { id: string }[]>>;
}
type Rules = Parameters<Axe["run"]>[0];

/** All rules where one first looks; in other colours the one on colours, since the rest does not change with them. */
const COLOURS: Rules = { runOnly: ["color-contrast"] };
export const COLOURINGS: readonly [string, BrowserContextOptions, Rules][] = [
  ["light", { colorScheme: "light" }, {}],
  ["dark", { colorScheme: "dark" }, COLOURS],
  ["forced colours", { forcedColors: "active" }, COLOURS],
];

export const axeSource = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** What axe finds in the page, which has `axeSource`, and whether it scrolls sideways. */
export const lookedAt = (page: Page, rules: Rules) =>
  page.evaluate(async (asked) => {
    const { violations, passes } = await (window as unknown as { axe: Axe }).axe.run(asked);
    const { scrollWidth, clientWidth } = document.documentElement;
    return {
      violations: violations.map(({ id }) => id),
      looked: passes.some(({ id }) => id === "color-contrast"),
      sideways: scrollWidth > clientWidth,
    };
  }, rules);
