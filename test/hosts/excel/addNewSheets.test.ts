import { addNewSheets } from "../../../src/hosts/excel/addNewSheets";
import type { Workbook } from "../../../src/sheets/workbook";
import { answersOnes, knowsNone, record, type Recorder, snapshot } from "../../support/excelRecorder/recorder";
import { Refusal } from "../../support/excelRecorder/refuse";
import type { SheetState } from "../../support/excelRecorder/state";
import { sample, traps, woods } from "./sample";
import { watching } from "./watch";

const given = (workbook: Workbook) => async (): Promise<Workbook> => workbook;

/** A user's workbook with a sheet, a formula and a name of its own. */
function usersBook(): Recorder {
  const excel = record();
  excel.fill("Sheet1", "A1:B2", [
    ["mine", 1],
    ["too", "=B1*2"],
  ]);
  excel.book.names.push({ name: "rent", formula: "=Sheet1!$B$1", visible: true });
  return excel;
}

const sheetOf = (excel: Recorder, name: string): SheetState => excel.book.sheets.find((sheet) => sheet.name === name)!;
const cellOf = (excel: Recorder, name: string, at: string) => sheetOf(excel, name).cells.get(at)!;

async function added(): Promise<Recorder> {
  const excel = usersBook();
  expect(await addNewSheets(given(sample), watching().watch)).toEqual({
    added: true,
    sheets: ["Wood & air", "Answers"],
    refused: [],
  });
  return excel;
}

afterEach(() => jest.restoreAllMocks());

