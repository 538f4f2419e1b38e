import type { Frame, Page } from "playwright-core";
import { localSite, openSheet, paneFrame, typeInto } from "./localPage";
import { button, tab, view } from "./panePage";

// A change of the sheet that falls into the moment in which the pane reads it or draws what it has read.

const local = localSite().openForAll();
afterEach(() => expect(local.complaints).toEqual([]));

const frameOf = (page: Page): Frame => page.frames().find((frame) => frame.url().endsWith("/pane.html"))!;

test("Start reads the sheet again where a change falls between its reading and its drawing", async () => {
  const { page } = local;
  const pane = paneFrame(page);
  await tab(pane, "Start").click();
  const moves = pane.getByText(/^With the gates as on Flow the fan moves/);
  await moves.waitFor();
  const before = await moves.innerText();
  await openSheet(page, "Runs");
  // The pane reads 400 ms after a change. The first reading has its change undone at once, before anything can be drawn.
  await frameOf(page).evaluate(() => {
    const counts = Object.assign(window, { readings: 0 });
    const wait = window.setTimeout.bind(window);
    const counted = (then: () => void, time?: number): number => {
      if (time !== 400) return wait(then, time);
      return wait(() => {
        then();
        counts.readings += 1;
        if (counts.readings === 1)
          window.parent.document.querySelector<HTMLElement>(".o-toolbar-button[title^='Undo']")!.click();
      }, time);
    };
    window.setTimeout = counted as typeof window.setTimeout;
  });
  await typeInto(page, "E14", "5"); // south main, which has 6 in
  await frameOf(page).waitForFunction(() => (window as unknown as { readings: number }).readings > 1);
  await pane.getByText(before, { exact: true }).waitFor();
});

test("Check says that its list is older than the sheet where a change came while it was made", async () => {
  const { page } = local;
  const pane = paneFrame(page);
  await openSheet(page, "Runs");
  await typeInto(page, "E14", "4.5");
  await tab(pane, "Check").click();
  // The picture is computed by a worker, after the cells were read. Start may ask that worker, too, until Check is clicked.
  await frameOf(page).evaluate(() => {
    const undoWhenAsked = (): void => {
      const own = Object.getOwnPropertyDescriptor(Worker.prototype, "postMessage")!;
      Worker.prototype.postMessage = function (this: Worker, ...message: [unknown]): void {
        Object.defineProperty(Worker.prototype, "postMessage", own);
        this.postMessage(...message);
        window.parent.document.querySelector<HTMLElement>(".o-toolbar-button[title^='Undo']")!.click();
      };
    };
    document.addEventListener("click", undoWhenAsked, { capture: true, once: true });
  });
  await button(view(pane, "Check"), "Check the open book").click();
  await pane.getByText("Something has been changed since: check again.").waitFor();
});
