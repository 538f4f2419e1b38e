import { FEW_DEGREES, NORMAL, SEEN_MOSTLY, type Sides, tSeries, UPPER_HUNDREDTH } from "../../../core/measuring/chance";
import { REPEAT_PERCENT, SAME_READING } from "../../../core/measuring/difference";
import { plain } from "../../../core/naming/findNamed";
import { FROM_ZERO } from "../../../functions/signature";
import { differenceColumns, type DifferenceKey } from "../../../reference/answerColumns";
import { BELOW_NOTHING, differenceWords } from "../../../reference/differenceWords";
import { NOT_READ, STILL } from "../../../reference/zeroWords";
import { columnsOf, rowsOf } from "../../../sheets/rectangle";
import { type RangeRef, rangeText } from "../../../sheets/rangeRef";
import { cellOf, onAnySheet } from "../../formula/ranges";
import { quotedText } from "../../references";
import { elementOf } from "../element";
import { both, isOneOf, NO_ANSWER, num, plainName } from "../expressions/text";
import { wordOf } from "../namedReaders";
import { optionalNumber } from "../readers";
import { type Argument, type CallContext, oneCell, type Translator } from "../translation";

const MEANT = ["either", "less", "more"] as const;

/** The steps of the test, a cell of the workings each, in this order. */
const STEPS = [
  ...["percent", "floor", "meant", "n1", "m1", "S1", "n2", "m2", "S2", "n3", "m3", "S3", "sound"],
  ...["known", "own", "largest", "v1", "v2", "degrees", "ofOne", "ofBoth", "t", "limit", "change", "says", "needed"],
] as const;
type Step = (typeof STEPS)[number];

/** Every step stands in a cell of its own, so that a reader of the copy can follow it. */
export const difference: Translator = (args, context) => {
  const [before, after, percent, floor, repeats, meant] = [0, 1, 2, 3, 4, 5].map((index) => args[index] ?? null);
  if (before == null || after == null) return oneCell(NO_ANSWER);
  const [first, second] = [readingCells(before, context), readingCells(after, context)];
  const third = repeats == null ? null : readingCells(repeats, context);
  const part = (given: Argument | null | undefined, limits: typeof REPEAT_PERCENT) => {
    const element = given == null ? null : elementOf(given, 0, 0, context);
    return optionalNumber(element, { quantity: "ratio", limits, zero: "usual" }, "0", "IP");
  };
  const [share, fixedPart] = [part(percent, REPEAT_PERCENT), part(floor, FROM_ZERO)];
  const element = meant == null ? null : elementOf(meant, 0, 0, context);
  const word = wordOf(element, MEANT);
  const wordText =
    element === null || typeof element.literal === "string" ? quotedText(plain(word.value)) : plainName(element.text);
  const checks = [...share.checks, ...fixedPart.checks, ...word.checks].map((code) => onAnySheet(code, context.sheet));
  const place = context.workings.place(STEPS.length, 1, (range) => {
    const at = (step: Step): string => cellOf(range, STEPS.indexOf(step), 0, range.sheet);
    const formulas = steps(at, first, second, third, checks);
    const given = { percent: share.value, floor: fixedPart.value, meant: wordText };
    return STEPS.map((step) => [
      step in given
        ? onAnySheet(given[step as keyof typeof given], context.sheet)
        : formulas[step as keyof typeof formulas],
    ]);
  });
  const at = (step: Step): string => cellOf(place, STEPS.indexOf(step), 0, context.sheet);
  const sound = (code: string): string => `IF(ISNUMBER(${at("sound")}),${code},${NO_ANSWER})`;
  const answers: Record<DifferenceKey, string> = {
    before: at("m1"),
    after: at("m2"),
    change: at("change"),
    limit: at("limit"),
    percent: `IF(${at("m1")}=0,"",100*${at("change")}/ABS(${at("m1")}))`,
    verdict: `${at("says")}&IF(MIN(${[first, second, ...(third === null ? [] : [third])].map(rangeText).join(",")})<0,${quotedText(BELOW_NOTHING)},"")`,
    needed: at("needed"),
  };
  return {
    kind: "cells",
    formulas: [
      differenceColumns.map(({ header }) => sound(quotedText(header))),
      differenceColumns.map(({ key }) => sound(answers[key])),
    ],
  };
};

/** Each reading gets a cell with its number, blank where nobody read. */
function readingCells(arg: Argument, context: CallContext): RangeRef {
  const { workings } = context;
  const one = (cell: string): string => {
    const words = `IF(${isOneOf(cell, STILL)},0,IF(${isOneOf(cell, NOT_READ)},"",${NO_ANSWER}))`;
    return `IF(ISNUMBER(${cell}),IF(${cell}<>0,${cell},${NO_ANSWER}),${words})`;
  };
  const { range } = arg;
  if (range === undefined)
    return workings.place(1, 1, () => [[one(onAnySheet(elementOf(arg, 0, 0, context).text, context.sheet))]]);
  const [rows, columns] = [rowsOf(range), columnsOf(range)];
  return workings.place(rows, columns, () =>
    Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column) => one(cellOf(range, row, column, workings.sheet.name))),
    ),
  );
}

