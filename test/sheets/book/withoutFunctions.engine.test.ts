/** A budget opened in a program without our functions: after a change no number that rests on Flow's answer goes on as if it were new. */
import { writeBook } from "../../../src/hosts/file/writeBook";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { CURVE_HEADER, FLOW_SYSTEM_CELL, runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import { FLOW_FIRST, MOST_SETS, SCENARIOS, SLOWEST } from "../../../src/sheets/book/flow/flowLayout";
import { MOST_SETS_SHOWN, SETS_HEADER } from "../../../src/sheets/book/summary/summaryLayout";
import { CHECKS } from "../../../src/sheets/book/claims/layout";
import { DRAWN, INPUTS, INPUTS_LAST } from "../../../src/sheets/book/measured/layout";
import { ALTITUDE_CELL } from "../../../src/sheets/book/start/startLayout";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { type Edit, editsInOffice, type Look, type Seen } from "../../support/editsInOffice";
import { gridOfBook } from "../../support/gridOfBook";
import { hasLibreOffice } from "../../support/libreOffice";
import { partsOf, zipped } from "../../support/xlsxParts";

const says = FLOW_SYSTEM_CELL.replaceAll("$", "");
const on = (sheet: string, ...ranges: readonly string[]): Look[] => ranges.map((range) => ({ sheet, range }));

/** What is looked at together, in this order: LibreOffice computes a cell that is out of date when somebody looks at it. */
const LOOKS = {
  says: [...on("Flow", says), ...on("Summary", "A3")],
  numbers: [...on("Flow", "C5:C8", "G5:G8"), ...on("Fan", "B26:B27"), ...on("Summary", "B40:B41")],
  budget: [...on("Budget", "F4:F7", "K4:K7", "N5"), ...on("Runs", "F5:F7"), ...on("Fan", "B28:B29"), ...on("Summary", "B42:B43"), ...on("Sizes", "B7")], // prettier-ignore
  changes: [...on("Flow", "V9", "V11:V13", "B86"), ...on("Summary", "D40", "B53")],
  claim: on("Claims", "F6"),
  scenarios: [...on("Flow", `B${SLOWEST + 1}:F${SLOWEST + MOST_SETS}`), ...on("Summary", `A${SETS_HEADER + 1}:F${SETS_HEADER + MOST_SETS_SHOWN + 1}`)], // prettier-ignore
  readings: on("Measured", "B8:B11", "A15:A44", "M15:M44", `A${INPUTS + 1}:H${INPUTS_LAST}`, `D${DRAWN + 1}`),
  errors: [...on("Budget", "N5"), ...on("Flow", "V9", "V11:V13", "C87"), ...on("Summary", "D40", "B53")],
  verdicts: on("Claims", "E11:F31"),
  inShort: on("Claims", "F7", "F8"),
  flags: [...on("Budget", "A9:A20"), ...on("Flow", "Q11:Q14", "A67:A72")],
  leaks: on("Leaks", "B7", "J19", "J23:J27", "J43:J58"),
} satisfies Readonly<Record<string, readonly Look[]>>;
type Looked = keyof typeof LOOKS;

const type = (sheet: string, at: string, value: string | number): Edit => ({ does: "type", sheet, at, value });
const EDITS = {
  "a gate": [type("Flow", `A${FLOW_FIRST}`, "shut band saw")],
  "a length": [type("Runs", runCell("Length", RUNS_FIRST), 40)],
  "a point of the fan's curve": [type("Fan", `B${CURVE_HEADER + 2}`, 9)],
  "the altitude": [type("Start", ALTITUDE_CELL.replaceAll("$", ""), 5000)],
  "a reading": [type("Measured", "D15", 3000)],
  "how far pipe may be off": [type("Flow", "AJ14", 30)],
  "one leak read again": [type("Leaks", "B19", 9)],
  "a fact of a data sheet": [type("Claims", "B13", "1650 at 3")],
  "a length and a gate": [type("Runs", runCell("Length", RUNS_FIRST), 40), type("Flow", `A${FLOW_FIRST}`, "shut band saw")], // prettier-ignore
} satisfies Readonly<Record<string, readonly Edit[]>>;
type Edited = keyof typeof EDITS;

const OF_FLOW = ["a gate", "a length", "a point of the fan's curve", "the altitude"] as const;

/** The example as we save it, and as Excel does: of a file by Excel LibreOffice keeps the texts, too. */
async function files(): Promise<Readonly<Record<"ours" | "excels", Uint8Array>>> {
  const book = budgetBook({ units: "IP", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
  const ours = await writeBook(gridOfBook(book).calculated(book), { title: "Example" });
  const parts = partsOf(ours);
  const about = parts.get("docProps/app.xml")!;
  parts.set("docProps/app.xml", about.replace(/<Application>[^<]*</, "<Application>Microsoft Excel<"));
  return { ours, excels: zipped(parts) };
}

type Cells = readonly (string | number)[];
type Shown = Readonly<Record<Looked, Cells>>;

/** What the sheets show as they are opened, and after each edit of the book as it was. */
function seenIn(bytes: Uint8Array, edits: readonly Edited[]): ReadonlyMap<Edited | "nothing", Shown> {
  const looks = Object.entries(LOOKS).flatMap(([name, some]) => some.map((look) => ({ ...look, name })));
  const steps = edits.map((edit): Edit[] => [{ does: "open anew", sheet: "" }, ...EDITS[edit]]);
  const seen = editsInOffice(bytes, [[], ...steps], looks, true);
  const shownBy = (step: readonly Seen[]): Shown => {
    const cellsOf = (name: string): Cells => step.filter((_, look) => looks[look]!.name === name).flat(2);
    return Object.fromEntries(Object.keys(LOOKS).map((name) => [name, cellsOf(name)])) as Shown;
  };
  return new Map((["nothing", ...edits] as const).map((edit, step) => [edit, shownBy(seen[step]!)]));
}

const said = (shown: Cells): unknown[] => shown.filter((one) => one !== "");

(hasLibreOffice ? describe : describe.skip)("without our functions", () => {
  let seen: Readonly<Record<"ours" | "excels", ReadonlyMap<Edited | "nothing", Shown>>>;
  beforeAll(async () => {
    const { ours, excels } = await files();
    seen = { ours: seenIn(ours, OF_FLOW), excels: seenIn(excels, Object.keys(EDITS) as Edited[]) };
  });
  const after = (edit: Edited | "nothing", file: "ours" | "excels" = "excels"): Shown => seen[file].get(edit)!;

  test("the numbers of the day stand there until something is changed", () => {
    const { says, numbers, scenarios, readings } = after("nothing");
    expect(says[0]).toBe("Ducts and fan as typed");
    expect(numbers).toEqual(numbers.map((): unknown => expect.any(Number)));
    expect(said(scenarios).length).toBeGreaterThan(30);
    expect(said(readings).length).toBeGreaterThan(100);
  });

  test.each(OF_FLOW.flatMap((edit) => (["ours", "excels"] as const).map((file) => ({ edit, file }))))(
    "$edit that is changed leaves no old number in a file of $file",
    ({ file, edit }) => {
      const { says, numbers } = after(edit, file);
      const look = "Look: Flow B10 is an error: trust no number here";
      expect(says).toEqual([look, look]);
      expect(numbers).toEqual(numbers.map((): unknown => expect.stringMatching(/^see (Flow )?B10$/)));
    },
  );

  // What BUDGET says rests on no gate, so those of Budget stay as they are where one is shut.
  test.each(["a length", "the altitude"] as const)(
    "%s that is changed leaves no old number of the budget, of its ±, nor of what can run together",
    (edit) => {
      const { budget } = after(edit);
      expect(budget).toEqual(budget.map((): unknown => expect.stringMatching(/^see (Budget )?(C3|A110)$/)));
    },
  );

  test.each(OF_FLOW)("%s that is changed leaves no old ± of what flows, nor an old best change", (edit) => {
    const { changes, claim } = after(edit);
    expect(changes).toEqual(["see A3", "", "", "", "", "", "see Flow C87"]);
    expect(claim[0]).not.toMatch(/fan of the sheet Fan moves/);
  });

  // Scenarios and machines alone go by no gate of Flow's column A.
  test.each(["a length", "a point of the fan's curve", "the altitude"] as const)(
    "%s that is changed leaves no old scenario, nor an old machine alone on Summary",
    (edit) => {
      expect(said(after(edit).scenarios)).toEqual([`see Flow B${SCENARIOS}`, `see Flow B${SCENARIOS}`, "see Sizes L110"]); // prettier-ignore
    },
  );

  // What readings tell rests on no gate.
  test.each([
    "a reading",
    "how far pipe may be off",
    "a length",
    "a point of the fan's curve",
    "the altitude",
  ] as const)("%s that is changed leaves nothing old of what readings told", (edit) => {
    expect(said(after(edit).readings)).toEqual(["Look: Measured O14 is an error: trust no number here", 0]); // no input is drawn
  });

  test("an error of inputs that is changed leaves no old ±, though the airflows stand", () => {
    const see = expect.stringMatching(/^see (A3|C3|A88|AE8|AM10)$/) as unknown; // as LibreOffice has come by Flow's own answer or not
    expect(after("how far pipe may be off").errors).toEqual([see, see, "", "", "", see, "", "see Flow C87"]);
  });

  test("a fact of a data sheet that is changed leaves no old verdict", () => {
    const { verdicts, inShort } = after("a fact of a data sheet");
    expect(said(verdicts)).toEqual([]);
    expect(inShort).toEqual([`see A${CHECKS}`, ""]);
  });

  test("Leaks blames no entry for what no function computed", () => {
    const wrongly = /no name of the table gates|B15 to B17|do not differ|read one leak again/;
    for (const edit of ["nothing", "a gate", "the altitude", "one leak read again"] as const)
      expect(said(after(edit).leaks).filter((one) => wrongly.test(String(one)))).toEqual([]);
    expect(after("one leak read again").leaks.slice(0, 4)).toEqual([
      "see R43",
      "no difference gets a verdict: see T19",
      "no verdict: see row 43",
      "no verdict: see row 44",
    ]);
  });

  test("a run that no longer stands leaves no old flag beside its neighbours, nor what its hood wants", () => {
    const { flags } = after("nothing");
    expect(said(flags.slice(0, 12)).length * said(flags.slice(12, 16)).length * said(flags.slice(16)).length).toBeGreaterThan(0); // prettier-ignore
    const numbersOrWords = said(after("a length and a gate").flags).filter((one) => !String(one).startsWith("#"));
    expect(numbersOrWords).toEqual([]);
  });
});
