/** The names that a copy offers for a misspelt one, computed in the grid, held against those that the functions offer. */
import type { CellValue } from "../../../src/sheets/workbook";
import { lossFamilies } from "../../../src/reference/lossFamilies";
import { materials } from "../../../src/reference/materials";
import { transport } from "../../../src/reference/transport";
import { inGrid } from "../../support/grid";
import { lots } from "../../support/lots";
import { answerOf, copyWithAllNames } from "../budget/inGrid";
import { slipOf, type Slip } from "./slips";

/** So many tables by lot, each with four slips. More are asked by hand: SLIP_TABLES=750 */
const TABLES = Number(process.env.SLIP_TABLES ?? 8);
const AT_ONCE = 5; // in one book

const HEADER = ["Run", "To", "Diameter", "Length", "Hood", "Fittings", "Material", "Airflow", "Dust", "Side"];
const COLUMNS = ["Hood", "Material", "Dust", "Fittings", "To"] as const;
type Column = (typeof COLUMNS)[number];

const RUNS = ["north main", "south main", "trunk", "drop 2", "window branch", "long-way_round", "saw line"];
const namesOf = (rows: readonly { readonly key: string; readonly aliases: readonly string[] }[]): string[] =>
  rows.flatMap(({ key, aliases }) => [key, ...aliases]);
const NAMES: Readonly<Record<Column, readonly string[]>> = {
  Hood: namesOf(lossFamilies.filter(({ kind }) => kind === "hood")),
  Material: namesOf(materials),
  Dust: namesOf(transport),
  Fittings: namesOf(lossFamilies),
  To: RUNS,
};

interface Drawn {
  readonly table: CellValue[][];
  readonly slips: ReadonlyMap<number, { readonly column: Column; readonly slip: Slip }>; // by row of the table
}

/** Mains that end at the fan, machines on each, a run after the fan; and four machines with a slip in a column each. */
function drawn(seed: number): Drawn {
  const lot = lots(40_000 + seed);
  const row = (cells: Partial<Record<string, CellValue>>): CellValue[] => HEADER.map((column) => cells[column] ?? null);
  const mains = RUNS.map((Run, index) => row({ Run, To: RUNS[index - 1] ?? "fan", Diameter: 200, Length: 3 }));
  const slips = new Map<number, { column: Column; slip: Slip }>();
  const machines = COLUMNS.filter((column) => column !== (seed % 2 === 0 ? "Hood" : "Fittings")).map(
    (column, index) => {
      const slip = slipOf(NAMES[column], lot);
      const to = RUNS[Math.floor(lot() * RUNS.length)]!;
      slips.set(1 + index, { column, slip });
      const text = column === "Fittings" && lot() < 0.5 ? `elbow 1.5; ${slip.text} 2 x2` : slip.text;
      const sound = { Run: `machine ${index}`, To: to, Diameter: 100, Length: 2, Hood: "plain end", Airflow: 500 };
      return row({ ...sound, [column]: text });
    },
  );
  const outlet = row({ Run: "outlet main", To: "outside", Diameter: 200, Length: 1, Side: "discharge" });
  return { table: [HEADER, ...machines, ...mains, outlet], slips };
}

/** The first name that a text offers, or an empty text. */
const offered = (text: string): string => /\(nearest: "([^"]*)"/.exec(text)?.[1] ?? "";

const textOf = (cell: unknown): string => (cell instanceof CustomFunctions.Error ? (cell.message ?? "") : String(cell));

test("a slip in a hood, a fitting, a material, a dust or a run to join is told the name that the functions tell, or none", () => {
  const counts = new Map<string, { same: number; silent: number }>();
  const wrong: string[] = [];
  for (let first = 0; first < TABLES; first += AT_ONCE) {
    const tables = Array.from({ length: Math.min(AT_ONCE, TABLES - first) }, (_, index) => drawn(first + index));
    const answers = tables.map(({ table }) => answerOf(table, "SI"));
    const book = copyWithAllNames(tables.map(({ table }) => table), "SI", answers.map(() => [[null]])); // prettier-ignore
    const values = inGrid(book);
    tables.forEach(({ slips }, index) =>
      slips.forEach(({ column, slip }, row) => {
        const live = offered(answers[index]![row]!.map(textOf).join(" "));
        const copy = offered(String(values.get(`Answer${index}`)?.get(`M${row + 1}`)));
        if (copy !== "" && copy !== live)
          wrong.push(`${column}, ${slip.how}, "${slip.text}": ${copy} instead of ${live}`);
        for (const kind of [column, slip.how]) {
          const count = counts.get(kind) ?? { same: 0, silent: 0 };
          counts.set(kind, {
            same: count.same + (copy === live ? 1 : 0),
            silent: count.silent + (copy === live ? 0 : 1),
          });
        }
      }),
    );
  }
  expect(wrong).toEqual([]);
  const share = (kinds: readonly string[]): number => {
    const [same, silent] = (["same", "silent"] as const).map((what) =>
      kinds.reduce((sum, kind) => sum + (counts.get(kind)?.[what] ?? 0), 0),
    );
    return same! / (same! + silent!);
  };
  if (process.env.SLIP_TABLES !== undefined) console.warn([...counts].map(([kind, { same, silent }]) => `${kind}: ${same} of ${same + silent}`).join("\n")); // prettier-ignore
  const slipOfTheHand = [
    "a letter left out",
    "a letter twice",
    "two letters swapped",
    "another letter",
    "a letter more",
  ];
  expect(share(slipOfTheHand)).toBeGreaterThan(0.9);
  expect(share([...COLUMNS])).toBeGreaterThan(0.75);
});
