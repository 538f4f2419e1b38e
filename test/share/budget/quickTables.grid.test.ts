/** Tables that hold each note, each kind of leak, each word and each blank once: in the grid, against BUDGET itself. */
import type { CellValue } from "../../../src/sheets/workbook";
import { clubCopy } from "../../../src/share/clubCopy";
import { inGrid } from "../../support/grid";
import { differences, sampleBook } from "../sampleBooks";
import { answerOf, copied, copyOf, isRefused, ORDER, type Table, wrongIn } from "./inGrid";

/** A table from its columns: each row says what it has, and all else is blank. */
function tableOf(columns: readonly string[], rows: readonly Readonly<Record<string, CellValue>>[]): Table {
  return [[...columns], ...rows.map((row) => columns.map((column) => row[column] ?? null))];
}

const notesOf = (table: Table, units: "IP" | "SI", density?: number): string =>
  answerOf(table, units, density)
    .map((row) => String(row.at(-1)))
    .join("\n");

const FULL = [
  ...["Run", "To", "Diameter", "Length", "Flex", "Material", "Fittings", "K", "Hood", "Airflow", "Gate"],
  ...["Leak", "Leak open", "Leak shut", "Device loss", "Device airflow", "Device exponent", "Side", "Dust"],
];

/** Each run stands for a note. */
const noteTable: Table = tableOf(FULL, [
  {
    Run: "slow",
    To: "main",
    Diameter: 150,
    Length: 4,
    Flex: "2 compressed 10 %",
    Hood: "plain end",
    Airflow: 300,
    Dust: "chips",
  },
  { Run: "fast", To: "main", Diameter: 60, Length: 1, Hood: 0.5, Airflow: 400, Dust: "wood chips" },
  { Run: "no upper end", To: "main", Diameter: 60, Length: 1, Hood: 0.5, Airflow: 400, Dust: "hog waste" },
  { Run: "easy", To: "main", Diameter: 150, Length: 1, Airflow: 1100 },
  { Run: "leaky", To: "main", Diameter: 100, Length: 1, Airflow: 500, Leak: 4000 },
  { Run: "main", To: "fan", Diameter: 250, Length: 3, Airflow: 50 },
  { Run: "closed", To: "main", Diameter: 100, Airflow: 500, Gate: "SHUT", "Leak shut": 50 },
  { Run: "behind", To: "closed", Diameter: 100, Hood: "plain end", Airflow: 500, Gate: "open" },
  { Run: "unused hood", To: "main", Diameter: 100, Hood: "plain end" },
  { Run: "unused gate", To: "main", Diameter: 100, Gate: "open", "Leak open": 20 },
  { Run: "nothing there", To: "main", Diameter: 100 },
  {
    Run: "pipe out",
    To: "cap",
    Diameter: 250,
    Length: 2,
    Side: "Discharge",
    Leak: 30,
    "Device loss": 90,
    "Device airflow": 2000,
  },
  { Run: "cap", To: " Open-Air", Diameter: 200, Length: 1, Side: "discharge", Fittings: "elbow 1.5; Duct-exit x1" },
]);

const WORDS = [
  'dust settles: "wood chips" needs',
  "too fast: over",
  "resize: its path needs",
  "its leak carries",
  "the airflow typed here is not used",
  "gate shut: only its leak flows",
  "a shut gate cuts it off",
  "no airflow is asked for here",
  "no open hood asks for air through it",
  "a leak on the discharge side blows dust out",
  "an exit against fan static pressure counts only",
  "its hose costs 3.8 times what it would drawn out", // 150 mm: 1 + 5.8 exp(-0.744094) = 3.756
  "fan asked for:",
];

/** The same sizes in inches and square inches; airflows are larger then. */
const inInches = (table: Table): Table =>
  table.map((row) =>
    row.map((value, at) => {
      const unit = FULL[at] === "Diameter" ? 25.4 : FULL[at]!.startsWith("Leak") ? 25.4 ** 2 : 1;
      return typeof value === "number" ? value / unit : value;
    }),
  );

