import packageJson from "../../../package.json";
import { demoBook } from "../../sheets/demo";
import { chartLibrary } from "./chartLibrary";
import { browserStore } from "./browserStore";
import { enterBeforeSheet } from "./enterBeforeSheet";
import { enterReturns } from "./enterReturns";
import { type BookInFile, download, fileOf } from "./files";
import { openDropped } from "./dropFile";
import { type GridDesk, openDesk } from "./gridDesk";
import { keptHere } from "./keptHere";
import { keeperOf } from "./keeper";
import type { OpenBook } from "./openBook";
import { lastSheet, tabStorage } from "./lastSheet";
import { askOnLeaving } from "./leaving";
import { localHost } from "./localHost";
import { notificationsIn } from "./notifications";
import { paneFocus } from "./paneFocus";
import { printSheet } from "./print/printSheet";
import { refit } from "./refit";
import { moveByF6, type Region } from "./regions";
import { sharedStore } from "./sharedStore";
import { stepsLead } from "./stepsLead";
import { followSheet } from "./status";
import { calculatedOf } from "./readGrid";
import { finished } from "./evaluation/finished";
import { fileButtons, keptLine, type TopBar } from "./topBar";
import { afterEachKey, enterTyped, isTyping } from "./typing";
import { type Workspace, workspaceOf } from "./workspace";

const part = <Kind extends HTMLElement = HTMLElement>(id: string): Kind => {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no part "${id}"`);
  return element as Kind;
};

/** Made anew when it is asked for: whoever has a budget of his own does not wait for it. */
const example = (): OpenBook => ({ workbook: demoBook(), file: "example.xlsx", unsaved: false });

/** Nothing is said where it fails: a chart's own place says it when somebody looks at it. */
const chartsHere = (): Promise<void> => chartLibrary().catch(() => undefined);

/**
 * Puts the grid on the page and wires up what stands around it.
 *
 * @param helpOf words about the function that the grid's own help line shows
 */
export async function openPage(templates: string, helpOf: (head: Element | null) => string): Promise<void> {
  const sheet = part("sheet");
  const frame = part<HTMLIFrameElement>("pane-frame");
  const top = topBar();
  let desk: GridDesk | null = null;
  let workspace: Workspace | null = null;
  printSheet(part("print"), () => desk?.model() ?? null); // before the grid, which has a print of its own
  const focusPane = paneFocus(frame);
  const bar = notificationsIn(part("notice"), (asker) => {
    if (asker === frame) focusPane();
    else if (asker !== null) asker.focus();
    else desk?.focus();
  });
  const touched = (): void => workspace?.touched();
  const folder = new URL(".", location.href).pathname;
  const last = lastSheet(tabStorage(), folder);
  const deskFor = ({ workbook }: OpenBook): Promise<GridDesk> =>
    openDesk(workbook, sheet, templates, bar, touched, async (model) => {
      last.reopen(model);
      if (model.getters.getChartIds(model.getters.getActiveSheetId()).length > 0) await chartsHere();
    });
  const keeper = keeperOf(browserStore(folder), sharedStore, () => crypto.randomUUID(), packageJson.version);
  let found = await keeper.load();
  part("loading").remove();
  let first: OpenBook | null = null;
  let kept: Pick<BookInFile, "book" | "words"> | null = null;
  if (typeof found === "object") {
    kept = await keptHere(found, bar);
    if (kept !== null) {
      first = kept.book;
      desk = await deskFor(first).catch((error: unknown) => {
        console.error(error);
        return null;
      });
    }
    if (desk === null) [found, first] = ["unreadable", null];
  }
  first ??= example();
  const open = (desk ??= await deskFor(first));
  const save = async (): Promise<boolean> => {
    const bytes = await fileOf(open.model());
    if (typeof bytes === "string") {
      bar.say(`Nothing was saved. ${bytes}`);
      return false;
    }
    download(bytes, work.file());
    work.saved();
    return true;
  };
  const work: Workspace = workspaceOf(
    { workbook: open.workbook, show: open.show, focus: open.focus, save },
    keeper,
    bar,
    keptLine(part("kept"), top.forget, `${location.host}${folder.replace(/\/$/, "")}`),
    askOnLeaving(window, sheet, isTyping),
    sharedStore,
    first,
    typeof found === "object" ? "kept" : found,
  );
  workspace = work;
  open.follow(() => last.note(open.model()));
  if (kept !== null && kept.words !== "") bar.say(kept.words);
  window.ductLedgerHost = localHost({
    model: open.model,
    workbook: open.workbook,
    follow: open.follow,
    open: work.open,
    download,
  });
  refit(sheet);
  stepsLead(sheet, open.model, isTyping);
  enterBeforeSheet(sheet, enterTyped);
  enterReturns(sheet, open.model, { isTyping, afterEachKey });
  followSheet(open, sheet, part("sheet-words"), () => helpOf(sheet.querySelector(".o-formula-assistant-head")));
  const openFile = fileButtons(top, save, work, bar, example, async () => {
    await finished(open.model()); // its first sheet is painted before
    return calculatedOf(open.model()).shown;
  });
  openDropped(window, openFile);
  paneSwitch(part<HTMLButtonElement>("pane-switch"), part("pane"));
  const regions: Region[] = [
    region(part("top"), () => top.new.focus()),
    region(part("notice"), () => part("notice").querySelector("button")?.focus()),
    region(sheet, open.focus),
    region(part("pane"), focusPane),
  ];
  moveByF6(regions, [window], document.body);
  frame.addEventListener("load", () => {
    if (frame.contentWindow === null) return;
    moveByF6(regions, [frame.contentWindow], document.body);
    openDropped(frame.contentWindow, openFile);
  });
  frame.src = "pane.html"; // only now, so that the pane finds its host
  await chartsHere();
  const { listDifferences } = await import("./differences"); // last, since the list is folded at first
  listDifferences(part("differences"));
}

const topBar = (): TopBar => ({
  new: part<HTMLButtonElement>("new"),
  newForm: part<HTMLFormElement>("new-form"),
  open: part<HTMLButtonElement>("open"),
  chooser: part<HTMLInputElement>("chooser"),
  save: part<HTMLButtonElement>("save"),
  forget: part<HTMLButtonElement>("forget"),
});

const region = (element: HTMLElement, focus: () => void): Region => ({
  name: element.id,
  contains: (active) => element.contains(active),
  focus,
  isShown: () => !element.hidden,
});

function paneSwitch(button: HTMLButtonElement, pane: HTMLElement): void {
  button.addEventListener("click", () => {
    pane.hidden = !pane.hidden;
    button.textContent = pane.hidden ? "Show the pane" : "Hide the pane";
    button.setAttribute("aria-expanded", String(!pane.hidden));
  });
}
