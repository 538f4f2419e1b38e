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
import { type Edit, editsInOffice } from "../../support/editsInOffice";
import { gridOfBook } from "../../support/gridOfBook";
import { hasLibreOffice } from "../../support/libreOffice";
import { partsOf, zipped } from "../../support/xlsxParts";

const says = FLOW_SYSTEM_CELL.replaceAll("$", "");
const LOOKS = [
  { sheet: "Flow", range: says },
  { sheet: "Summary", range: "A3" },
  { sheet: "Flow", range: "C5:C8" },
  { sheet: "Flow", range: "I5:I8" },
  { sheet: "Fan", range: "B26:B27" },
  { sheet: "Summary", range: "B40:B41" },
] as const;
const NUMBERS = 4 + 4 + 2 + 2; // in all but the first two, which say so

const edits: readonly (Edit & { readonly what: string })[] = [
  { what: "a gate", does: "type", sheet: "Flow", at: `A${FLOW_FIRST}`, value: "shut band saw" },
  { what: "a length", does: "type", sheet: "Runs", at: runCell("Length", RUNS_FIRST), value: 40 },
  { what: "a point of the fan's curve", does: "type", sheet: "Fan", at: `B${CURVE_HEADER + 2}`, value: 9 },
  { what: "the altitude", does: "type", sheet: "Start", at: ALTITUDE_CELL.replaceAll("$", ""), value: 5000 },
];