function steps(
  at: (step: Step) => string,
  first: RangeRef,
  second: RangeRef,
  third: RangeRef | null,
  checks: readonly string[],
): Record<Exclude<Step, "percent" | "floor" | "meant">, string> {
  const count = (range: RangeRef): string => `COUNT(${rangeText(range)})`;
  const mean = (range: RangeRef): string => `AVERAGE(${rangeText(range)})`;
  const squares = (range: RangeRef, n: string): string => `IF(${n}>1,VAR(${rangeText(range)})*(${n}-1),0)`;
  const isEither = `AND(${at("meant")}<>"less",${at("meant")}<>"more")`;
  const bySides = (of: (sides: Sides) => number): string => `IF(${isEither},${num(of(2))},${num(of(1))})`;
  const says = (key: keyof typeof differenceWords): string => quotedText(differenceWords[key]);
  const ifKnown = (known: string, shown: string): string => `IF(${at("known")},${known},${shown})`;
  const enough = [`${at("n1")}>0`, `${at("n2")}>0`, ...(third === null ? [] : [`${at("n3")}>1`])];
  const growth = `MAX(1,${at("largest")}/ABS(${at("m3")}))`;
  const variance = (m: string): string => `(${at("percent")}/100*${m})^2+${at("floor")}^2`;
  const way = `IF(${at("change")}>0,"more","less")`;
  const series = [4, 3, 2, 1].reduce(
    (inner, power) =>
      `(${bySides((sides) => tSeries(sides)[power]!)}${inner === "" ? "" : `+${inner}`})/${at("degrees")}`,
    "",
  );
  const normal = bySides((sides) => NORMAL[sides]);
  const few = FEW_DEGREES[2]
    .map((_, index) => index + 1)
    .reduceRight(
      (other, degrees) =>
        `IF(${at("degrees")}=${degrees},${bySides((sides) => FEW_DEGREES[sides][degrees - 1]!)},${other})`,
      `${normal}+${series}`,
    );
  const scatterLimit = `${at("own")}*(1-2/(9*${at("own")})+${num(UPPER_HUNDREDTH)}*SQRT(2/(9*${at("own")})))^3`;
  const isScattered = `IF(${at("own")}>0,${at("S1")}*${at("v2")}+${at("S2")}*${at("v1")}>${scatterLimit}*${at("v1")}*${at("v2")},FALSE)`;
  const isBeyond = `ABS(${at("change")})>${at("t")}*${at("ofBoth")}`;
  const leastScatter = ifKnown("0", `${num(SAME_READING)}*${at("largest")}`);
  const verdict = [
    [`AND(NOT(${at("known")}),${at("degrees")}=0)`, says("single")],
    [ifKnown(isScattered, "FALSE"), says("scattered")],
    [`${at("ofOne")}<=${leastScatter}`, says("alike")],
    [`${at("change")}=0`, says("no change")],
    [`AND(NOT(${isEither}),${at("meant")}<>${way})`, says("other way")],
    [isBeyond, `IF(${at("change")}>0,${says("more")},${says("less")})`],
  ].reduceRight((otherwise, [when, words]) => `IF(${when},${words},${otherwise})`, says("too small"));
  const deviations = `(ABS(${at("change")})/${at("ofOne")})`;
  return {
    n1: count(first),
    m1: mean(first),
    S1: squares(first, at("n1")),
    n2: count(second),
    m2: mean(second),
    S2: squares(second, at("n2")),
    n3: third === null ? "1" : count(third),
    m3: third === null ? "1" : mean(third),
    S3: third === null ? "0" : squares(third, at("n3")),
    // a number only where nothing is wrong with what was given
    sound: `IF(${both([...checks, ...enough])},IF(${at("m3")}=0,${NO_ANSWER},${
      third === null ? "" : `IF(${at("known")},${NO_ANSWER},`
    }${at("m1")}+${at("m2")}+${at("S1")}+${at("S2")}+${at("S3")}${third === null ? "" : ")"}),${NO_ANSWER})`,
    known: `OR(${at("percent")}>0,${at("floor")}>0)`,
    own: `${at("n1")}+${at("n2")}-2`,
    largest: `MAX(ABS(${at("m1")}),ABS(${at("m2")}))`,
    v1: variance(at("m1")),
    v2: variance(at("m2")),
    degrees: `${at("own")}+${at("n3")}-1`,
    ofOne: ifKnown(
      `SQRT((${at("v1")}+${at("v2")})/2)`,
      `IF(${at("degrees")}=0,0,SQRT((${at("S1")}+${at("S2")}+${growth}^2*${at("S3")})/MAX(1,${at("degrees")})))`,
    ),
    ofBoth: ifKnown(
      `SQRT(${at("v1")}/${at("n1")}+${at("v2")}/${at("n2")})`,
      `${at("ofOne")}*SQRT(1/${at("n1")}+1/${at("n2")})`,
    ),
    t: ifKnown(normal, `IF(${at("degrees")}=0,0,${few})`),
    limit: `IF(OR(${at("says")}=${says("single")},${at("says")}=${says("alike")},${at("says")}=${says("scattered")}),"",${at("t")}*${at("ofBoth")})`,
    change: `${at("m2")}-${at("m1")}`,
    says: verdict,
    needed: `IF(${at("says")}=${says("too small")},MAX(2,ROUNDUP(${bySides((sides) => 2 * (NORMAL[sides] + SEEN_MOSTLY) ** 2)}/${deviations}^2+${bySides((sides) => NORMAL[sides] ** 2 / 4)},0)),"")`,
  };
}
