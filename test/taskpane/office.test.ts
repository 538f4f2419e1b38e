import {
  PATIENCE,
  isBesideLocalSheet,
  takeFunctionsWithout,
  watchOffice,
  type OfficeOfPage,
  type PageSurroundings,
} from "../../src/taskpane/office";

type Office = ReturnType<OfficeOfPage["get"]>;

/** A page whose office.js comes, fails or hangs as the test says; `told` collects what the pane hears. */
function page({ office, tag = true }: { office?: Office; tag?: boolean } = {}) {
  const script = new EventTarget();
  let defined = office;
  const told: PageSurroundings[] = [];
  watchOffice({ get: () => defined, script: tag ? script : null }, (where) => told.push(where));
  return {
    told,
    loads: async (arrived: Office) => {
      defined = arrived;
      script.dispatchEvent(new Event("load"));
      await settled();
    },
    fails: () => script.dispatchEvent(new Event("error")),
  };
}

const ready = (host: unknown): Office => ({ onReady: () => Promise.resolve({ host }) });
const settled = (): Promise<void> => Promise.resolve().then(() => undefined);

beforeEach(() => jest.useFakeTimers());
afterEach(() => jest.useRealTimers());

describe("watchOffice", () => {
  test("a page without the tag of office.js is alone at once", () => {
    expect(page({ tag: false }).told).toEqual(["alone"]);
  });

  test("office.js that loads inside Excel is Excel", async () => {
    const { told, loads } = page();
    expect(told).toEqual(["waiting"]);
    await loads(ready("Excel"));
    expect(told).toEqual(["waiting", "excel"]);
  });

  test.each([null, "Word"])("office.js that names the host %p is not Excel", async (host) => {
    const { told, loads } = page();
    await loads(ready(host));
    expect(told).toEqual(["waiting", "alone"]);
  });

  test("office.js that was there before the pane is asked without its load event", async () => {
    const { told } = page({ office: ready("Excel") });
    await settled();
    expect(told).toEqual(["waiting", "excel"]);
  });

  test("office.js that cannot be loaded leaves the pane alone, with no waiting", () => {
    const { told, fails } = page();
    fails();
    expect(told).toEqual(["waiting", "alone"]);
  });

  test("a file under that name that defines no Office leaves the pane alone", async () => {
    const { told, loads } = page();
    await loads(undefined);
    expect(told).toEqual(["waiting", "alone"]);
  });

  test("an Office that refuses leaves the pane alone", async () => {
    const { told, loads } = page();
    await loads({ onReady: () => Promise.reject(new Error("blocked")) });
    expect(told).toEqual(["waiting", "alone"]);
  });

  test("office.js that hangs leaves the pane alone after the patience, and no sooner", () => {
    const { told } = page();
    jest.advanceTimersByTime(PATIENCE - 1);
    expect(told).toEqual(["waiting"]);
    jest.advanceTimersByTime(1);
    expect(told).toEqual(["waiting", "alone"]);
  });

  test("an onReady that never answers leaves the pane alone after the patience", async () => {
    const { told, loads } = page();
    await loads({ onReady: () => new Promise(() => undefined) });
    jest.advanceTimersByTime(PATIENCE);
    expect(told).toEqual(["waiting", "alone"]);
  });

  test("an answer after the patience still counts", async () => {
    const { told, loads } = page();
    jest.advanceTimersByTime(PATIENCE);
    await loads(ready("Excel"));
    expect(told).toEqual(["waiting", "alone", "excel"]);
  });

  test("once answered, the patience says nothing more", async () => {
    const { told, loads } = page();
    await loads(ready("Excel"));
    jest.advanceTimersByTime(2 * PATIENCE);
    expect(told).toEqual(["waiting", "excel"]);
  });
});

describe("isBesideLocalSheet", () => {
  const kind = (name: string) => ({ ductLedgerHost: { kind: name } }) as unknown as Window;

  test("is so where the page around offers the local host", () => {
    expect(isBesideLocalSheet(() => kind("local"))).toBe(true);
  });

  test.each([
    ["no host", {} as Window],
    ["another host", kind("excel")],
  ])("is not so with %s", (_, around) => {
    expect(isBesideLocalSheet(() => around)).toBe(false);
  });

  test("is not so where the page around may not be asked", () => {
    const forbidden = (): Window => {
      throw new DOMException("Blocked a frame from accessing a cross-origin frame", "SecurityError");
    };
    expect(isBesideLocalSheet(forbidden)).toBe(false);
  });
});

describe("takeFunctionsWithout", () => {
  const failing = (page: { CustomFunctions?: unknown }): unknown => {
    const script = new EventTarget();
    takeFunctionsWithout(script, page);
    const before = page.CustomFunctions;
    script.dispatchEvent(new Event("error"));
    return before;
  };

  test("where office.js does not come the functions' file finds who takes its functions, and no earlier", () => {
    const page: { CustomFunctions?: { associate(): void } } = {};
    expect(failing(page)).toBeUndefined();
    expect(() => page.CustomFunctions!.associate()).not.toThrow();
  });

  test("what is there already stays", () => {
    const there = {};
    const page = { CustomFunctions: there };
    failing(page);
    expect(page.CustomFunctions).toBe(there);
  });
});
