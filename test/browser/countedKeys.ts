import type { Page } from "playwright-core";

/** A keyboard that counts each key that is pressed. */
export interface CountedKeys {
  readonly press: (key: string, times?: number) => Promise<void>;
  /** Types into a cell over what is there. */
  readonly type: (text: string) => Promise<void>;
  /** Begins a word, waits until the line says that Tab takes this one, and presses Tab. */
  readonly take: (begun: string, word: string) => Promise<void>;
  readonly count: () => number;
}

export function countedKeys(page: Page): CountedKeys {
  let count = 0;
  const press = async (key: string, times = 1): Promise<void> => {
    for (let time = 0; time < times; time++) {
      count++;
      await page.keyboard.press(key);
    }
  };
  const type = async (text: string): Promise<void> => {
    count += text.length;
    await page.keyboard.type(text);
  };
  const take = async (begun: string, word: string): Promise<void> => {
    await type(begun);
    await page.locator("#sheet-words", { hasText: `Tab takes "${word}"` }).waitFor();
    await press("Tab");
  };
  return { press, type, take, count: () => count };
}
