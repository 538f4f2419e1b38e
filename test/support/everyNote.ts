import type { Workbook } from "../../src/sheets/workbook";

type Row = Readonly<Record<string, string | number | null>>;

/** What is typed over the example's runs, by their place in the table, so that BUDGET and SOLVE have every note to say. */
const runs: Readonly<Record<number, Row>> = {
  0: { Leak: 5, Fittings: "elbow 1.5" }, // the band saw's leak carries much of its air, and it runs straight on past the planer's branch
  1: { Airflow: 900, Dust: "wood chips", Flex: "6 as it hangs" }, // too fast for the planer's chips
  3: { Gate: "shut" },
  7: { Fittings: "branch 30" }, // joins no run
  8: { Leak: 0.5, Fittings: "elbow 2; exit" }, // after the fan
  9: { Run: "bench hood", To: "closed arm", Diameter: 4, Airflow: 300, Gate: "open", Hood: "plain end" },
  10: { Run: "closed arm", To: "south main", Diameter: 4, Gate: "shut" },
  11: { Run: "spare", To: "trunk", Diameter: 4, Hood: "plain end" }, // asks for no air
  12: { Run: "old arm", To: "trunk", Diameter: 5, Airflow: 200 }, // a joined run that asks for air
  13: { Run: "old end", To: "old arm", Diameter: 4, Gate: "shut", "Leak shut": 0.2 },
  14: { Run: "tight arm", To: "trunk", Diameter: 5 },
  15: { Run: "tight end", To: "tight arm", Diameter: 4, Gate: "shut" },
  16: { Run: "bench grinder", To: "south main", Diameter: 4, Gate: "shut" }, // by its name
  17: { Run: "metal corner", To: "trunk", Diameter: 4, Gate: "shut", Dust: "grinding branch" },
};

/**
 * A book whose runs say every note.
 *
 * @param at the address of a run's cell on the sheet Runs
 */
export function withEveryNote(book: Workbook, at: (column: never, place: number) => string): Workbook {
  const typed = new Map(
    Object.entries(runs).flatMap(([place, row]) =>
      Object.entries(row).map(([column, value]) => [at(column as never, Number(place)), value] as const),
    ),
  );
  return {
    ...book,
    sheets: book.sheets.map((sheet) => {
      if (sheet.name === "Flow") return { ...sheet, cells: sheet.cells.map((cell) => (/^A(1[1-9]|2\d)$/.test(cell.at) ? { ...cell, value: null } : cell)) }; // prettier-ignore
      if (sheet.name !== "Runs") return sheet;
      return {
        ...sheet,
        cells: sheet.cells.map((cell) => {
          const value = typed.get(cell.at);
          return value === undefined ? cell : { at: cell.at, value, style: "input" as const };
        }),
      };
    }),
  };
}
