import { claimColumns } from "../../reference/answerColumns";
import { claimBounds } from "../../reference/claimBounds";
import type { BlockColumn, BlockScalar } from "../budget/block";
import { num } from "../translate/expressions/text";
import type { GivenFacts, Line } from "./checks/checked";
import type { FactPlace, LineColumn, LinePlace, lineScalars, RowPlace } from "./claimNames";
import { literal, say, worked } from "./say";
import type { Steps } from "./steps";
import { firstGiven, flag } from "./checks/checked";

type LineCells = Readonly<Partial<Record<LineColumn, string>>>;

const HEADINGS: Readonly<Record<LineColumn, string>> = {
  applies: "1: a line of the answer",
  number: "its number",
  check: "Check",
  claimed: "Their number",
  allowed: "Allowed",
  unit: "Unit",
  verdict: "Verdict",
  why: "Why",
  source: "Source",
  ask: "To ask",
  otherAsk: "and",
  asked: "all to ask",
  cannot: "impossible",
  doubted: "doubtful",
  shows: "Line that stands here in the answer",
};

/** Lines below the rows of the table and the checks: the closing one, and the one that stands where no check applies. */
export const LAST_LINES = 2;

const MOST_ASKED = 4;
const MARK = "|"; // between the items of a list that grows from line to line

export interface Lines {
  readonly place: LinePlace;
  readonly rows: RowPlace;
  readonly facts: FactPlace;
  readonly checks: readonly Line[];
  readonly inShort: string; // of the closing line
}

/** All lines that the answer may have, in its order; those that apply are numbered, and each row of the answer finds the one of its number. */
export function lineCells({ place, rows, facts, checks, inShort }: Lines): BlockColumn<LineColumn>[] {
  const { cell, all, scalar } = place;
  const fault = (row: number): LineCells => ({
    applies: flag(`${rows.cell("why", row)}<>""`),
    check: rows.cell("check", row),
    claimed: rows.cell("value", row),
    verdict: literal("not read"),
    why: rows.cell("why", row),
  });
  const check = (line: Line, index: number, row: number): LineCells => {
    const where = (formula: string): string => `IF(${cell("applies", row)}=1,${formula},"")`;
    const before = (column: LineColumn): string => (index === 0 ? literal(MARK) : cell(column, row - 1));
    const withAsk = (list: string, ask: string): string =>
      `IF(${ask}="",${list},IF(ISNUMBER(FIND("${MARK}"&${ask}&"${MARK}",${list})),${list},${list}&${ask}&"${MARK}"))`;
    const named = (column: "cannot" | "doubted", verdict: string): string =>
      `${before(column)}&IF(${cell("verdict", row)}="${verdict}",LOWER(${cell("check", row)})&"${MARK}","")`;
    return {
      applies: line.applies,
      check: where(line.check),
      claimed: where(line.claimed),
      allowed: where(line.allowed),
      unit: where(line.unit),
      verdict: where(line.verdict),
      why: where(line.why),
      source: where(line.source),
      ask: where(line.asks[0] ?? '""'),
      otherAsk: line.asks[1] === undefined ? "" : where(line.asks[1]),
      asked:
        line.asks[1] === undefined
          ? withAsk(before("asked"), cell("ask", row))
          : withAsk(`(${withAsk(before("asked"), cell("ask", row))})`, cell("otherAsk", row)),
      cannot: named("cannot", "impossible"),
      doubted: named("doubted", "doubtful"),
    };
  };
  const closing: LineCells = {
    applies: flag(`${scalar("checks")}>0`),
    check: literal("In short"),
    why: inShort,
  };
  const none: LineCells = {
    applies: flag(`AND(${scalar("faults")}+${scalar("checks")}=0,SUM(${facts.all("has")})>0)`),
    check: literal("No check"),
    verdict: literal("cannot tell"),
    why: literal("These facts allow no check: most need the airflow or the pressure too."),
  };
  const shown = new Set<LineColumn>(claimColumns.map(({ key }) => key));
  const lines: LineCells[] = [
    ...Array.from({ length: rows.rows }, (_, index) => fault(index + 1)),
    ...checks.map((line, index) => check(line, index, rows.rows + index + 1)),
    closing,
    none,
  ];
  const formulas: Record<"number" | "shows", (row: number) => string> = {
    number: (row) => `IF(${cell("applies", row)}=1,SUM(${all("applies").split(":")[0]!}:${cell("applies", row)}),0)`,
    shows: (row) => `IFERROR(MATCH(${row},${all("number")},0),0)`,
  };
  return (Object.keys(HEADINGS) as LineColumn[]).map((name) => ({
    name,
    heading: HEADINGS[name],
    formula: (row) =>
      name === "number" || name === "shows"
        ? formulas[name](row)
        : (lines[row - 1]![name] ?? (shown.has(name) ? '""' : "")),
  }));
}

