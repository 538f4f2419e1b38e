/** What files of browser tests have in common: a Chromium and a folder served on this machine, from before their tests until after them. */
import path from "node:path";
import type { Browser, BrowserContext, BrowserContextOptions } from "playwright-core";
import { launchBrowser } from "../../scripts/browser";
import { serve, type Serving } from "../../scripts/serve";

/** A test waits for the thing itself; this only ends a wait for what never comes, on however busy a machine. */
export const NEVER = 150_000; // ms

/**
 * More room (MB) for short-lived objects, or a sixth of the time goes into clearing up; and no last compiling, since the pages of a
 * test end before it pays: another sixth. The bench measures what users have.
 */
const SHORT_LIVED = ["--js-flags=--max-semi-space-size=64,--no-opt"];

/** A browser for tests, which measure no time. */
export const startBrowser = (): Promise<Browser> => launchBrowser(SHORT_LIVED);

export interface TestBrowser {
  /** What is opened in one knows nothing of what is opened in another. */
  readonly newContext: (options?: BrowserContextOptions) => Promise<BrowserContext>;
  readonly version: () => string;
}

export function testBrowser(): TestBrowser {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(() => browser.close());
  return {
    newContext: async (options) => {
      // without motion, which no test looks at and each would wait for
      const context = await browser.newContext({ reducedMotion: "reduce", ...options });
      context.setDefaultTimeout(NEVER);
      return context;
    },
    version: () => browser.version(),
  };
}

export const DIST = path.resolve(__dirname, "../../dist");

/** @param folder gives what is served, where it is made only when the tests begin */
export function servedFolder(folder: () => string | Promise<string> = () => DIST): Pick<Serving, "address" | "stop"> {
  let serving: Serving;
  beforeAll(async () => {
    serving = await serve(await folder(), 0);
  });
  afterAll(() => serving.stop());
  return {
    get address() {
      return serving.address;
    },
    stop: () => serving.stop(),
  };
}
