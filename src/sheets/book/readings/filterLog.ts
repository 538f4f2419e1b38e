import { LEAST_PERCENT } from "../../../reference/leastPercent";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { firstRow } from "../fan/firstRow";
import { aboveHeadings } from "../parts/aboveHeadings";
import { inRows, thisRow } from "../parts/block";
import { isWithin, settingsTold } from "../parts/soundCell";
import { headingIn, unitWord } from "../parts/units";
import type { FilterLog } from "./contents";
import { CLEAN_AT_CELL, FILTER, FILTER_LAST, FILTER_LOG, FILTER_SAYS, plain, RATED_CELL, STRAYS_CELL } from "./layout";

/** 1.5 % each for the drop and the airflow, by one hand with one meter at one place. */
const USUAL_STRAY = 2.1;

const column = (letters: string): string => inRows(letters, FILTER_LOG + 1, FILTER_LAST);
const inThisRow = (letters: string): string => thisRow(letters, FILTER_LOG, FILTER_LAST);
const [N, X, Y] = [`COUNT(${column("K")})`, `SUM(${column("K")})`, `SUM(${column("L")})`];
const SXX = `(SUM(${column("N")})-${X}^2/${N})`;
const SLOPE = `$K$${FILTER + 2}`; // a month, of the logarithm
const OFF = `$K$${FILTER + 3}`; // its ±
const MONTH = `$K$${FILTER + 4}`; // in which the line reaches the loss at which one cleans

const MOST_SLOPE = 99; // a slip in the months: far beyond it no number is large enough
const MONTHS = 600; // a day of the calendar is a number of some 46,000
const DOUBTED = 3; // times what readings stray by: one reading in some hundred lies farther from its line
const FAR_FROM_RATED = 10; // times: no filter is run so
const STRAYS = { least: LEAST_PERCENT, most: 50 };

const ratedIsSound = isWithin(RATED_CELL, `${RATED_CELL}>0`);

/** A word beside a row that the line does not count. */
function rowCheck(): string {
  const [month, typed, drawn, airflow] = (["A", "A:C", "B:C", "C"] as const).map(inThisRow) as [
    string,
    string,
    string,
    string,
  ];
  const cases: readonly (readonly [string, string])[] = [
    [`COUNTA(${typed})=0`, '""'],
    [`COUNT(${typed})<COUNTA(${typed})`, '"check it: month, drop and airflow must be numbers"'],
    [`COUNT(${typed})<3`, '"type month, drop and airflow"'],
    [`MIN(${drawn})<=0`, '"check it: drop and airflow must be above 0"'],
    [`OR(${month}<0,${month}>${MONTHS})`, `"check it: months since it was cleaned, 0 to ${MONTHS}"`],
    [`NOT(${ratedIsSound})`, `"waits for the rated air in ${plain(RATED_CELL)}"`],
    [
      `OR(${airflow}*${FAR_FROM_RATED}<${RATED_CELL},${airflow}>${FAR_FROM_RATED}*${RATED_CELL})`,
      `"check it: airflow is ten times off the rated air: a decimal place?"`,
    ],
  ];
  return cases.reduceRight((otherwise, [when, says]) => `IF(${when},${says},${otherwise})`, '""');
}

const leftOut = `IF(COUNTIF(${column("E")},"?*")=0,"","Not counted: "&COUNTIF(${column("E")},"?*")&" rows; column E says why. ")`;

const withHeader = (letters: string): string => inRows(letters, FILTER_LOG, FILTER_LAST); // a row inserted below it belongs to them
const withoutFormulas = `SUMPRODUCT(ISNUMBER(${withHeader("A")})*(1-ISNUMBER(${withHeader("K")}))*(LEN(${withHeader("E")})=0))`;
const notTakenUp = `IF(${withoutFormulas}=0,"","Not read: "&${withoutFormulas}&" rows without formulas. Copy D to O into them. ")`;

