import { formula, input, text } from "../cells";
import type { Sheet, SheetCell } from "../workbook";
import { type DataSheetLine, dataSheet } from "./claimsDataSheet";
import { spillOf } from "./spill";
import { unitWord } from "./readingsUnits";

const FACTS = 6; // row of the data sheet's header
const FIRST = FACTS + 1;
const LAST = FIRST + 11; // eleven facts and a row to spare; as many checks at most
const CHECKS = LAST + 6; // row of the header that CLAIM fills
const CHECKS_LAST = CHECKS + LAST - FACTS;
const LINES = 5; // of the longest reason in its column

const code = `=DUCT.CLAIM(A${FACTS}:B${LAST},units)`;

/** The data sheet with a word for each check beside it, so that a change and its verdict are seen at once; reasons below. */
export const claimsSheet: Sheet = {
  name: "Claims",
  columns: [28, 12, 12, 8, 12, 52, 52],
  tallRows: Array.from({ length: CHECKS_LAST - CHECKS }, (_, index) => ({ row: CHECKS + 1 + index, lines: LINES })),
  frozen: { rows: 0, columns: 0 },
  cells: [...heading(), ...facts(), ...inShort(), ...meanings(), ...checks()],
  lists: [],
  flags: [
    { range: `E${FIRST}:E${LAST}`, containsText: "impossible", style: "flag" },
    { range: `E${CHECKS + 1}:E${CHECKS_LAST}`, containsText: "impossible", style: "flag" },
  ],
};

function heading(): SheetCell[] {
  return [
    text("A1", "Demo: a vendor's claims", "title"),
    input("A3", "boxed cell"),
    text("B3", "yours to change", "note"),
    text("D1", "Invented for trying out: no such machine, vendor or data sheet exists."),
    text("D2", `Try it: type 60 for the pressure in B${FIRST + 1}, press Enter, and read the verdicts.`),
    text("D3", "A verdict is on numbers only, never on a product.", "total"),
  ];
}

function facts(): SheetCell[] {
  const cells: SheetCell[] = [
    text(`A${FACTS - 1}`, "The data sheet", "section"),
    text(`A${FACTS}`, "Fact", "header"),
    text(`B${FACTS}`, "Their number", "numberHeader"),
    text(`C${FACTS}`, "Unit", "header"),
  ];
  for (let at = FIRST; at <= LAST; at++) {
    const line = dataSheet[at - FIRST];
    cells.push(input(`A${at}`, line?.fact ?? null), input(`B${at}`, line?.says ?? null));
    if (line !== undefined) cells.push(unitOf(`C${at}`, line));
  }
  return cells;
}

const unitOf = (at: string, { unit }: DataSheetLine): SheetCell =>
  "quantity" in unit ? formula(at, `=${unitWord(unit.quantity)}`, "unit") : text(at, unit.words, "unit");

/** Each verdict in the order of the table below. */
function inShort(): SheetCell[] {
  const count = (verdict: string): string => `COUNTIF(E${FIRST}:E${LAST},"${verdict}")`;
  const words = `${count("impossible")}&" impossible, "&${count("doubtful")}&" doubtful, "&${count("holds")}&" hold, "&${count("cannot tell")}&" cannot tell"`;
  const cells: SheetCell[] = [
    text(`E${FACTS - 1}`, "In short", "section"),
    formula(`F${FACTS - 1}`, `=IF(ISERROR(A${CHECKS}),"see A${CHECKS}",${words})`, "total"),
    text(`E${FACTS}`, "Verdict", "header"),
    text(`F${FACTS}`, "Check", "header"),
  ];
  for (let at = FIRST; at <= LAST; at++) {
    const from = at - FACTS + CHECKS;
    cells.push(formula(`E${at}`, `=IFERROR(E${from}&"","")`), formula(`F${at}`, `=IFERROR(A${from}&"","")`));
  }
  return cells;
}

function meanings(): SheetCell[] {
  return [
    text(
      `A${LAST + 1}`,
      "impossible: physics forbids it. doubtful: more than such machines usually do; where that is a judgement, the reason says so.",
      "note",
    ),
    text(
      `A${LAST + 2}`,
      "holds: nothing here speaks against it, no more than that. cannot tell: the data sheet does not say enough to judge it.",
      "note",
    ),
  ];
}

function checks(): SheetCell[] {
  const formats = [null, "#,##0.00", "#,##0.00", null, null, null, null];
  return [
    text(`A${CHECKS - 2}`, "Check by check", "section"),
    text(`A${CHECKS - 1}`, `One formula fills this table: ${code}. Sources stand in column G.`, "note"),
    ...spillOf(1, CHECKS, CHECKS_LAST, formats, code).map((cell): SheetCell =>
      cell.style === "result" ? { ...cell, style: "paragraph" } : cell,
    ),
  ];
}
