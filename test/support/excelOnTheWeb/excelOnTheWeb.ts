/**
 * The built add-in in a stand-in for Excel on the web: its pane in a frame of Excel's page, with the real office.js, which
 * asks for what it would ask of Excel. The workbook is the recorder's, and cells are asked for as Excel asks.
 */
import { readFileSync } from "node:fs";
import path from "node:path";
import type { Browser, BrowserContext, Frame, FrameLocator, Page } from "playwright-core";
import { DIST, NEVER, startBrowser } from "../servedSite";
import { record, type Recorder } from "../excelRecorder/recorder";
import { type CellAnswer, type CellCall, messageFor } from "./cells";
import { serveOffice } from "./officeFiles";
import { paneAddress, serveSite } from "./site";
import { tellings } from "./tellings";
import { type Context, type Service, type WireRequest, wireTo } from "./wire";

export interface OpenedExcel {
  readonly pane: FrameLocator;
  readonly frame: () => Frame; // the pane's, once it is there
  readonly excel: Recorder;
  readonly refused: string[]; // requests, with the recorder's reason
  readonly functionsReady: Promise<void>; // when Excel was told that the functions are there
  readonly isReady: () => boolean;
  readonly complaints: readonly string[]; // of the page and the pane, what the policy refused among them
  readonly outside: readonly string[]; // what was asked of any other server
  readonly cells: (...calls: CellCall[]) => Promise<CellAnswer[]>;
}

interface Opening {
  readonly host?: string; // Excel's own page
  readonly dist?: string; // where the add-in is built; this checkout's when left out
  readonly prepare?: (context: BrowserContext) => Promise<unknown>; // of what is served
}

/** What office.js sends to the page around it. */
interface Asked {
  readonly _actionName: string;
  readonly _actionType: number;
  readonly _data: unknown;
}

const EXCEL = "https://excel.officeapps.live.com";
const HEAR_OF_EVENT = 1;

/** What Excel says of itself and of the workbook: that it is the oldest that the add-in promises to work in. */
const ABOUT_EXCEL = {
  _id: "pane",
  _appInstanceId: "pane",
  _addinName: "Duct Ledger",
  _appName: 16,
  _appVersion: "16.0",
  _appMinorVersion: 1,
  _hostFullVersion: "16.0.1",
  _appUILocale: "en-US",
  _dataLocale: "en-US",
  _docUrl: "https://example.org/Mine.xlsx",
  _clientMode: 1,
  _osfControlType: 1,
  _reason: "0",
  _eToken: "",
  _correlationId: "session",
  _settings: [],
  _appDomains: [],
  _initialDisplayMode: 1,
  _requirementMatrix: JSON.stringify({
    excelapi: "1.12",
    sharedruntime: "1.1",
    customfunctionsruntime: "1.3",
    customfunctions: "1.9", // how results come, no set that an add-in asks for
  }),
};

/** A browser for the tests of one file, which opens Excel anew for each that asks. All of them close with it. */
export function excelOnTheWeb(): (opening?: Opening) => Promise<OpenedExcel> {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(() => browser.close());
  return (opening) => openExcel(browser, opening);
}

/** Excel in a window of its own, with the add-in as a folder has it built. */
export async function openExcel(
  browser: Browser,
  { host = EXCEL, dist = DIST, prepare = async () => undefined }: Opening = {},
): Promise<OpenedExcel> {
  const context = await browser.newContext({ viewport: { width: 370, height: 740 } });
  context.setDefaultTimeout(NEVER);
  const outside: string[] = [];
  await context.route("**/*", (route) => {
    outside.push(route.request().url());
    return route.abort();
  });
  await serveOffice(context);
  const address = paneAddress(dist);
  await serveSite(context, dist, address);
  await context.route(`${host}/**`, (route) =>
    route.fulfill({ contentType: "text/html", body: readFileSync(path.join(__dirname, "page.html"), "utf8") }),
  );
  await prepare(context);
  return openIn(await context.newPage(), host, address, outside);
}

async function openIn(page: Page, host: string, address: string, outside: string[]): Promise<OpenedExcel> {
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", ({ message }) => complaints.push(message));
  const excel = record();
  const told = tellings(excel);
  const refused: string[] = [];
  const carry = carrier(told.service, refused);
  await page.exposeFunction("answer", async ({ _actionName, _actionType, _data }: Asked): Promise<unknown> => {
    if (_actionName === "ContextActivationManager_getAppContextAsync") return ABOUT_EXCEL;
    if (_actionName === "executeMethod") return carry((_data as { ArrayData: string[] }).ArrayData[4]!);
    return _actionType === HEAR_OF_EVENT ? { Error: 0 } : undefined;
  });
  await page.goto(`${host}/`);
  await page.evaluate(`showPane("${address}", "en-US")`);
  let asked = 0;
  return {
    pane: page.frameLocator("#pane"),
    frame: () => page.frames()[1]!,
    excel,
    refused,
    functionsReady: told.functionsReady,
    isReady: told.isReady,
    complaints,
    outside,
    cells: async (...calls) => {
      const numbered = calls.map((call) => ({ call, number: ++asked }));
      const answers = numbered.map(({ number }) => told.answerTo(number));
      const messages = numbered.map(({ call, number }) => messageFor(call, number));
      await page.evaluate(`tellPane("richApiMessage", { ArrayData: ${JSON.stringify(messages)} })`);
      return Promise.all(answers);
    },
  };
}

/** Answers one request after the other, as they come. */
function carrier(service: Service, refused: string[]): (request: string) => Promise<unknown> {
  const wire = new Promise<ReturnType<typeof wireTo>>((resolve) => {
    void (Excel as unknown as { run: Run }).run(async (context) => resolve(wireTo(context, service)));
  });
  let last: Promise<unknown> = Promise.resolve();
  return (request) => {
    const answer = last.then(async () => {
      const done = await (await wire)(JSON.parse(request) as WireRequest);
      if (done.Error !== undefined) refused.push(`${done.Error.Code}: ${done.Error.Message}`);
      return { Error: 0, Version: 1, Data: [done.Error === undefined ? 200 : 400, [], JSON.stringify(done)] };
    });
    last = answer;
    return answer;
  };
}

type Run = (work: (context: Context) => Promise<void>) => Promise<void>; // the recorder's
