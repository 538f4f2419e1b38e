import { placeOf } from "../../../src/sheets/address";
import type { Played } from "./object";
import { areaOn, fullAddress } from "./places";
import { playCharts } from "./playChart";
import { playFlags } from "./playFlags";
import { playFormatParts, playRangeFormat } from "./playFormat";
import { playPage } from "./playPage";
import { playRange, type RangeOptions } from "./playRange";
import { playSheets } from "./playSheet";
import { isFreeWord, playTables } from "./playTables";
import { playValidation } from "./playValidation";
import { misuse } from "./refuse";
import type { Area, BookState, NameState } from "./state";

/** All classes that are played, over one workbook. */
export const playBook = (book: BookState, options: RangeOptions): Record<string, Played> => ({
  Workbook: {
    reads: {
      name: ({ name }) => name,
      usePrecisionAsDisplayed: ({ usePrecisionAsDisplayed }: BookState) => usePrecisionAsDisplayed,
    },
    parts: {
      application: (workbook) => workbook,
      worksheets: (workbook) => workbook,
      names: (workbook) => workbook,
      tables: (workbook) => workbook,
      protection: (workbook) => workbook,
    },
    calls: {
      getSelectedRanges: ({ selection: { sheet, areas } }: BookState) => areas.map((area) => areaOn(sheet, area)),
    },
  },
  Application: {
    reads: { calculationMode: ({ calculationMode }: BookState) => calculationMode },
    parts: { iterativeCalculation: (workbook) => workbook },
  },
  IterativeCalculation: { reads: { enabled: ({ iterates }: BookState) => iterates } },
  WorkbookProtection: { reads: { protected: ({ isLocked }: BookState) => isLocked } },
  NamedItemCollection: {
    items: ({ names }: BookState) => names,
    calls: {
      getItem: ({ names }: BookState, key: string) => names.find(({ name }) => name === key) ?? null,
      add: ({ names }: BookState, name: string, area: Area): NameState => {
        if (!isFreeWord(book, name)) throw misuse(`no name for a cell: ${name}`);
        const dollars = fullAddress(area).replace(/!([A-Z]+)(\d+)$/, "!$$$1$$$2");
        names.push({ name, formula: `=${dollars}`, visible: true });
        return names.at(-1)!;
      },
    },
  },
  NamedItem: {
    reads: {
      name: ({ name }) => name,
      formula: ({ formula }) => asCounted(book, formula),
      visible: ({ visible }) => visible,
    },
    calls: { delete: (item: NameState) => (book.names = book.names.filter((other) => other !== item)) },
  },
  Range: playRange(book, options),
  RangeFormat: playRangeFormat,
  DataValidation: playValidation,
  ...playFormatParts,
  ...playFlags,
  ...playSheets(book),
  ...playTables(book),
  ...playPage,
  ...playCharts,
});

/** What a name points to as Excel for Windows says it, in the style and the language of its user (office-js issues 1831 and 2834). */
const asCounted = ({ countedBy }: BookState, formula: string): string =>
  countedBy === null
    ? formula
    : formula.replace(/[$]([A-Z]+)[$](\d+)(?=$|:)/g, (_, letters: string, row: string) => {
        const [rowSign, columnSign] = countedBy;
        return `${rowSign}${row}${columnSign}${placeOf(`${letters}1`).column}`;
      });
