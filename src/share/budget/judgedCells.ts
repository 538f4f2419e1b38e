import { LARGEST_COEFFICIENT } from "../../core/largest";
import { quotedText } from "../references";
import type { ColumnCells } from "./blockNames";
import { noteFormula } from "./noteCells";
import type { NearestWords } from "./nearestWords";
import type { RunsReader } from "./runsReader";
import { faultOf, TO_A_RUN } from "./troubleCells";
import { NONE } from "./waitCells";

/** What a row of the answer is. */
export const KIND = { nothing: 0, run: 1, fan: 2, wrong: 3, waits: 4 } as const;

/** An error of the kind that a wrong input gives; what only waits for another run is #N/A. */
const WRONG_INPUT = 'FIND("?","")';

type Judged =
  "errorIn" | "fault" | "gone" | "trouble" | "label" | "mayBranch" | "openEnd" | "namesake" | "kind" | "told" | "lacks";

/** Each row of the table by itself, as BUDGET judges it: whether it is wrong, what is known of it all the same, and what its answer is. */
export function judgedCells(reader: RunsReader, nearest: NearestWords): ColumnCells<Judged> {
  const { place, source, used, errorIn } = reader;
  const { cell: at, all, scalar } = place;
  const isWrong = (row: number): string => `${at("fault", row)}<>""`;
  const faultSaid = (row: number): string =>
    `IF(${at("errorIn", row)}="",${at("fault", row)},"an error stands in column "&${at("errorIn", row)}&": mend or clear that cell")&${scalar("errorSaid")}`;
  const waitsFor = (row: number): string => `INDEX(${all("cause")},${at("rank", row)})`;
  const isKind = (row: number, kind: keyof typeof KIND): string => `${at("kind", row)}=${KIND[kind]}`;
  return {
    errorIn: { heading: "An error stands in column", formula: (row) => errorIn(row) },
    fault: { heading: "What is wrong with it", formula: (row) => used(row, faultOf(reader, nearest, row), '""') },
    gone: {
      heading: "It goes to a run that no row has",
      formula: (row) => {
        const to = `CHAR(34)&${source.has("To") ? `TRIM(${source.cell("To", row)})` : '""'}&CHAR(34)`;
        const words = noteFormula("waitsForMissing", { run: to, nearest: nearest.to(row) });
        return `IF(${at("into", row)}<0,IF(${isWrong(row)},"",${words}),"")`;
      },
    },
    trouble: {
      heading: "Trouble",
      formula: (row) => {
        const gone = `IF(${at("gone", row)}="","",${quotedText(TO_A_RUN)}&${nearest.to(row)})`;
        const own = `IF(${isWrong(row)},${faultSaid(row)},${gone})`;
        return row === 1 ? `IF(${scalar("stop")}="",${own},${scalar("stop")})` : own;
      },
    },
    label: {
      heading: "as others name it",
      formula: (row) =>
        `IF(ISERROR(${at("name", row)}),"the run without a name","run "&CHAR(34)&${at("name", row)}&CHAR(34))&" (row ${row + 1})"`,
    },
    mayBranch: {
      heading: "1: it names a branch by airflows; 2: it may, and is wrong",
      formula: (row) => {
        const named = `IF(ISERROR(${at("branchNamed", row)}),2,IF(OR(${at("branchNamed", row)}>0,${unreadFittings(place, row)}),2,0))`;
        return `IF(${isWrong(row)},${named},IF(${at("branchAt", row)}>0,1,0))`;
      },
    },
    openEnd: {
      heading: "1: no run joins it, and none will",
      formula: (row) =>
        `IF(COUNTIF(${all("into")},${row})>0,0,IF(IFERROR(OR(${at("hood", row)}>=0,${at("wanted", row)}>0),FALSE),1,0))`,
    },
    namesake: {
      heading: "Next row of its name",
      formula: (row) => `IFERROR(${row}+MATCH(${at("key", row)},${place.below("key", row)},0),${NONE})`,
    },
    kind: {
      heading: "Answer's row: 1 run, 2 fan, 3 wrong, 4 waits",
      formula: (row) => {
        const partly = `IF(${isWrong(row)},${KIND.wrong},IF(${waitsFor(row)}<${NONE},${KIND.waits},${KIND.run}))`;
        const run = `IF(${at("used", row)}=0,${KIND.nothing},IF(${scalar("ok")}=1,${KIND.run},${partly}))`;
        return `IF(${scalar("ok")}+${scalar("part")}=0,${KIND.nothing},IF(${row}<=${scalar("last")},${run},IF(${row}=${scalar("last")}+1,${KIND.fan},${KIND.nothing})))`;
      },
    },
    told: {
      heading: "said of it without numbers",
      formula: (row) => {
        const waits = noteFormula("waits", { what: `INDEX(${all("label")},${waitsFor(row)})` });
        return `IF(${isKind(row, "waits")},${waits},IF(${isKind(row, "wrong")},${faultSaid(row)},${at("trouble", row)}))`;
      },
    },
    lacks: {
      heading: "and in their place",
      formula: (row) => `IF(${isKind(row, "wrong")},${WRONG_INPUT},IF(${isKind(row, "waits")},NA(),""))`,
    },
  };
}

/** Whether nobody can tell which fittings are meant: one of them may be a branch. */
function unreadFittings(place: RunsReader["place"], row: number): string {
  const [list, entry] = [place.cell("fittingList", row), place.cell("wrongEntry", row)];
  return `IF(ISNUMBER(${list}),OR(${list}<0,${list}>${LARGEST_COEFFICIENT}),${entry}<>"")`;
}
