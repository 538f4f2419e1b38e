import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { launchBrowser } from "./browser";

const SIZES = [16, 20, 24, 32, 40, 48, 64, 80, 96, 128]; // px: those the manifest names, and 128 for a shop window
const assets = path.join(__dirname, "../assets");

/** Draws assets/icon.svg at each size, transparent, as assets/icon-<size>.png. */
async function drawIcons(): Promise<void> {
  const drawing = readFileSync(path.join(assets, "icon.svg"), "utf8");
  const browser = await launchBrowser();
  try {
    for (const size of SIZES) {
      const page = await browser.newPage({ viewport: { width: size, height: size }, deviceScaleFactor: 1 });
      await page.setContent(`<style>*{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${drawing}`);
      writeFileSync(path.join(assets, `icon-${size}.png`), await page.screenshot({ omitBackground: true }));
      await page.close();
    }
  } finally {
    await browser.close();
  }
}

void drawIcons();
