import { cellFunctions } from "../../support/cellFunctions";
import { localHost } from "../../../src/hosts/local/localHost";
import { wholeBudget } from "../../../src/hosts/local/newForm";
import { runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import {
  FASTEST_ROW,
  LISTS_FIRST,
  OUTCOME,
  PIPES_ANSWER,
  SHORT_ROW,
  STATE_CELL,
} from "../../../src/sheets/book/sizes/sizesLayout";
import { namedCells } from "../../../src/sheets/book/start/startLayout";
import { newDiameters } from "../../../src/taskpane/build/sizes/newDiameters";
import { sizesAsked, type SizesAsked } from "../../../src/taskpane/build/sizes/sizesAsked";
import { blocksOf, sizesFound, timeWords } from "../../../src/taskpane/build/sizes/sizesFound";
import { sizesToWrite } from "../../../src/taskpane/build/sizes/sizesToWrite";
import { deskOf, gridOf, setUpGrid } from "../../hosts/local/gridOfOurs";

beforeAll(setUpGrid);

const sizes = cellFunctions.find(({ name }) => name === "SIZES")!.call;

async function opened() {
  const model = gridOf(wholeBudget("IP", "example"));
  const host = localHost(deskOf(model));
  const shown = async (sheet: string, at: string): Promise<unknown> =>
    (await host.readBook()).shown.get(sheet)?.get(at)?.value ?? "";
  const put = (sheet: string, at: string, value: string | number) => host.write([{ sheet, at, rows: [[value]] }], []);
  await put("Start", namedCells.density.replaceAll("$", ""), 0.075); // this grid knows none of our functions
  const asked = async (): Promise<SizesAsked> => {
    const read = sizesAsked(await host.readBook());
    if ("why" in read) throw new Error(read.why);
    return read;
  };
  return { model, host, shown, put, asked };
}

const stateAt = STATE_CELL.replaceAll("$", "");
const planerDiameter = runCell("Diameter", RUNS_FIRST + 1);

describe("choosing sizes", () => {
  test("reads what the sheet asks", async () => {
    const { asked, put } = await opened();
    await put("Sizes", `A${LISTS_FIRST + 1}`, "planer");
    await put("Sizes", `F${LISTS_FIRST}`, 5);
    await put("Sizes", `B${FASTEST_ROW}`, 6000);
    const { args, runs, watched } = await asked();
    const [table, curve, sets, stock, margin, , , units, fastest] = args;
    expect(runs).toMatchObject({ sheet: "Runs" });
    expect(table![0]!.slice(0, 2)).toEqual(["Run", "To"]);
    expect(table![2]![0]).toBe("planer");
    expect(curve!.length).toBeGreaterThan(3);
    expect(sets).toEqual([["planer"]]);
    expect(stock![0]).toEqual([5, null]);
    expect([margin, units, fastest]).toEqual([[[15]], [["IP"]], [[6000]]]);
    expect(watched[2]).toMatch(/^planer\|north main\|/);
  });

  test("writes nothing where something stands below the last answer, or rows were moved while it searched", async () => {
    const { model, host, put, asked } = await opened();
    const read = await asked();
    const { header } = PIPES_ANSWER;
    const answer = [["Run"], ["saw"], ["all together"]];
    const now = async () => sizesToWrite(await host.readBook(), read, answer, ["One line."], "2026-01-02 03:04");
    expect(await now()).toEqual(blocksOf(read, answer, ["One line."], "2026-01-02 03:04"));
    await host.write(blocksOf(read, answer, ["One line."], "2026-01-02 03:04"), []);
    expect(await now()).toEqual(blocksOf(read, answer, ["One line."], "2026-01-02 03:04")); // over an answer of its own
    await put("Sizes", `C${header + 9}`, "mine: ask the shop for its price");
    expect(await now()).toEqual({
      why: `C${header + 9} of the sheet Sizes holds something where the answer goes. Move it, then search again.`,
    });
    await host.write([{ sheet: "Sizes", at: `C${header + 9}`, rows: [[null]] }], []);
    const sheetId = model.getters.getSheetIdByName("Sizes")!;
    model.dispatch("ADD_COLUMNS_ROWS", { dimension: "ROW", base: 5, quantity: 1, position: "after", sheetId, sheetName: "Sizes" }); // prettier-ignore
    expect(await now()).toEqual({
      why: "Rows or columns of the sheet Sizes were moved, so what it asks cannot be found: undo that, or add the sheet anew.",
    });
  });

  test("writes the answer, the time and what it rested on, and changes the runs in one undoable step", async () => {
    const { model, host, shown, put, asked } = await opened();
    await put("Sizes", `A${LISTS_FIRST}`, "planer");
    // 5 in alone: one choice for every run that may change, so the answer is known beforehand
    await put("Sizes", `F${LISTS_FIRST}`, 5);
    const read = await asked();
    const rows = sizes(...read.args);
    const found = sizesFound(rows);
    expect(found.changes.map(({ run, now, buy }) => [run, now, buy])).toEqual([
      ["band saw", 4, 5],
      ["router table", 4, 5],
      ["north main", 6, 5],
      ["south main", 6, 5],
      ["trunk", 9, 5],
    ]);
    const when = timeWords(new Date(2026, 0, 2, 3, 4));
    expect(await host.write(blocksOf(read, rows, found.outcome, when), [])).toEqual({ written: true });
    expect(await shown("Sizes", stateAt)).toBe("Searched on 2026-01-02 03:04; all that it rests on is as it was.");
    expect(await shown("Sizes", `A${PIPES_ANSWER.header + 2}`)).toBe("planer");
    expect(await shown("Sizes", `C${PIPES_ANSWER.header + 7}`)).toBe(5);
    expect(await shown("Sizes", `B${OUTCOME}`)).toBe(found.outcome[0]);
    expect(await shown("Sizes", `B${SHORT_ROW}`)).toBe(found.outcome[0]);

    const chosen = newDiameters(await host.readBook(), read.runs, found.changes);
    if ("why" in chosen) throw new Error(chosen.why);
    await host.write(chosen.blocks, []);
    expect(await shown("Runs", runCell("Diameter", RUNS_FIRST + 6))).toBe(5);
    expect(await shown("Sizes", stateAt)).toMatch(/^Changed since/);
    model.dispatch("REQUEST_UNDO");
    expect(await shown("Runs", runCell("Diameter", RUNS_FIRST + 6))).toBe(9);
    expect(await shown("Runs", runCell("Diameter", RUNS_FIRST))).toBe(4);
  });

  test("writes no diameter where one is no longer what was searched with, or is a formula", async () => {
    const { host, put, asked } = await opened();
    const { runs } = await asked();
    const change = [{ run: "Planer", now: 5, buy: 6 }];
    const found = newDiameters(await host.readBook(), runs, change);
    expect(found).toMatchObject({ blocks: [{ sheet: "Runs", at: planerDiameter, rows: [[6]] }] });
    // with the cells by which it is seen that a row or a column was moved: the heading, and the run's name
    expect("names" in found && found.names.map(({ at }) => at)).toEqual([
      runCell("Diameter", RUNS_FIRST - 1),
      runCell("Run", RUNS_FIRST + 1),
    ]);
    await put("Runs", planerDiameter, 4.5);
    expect(newDiameters(await host.readBook(), runs, change)).toEqual({
      why: "The diameter of Planer is no longer 5, so nothing was written: search again.",
    });
    expect(newDiameters(await host.readBook(), runs, [{ run: "lathe", now: 5, buy: 6 }])).toEqual({
      why: "The sheet Runs no longer has one row for lathe: search again.",
    });
    await host.insert({ formula: "=2+3" }, `Runs!${planerDiameter}`);
    expect(newDiameters(await host.readBook(), runs, change)).toEqual({
      why: `${planerDiameter} of the sheet Runs holds a formula, so nothing was written: change that cell yourself.`,
    });
  });

  test("says why it cannot: no such sheet, rows that were moved; without a set it asks for the usual ones", async () => {
    const none = localHost(deskOf(gridOf({ name: "", sheets: [{ name: "One", columns: [], tallRows: [], frozen: { rows: 0, columns: 0 }, cells: [], lists: [], flags: [] }], names: [] }))); // prettier-ignore
    expect(sizesAsked(await none.readBook())).toEqual({
      why: "There is no sheet Sizes in this workbook: add it above first.",
    });
    const { model, host } = await opened();
    const choose = (content: string) => model.dispatch("UPDATE_CELL", { sheetId: model.getters.getSheetIdByName("Flow")!, col: 1, row: 1, content }); // prettier-ignore
    choose("as calibrated");
    const calibrated = await host.readBook();
    expect(sizesAsked(calibrated)).toEqual({
      why: expect.stringMatching(/^The sheets show the system as calibrated/),
    });
    expect(calibrated.shown.get("Sizes")!.get("B6")!.value).toBe(
      "Ducts and fan as Measured makes them for what can run together; which pipe goes by what is typed",
    );
    choose("as entered");
    expect((await host.readBook()).shown.get("Sizes")!.get("B6")!.value).toBe("Ducts and fan as typed");
    model.dispatch("ADD_COLUMNS_ROWS", { sheetId: model.getters.getSheetIdByName("Sizes")!, sheetName: "Sizes", dimension: "ROW", base: 20, position: "before", quantity: 1 }); // prettier-ignore
    expect(sizesAsked(await host.readBook())).toEqual({
      why: expect.stringMatching(/^Rows or columns of the sheet Sizes were moved/),
    });
    const empty = localHost(deskOf(gridOf(wholeBudget("SI", "empty"))));
    expect(sizesAsked(await empty.readBook())).toMatchObject({ usual: true });
  });

  test("searches for nothing else than is asked: not for what was typed over Searched for, deleted or moved there", async () => {
    const { model, host, put, asked } = await opened();
    const why = async (): Promise<unknown> => sizesAsked(await host.readBook());
    const not = (at: string) => ({ why: expect.stringMatching(new RegExp(`^${at} of the sheet Sizes is not what is asked: `)) }); // prettier-ignore
    await put("Sizes", `B${LISTS_FIRST + 1}`, "planer"); // over the formula, with nothing under Open together
    expect(await why()).toEqual(not(`B${LISTS_FIRST + 1}`));
    await put("Sizes", `A${LISTS_FIRST + 1}`, "planer"); // even the same: the next set typed there would not count
    expect(await why()).toEqual(not(`B${LISTS_FIRST + 1}`));
    model.dispatch("REQUEST_UNDO");
    model.dispatch("REQUEST_UNDO");
    await put("Sizes", `A${LISTS_FIRST}`, "Planer"); // a name in other letters than its run's is what is asked
    expect((await asked()).args[2]).toEqual([["Planer"]]);

    const sheetId = model.getters.getSheetIdByName("Sizes")!;
    const column = (row: number) => ({ left: 0, right: 0, top: row - 1, bottom: row - 1 });
    model.selection.selectZone({ cell: { col: 0, row: LISTS_FIRST - 1 }, zone: column(LISTS_FIRST) });
    model.dispatch("ACTIVATE_SHEET", { sheetIdFrom: model.getters.getActiveSheetId(), sheetIdTo: sheetId });
    model.selection.selectZone({ cell: { col: 0, row: LISTS_FIRST - 1 }, zone: column(LISTS_FIRST) });
    model.dispatch("CUT");
    model.dispatch("PASTE", { target: [column(LISTS_FIRST + 3)] });
    await put("Sizes", `A${LISTS_FIRST}`, "band saw"); // its formula went along with the set that was cut
    expect(await why()).toEqual(not(`B${LISTS_FIRST}`));
  });

  test("parts the outcome into sentences, whatever signs names of runs hold", () => {
    const row = (run: string, need: string, price: number | "" = "", share: number | "" = ""): (string | number)[] =>
      [run, "", "", "", price, "", "", need, share]; // prettier-ignore
    const status = "every need is met, by 3 % more at least; impossible: no choice from this stock meets all with 15 % more; these sizes leave air in saw; planer at saw at 1 cfm, where 2 cfm is asked for"; // prettier-ignore
    const { outcome, meets } = sizesFound([row("Run", ""), row("all together", status, 424.5, 103.04), row("as it is", "", 482, 48.3), row("clash", "no sizes were found that give both a; b and c 115 % of each need: 91 % at best"), row("clash", "and so with 2 more"), row("left open", "with b left open too in a, sizes of their own leave each need 98 % or more")]); // prettier-ignore
    expect(outcome).toEqual([
      "Every need is met, by 3 % more at least.",
      "Impossible: no choice from this stock meets all with 15 % more.",
      "These sizes leave air in saw; planer at saw at 1 cfm, where 2 cfm is asked for.",
      "The worst served need gets 103 % of what it needs; as it is, 48.3 %.",
      "The pipe costs 424.5, as it is 482: in your prices, or length times diameter.",
      "No sizes were found that give both a; b and c 115 % of each need: 91 % at best.",
      "With b left open too in a, sizes of their own leave each need 98 % or more.",
    ]);
    expect(meets).toBe(false);
    const blown = sizesFound([row("Run", ""), row("all together", "none found", 424.5, -558), row("as it is", "a need, whose air runs the wrong way", 482, -23)]); // prettier-ignore
    expect(blown.outcome).toContain(
      "The worst served need gets nothing, for its air runs the wrong way; as it is, nothing, for its air runs the wrong way.",
    );
  });
});
