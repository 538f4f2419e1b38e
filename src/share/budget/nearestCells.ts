import { quotedText } from "../references";
import { plainName } from "../translate/expressions/text";
import type { ColumnCells } from "./blockNames";
import type { NamesInTable } from "./lookups";
import type { RunsReader } from "./runsReader";
import { nameKey } from "./words";

/** How many of the marks of likeness a name must have to be told as the nearest. */
const ALIKE = 3;
const FIRST = [2, 4, 6, 9, 12]; // letters that are compared at the beginning
const LAST = [2, 4, 6]; // and at the end
const ROWS = 100_000; // more than a sheet of workings has

/**
 * Which listed name is most like one that is none: as many of its first and last letters as are the same, and its length. A slip of
 * the hand leaves most of them. The place of the best and its marks are one number, so that one sum finds both.
 */
function likeness(name: string, names: string): string {
  const same = (part: "LEFT" | "RIGHT", letters: number): string =>
    `(${part}(${names},${letters})=${part}(${name},${letters}))`;
  const marks = [
    ...FIRST.map((letters) => same("LEFT", letters)),
    ...LAST.map((letters) => same("RIGHT", letters)),
    `(LEN(${names})=LEN(${name}))`,
  ];
  return `SUMPRODUCT(MAX((${marks.join("+")})*${ROWS}+${ROWS - 1}-ROW(${names})))`;
}

/** The words behind a sentence: which name is nearest, or nothing where none is near. */
export function nearestWords(likeness: string, first: string, names: string): string {
  const row = `${ROWS - 1}-MOD(${likeness},${ROWS})`;
  const nearest = `INDEX(${names},${row}-ROW(${first})+1)`;
  return `IF(${likeness}<${ALIKE * ROWS},"",${quotedText(' (nearest: "')}&${nearest}&${quotedText('")')})`;
}

/** For each name of a row that is none, how near the nearest is; 0 where it is right. */
export function nearestCells({
  place,
  source,
  lookups,
  used,
}: RunsReader): ColumnCells<"nearTo" | "nearHood" | "nearMaterial" | "nearDust"> {
  const at = place.cell;
  const near = (column: "Hood" | "Material" | "Dust", wrong: (row: number) => string, { names }: NamesInTable) => {
    return (row: number): string => {
      if (!source.has(column)) return "0";
      const name = `LOWER(${plainName(source.cell(column, row))})`;
      return used(row, `IF(ISERROR(${wrong(row)}),${likeness(name, names)},0)`);
    };
  };
  return {
    nearTo: {
      heading: "To: likeness of the nearest run",
      formula: (row) =>
        source.has("To")
          ? used(row, `IF(${at("into", row)}<0,${likeness(nameKey(source.cell("To", row)), place.all("key"))},0)`)
          : "0",
    },
    nearHood: {
      heading: "Hood: of the nearest entry",
      formula: near("Hood", (row) => at("hood", row), lookups.names.hood),
    },
    nearMaterial: {
      heading: "Material: of the nearest",
      formula: near("Material", (row) => at("roughness", row), lookups.names.material),
    },
    nearDust: {
      heading: "Dust: of the nearest",
      formula: near("Dust", (row) => at("dustLow", row), lookups.names.dust),
    },
  };
}