test("each note of a run, and the fan's", () => {
  for (const words of WORDS) expect(notesOf(noteTable, "SI")).toContain(words);
  expect(wrongIn(noteTable, "SI")).toEqual([]);
  expect(wrongIn(inInches(noteTable), "IP")).toEqual([]);
});

test.each([
  [1.2, false],
  [1.195, true], // 1.2041 kg/m3 is standard: 0.7 % less
  [0.9, true],
  [1.4, true],
])("in air of %d kg/m3 the fan is told the pressure of standard air: %s", (density, isTold) => {
  const table = tableOf(FULL, [{ Run: "saw", To: "fan", Diameter: 100, Hood: 0.5, Airflow: 600 }]);
  expect(notesOf(table, "SI", density).includes("on a curve for standard air look for")).toBe(isTold);
  expect(wrongIn(table, "SI", density)).toEqual([]);
});

const saw = { Run: "saw", To: "fan", Diameter: 100, Length: 3, Hood: "plain end", Airflow: 600 };

test("leaks by area or by a gate's condition, always there, while open and while shut", () => {
  const leaks: readonly Readonly<Record<string, CellValue>>[] = [
    { Leak: "open bare slot" },
    { Leak: 40, "Leak open": "Open_bare slot", Gate: "open" },
    { Leak: 40, "Leak open": 30, Gate: null },
    { "Leak open": 30, "Leak shut": 60, Gate: "open" },
    { "Leak open": "40", "Leak shut": "shut packed", Gate: "open" },
    { Leak: 0, "Leak open": "0", Gate: "open" },
  ];
  const other = { Run: "other", To: "main", Diameter: 100, Hood: 0.5, Airflow: 500 };
  const tables = leaks.map((leak) =>
    tableOf(FULL, [
      { ...saw, To: "main", ...leak },
      { ...saw, Run: "shut saw", To: "main", ...leak, Gate: "shut" },
      other,
      { Run: "main", To: "fan", Diameter: 150 },
    ]),
  );
  const answers = tables.map((table) => answerOf(table, "SI"));
  const values = copied(tables, "SI", answers);
  expect(answers.flatMap((answer, index) => differences(`Answer${index}`, "A1", answer, values))).toEqual([]);
});

test("sparks and what burns on one main: by dusts, by names of machines and hoods, surely, likely and not", () => {
  const pairs: readonly (readonly [Readonly<Record<string, CellValue>>, string])[] = [
    [{ Dust: "Grinding-branch" }, "metal with wood: sparks or metal and"],
    [{ Dust: "metal turnings" }, "metal with wood: sparks or metal and"],
    [{ Dust: "heavy dust" }, "metal with wood: by their names"],
    [{ Dust: "damp dust hsg258" }, "metal with wood: by their names"],
    [{ Run: "Bench-Grinder" }, "metal with wood: by their names"],
    [{ Run: "bench grinder", Dust: "wood dust" }, "metal with wood: by their names"],
    [{ Run: "bench grinder", Dust: "grinding main" }, "metal with wood: sparks or metal and"],
    [{ Hood: "Buffer hood", Gate: "shut" }, "metal with wood: by their names"],
    [{ Run: "disc sander", Hood: "grinder hood" }, ""],
    [{ Run: "stump grinder" }, ""],
    [{ Dust: "wood blocks" }, ""],
    [{ Dust: "vapour" }, ""],
  ];
  const tables = pairs.map(([other]) =>
    tableOf(FULL, [
      { ...saw, To: "main" },
      { ...saw, Run: "other", To: "main", ...other },
      { Run: "main", To: "trunk", Diameter: 150 },
      { Run: "trunk", To: "fan", Diameter: 150 },
    ]),
  );
  const answers = tables.map((table) => answerOf(table, "SI"));
  pairs.forEach(([, words], index) => {
    const [, , , main, trunk] = answers[index]!.map((row) => String(row.at(-1)));
    expect(main!.includes("metal with wood")).toBe(words !== "");
    expect(main).toContain(words);
    expect(trunk).not.toContain("metal");
  });
  const values = copied(tables, "SI", answers);
  expect(answers.flatMap((answer, index) => differences(`Answer${index}`, "A1", answer, values))).toEqual([]);
});

