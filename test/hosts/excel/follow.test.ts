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

  test("an Excel that refuses does no harm", async () => {
    const warn = jest.spyOn(console, "warn").mockImplementation(() => undefined);
    const excel = record();
    excel.behaviour.beforeSync = () => {
      throw new Refusal("GeneralException", "no events");
    };
    const end = follow(() => undefined);
    await settled();
    end();
    await settled();
    expect(warn.mock.calls.map(([said]) => said)).toEqual([
      "Excel tells of no changes.",
      "Excel goes on telling of changes.",
    ]);
  });
});