/** What is wrong with the three settings, once a row is typed. */
function settingsCheck(): string {
  const told = settingsTold([
    { cell: RATED_CELL, isSound: ratedIsSound, must: "a number above 0" },
    {
      cell: CLEAN_AT_CELL,
      isSound: `OR(${CLEAN_AT_CELL}="",${isWithin(CLEAN_AT_CELL, `${CLEAN_AT_CELL}>0`)})`,
      must: "a number above 0",
    },
    {
      cell: STRAYS_CELL,
      isSound: isWithin(STRAYS_CELL, `AND(${STRAYS_CELL}>=${STRAYS.least},${STRAYS_CELL}<=${STRAYS.most})`),
      must: `a number from ${STRAYS.least} to ${STRAYS.most}, in %`,
    },
  ]);
  return `IF(COUNTA(${column("A:C")})=0,"",${told})`;
}

/**
 * How fast a filter clogs: what it loses at its rated airflow against months, by a straight line through the logarithms, which is a steady
 * growth. What meter and place are off by lastingly is in all readings and drops out. Plain formulas, so a copy has it.
 *
 *     b = Sxy / Sxx,  u(b) = s / sqrt(Sxx)  (jcgm100 H.3);  growth a month e^b - 1, its ± e^b u(b)
 */
export function filterLog(frame: Frame, given: FilterLog | null): SheetCell[] {
  const rows = Array.from({ length: FILTER_LAST - FILTER_LOG }, (_, index): SheetCell[] => {
    const row = FILTER_LOG + 1 + index;
    const typed = given?.rows[index];
    const loss = `${inThisRow("B")}*${RATED_CELL}/${inThisRow("C")}`;
    const known = (code: string): string => `=IF(ISNUMBER($D${row}),${code},"")`;
    return [
      ...["A", "B", "C"].map((letter, place) => input(`${letter}${row}`, typed?.[place] ?? null)),
      formula(`D${row}`, `=IF(OR($E${row}<>"",COUNT(${inThisRow("A:C")})<3),"",${loss})`, "result", { format: frame.units === "SI" ? "#,##0" : "0.00" }), // prettier-ignore
      formula(`E${row}`, `=${rowCheck()}`, "total"),
      formula(`K${row}`, known(inThisRow("A")), "unit"),
      formula(`L${row}`, known(`LN($D${row})`), "unit"),
      formula(`M${row}`, known(`${inThisRow("A")}*LN($D${row})`), "unit"),
      formula(`N${row}`, known(`${inThisRow("A")}^2`), "unit"),
      formula(`O${row}`, known(`IFERROR(100*ABS($D${row}/EXP(${Y}/${N}+${SLOPE}*(${inThisRow("A")}-${X}/${N}))-1),"")`), "unit"), // prettier-ignore
    ];
  });
  const grows = `EXP(MIN(${SLOPE},${MOST_SLOPE}))`; // times in a month
  const rate = `ROUND(100*(${grows}-1),1)&" ± "&ROUND(100*${grows}*${OFF},1)&" % a month"`;
  const reaches = (slope: string): string => `(${X}/${N}+(LN(${CLEAN_AT_CELL})-${Y}/${N})/(${slope}))`;
  const when = `"; it reaches "&${CLEAN_AT_CELL}&" "&${unitWord(frame, "pressure")}&", where you clean it, in month "&ROUND(${MONTH},0)&" ("&ROUND(${reaches(`${SLOPE}+${OFF}`)},0)&" to "&ROUND(${reaches(`${SLOPE}-${OFF}`)},0)&")"`;
  const isPast = `${MONTH}<=MAX(${column("K")})`;
  const past = `"; it has reached "&${CLEAN_AT_CELL}&" "&${unitWord(frame, "pressure")}&", where you clean it"`;
  const tooFew = `"Too few readings to tell when to clean: the loss grows by "&${rate}&"."`;
  const falls = `"The loss falls by "&ROUND(100*(1-${grows}),1)&" ± "&ROUND(100*${grows}*${OFF},1)&" % a month: cleaned in between, a hole, or read at another place?"`;
  const grown = `"The loss grows by "&${rate}&IF(COUNT(${MONTH})=1,IF(${isPast},${past},${when}),"")&"."`;
  const farthest = `MAX(${column("O")})`;
  const where = firstRow(`ISNUMBER(${column("O")})*(${column("O")}=${farthest})`, column("O"));
  const unsteady = `"No steady growth: row "&${where}&" lies "&ROUND(${farthest},0)&" % off it, where readings stray by "&${STRAYS_CELL}&" %. A slip, or cleaned in between? Then begin anew."`;
  const says = `IF(${farthest}>${DOUBTED}*${STRAYS_CELL},${unsteady},IF(${SLOPE}>${OFF},${grown},IF(${SLOPE}<-${OFF},${falls},${tooFew})))`;
  const oneMonth = `IF(AND(${N}>1,COUNT(${SLOPE})=0),"All are of one month: read again in another.","")`;
  const trouble = `${settingsCheck()}&${leftOut}&${notTakenUp}&${aboveHeadings("C", FILTER + 5, FILTER_LOG)}`;
  return [
    text(`A${FILTER}`, "How fast a filter clogs", "section"),
    text(
      `A${FILTER + 1}`,
      "Read its drop and the airflow once a month, at the same place with the same meter. Begin anew after cleaning it.",
      "note",
    ),
    formula(`A${FILTER + 2}`, headingIn(frame, "Rated air", "airflow"), "label"),
    input(plain(RATED_CELL), given?.rated ?? null, {
      note: "At which the losses are compared: a filter loses with its airflow.",
    }),
    formula(`A${FILTER + 3}`, headingIn(frame, "Clean at", "pressure"), "label"),
    input(plain(CLEAN_AT_CELL), given?.cleanAt ?? null, {
      note: "The loss at its rated airflow at which you clean it: from its maker, or from what your hoods can spare.",
    }),
    text(`A${FILTER + 4}`, "Strays by, %", "label"),
    input(plain(STRAYS_CELL), USUAL_STRAY, {
      note: "From one reading to the next, standard deviation of drop and airflow together.",
    }),
    text(`C${FILTER + 4}`, `${USUAL_STRAY} is 1.5 % each, for a steady hand: common practice, no source.`, "note"),
    formula(FILTER_SAYS, `=TRIM(${trouble}&IF(COUNT(${SLOPE},${OFF})=2,${says},${oneMonth}))`, "total"),
    text(`A${FILTER_LOG}`, "Month", "numberHeader", { note: "Since it was new or cleaned: 0, 1, 2.5 ..." }),
    formula(`B${FILTER_LOG}`, headingIn(frame, "Drop", "pressure"), "numberHeader"),
    formula(`C${FILTER_LOG}`, headingIn(frame, "Airflow", "airflow"), "numberHeader"),
    formula(`D${FILTER_LOG}`, headingIn(frame, "At rated", "pressure"), "numberHeader", {
      note: "Drop times rated airflow over airflow.",
    }),
    text(`E${FILTER_LOG}`, "Check", "header"),
    text(`J${FILTER + 2}`, "a month", "note"),
    formula(plain(SLOPE), `=IFERROR(IF(${N}<2,"",(SUM(${column("M")})-${X}*${Y}/${N})/${SXX}),"")`, "unit"),
    text(`J${FILTER + 3}`, "±", "note"),
    formula(
      plain(OFF),
      `=IFERROR(IF(OR(${N}<2,COUNT(${STRAYS_CELL})=0),"",2*${STRAYS_CELL}/100/SQRT(${SXX})),"")`,
      "unit",
    ),
    text(`J${FILTER + 4}`, "month", "note"),
    formula(plain(MONTH), `=IFERROR(IF(COUNT(${CLEAN_AT_CELL})=0,"",${reaches(SLOPE)}),"")`, "unit"),
    text(`K${FILTER_LOG}`, "Month", "numberHeader"),
    text(`L${FILTER_LOG}`, "Logarithm", "numberHeader"),
    text(`M${FILTER_LOG}`, "Times month", "numberHeader"),
    text(`N${FILTER_LOG}`, "Squared month", "numberHeader"),
    text(`O${FILTER_LOG}`, "Off the line, %", "numberHeader"),
    ...rows.flat(),
  ];
}
