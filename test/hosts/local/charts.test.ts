import { chartFigure, chartOf } from "../../../src/hosts/local/charts";
import { gridData } from "../../../src/hosts/local/model";
import type { Chart, Workbook } from "../../../src/sheets/workbook";

const chart: Chart = {
  kind: "line through points",
  over: "B3:D5",
  title: "A line",
  x: { title: "Time (s)", range: "A1:A9" },
  y: {
    title: "Height (m)",
    series: [
      { name: "up", range: "B1:B9", ink: "#3f5f5c" },
      { name: "down", range: "C1:C9", ink: "#b4491f" },
    ],
  },
};

describe("a chart as the grid's data", () => {
  test("covers its cells: columns B to D and rows 3 to 5", () => {
    const figure = chartFigure(chart, "c", { width: (column) => 10 * column, height: (row) => 100 * row });
    expect(figure).toMatchObject({ tag: "chart", col: 1, row: 2, width: 20 + 30 + 40, height: 300 + 400 + 500 });
  });

  test("has a line for each series with its name and ink, all over the same numbers of x", () => {
    const { data } = chartFigure(chart, "c", { width: () => 1, height: () => 1 });
    expect(data).toMatchObject({
      type: "line",
      labelsAsText: false,
      dataSource: { labelRange: "A1:A9", dataSets: [{ dataRange: "B1:B9" }, { dataRange: "C1:C9" }] },
      axesDesign: { x: { title: { text: "Time (s)" } }, y: { title: { text: "Height (m)" } } },
    });
    const [up, down] = data.dataSource!.dataSets!.map(({ dataSetId }) => dataSetId);
    expect(data.dataSetStyles).toEqual({
      [up!]: { label: "up", backgroundColor: "#3f5f5c" },
      [down!]: { label: "down", backgroundColor: "#b4491f" },
    });
  });

  test("takes the widths and heights that its sheet gives to cells", () => {
    const book: Workbook = {
      name: "Small",
      names: [],
      sheets: [
        {
          name: "One",
          columns: [10, 20],
          tallRows: [{ row: 4, lines: 3 }],
          frozen: { rows: 0, columns: 0 },
          cells: [],
          lists: [],
          flags: [],
          charts: [{ ...chart, over: "A3:B5" }],
        },
      ],
    };
    const [sheet] = gridData(book).sheets;
    // 7 pixels a character; an ordinary row has 23, one of three lines 3 x 18 + 6
    expect(sheet!.figures).toMatchObject([{ width: 7 * 30, height: 23 + 60 + 23 }]);
  });

  test("comes back as it was, whatever the sizes of its cells; a chart of another kind does not", () => {
    const sizes = { width: (column: number) => 10 * column, height: (row: number) => 100 * row };
    const figure = chartFigure(chart, "c", sizes);
    expect(chartOf(figure, sizes)).toEqual(chart);
    expect(chartOf({ ...figure, data: { ...figure.data, type: "pie" } }, sizes)).toBeNull();
    expect(chartOf({ ...figure, tag: "image" }, sizes)).toBeNull();
  });
});