describe("addNewSheets", () => {
  test("leaves every sheet and name that was there as it was", async () => {
    const excel = usersBook();
    const before = snapshot(excel) as { sheets: unknown[]; names: unknown[] };
    await addNewSheets(given(sample), watching().watch);
    const after = snapshot(excel) as typeof before;
    expect(after.sheets.slice(0, 1)).toEqual(before.sheets);
    expect(after.names.slice(0, 1)).toEqual(before.names);
  });

  test("enters each formula as the description has it, and no other", async () => {
    const excel = await added();
    for (const { name, cells } of sample.sheets) {
      const wanted = cells.flatMap((cell) => ("formula" in cell ? [[cell.at, cell.formula]] : [])).sort();
      const found = [...sheetOf(excel, name).cells].flatMap(([at, cell]) =>
        cell.formula === null ? [] : [[at, cell.formula]],
      );
      expect(found.sort()).toEqual(wanted);
    }
  });

  test("text stays text, whatever it begins with", async () => {
    const excel = await added();
    traps.forEach((trap, index) => {
      const { value, formula } = cellOf(excel, "Wood & air", `E${index + 1}`);
      expect({ value, formula }).toEqual({ value: trap, formula: null });
    });
  });

  test("writes numbers, truth values, formats and looks", async () => {
    const excel = await added();
    expect(cellOf(excel, "Wood & air", "B5")).toMatchObject({ value: 5.5, format: "0.00" });
    expect(cellOf(excel, "Wood & air", "F1").value).toBe(true);
    const { look } = cellOf(excel, "Wood & air", "B3");
    expect(look).toMatchObject({
      "font.color": "#20343D",
      "font.bold": true,
      "fill.color": "#DFE6E4",
      "borders.EdgeBottom.style": "Continuous",
      horizontalAlignment: "Right",
      wrapText: true,
    });
    expect(cellOf(excel, "Wood & air", "A6").look).toMatchObject({
      "borders.EdgeTop.style": "Continuous",
      "borders.EdgeLeft.style": "Continuous",
      "borders.EdgeRight.style": "Continuous",
      "borders.EdgeBottom.style": "Continuous",
    });
  });

  test("names the cells, freezes, widens, and sets up the page", async () => {
    const excel = await added();
    expect(excel.book.names.at(-1)).toMatchObject({ name: "system", formula: "='Wood & air'!$B$1" });
    const sheet = sheetOf(excel, "Wood & air");
    expect(sheet.frozen).toBe("A1:A3");
    expect(sheetOf(excel, "Answers").frozen).toBe("1:2");
    // 20 characters of 7 pixels and 5 more are 145 pixels, three quarters of a point each
    expect(sheet.widths.get(1)).toBe(108.75);
    expect(sheet.heights.get(3)).toBeGreaterThan(3 * 12);
    expect(sheet.print).toEqual({
      orientation: "Landscape",
      paperSize: "Letter",
      zoom: { horizontalFitToPages: 2, verticalFitToPages: 2 },
      titleRows: "$1:$3",
      titleColumns: "$A:$B",
      area: "A1:F14",
    });
  });

  test("a list that is too long for its rule, or has a comma in a word, stands on a sheet that nobody sees", async () => {
    const excel = await added();
    const lists = sheetOf(excel, "Duct lists");
    expect(lists.visibility).toBe("VeryHidden");
    expect(woods.map((_, index) => lists.cells.get(`A${index + 1}`)!.value)).toEqual(woods);
    expect(cellOf(excel, "Wood & air", "A5").validation).toMatchObject({
      rule: { list: { source: "='Duct lists'!$A$1:$A$30" } },
      errorAlert: { showAlert: false },
    });
    expect(cellOf(excel, "Wood & air", "F1").validation.rule.list.source).toBe("='Duct lists'!$B$1:$B$2");
    expect(cellOf(excel, "Wood & air", "B1").validation).toMatchObject({
      rule: { list: { source: "IP,SI" } },
      errorAlert: { showAlert: true, style: "Stop" },
      prompt: { showPrompt: true, message: "Units of this sheet." },
    });
  });

  test("what to type stands as an input message in each cell of a column, beside its list", async () => {
    const excel = await added();
    for (const at of ["A4", "A6"])
      expect(cellOf(excel, "Wood & air", at).validation).toMatchObject({
        rule: { list: { source: "='Duct lists'!$A$1:$A$30" } },
        prompt: { showPrompt: true, title: "What to type", message: "A wood that does not exist." },
      });
    expect(cellOf(excel, "Wood & air", "B5").validation.prompt).toMatchObject({ message: "How wide it is." });
  });

  test("a note too long for an input message is cut with a sign of it", async () => {
    const { message } = cellOf(await added(), "Wood & air", "B3").validation.prompt;
    expect(message).toBe(`${"x".repeat(254)}…`);
  });

  test("draws the chart and makes the table and the flag", async () => {
    const excel = await added();
    // Excel.ChartType in the typings: of xyscatterLinesNoMarkers a series of one point would show nothing
    const dots = (ink: string) => ({ marker: "Circle", markerSize: 5, markerFill: ink, markerInk: ink });
    expect(sheetOf(excel, "Answers").charts).toEqual([
      {
        name: "Width",
        type: "XYScatterLines",
        from: "F2",
        to: "K20",
        texts: { title: "Width", x: "Wood", y: "in", legend: "Bottom", blanks: "NotPlotted" },
        series: [
          { name: "one", x: "A3:A6", y: "B3:B6", ink: "#102030", weight: 2, smooth: false, ...dots("#102030") },
          { name: "two", x: "A3:A6", y: "C3:C6", ink: "#405060", weight: 2, smooth: false, ...dots("#405060") },
        ],
      },
    ]);
    expect(sheetOf(excel, "Wood & air").tables).toMatchObject([{ name: "woods", range: "A3:B6" }]);
    expect(sheetOf(excel, "Wood & air").flags).toMatchObject([
      {
        range: "C4:C6",
        type: "ContainsText",
        rule: { operator: "Contains", text: "settles" },
        format: { ink: "#6d1f00" },
      },
    ]);
  });

  test("shows the first new sheet", async () => {
    expect((await added()).book.selection.sheet.name).toBe("Wood & air");
  });

  test("tells how far it is, one step for each sheet", async () => {
    record();
    const told = watching();
    await addNewSheets(given(sample), told.watch);
    expect(told.steps.slice(1)).toEqual([
      "0/6 Making the sheets",
      "1/6 Lists",
      "2/6 Wood & air",
      "3/6 Answers",
      "4/6 Formulas",
      "5/6 Charts and page set-up",
      "6/6 Done",
    ]);
  });
});

