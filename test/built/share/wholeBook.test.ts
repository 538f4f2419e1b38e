/** The whole example as a club copy, recalculated by LibreOffice, against the live book that the grid computes with our functions. */
import "../../support/customFunctions";
import { calculate } from "../../../scripts/calculate";
import { clubCopy } from "../../../src/share/clubCopy";
import { cellIndex } from "../../../src/share/fixed/cellIndex";
import { referencesOf } from "../../../src/share/fixed/reach";
import { revive } from "../../../src/share/revive/revive";
import { cellAddress } from "../../../src/sheets/address";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { claim } from "../../../src/functions/claims/claim";
import { budget } from "../../../src/functions/systems/budget";
import { solve } from "../../../src/functions/systems/solve";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { fitted } from "../../../src/hosts/fit/fitted";
import {
  BUDGET_COLUMN,
  BUDGET_HEADER,
  BUDGET_LAST,
  CURVE_HEADER,
  CURVE_LAST,
  CURVE_USED,
  FLOW_COLUMN,
  FLOW_HEADER,
  runCell,
  RUNS_FIRST,
  RUNS_LAST,
  runsRange,
} from "../../../src/sheets/book/layout";
import { CHECKS, CHECKS_LAST, FACTS, FACTS_LAST } from "../../../src/sheets/book/claims/layout";
import { namedCells } from "../../../src/sheets/book/start/startLayout";
import { addressesIn, rectangleOf } from "../../../src/sheets/rectangle";
import type { Calculated } from "../../../src/sheets/calculated";
import { CHANGED, type CellValue, type SheetCell, type Workbook } from "../../../src/sheets/workbook";
import { AN_ERROR, wrongIn } from "../../share/budget/wrongTables";
import { sameShown } from "../../share/sampleBooks";
import type { EngineValues } from "../../support/engine";
import { type Edit, editsInOffice, type Look } from "../../support/editsInOffice";
import { hardRecalculation } from "../../support/hardRecalculation";
import { hasLibreOffice } from "../../support/libreOffice";
import { weightOf } from "../../support/weightOfFormulas";
import { sheetKeys } from "../../../src/sheets/sheetKeys";

const [CIRCULAR, NOT_AVAILABLE] = ["#522", "#32767"]; // LibreOffice's own numbers of errors

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

const exampleIn = (units: "IP" | "SI"): Workbook =>
  budgetBook({ units, sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });

/** Cells of the live book that the copy shows otherwise, and error cells that were none. */
function wrongCells(
  live: Calculated,
  values: EngineValues,
  isKept: (sheet: string, at: string) => boolean = () => false,
): string[] {
  const wrong: string[] = [];
  for (const [sheet, cells] of live.shown) {
    for (const [at, { value }] of cells) {
      const got = values.get(sheet)?.get(at) ?? "";
      if (!isKept(sheet, at) && !sameShown(value, got))
        wrong.push(`${sheet}!${at}: ${String(got)} instead of ${JSON.stringify(value)}`);
    }
  }
  for (const [sheet, cells] of values) {
    for (const [at, value] of cells) {
      const before = live.shown.get(sheet)?.get(at)?.value ?? null;
      if (/^(#|Err:)/.test(String(value)) && (before === null || typeof before !== "object"))
        wrong.push(`${sheet}!${at}: ${value}`);
    }
  }
  return wrong;
}

/** The workbook with other values typed into the sheet of runs. */
const withRuns = (workbook: Workbook, changes: Readonly<Record<string, CellValue>>): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) =>
    sheet.name === "Runs"
      ? {
          ...sheet,
          cells: sheet.cells.map((cell): SheetCell =>
            cell.at in changes ? { at: cell.at, value: changes[cell.at]! } : cell,
          ),
        }
      : sheet,
  ),
});

