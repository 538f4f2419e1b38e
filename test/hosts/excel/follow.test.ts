import { follow } from "../../../src/hosts/excel/follow";
import { record } from "../../support/excelRecorder/recorder";
import { Refusal } from "../../support/excelRecorder/refuse";

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

afterEach(() => jest.restoreAllMocks());

describe("follow", () => {
  test("tells of changes of cells and of the selection", async () => {
    const excel = record();
    const changed = jest.fn();
    follow(changed);
    await settled();
    await excel.tell("onChanged");
    await excel.tell("onSelectionChanged");
    expect(changed.mock.calls).toEqual([["cells"], ["selection"]]);
    await excel.tell("onCalculated"); // what a function answers later than the change
    expect(changed.mock.calls).toEqual([["cells"], ["selection"], ["cells"]]);
  });

  test("ends when what it returns is called, and leaves no listener behind", async () => {
    const excel = record();
    const changed = jest.fn();
    const end = follow(changed);
    await settled();
    expect(excel.listeners()).toBe(3);
    end();
    await excel.tell("onChanged");
    await settled();
    expect(changed).not.toHaveBeenCalled();
    expect(excel.listeners()).toBe(0);
  });

  test("ends cleanly even if it has not begun yet", async () => {
    const excel = record();
    follow(() => undefined)();
    await settled();
    expect(excel.listeners()).toBe(0);
  });

  test("waits while a cell is being edited, and listens then", async () => {
    const excel = record();
    excel.behaviour.beforeSync = (request) => {
      if (request < 4) throw new Refusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.");
    };
    const changed = jest.fn();
    follow(changed);
    for (let turn = 0; turn < 6; turn++) await settled();
    await excel.tell("onChanged");
    expect(changed.mock.calls).toEqual([["cells"]]);
  });

  test("of an Excel that would not listen at first asks again, and tells that something may have changed meanwhile", async () => {
    jest.spyOn(console, "warn").mockImplementation(() => undefined);
    jest.useFakeTimers();
    const excel = record();
    excel.behaviour.beforeSync = (request) => {
      if (request < 3) throw new Refusal("GeneralException", "no events yet");
    };
    const changed = jest.fn();
    follow(changed);
    await jest.advanceTimersByTimeAsync(10_000);
    jest.useRealTimers();
    expect(changed.mock.calls).toEqual([["cells"]]);
    changed.mockClear();
    await excel.tell("onCalculated"); // the last of the events that are asked for
    expect(changed.mock.calls).toEqual([["cells"]]);
  });

  test("an Excel that refuses for good does no harm, and is not asked any more when that is no longer wanted", async () => {
    const warn = jest.spyOn(console, "warn").mockImplementation(() => undefined);
    jest.useFakeTimers();
    const excel = record();
    excel.behaviour.beforeSync = () => {
      throw new Refusal("GeneralException", "no events");
    };
    const end = follow(() => undefined);
    await jest.advanceTimersByTimeAsync(1);
    end();
    await jest.advanceTimersByTimeAsync(60_000);
    jest.useRealTimers();
    expect(excel.requests()).toBe(1);
    expect(warn.mock.calls.map(([said]) => said)).toEqual(["Excel tells of no changes yet."]);
  });

  test("an Excel that does not take it back does no harm either", async () => {
    const warn = jest.spyOn(console, "warn").mockImplementation(() => undefined);
    const excel = record();
    const end = follow(() => undefined);
    await settled();
    excel.behaviour.beforeSync = () => {
      throw new Refusal("GeneralException", "no events");
    };
    end();
    await settled();
    expect(warn.mock.calls.map(([said]) => said)).toEqual(["Excel goes on telling of changes."]);
  });
});