describe("addNewSheets leaves the workbook exactly as it was", () => {
  test.each([1, 2, 3, 4, 5, 6, 7])("when it is cancelled at step %d", async (last) => {
    const excel = usersBook();
    const before = snapshot(excel);
    const told = watching(({ cancel }, step) => (step === last ? cancel() : undefined));
    const outcome = await addNewSheets(given(sample), told.watch);
    expect(outcome).toEqual({ added: false, why: "Cancelled: nothing was added." });
    expect(snapshot(excel)).toEqual(before);
  });

  test.each([1, 2, 3, 4, 7, 8, 9, 10, 11, 15])("when Excel refuses request %d halfway", async (last) => {
    const excel = usersBook();
    const before = snapshot(excel);
    excel.behaviour.beforeSync = (request) => {
      if (request === last) throw new Refusal("GeneralException", "There was an internal error.");
    };
    const outcome = await addNewSheets(given(sample), watching().watch);
    expect(outcome).toEqual({
      added: false,
      why: "Excel refused: There was an internal error. Nothing was added.",
    });
    expect(snapshot(excel)).toEqual(before);
  });

  // office-js issue 1831: Excel for Windows says what a name points to in the style of references of its user
  test("when it stops where Excel counts rows and columns, so that no name of ours stays behind and points nowhere", async () => {
    const excel = usersBook();
    excel.book.countedBy = ["R", "C"];
    const before = snapshot(excel);
    const told = watching(({ cancel }, step) => (step === 5 ? cancel() : undefined));
    expect(await addNewSheets(given(sample), told.watch)).toMatchObject({ added: false });
    expect(snapshot(excel)).toEqual(before);
  });

  test("when the workbook to add cannot be made", async () => {
    const excel = usersBook();
    const before = snapshot(excel);
    const outcome = await addNewSheets(() => Promise.reject(new Error("no such sheet")), watching().watch);
    expect(outcome).toEqual({ added: false, why: "no such sheet. Nothing was added." });
    expect(snapshot(excel)).toEqual(before);
  });

  test("when its structure is protected", async () => {
    const excel = usersBook();
    excel.book.isLocked = true;
    const before = snapshot(excel);
    expect(await addNewSheets(given(sample), watching().watch)).toMatchObject({
      added: false,
      why: expect.stringMatching(/^The structure of this workbook is protected/),
    });
    expect(snapshot(excel)).toEqual(before);
  });
});