test("numbers that are typed as texts, blanks of every kind and words in other spellings", () => {
  const typed = {
    Diameter: "100",
    Length: "3",
    Airflow: "600",
    K: "0.2",
    "Device loss": "90",
    "Device airflow": "700",
  };
  const blanks = { Length: "", Flex: " ", Material: " ", Fittings: 0, K: "", Hood: " ", Gate: 0, Side: "0", Dust: "" };
  const words = { Material: " PVC-pipe ", Hood: "Plain_End", Gate: " Open", Side: "SUCTION ", Dust: "Planer-chips" };
  const rows = [typed, blanks, words, { "Device loss": 90, "Device airflow": 700, "Device exponent": "" }];
  const more = [
    { Fittings: "elbow 1,5 x2; branch 30°", K: 0.1, Flex: 1 },
    { Fittings: 0.7, Hood: "", Material: "Smooth" },
    { Hood: "0.6" },
  ];
  const tables = [...rows, ...more].map((row) => tableOf(FULL, [{ ...saw, ...row }]));
  const answers = tables.map((table) => answerOf(table, "SI"));
  const values = copied(tables, "SI", answers);
  expect(answers.flatMap((answer, index) => differences(`Answer${index}`, "A1", answer, values))).toEqual([]);
});

test("a discharge side of several runs, by each word for the open air", () => {
  const ends = [null, "outside", "Outdoors", "open air", "room", "fan"];
  const out = { Diameter: 150, Length: 2, Side: "discharge" };
  const tables = ends.map((To) =>
    tableOf(FULL, [
      saw,
      { ...out, Run: "pipe out", To: "cap" },
      { ...out, Run: "cap", To, Length: 1, Fittings: "exit" },
    ]),
  );
  const taken = tables.flatMap((table, index) =>
    isRefused(table, "SI") ? [] : [[index, answerOf(table, "SI")] as const],
  );
  expect(taken.map(([index]) => ends[index])).toEqual(expect.arrayContaining([null, "outside", "room"]));
  const answers = tables.map((_, index) => taken.find(([one]) => one === index)?.[1] ?? [["#N/A"]]);
  const values = copied(tables, "SI", answers);
  expect(taken.flatMap(([index, answer]) => differences(`Answer${index}`, "A1", answer, values))).toEqual([]);
});

test("a blank Side: after the fan where the air goes into the open, unless a run is named so", () => {
  const columns = ["Run", "To", "Diameter", "Length", "Hood", "Airflow", "Side"];
  const saw = { Run: "saw", To: "room", Diameter: 100, Length: 3, Hood: 0.5, Airflow: 700 };
  const [room, main] = [
    { Run: "room", To: "main", Diameter: 125, Length: 2 },
    { Run: "main", To: "fan", Diameter: 150, Length: 4 },
  ];
  const out = { Run: "out", To: "Outside", Diameter: 125, Length: 5 };
  expect(wrongIn(tableOf(columns, [saw, room, main, out]), "SI")).toEqual([]);
  expect(wrongIn(tableOf(columns.slice(0, -1), [saw, room, main, { ...out, To: "open air" }]), "SI")).toEqual([]);
});

test("blank rows above, between and below, and spare ones", () => {
  const rows = [{}, saw, {}, { ...saw, Run: "other", To: "saw", Hood: null }, {}, {}].map((row) => ({ ...row }));
  const table = tableOf(FULL, [
    rows[0]!,
    { ...saw, Hood: null },
    rows[2]!,
    { ...saw, Run: "other", To: "saw" },
    {},
    { Airflow: 600, Length: 3 }, // totals
  ]);
  expect(wrongIn(table, "SI")).toEqual([]);
  const full = tableOf(FULL, [saw]);
  expect(wrongIn(full, "SI")).toEqual([]);
});

