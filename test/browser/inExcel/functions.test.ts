/** Our functions through the real office.js: what a cell shows for what Excel hands over. */
import packageJson from "../../../package.json";
import { loadBundle, readMetadata } from "../../built/loadBundle";
import { soundRuns } from "../../support/books";
import { type CellAnswer, type CellCall, errorCell, formattedCell } from "../../support/excelOnTheWeb/cells";
import { excelOnTheWeb, type OpenedExcel } from "../../support/excelOnTheWeb/excelOnTheWeb";

const open = excelOnTheWeb();
let opened: OpenedExcel;

beforeAll(async () => {
  opened = await open();
  await opened.functionsReady;
});

afterEach(() => {
  expect(opened.complaints).toEqual([]);
  expect(opened.outside).toEqual([]);
});

const near = (value: number): unknown => expect.closeTo(value, 12);
const one = (value: unknown): CellAnswer => ({ rows: [[value]] });

/** An error inside an answer of several cells, as office.js sends it. */
const wrong = (sentence: string): unknown => expect.objectContaining({ code: "#VALUE!", message: sentence });

const FOUR_INCHES = Math.PI / 36; // ft²: pi/4 (4 in)², 144 in² to the square foot
const FOUR_MILLIMETRES = Math.PI * 4e-6; // m²

test("every function that functions.json names has been handed to office.js", async () => {
  const there = await opened.frame().evaluate("Object.keys(CustomFunctions._association.mappings)");
  expect((there as string[]).sort()).toEqual(
    readMetadata()
      .functions.map(({ id }) => id)
      .sort(),
  );
});

test("one cell: the number, or the error with its sentence; what is left out is the default", async () => {
  const curve = [
    [0, 10],
    [500, 8],
    [1000, 0],
  ];
  expect(
    await opened.cells(
      ["AREA", [[4]], null, null],
      ["AREA", [[-4]], null, null],
      ["AREA", [["four"]], null, null],
      ["AREA", [[errorCell("#N/A")]], null, null],
      ["FANPRESSURE", curve, [[500]], null],
      ["FANPRESSURE", curve, [[1500]], null],
      ["ABOUT"],
    ),
  ).toEqual([
    one(near(FOUR_INCHES)),
    { error: "#VALUE!", sentence: "diameter must be above 0 in; got -4" },
    { error: "#VALUE!", sentence: 'diameter must be a number (in); got "four"' },
    { error: "#VALUE!", sentence: "diameter must be a number (in); got the error #N/A" },
    one(8),
    { error: "#N/A", sentence: "the fan curve reaches from 0 cfm to 1000 cfm; asked for 1500 cfm" },
    { rows: expect.arrayContaining([expect.arrayContaining([packageJson.version])]) },
  ]);
});

test("a range: each wrong row is an error with its own sentence, a blank row is blank, and the others compute", async () => {
  const cells = [[4], [-1], [errorCell("#N/A")], [null], [""], [formattedCell(4)]];
  expect(await opened.cells(["AREA", cells, null, [["SI"]]])).toEqual([
    {
      rows: [
        [near(FOUR_MILLIMETRES)],
        [wrong("diameter must be above 0 mm; got -1")],
        [wrong("diameter must be a number (mm); got the error #N/A")],
        [""],
        [""],
        [near(FOUR_MILLIMETRES)],
      ],
    },
  ]);
});

test("units may stand in a cell; a blank one, in whatever way Excel says blank, is the default", async () => {
  const inUnits = (cell: unknown): CellCall => ["AREA", [[4]], null, [[cell]]];
  const answers = await opened.cells(...["SI", "IP", null, "", 0, "SL"].map(inUnits));
  expect(answers).toEqual([
    one(near(FOUR_MILLIMETRES)),
    ...new Array<CellAnswer>(4).fill(one(near(FOUR_INCHES))),
    { error: "#VALUE!", sentence: 'units must be "IP" or "SI"; got "SL"' },
  ]);
});

test("a table with blanks gives the same rows, in whatever way Excel says blank, as the function called without Excel", async () => {
  const withBlank = (blank: unknown): CellCall => [
    "BUDGET",
    soundRuns.map((row) => row.map((cell) => (cell === "" ? blank : cell))),
    null,
    null,
  ];
  const [id, ...given] = withBlank(null);
  const rows = JSON.parse(JSON.stringify(loadBundle().call(id, ...given))) as unknown[][];
  expect(rows.length).toBeGreaterThan(soundRuns.length);
  expect(await opened.cells(...[null, "", 0].map(withBlank))).toEqual([{ rows }, { rows }, { rows }]);
});