describe("addNewSheets", () => {
  test("a sheet of the user's that has our name in the meantime is not taken for ours", async () => {
    const excel = usersBook();
    const build = async (): Promise<Workbook> => {
      excel.fill("Answers", "A1", [["the user's"]]);
      return sample;
    };
    const outcome = await addNewSheets(build, watching().watch);
    expect(outcome).toMatchObject({
      added: false,
      why: expect.stringMatching(/^Excel refused: there is a sheet Answers/),
    });
    expect(excel.book.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Answers"]);
    expect(cellOf(excel, "Answers", "A1").value).toBe("the user's");
    expect(excel.book.names).toHaveLength(1);
  });

  /** An Excel that refuses the one request which follows when a step of this name begins, and so many before it. */
  function refusing(after: number, why: string): { excel: Recorder; told: ReturnType<typeof watching> } {
    const excel = usersBook();
    const told = watching(({ steps }) => {
      if (steps.at(-1)?.endsWith("Charts and page set-up") !== true) return;
      const first = excel.requests() + 1;
      excel.behaviour.beforeSync = (request) => {
        if (request === first + after) throw new Refusal("GeneralException", why);
      };
    });
    return { excel, told };
  }

  test("a page set-up that is refused does not lose the budget, and is told", async () => {
    const { excel, told } = refusing(2, "No printer.");
    expect(await addNewSheets(given(sample), told.watch)).toMatchObject({
      added: true,
      refused: ["The page set-up for printing is missing. Excel refused: No printer."],
    });
    expect(cellOf(excel, "Wood & air", "C4").formula).toBe("=DUCT.AREA(B4,,system)");
    expect(sheetOf(excel, "Answers").charts).toHaveLength(1);
  });

  test.each([
    ["is begun", 0],
    ["gets its lines", 1],
  ])(
    "a chart that is refused when it %s does not lose the budget; no half of it stays, and it is told",
    async (_, after) => {
      const { excel, told } = refusing(after, "No such series.");
      expect(await addNewSheets(given(sample), told.watch)).toMatchObject({
        added: true,
        refused: ['The chart "Width" on Answers is missing. Excel refused: No such series.'],
      });
      expect(cellOf(excel, "Wood & air", "C4").formula).toBe("=DUCT.AREA(B4,,system)");
      expect(sheetOf(excel, "Answers").charts).toEqual([]);
      expect(sheetOf(excel, "Wood & air").print).toMatchObject({ paperSize: "Letter" });
    },
  );

  test.each([
    ["filled cells, of which Excel makes a line itself,", 7],
    ["blank cells, of which Excel makes none,", ""],
  ])("a chart over %s gets its own lines and no other", async (_, shown) => {
    const excel = usersBook();
    excel.behaviour.calculate = (formula) => (formula.includes("BUDGET") ? [["Run"], [shown]] : 1);
    await addNewSheets(given(sample), watching().watch);
    expect(cellOf(excel, "Answers", "A3").value).toBe(shown);
    expect(sheetOf(excel, "Answers").charts[0]!.series).toMatchObject([
      { name: "one", x: "A3:A6", y: "B3:B6" },
      { name: "two", x: "A3:A6", y: "C3:C6" },
    ]);
  });

  /** Somebody types into a cell of their own while these requests come in. */
  const typingFrom = (excel: Recorder, first: number, last: number): void => {
    excel.behaviour.beforeSync = (request) => {
      if (request >= first && request <= last) throw new Refusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode."); // prettier-ignore
    };
  };

  test.each([3, 5, 7, 8, 9, 10, 11])(
    "while somebody types into a cell from request %d on, what has begun waits, and then all sheets are there",
    async (first) => {
      const excel = usersBook();
      typingFrom(excel, first, first + 4);
      expect(await addNewSheets(given(sample), watching().watch)).toMatchObject({ added: true, refused: [] });
      expect(excel.book.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Wood & air", "Answers", "Duct lists"]);
    },
  );

  test("cancelled while somebody types into a cell, no half of it stays", async () => {
    const excel = usersBook();
    const before = snapshot(excel);
    const told = watching(({ cancel }, step) => {
      if (step < 4) return;
      typingFrom(excel, 0, excel.requests() + 5);
      cancel();
    });
    expect(await addNewSheets(given(sample), told.watch)).toEqual({
      added: false,
      why: "Cancelled: nothing was added.",
    });
    expect(snapshot(excel)).toEqual(before);
  });

  test("where somebody types into a cell before anything has begun, it says so and asks for no patience", async () => {
    const excel = usersBook();
    typingFrom(excel, 1, 1);
    expect(await addNewSheets(given(sample), watching().watch)).toEqual({
      added: false,
      why: "A cell is being edited: press Enter or Esc, then try again. Nothing was added.",
    });
  });

  test("what is to be taken away is tried a second time", async () => {
    const excel = usersBook();
    excel.behaviour.beforeSync = (request) => {
      if (request === 5) throw new Refusal("GeneralException", "There was an internal error.");
    };
    expect(await addNewSheets(given(sample), watching().watch)).toMatchObject({ added: true });
    expect(excel.book.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Wood & air", "Answers", "Duct lists"]);
  });

  test("a sheet for the check that cannot be taken away again is named", async () => {
    const excel = usersBook();
    excel.behaviour.beforeSync = (request) => {
      if (request >= 5) throw new Refusal("GeneralException", "Excel is gone.");
    };
    expect(await addNewSheets(given(sample), watching().watch)).toEqual({
      added: false,
      why: "Excel keeps the sheet Duct check, which was only for a check. Please delete it by hand.",
    });
  });

  test("sheets that cannot be taken away again are named", async () => {
    const excel = usersBook();
    excel.behaviour.beforeSync = (request) => {
      if (request >= 8) throw new Refusal("GeneralException", "Excel is gone.");
    };
    expect(await addNewSheets(given(sample), watching().watch)).toEqual({
      added: false,
      why: "Excel refused: Excel is gone. Please delete by hand: Wood & air, Answers, Duct lists.",
    });
  });
});

describe("addNewSheets asks first whether Excel knows the functions", () => {
  beforeEach(() => jest.useFakeTimers());
  afterEach(() => jest.useRealTimers());

  async function tried(excel: Recorder) {
    const before = snapshot(excel);
    const outcome = addNewSheets(given(sample), watching().watch);
    await jest.advanceTimersByTimeAsync(60_000);
    return { outcome: await outcome, before };
  }

  test("and says what to click where it does not", async () => {
    const excel = usersBook();
    excel.behaviour.calculate = knowsNone;
    const { outcome, before } = await tried(excel);
    expect(outcome).toEqual({
      added: false,
      why: "Excel does not know the DUCT functions yet. Click Home › Add-ins › Duct Ledger, then try again.",
    });
    expect(snapshot(excel)).toEqual(before);
  });

  test("once more, since their names may be on the way", async () => {
    const excel = usersBook();
    let asked = 0;
    excel.behaviour.calculate = (...call) => (++asked < 3 ? knowsNone : answersOnes)(...call);
    expect((await tried(excel)).outcome).toMatchObject({ added: true });
  });

  test("and waits while it is busy, but not for ever", async () => {
    const excel = usersBook();
    excel.behaviour.calculate = () => "#BUSY!";
    const { outcome, before } = await tried(excel);
    expect(outcome).toEqual({
      added: false,
      why: "The DUCT functions do not answer yet. Wait until Excel has finished calculating, then try again.",
    });
    expect(snapshot(excel)).toEqual(before);
  });

  test("and goes on when it has become free", async () => {
    const excel = usersBook();
    excel.behaviour.calculate = () => "#BUSY!";
    excel.behaviour.beforeSync = (request) => {
      if (request !== 6) return;
      excel.behaviour.calculate = answersOnes;
      Object.assign(excel.book.sheets.at(-1)!.cells.get("A1")!, { value: 1, isError: false });
    };
    expect((await tried(excel)).outcome).toMatchObject({ added: true });
  });
});
