import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { settle } from "./panePage";

interface Axe {
  run(options: { runOnly?: string[] }): Promise<Record<"violations" | "passes", { id: string }[]>>;
}
type Rules = Parameters<Axe["run"]>[0];

/** All rules in the usual colours; in others the one on colours, since the rest does not change with them. */
const COLOURS: Rules = { runOnly: ["color-contrast"] };
const COLOURINGS = [
  { colours: "dark", media: { colorScheme: "dark", forcedColors: "none" }, ground: "rgb(41, 41, 41)", rules: COLOURS },
  { colours: "light", media: { colorScheme: "light", forcedColors: "none" }, ground: "rgb(255, 255, 255)", rules: {} },
  { colours: "forced", media: { colorScheme: "light", forcedColors: "active" }, ground: "rgb(255, 255, 255)", rules: COLOURS },
] as const; // prettier-ignore

export const axeSource = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** What axe finds in the page, which has `axeSource`, and whether it scrolls sideways. */
const lookedAt = (page: Page, rules: Rules) =>
  page.evaluate(async (asked) => {
    const { violations, passes } = await (window as unknown as { axe: Axe }).axe.run(asked);
    const { scrollWidth, clientWidth } = document.documentElement;
    return {
      violations: violations.map(({ id }) => id),
      looked: passes.some(({ id }) => id === "color-contrast"),
      sideways: scrollWidth > clientWidth,
    };
  }, rules);

/** In light, dark and forced colours, one after the other on the same page: axe finds nothing, and nothing scrolls sideways. */
export async function expectNoFaults(page: Page, state: string): Promise<void> {
  for (const { colours, media, ground, rules } of COLOURINGS) {
    await page.emulateMedia(media);
    await page.waitForFunction(
      ([wanted, forced]) => {
        const { backgroundColor } = getComputedStyle(document.querySelector(".fui-FluentProvider")!);
        const isForced = matchMedia("(forced-colors: active)").matches;
        return backgroundColor === wanted && isForced === (forced === "active"); // the pane's theme has followed
      },
      [ground, media.forcedColors] as const,
    );
    await settle(page);
    const found = await lookedAt(page, rules);
    expect({ state, colours, ...found }).toEqual({ state, colours, violations: [], looked: true, sideways: false });
  }
}