export const lineScalarCells = ({ place, rows, facts, checks }: Lines): BlockScalar<(typeof lineScalars)[number]>[] => {
  const { cell, scalar } = place;
  const sum = (from: number, to: number): string => `SUM(${cell("applies", from)}:${cell("applies", to)})`;
  return [
    { name: "faults", heading: "Rows that are not read", formula: sum(1, rows.rows) },
    { name: "checks", heading: "Checks", formula: sum(rows.rows + 1, rows.rows + checks.length) },
    {
      name: "ok",
      heading: "1: there is an answer",
      formula: flag(`${scalar("faults")}+SUM(${facts.all("has")})>0`),
    },
  ];
};

/** What to expect, and what to ask the seller for. */
export function inShort(
  facts: GivenFacts,
  list: Steps,
  last: (column: "asked" | "cannot" | "doubted") => string,
): string {
  const [cannot, doubted] = (["cannot", "doubted"] as const).map((column) =>
    list.step(column === "cannot" ? "IN SHORT: cannot be" : "doubtful", listed(list, last(column))),
  ) as [string, string];
  const first = Array.from({ length: MOST_ASKED }).reduce<string>(
    (at) => `IFERROR(FIND("${MARK}",${last("asked")},${at}+1),${at})`,
    "1",
  );
  const asked = list.step("First to ask", `LEFT(${last("asked")},${first})`);
  const asks = list.step("in words", listed(list, asked));
  const isRated = facts.has("rated point");
  const rated = list.where(list.step("1: rated", flag(isRated)));
  const q = rated.amount("Rated airflow", facts.rated.airflow, "airflow");
  const p = rated.amount("Rated pressure", facts.rated.pressure, "pressure");
  const airflow = list.step("Airflow (m³/s)", firstGiven(facts, "free-air airflow", "airflow"));
  const free = list.where(list.step("1: an airflow", flag(`${airflow}>0`)));
  const { systemShareLow: low, systemShareHigh: high } = claimBounds;
  const [from, to, of] = [low.value, high.value, 1].map((share) =>
    free.amount("of it on ducts", `${num(share)}*${airflow}`, "airflow"),
  ) as [typeof q, typeof q, typeof q];
  const less = worked(`IF(${cannot}="","","less than ")`);
  const expected = list.step(
    "What to expect",
    `IF(${isRated},${say`Expect ${less}${q} where your ducts, hoods and filter take ${p}.`}&" ",IF(${airflow}>0,${say`Expect ${from} to ${to} on ducts, by common practice, not ${of}. `},""))`,
  );
  const usual = literal("the fan's curve and the standard it was tested by");
  return [
    `IF(${cannot}="","",${say`Cannot be as given: ${worked(cannot)}. `})`,
    `IF(${doubted}="","",${say`Doubtful: ${worked(doubted)}. `})`,
    expected,
    say`Ask the seller for ${worked(`IF(${asks}="",${usual},${asks})`)}.`,
  ].join("&");
}

/** "a; b; and c" of |a|b|c| */
function listed(list: Steps, marked: string): string {
  const items = list.step("items", `IF(LEN(${marked})<3,"",MID(${marked},2,LEN(${marked})-2))`);
  const commas = `(LEN(${items})-LEN(SUBSTITUTE(${items},"${MARK}","")))`;
  return `IF(${commas}=0,${items},SUBSTITUTE(SUBSTITUTE(${items},"${MARK}","; and ",MAX(1,${commas})),"${MARK}","; "))`;
}