test("slow air: laminar, between and turbulent", () => {
  const rows = [0.2, 5, 9, 11, 14, 30].map((Airflow, index) => ({
    ...saw,
    Run: `run ${index}`,
    To: "main",
    Airflow,
    Flex: 2,
  }));
  expect(wrongIn(tableOf(FULL, [...rows, { Run: "main", To: "fan", Diameter: 150 }]), "SI")).toEqual([]);
});

test("mitres in slow and in fast air, on both sides of the fan", () => {
  const rows = [40, 100, 200, 700].map((Airflow, index) => ({
    ...saw,
    Run: `run ${index}`,
    To: "main",
    Airflow,
    Fittings: index === 1 ? "mitre 60 x2; branch 30" : "miter; elbow 1.5",
  }));
  const main = { Run: "main", To: "fan", Diameter: 250, Fittings: "mitre 45" };
  const out = { Run: "out", Diameter: 250, Side: "discharge", Fittings: "mitre 75; exit" };
  expect(wrongIn(tableOf(FULL, [...rows, main, out]), "SI")).toEqual([]);
});

test("a long way to the fan, and many ends at one run", () => {
  const chain = Array.from({ length: 11 }, (_, index) => ({
    Run: `run ${index}`,
    To: index === 0 ? "fan" : `run ${index - 1}`,
    Diameter: 150,
    Length: 1,
  }));
  const ends = Array.from({ length: 8 }, (_, index) => ({
    ...saw,
    Run: `end ${index}`,
    To: "run 10",
    Airflow: 300 + index,
  }));
  for (const rows of [
    [...ends, ...chain],
    [...chain, ...ends],
  ])
    expect(wrongIn(tableOf(FULL, rows), "SI")).toEqual([]);
});

test("a table of the fewest columns, and fittings that go by the run's diameter", () => {
  const few = tableOf(["Run", "To", "Diameter", "Airflow"], [saw]);
  expect(wrongIn(few, "SI")).toEqual([]);
  const pleated = tableOf(FULL, [
    { ...saw, To: "main", Fittings: "elbow pleated 45; elbow pleated" },
    { Run: "main", To: "fan", Diameter: 200, Fittings: "elbow pleated" },
  ]);
  expect(wrongIn(pleated, "SI")).toEqual([]);
});

/** Further rows that are refused, and what the copy says of them. */
const MORE_REFUSED: readonly (readonly [string, Readonly<Record<string, CellValue>>, string])[] = [
  [
    "a hose in a narrow duct",
    { Diameter: 1, Flex: 1 },
    "Flex must be left out: hose is too rough for so small a diameter",
  ],
  [
    "a hood that another run joins",
    { Run: "main", To: "fan", Hood: 0.5 },
    "Hood must be blank: another run joins this one",
  ],
  [
    "a discharge run that leads nowhere",
    { Side: "discharge", To: "nowhere" },
    'To must be blank, "outside" or another discharge run',
  ],
  ["a name that is TRUE", { Run: true }, "Run must be a name"],
  ["a run that begins with its hood", { Run: null, To: null, Diameter: null, Airflow: null }, "Run must be a name"],
  [
    "a device without its airflow",
    { "Device loss": 90 },
    "Device airflow must stand beside a device loss, and its exponent be from 0.5 to 2.5",
  ],
  [
    "a device airflow without its loss",
    { "Device airflow": 90 },
    "Device airflow must stand beside a device loss, and its exponent be from 0.5 to 2.5",
  ],
  ...["Gate", "Hood"].map((column): (typeof MORE_REFUSED)[number] => [
    `${column} after the fan`,
    { To: "outside", Gate: null, Hood: null, [column]: column === "Gate" ? "shut" : "plain end" },
    "Gate, Hood and Port suction must be blank after the fan, where none is counted",
  ]),
];