/** Whether a cell is one of those that stay fixed in a copy, or rests on one. */
function restsOnFixed(
  live: Calculated,
  fixed: readonly { sheet: string; at: string }[],
): (sheet: string, at: string) => boolean {
  const index = cellIndex(live);
  const known = new Map(fixed.map(({ sheet, at }) => [`${sheet}!${at}`, true]));
  const rests = (sheet: string, at: string): boolean => {
    const owner = index.ownerOf(sheet, at);
    if (owner === null) return false;
    const key = `${sheet}!${owner.at}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, false);
    const found = referencesOf(owner.formula, sheet, index).ranges.some((range) => {
      for (let row = range.top; row <= range.bottom; row++)
        for (let column = range.left; column <= range.right; column++)
          if (rests(range.sheet, cellAddress(column, row))) return true;
      return false;
    });
    known.set(key, found);
    return found;
  };
  return rests;
}

/** Whether a text that is typed says otherwise in the copy: what is so there. */
function saysOtherwise(live: Calculated, copy: Calculated): (sheet: string, at: string) => boolean {
  const typedIn = ({ workbook }: Calculated): Map<string, string> =>
    new Map(
      workbook.sheets.flatMap(({ name, cells }) =>
        cells.flatMap((cell) =>
          "value" in cell && typeof cell.value === "string" ? [[`${name}!${cell.at}`, cell.value] as const] : [],
        ),
      ),
    );
  const [before, now] = [typedIn(live), typedIn(copy)];
  return (sheet, at) => before.has(`${sheet}!${at}`) && before.get(`${sheet}!${at}`) !== now.get(`${sheet}!${at}`);
}

const office = hasLibreOffice ? describe : describe.skip;

office.each(["IP", "SI"] as const)("the example in %s", (units) => {
  const inches = units === "IP" ? 1 : 25.4;
  const changes = {
    [runCell("Diameter", RUNS_FIRST)]: 5 * inches,
    [runCell("Fittings", RUNS_FIRST + 1)]: "elbow 2 x3; branch 45",
    [runCell("Gate", RUNS_FIRST + 2)]: "shut",
    [runCell("Material", RUNS_FIRST + 3)]: "hose",
    [runCell("Length", RUNS_FIRST + 4)]: units === "IP" ? 31 : 9.5,
  };
  let live: Calculated;
  let copy: ReturnType<typeof clubCopy>;
  beforeAll(() => {
    live = calculate(exampleIn(units));
    copy = clubCopy(live, ORDER);
  });

  test("every cell shows what the live book shows", async () => {
    expect(copy.untranslated).toEqual([]);
    const values = await hardRecalculation(copy.book.workbook);
    expect(wrongCells(live, values, saysOtherwise(live, copy.book))).toEqual([]);
    const states = copy.fixed.map((_, place) => values.get("Fixed numbers")!.get(`C${6 + place}`));
    expect([...new Set(states)]).toEqual(["as of 2026-11-25"]); // nobody has changed anything
  });

  if (units === "IP") {
    test("after five changed inputs what is live follows, and what is fixed says that it is old", async () => {
      const later = calculate(withRuns(exampleIn(units), changes));
      const values = await hardRecalculation(withRuns(copy.book.workbook, changes));
      const [rests, saysOther] = [restsOnFixed(live, copy.fixed), saysOtherwise(live, copy.book)];
      expect(wrongCells(later, values, (sheet, at) => rests(sheet, at) || saysOther(sheet, at))).toEqual([]);
      const solved = `Flow!${cellAddress(FLOW_COLUMN, FLOW_HEADER)}`;
      expect(copy.fixed.map(({ sheet, at }) => `${sheet}!${at}`)).not.toContain(solved); // so what flows was compared too
      const budget = (at: string): unknown => later.shown.get("Budget")?.get(at)?.value;
      expect(budget("C9")).not.toBe(live.shown.get("Budget")!.get("C9")!.value); // the change was one
      const states = copy.fixed.map(({ function: name }, place) => [
        name,
        values.get("Fixed numbers")!.get(`C${6 + place}`),
      ]);
      expect(states).toContainEqual(["SOLVE", "inputs changed since: these numbers are old"]);
      expect(states).toContainEqual(["FANCURVE", "as of 2026-11-25"]); // which rests on none of them
      const summary = [...values.get("Summary")!.values()].map(String);
      expect(summary.filter((words) => words.startsWith("inputs changed since"))).toHaveLength(1);
    });
  } else {
    test("a member's slips are told beside their places, and after each edit the numbers move or are struck out", async () => {
      const bytes = await writeBook(copy.book, { title: "A member's copy" });
      const sheetOf = (name: string) => copy.book.workbook.sheets.find((sheet) => sheet.name === name)!;
      const steel = sheetOf("Lookups").cells.find((cell) => "value" in cell && cell.value === "spiral duct")!.at;
      const inRuns = (column: Parameters<typeof runCell>[0], row: number, value: CellValue): Edit => ({ sheet: "Runs", does: "type", at: runCell(column, row), value }); // prettier-ignore
      const ofRun = (run: string): number => Number(sheetOf("Runs").cells.find((cell) => "value" in cell && cell.value === run && cell.at.startsWith("B"))!.at.slice(1)); // prettier-ignore
      const spindle = Object.entries({ Run: "spindle", To: "window main", Airflow: 500, Diameter: 100, Length: 2, Hood: "flanged end", Gate: "open" } as const); // prettier-ignore
      const steps: readonly (readonly Edit[])[] = [
        [],
        [inRuns("Hood", RUNS_FIRST, "band sw port")],
        [
          inRuns("Hood", RUNS_FIRST, "band saw port"),
          { sheet: "Runs", does: "insert row", row: RUNS_FIRST + 1 },
          ...spindle.map(([column, value]) => inRuns(column as "Run", RUNS_FIRST + 1, value)),
        ],
        [{ sheet: "Flow", does: "type", at: "A11", value: "shut trunk" }],
        [{ sheet: "Flow", does: "type", at: "A11", value: "shut resaw" }],
        [{ sheet: "Lookups", does: "type", at: steel.replace("A", "B"), value: 0.9 }],
        [{ sheet: "Claims", does: "type", at: "B13", value: "2800 at 700" }],
        [{ sheet: "Runs", does: "enter", at: runCell("Diameter", RUNS_FIRST), formula: "=1/0" }],
        [inRuns("Diameter", RUNS_FIRST, 100), inRuns("To", ofRun("trunk") + 1, "window main")],
        [inRuns("To", ofRun("trunk") + 1, "cyclone")],
        [{ sheet: "Runs", does: "delete row", row: RUNS_FIRST + 1 }],
        [{ sheet: "Runs", does: "enter", at: runCell("Run", RUNS_FIRST + 1), formula: "=1/0" }],
      ];
      const marked = (sheet: string, at: string): Look => {
        const mark = sheetOf(sheet).oldMarks!.find(({ ranges }) =>
          ranges.some((range) => addressesIn(rectangleOf(range)).includes(at)),
        )!;
        return { sheet, range: mark.state.replaceAll("$", "") };
      };
      const looks: readonly Look[] = [
        { sheet: "Runs", range: `A${RUNS_FIRST}:A${RUNS_FIRST + 1}` },
        { sheet: "Runs", range: "C3" },
        { sheet: "Budget", range: "C3" },
        { sheet: "Flow", range: "C9" },
        { sheet: "Flow", range: "B10:I52" },
        { sheet: "Runs", range: runsRange(RUNS_LAST + 1) },
        { sheet: "Fan", range: `${CURVE_USED.airflow}${CURVE_HEADER}:${CURVE_USED.pressure}${CURVE_LAST}` },
        { sheet: "Start", range: namedCells.density.replaceAll("$", "") },
        marked("Flow", "A88"), // GAINS
        { sheet: "Claims", range: `A${FACTS}:B${FACTS_LAST}` },
        {
          sheet: "Budget",
          range: `${cellAddress(BUDGET_COLUMN, BUDGET_HEADER)}:${cellAddress(BUDGET_COLUMN + 12, BUDGET_LAST)}`,
        },
        { sheet: "Claims", range: `A${CHECKS}:G${CHECKS_LAST}` },
      ];
      const seen = editsInOffice(bytes, steps, looks);
      const word = (step: number, look: number): unknown => seen[step]![look]![0]![0];
      const flow = (step: number): unknown[][] => {
        const end = seen[step]![4]!.findIndex(([run]) => run === "Fan");
        return seen[step]![4]!.slice(0, end + 1) as unknown[][];
      };
      /** The runs as they then stand; with a roughness for the wall whose figure was changed. */
      const runsAt = (step: number, wall: CellValue): CellValue[][] =>
        seen[step]![5]!.map((row) =>
          row.map(
            (value): CellValue =>
            value === "" ? null : String(value).startsWith("#") ? AN_ERROR : value === "spiral duct" && wall !== null ? wall : value, // prettier-ignore
          ),
        );
      /** Where Budget says something else of them than BUDGET. */
      const wrongOnBudget = (step: number, wall: CellValue): string[] => {
        const named = seen[step]![10]!.map((row) => row.map((value) => (value === NOT_AVAILABLE ? "#N/A" : value)));
        const shown = new Map(named.flatMap((row, down) => row.map((value, across) => [cellAddress(across + 1, down + 1), value] as const))); // prettier-ignore
        return wrongIn(budget(runsAt(step, wall), [[word(step, 7)]], [["SI"]]), "Budget", new Map([["Budget", shown]]));
      };
      /** What SOLVE says of them. */
      const solved = (step: number, open: string, wall: CellValue = null): unknown[][] => {
        const curve = seen[step]![6]!.filter(([airflow]) => airflow !== "").map((row) => [...row]);
        return solve(runsAt(step, wall), curve, [[open]], [[word(step, 7)]], [["SI"]]);
      };
      const sameFlow = (step: number, expected: readonly unknown[][]): void => {
        const wrong = expected.flatMap((row, down) => row.flatMap((value, across) => (sameShown(value === "" ? null : (value as CellValue), (flow(step)[down]?.[across] ?? "") as string) ? [] : [`${down}, ${across}: ${String(flow(step)[down]?.[across])} instead of ${String(value)}`]))); // prettier-ignore
        expect(wrong).toEqual([]);
      };
      /** Where Claims says something else of the facts that then stand there than CLAIM. */
      const wrongOnClaims = (step: number): string[] => {
        const facts = seen[step]![9]!.map((row) => row.map((value): CellValue => (value === "" ? null : value)));
        const answer = claim(facts, [["SI"]]);
        return seen[step]![11]!.flatMap((row, down) => row.flatMap((value, across) => (sameShown((answer[down]?.[across] ?? "") as CellValue, value as string) ? [] : [`${cellAddress(across + 1, CHECKS + down)} ${String(value)} instead of ${String(answer[down]?.[across])}`]))); // prettier-ignore
      };
      const ALL = "resaw; thickness sander; sanding table; neck router";
      sameFlow(0, solved(0, ALL));
      expect(word(0, 8)).toBe("as made");
      expect(wrongOnClaims(0)).toEqual([]);
      // a hood mistyped: beside its row, over the table, on Budget; what flows is no number
      expect(word(1, 0)).toMatch(/^Hood must be a name in the tables of this copy.*band saw port/);
      for (const look of [1, 2]) expect(word(1, look)).toMatch(/^Look: Runs row 9.*Hood must be a name/);
      expect(word(1, 4)).toMatch(/^#/);
      expect(seen[1]![0]![1]![0]).toBe(seen[0]![0]![1]![0]); // the run below it is as it was
      // a run inserted: it flows, and the formula that it lacks is told
      expect(word(2, 1)).toMatch(/^Look: named runs without a check beside them: 1\. Copy column A down/);
      sameFlow(2, solved(2, `${ALL}; spindle`));
      expect(word(2, 8)).toBe(CHANGED);
      // a gate that there is not, and one that there is
      expect(word(3, 3)).toMatch(/^Mend A11: trunk has no gate on the sheet Runs\./);
      expect(word(3, 4)).toMatch(/^#/);
      sameFlow(4, solved(4, "thickness sander; sanding table; neck router; spindle"));
      // a roughness of the copy's own tables: as if it stood in each run that names the wall
      sameFlow(5, solved(5, "thickness sander; sanding table; neck router; spindle", 0.9));
      expect(flow(5)[1]).not.toEqual(flow(4)[1]);
      expect(wrongOnClaims(6)).toEqual([]);
      expect(seen[6]![11]).not.toEqual(seen[5]![11]); // another rated point, other verdicts
      // an error in a cell, runs that join each other in a loop, the loop mended, a hood removed
      const errors = seen.flat(3).filter((value) => String(value) === CIRCULAR);
      expect(errors).toEqual([]);
      for (const step of [7, 8, 9, 10]) expect([step, wrongOnBudget(step, 0.9)]).toEqual([step, []]);
      expect(word(7, 2)).toMatch(/^Look: Runs row 9, resaw: an error stands in column "?Diameter/);
      expect(word(8, 2)).toMatch(/^Look: Runs row \d+, window main: To must lead to the fan: these runs join each other in a loop/); // prettier-ignore
      for (const step of [7, 8]) expect(word(step, 4)).toMatch(/^#/);
      sameFlow(9, solved(9, "thickness sander; sanding table; neck router; spindle", 0.9));
      sameFlow(10, solved(10, "thickness sander; sanding table; neck router", 0.9));
      // where the error stands for the run's name, its row says so, too
      expect(seen[11]![0]![1]![0]).toMatch(/^an error stands in column Run: mend or clear that cell/);
    });
  }

  /** Excel's documented limits: characters and levels of a formula, arguments of a call, a literal text, a cell's text, a sheet's name. */
  test("everything stays within the limits of spreadsheet programs", () => {
    const most = { formula: 0, depth: 0, args: 0, literal: 0, text: 0, name: 0 };
    const seen = (what: keyof typeof most, size: number): void => void (most[what] = Math.max(most[what], size));
    for (const { name, cells } of copy.book.workbook.sheets) {
      seen("name", name.length);
      for (const cell of cells) {
        if (!("formula" in cell)) {
          seen("text", String(cell.value ?? "").length);
          continue;
        }
        seen("formula", cell.formula.length);
        const { depth, args, literal } = sizesOf(cell.formula);
        seen("depth", depth);
        seen("args", args);
        seen("literal", literal);
      }
    }
    const limits = { formula: 8192, depth: 64, args: 255, literal: 255, text: 32_767, name: 31 };
    const beyond = Object.entries(limits).filter(([what, limit]) => most[what as keyof typeof most] > limit);
    expect([beyond, most]).toEqual([[], most]);
    expect(Math.min(...Object.values(most))).toBeGreaterThan(0); // each was looked at
  });

  test("the sheet in the browser holds all of it", () => expect(fitted(copy.book.workbook).leftOut).toEqual([]));

  /** House limits: what a program computes again at each change, and what of it must wait for the cells before it. */
  test("it stays light to compute", () => {
    const { named, chain } = weightOf(copy.book);
    // a row beside a typed table finds its entry by its place, which names the whole column
    expect([named < 4_620_000, chain < 2_200, named, chain]).toEqual([true, true, named, chain]);
    expect(chain).toBeGreaterThan(1_000); // ten sweeps along the runs, each row after those before it
  });

  test("the live budget comes back from the copy", () => {
    const { workbook: back, left } = revive(copy.book);
    expect(left).toEqual([]);
    const contents = ({ sheets }: Workbook): unknown =>
      sheets.map(({ name, cells }) => [
        name,
        Object.fromEntries(
          cells.flatMap((cell) =>
            "formula" in cell ? [[cell.at, cell.formula]] : cell.value === null ? [] : [[cell.at, cell.value]],
          ),
        ),
      ]);
    expect(contents(back!)).toEqual(contents(live.workbook));
  });
});

/** How deep a formula's brackets go, the most arguments of a call in it, and its longest literal text. */
function sizesOf(formula: string): { readonly depth: number; readonly args: number; readonly literal: number } {
  const literals = formula.match(/"(?:[^"]|"")*"/g) ?? [];
  const open: number[] = []; // arguments so far of the calls that are open
  let [depth, args] = [0, 0];
  for (const character of formula.replace(/"(?:[^"]|"")*"/g, "")) {
    if (character === "(") depth = Math.max(depth, open.push(1));
    if (character === "," && open.length > 0) open[open.length - 1]!++;
    if (character === ")") args = Math.max(args, open.pop() ?? 0);
  }
  return { depth, args, literal: Math.max(0, ...literals.map((text) => text.replaceAll('""', '"').length - 2)) };
}