/** The example as we save it, and as Excel does: of a file by Excel LibreOffice keeps the texts, too. */
async function files(): Promise<{ readonly ours: Uint8Array; readonly excels: Uint8Array }> {
  const book = budgetBook({ units: "IP", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
  const ours = await writeBook(gridOfBook(book).calculated(book), { title: "Example" });
  const parts = partsOf(ours);
  const about = parts.get("docProps/app.xml")!;
  parts.set("docProps/app.xml", about.replace(/<Application>[^<]*</, "<Application>Microsoft Excel<"));
  return { ours, excels: zipped(parts) };
}

(hasLibreOffice ? describe : describe.skip)("without our functions", () => {
  let made: Awaited<ReturnType<typeof files>>;
  beforeAll(async () => {
    made = await files();
  });

  test("the numbers of the day stand there until something is changed", () => {
    const [[says = [], , ...numbers] = []] = editsInOffice(made.excels, [[]], LOOKS, true);
    expect(says).toEqual([["Ducts and fan as typed"]]);
    expect(numbers.flat(2)).toEqual(Array.from({ length: NUMBERS }, () => expect.any(Number)));
  });

  test.each(edits.flatMap((edit) => (["ours", "excels"] as const).map((file) => ({ ...edit, file }))))(
    "$what that is changed leaves no old number in a file of $file",
    ({ file, ...edit }) => {
      const [[flowSays, summarySays, ...numbers] = []] = editsInOffice(made[file], [[edit]], LOOKS, true);
      expect([flowSays, summarySays].flat(2)).toEqual([
        "Look: Flow B10 is an error: trust no number here",
        "Look: Flow B10 is an error: trust no number here",
      ]);
      expect(numbers.flat(2)).toEqual(
        Array.from({ length: NUMBERS }, () => expect.stringMatching(/^see (Flow )?B10$/)),
      );
    },
  );

  // What BUDGET says rests on no gate, so those of Budget stay as they are where one is shut.
  test.each(edits.filter(({ sheet }) => sheet === "Runs" || sheet === "Start"))(
    "$what that is changed leaves no old number of the budget, of its ±, nor of what can run together",
    ({ what, ...edit }) => {
      expect(what).not.toBe("");
      const budget = ["F4:F7", "K4:K7", "N5"].map((range) => ({ sheet: "Budget", range }));
      const looks = [...budget, { sheet: "Runs", range: "F5:F7" }, { sheet: "Fan", range: "B28:B29" }, { sheet: "Summary", range: "B42:B43" }, { sheet: "Sizes", range: "B7" }]; // prettier-ignore
      const [seen] = editsInOffice(made.excels, [[edit]], looks, true);
      const told = seen!.flat(2);
      expect(told).toEqual(told.map((): unknown => expect.stringMatching(/^see (Budget )?(C3|A110)$/)));
    },
  );

  test.each(edits)(
    "$what that is changed leaves no old ± of what flows, nor an old best change",
    ({ what, ...edit }) => {
      expect(what).not.toBe("");
      const looks = [{ sheet: "Flow", range: "V9" }, { sheet: "Flow", range: "V11:V13" }, { sheet: "Flow", range: "B86" }, { sheet: "Summary", range: "D40" }, { sheet: "Summary", range: "B53" }, { sheet: "Claims", range: "F6" }]; // prettier-ignore
      const [seen] = editsInOffice(made.excels, [[edit]], looks, true);
      const claim = seen!.at(-1)!.flat()[0];
      expect(seen!.slice(0, -1).flat(2)).toEqual(["see A3", "", "", "", "", "", "see Flow C87"]);
      expect(claim).not.toMatch(/fan of the sheet Fan moves/);
    },
  );

  // Scenarios and machines alone go by no gate of Flow's column A.
  test.each(edits.filter(({ sheet }) => sheet !== "Flow"))(
    "$what that is changed leaves no old scenario, nor an old machine alone on Summary",
    ({ what, ...edit }) => {
      expect(what).not.toBe("");
      const list = { sheet: "Flow", range: `B${SLOWEST + 1}:F${SLOWEST + MOST_SETS}` };
      const page = { sheet: "Summary", range: `A${SETS_HEADER + 1}:F${SETS_HEADER + MOST_SETS_SHOWN + 1}` };
      const [before] = editsInOffice(made.excels, [[]], [list, page], true);
      const [seen] = editsInOffice(made.excels, [[edit]], [list, page], true);
      const said = (shown: unknown[]): unknown[] => shown.flat(2).filter((one) => one !== "");
      expect(said(before!).length).toBeGreaterThan(30);
      expect(said(seen!)).toEqual([`see Flow B${SCENARIOS}`, `see Flow B${SCENARIOS}`, "see Sizes L110"]);
    },
  );

  const reading: (typeof edits)[number] = { what: "a reading", does: "type", sheet: "Measured", at: "D15", value: 3000 }; // prettier-ignore
  const error: (typeof edits)[number] = { what: "how far pipe may be off", does: "type", sheet: "Flow", at: "AJ14", value: 30 }; // prettier-ignore

  // What readings tell rests on no gate.
  test.each([reading, error, ...edits.filter(({ sheet }) => sheet !== "Flow")])(
    "$what that is changed leaves nothing old of what readings told",
    ({ what, ...edit }) => {
      expect(what).not.toBe("");
      const looks = ["B8:B11", "A15:A44", "M15:M44", `A${INPUTS + 1}:H${INPUTS_LAST}`, `D${DRAWN + 1}`].map((range) => ({ sheet: "Measured", range })); // prettier-ignore
      const said = (shown: unknown[]): unknown[] => shown.flat(2).filter((one) => one !== "");
      const [before] = editsInOffice(made.excels, [[]], looks, true);
      const [seen] = editsInOffice(made.excels, [[edit]], looks, true);
      expect(said(before!).length).toBeGreaterThan(100);
      expect(said(seen!)).toEqual(["Look: Measured O14 is an error: trust no number here", 0]); // no input is drawn
    },
  );

  test("an error of inputs that is changed leaves no old ±, though the airflows stand", () => {
    const { what, ...edit } = error;
    expect(what).not.toBe("");
    const looks = [{ sheet: "Budget", range: "N5" }, { sheet: "Flow", range: "V9" }, { sheet: "Flow", range: "V11:V13" }, { sheet: "Flow", range: "C87" }, { sheet: "Summary", range: "D40" }, { sheet: "Summary", range: "B53" }]; // prettier-ignore
    const [seen] = editsInOffice(made.excels, [[edit]], looks, true);
    const see = expect.stringMatching(/^see (A3|C3|A88|AE8|AM10)$/) as unknown; // as LibreOffice has come by Flow's own answer or not
    expect(seen!.flat(2)).toEqual([see, see, "", "", "", see, "", "see Flow C87"]);
  });

  test("a fact of a data sheet that is changed leaves no old verdict", () => {
    const edit = { does: "type", sheet: "Claims", at: "B13", value: "1650 at 3" } as const;
    const looks = ["E11:F31", "F7", "F8"].map((range) => ({ sheet: "Claims", range }));
    const [seen] = editsInOffice(made.excels, [[edit]], looks, true);
    const [verdicts, ...inShort] = seen!;
    expect(verdicts!.flat().filter((one) => one !== "")).toEqual([]);
    expect(inShort.flat(2)).toEqual([`see A${CHECKS}`, ""]);
  });

  test("a run that no longer stands leaves no old flag beside its neighbours, nor what its hood wants", () => {
    const [length, gate] = [edits[1]!, edits[0]!];
    const looks = [{ sheet: "Budget", range: "A9:A20" }, { sheet: "Flow", range: "Q11:Q14" }, { sheet: "Flow", range: "A67:A72" }]; // prettier-ignore
    const [before] = editsInOffice(made.excels, [[]], looks, true);
    expect(before!.map((range) => range.flat().some((one) => one !== ""))).toEqual([true, true, true]);
    const [seen] = editsInOffice(made.excels, [[length, gate]], looks, true);
    const numbersOrWords = seen!.flat(2).filter((one) => one !== "" && !String(one).startsWith("#"));
    expect(numbersOrWords).toEqual([]);
  });
});