test("further rows that are refused have their reason beside them", () => {
  const tables = MORE_REFUSED.map(([, row]) =>
    tableOf(FULL, [
      { ...saw, To: "main", ...row },
      { ...saw, Run: "second", To: "main" },
      ...(row.Run === "main" ? [] : [{ Run: "main", To: "fan", Diameter: 150 }]),
    ]),
  );
  for (const table of tables) expect(isRefused(table, "SI")).toBe(true);
  const values = copied(
    tables,
    "SI",
    tables.map(() => [[null]]),
  );
  const seen = MORE_REFUSED.map(([what], index) => {
    const shown = values.get(`Answer${index}`)!;
    return [what, shown.get("A1"), shown.get("M2")];
  });
  expect(seen).toEqual(MORE_REFUSED.map(([what, , words]) => [what, "Run", words]));
});

test("every column of the workings has a heading", () => {
  const { sheets } = copyOf([noteTable], "SI", [answerOf(noteTable, "SI")]);
  const { cells } = sheets.find(({ name }) => name === "Workings")!;
  const headings = cells.flatMap((cell) => ("value" in cell && typeof cell.value === "string" ? [[cell.at, cell.value]] : [])); // prettier-ignore
  expect(cells.filter((cell) => "formula" in cell && /^="[^"]*"$/.test(cell.formula))).toEqual([]); // one of no words, or not a text
  expect(headings.map(([, words]) => words)).toEqual(
    expect.arrayContaining(["Diameter (m)", "Airflow (m³/s)", "Friction (Pa)", "Density (kg/m³)", "Trouble", "Note"]),
  );
  expect(headings).toContainEqual([
    "A4",
    "Budget of Answer0!A1: in SI, first by the rows of the table, then by the order of the flow",
  ]);
});

const FPM = 0.00508; // m/s: a book that names no units has its tables in I-P

test("the table of dusts says what it is, and its velocities are inputs", () => {
  const { sheets } = copyOf([noteTable], "SI", [answerOf(noteTable, "SI")]);
  const { cells } = sheets.find(({ name }) => name === "Lookups")!;
  const title = cells.find((cell) => "value" in cell && String(cell.value).startsWith("Transport"));
  expect(title).toMatchObject({ value: "Transport velocities of dusts, fpm; 0 where no upper end is printed" });
  const row = cells
    .find((cell) => cell.at.startsWith("A") && "value" in cell && cell.value === "wood chips")!
    .at.slice(1);
  expect(["B", "C", "D"].map((column) => cells.find(({ at }) => at === `${column}${row}`))).toEqual([
    { at: `B${row}`, value: expect.closeTo(20 / FPM, 6) as number, style: "input" },
    { at: `C${row}`, value: expect.closeTo(28 / FPM, 6) as number, style: "input" },
    { at: `D${row}`, value: "wood chips", style: "text" },
  ]);
});

test.each([
  ['DUCT.BUDGET(T!A1:D2,,"S"&"I")', "its units are worked out by a formula or are none"],
  ["DUCT.BUDGET(T!A1:D2,,T!C2)", "its units are worked out by a formula or are none"],
  ["DUCT.BUDGET()", "its runs table is no range of cells"],
  ["DUCT.BUDGET(5)", "its runs table is no range of cells"],
  ['DUCT.BUDGET(T!A1:D2&"")', "its runs table is computed by another formula"],
  ["DUCT.BUDGET(T!A1:D1)", "its runs table has no row below the header"],
])("%s stays as it is: %s", (code, why) => {
  const rows = tableOf(["Run", "To", "Diameter", "Airflow"], [saw]);
  const book = sampleBook({ T: { rows }, A: { formulas: { A1: { code: `=${code}`, shows: [["x"]] } } } });
  expect(clubCopy(book, ORDER).fixed).toEqual([{ sheet: "A", at: "A1", function: "BUDGET", why }]);
});

test("a budget with nothing but its table is in I-P and in standard air", () => {
  const table = tableOf(["Run", "To", "Diameter", "Airflow"], [{ Run: "saw", To: "fan", Diameter: 4, Airflow: 350 }]);
  const shows = answerOf(table, "IP");
  const book = sampleBook({ T: { rows: table }, A: { formulas: { A1: { code: "=DUCT.BUDGET(T!A1:D2)", shows } } } });
  expect(differences("A", "A1", shows, inGrid(clubCopy(book, ORDER).book.workbook))).toEqual([]);
});
