import { covariance, seen } from "../../core/numeric/withPriors";
import { priorsOf } from "../../core/network/calibration/model";
import type { Unknown } from "../../core/network/calibration/unknowns";
import { joinNotes, sayNote } from "../../reference/notes";
import { inputInWords } from "../uncertaintyTable/inputInWords";
import type { CalibrateCells } from "./calibrateRow";
import type { Calibration } from "./calibration";

/** What is written is two standard deviations, as in UNCERTAINTY. */
export const COVERAGE = 2;

/** Below these shares of what was known before, an input counts as measured, and as narrowed. */
const [MEASURED, NARROWED] = [0.5, 0.85];

/** Two inputs that go together so closely are not told apart. */
const TIED = 0.6;

const ALWAYS: readonly Unknown["kind"][] = ["fan pressure", "fan speed", "pipe", "hose", "device", "meter"];

/** What the readings say of the inputs. */
export interface InputRows {
  readonly rows: readonly CalibrateCells[];
  readonly untouched: number; // inputs without a row
  readonly apart: readonly string[]; // pairs that these readings cannot tell apart
}

/** A row for each input that the readings tell something of, and for those that everyone asks for. */
export function inputRows(calibration: Calibration): InputRows {
  const { model, judged } = calibration;
  const { state, narrowed } = judged.fit;
  const priors = priorsOf(model);
  const answers = model.unknowns.map((_, place) =>
    seen(
      narrowed,
      Float64Array.from(model.unknowns, (__, other) => (other === place ? 1 : 0)),
    ),
  );
  const deviations = answers.map((one) => Math.sqrt(Math.max(covariance(priors, one, one), 0)));
  const known = model.unknowns.map((unknown, place) => ({
    ...{ unknown, place, words: wordsOf(unknown, calibration) },
    deviation: deviations[place]!,
    share: deviations[place]! / unknown.deviation,
  }));
  const shown = known.filter(({ unknown, share }) => share < NARROWED || ALWAYS.includes(unknown.kind));
  const correlation = (one: number, other: number): number =>
    covariance(priors, answers[one]!, answers[other]!) / (deviations[one]! * deviations[other]!);
  const tied = (one: (typeof known)[number], among: readonly (typeof known)[number][]): string[] =>
    among.flatMap((other) =>
      other !== one && Math.abs(correlation(one.place, other.place)) > TIED ? [other.words] : [],
    );
  const apart = shown.flatMap((one, index) =>
    tied(one, shown.slice(index)).map((other) => `${one.words} and ${other}`),
  );
  const rows = shown.map((one): CalibrateCells => {
    const { unknown, place, words, deviation, share } = one;
    const others = tied(one, shown);
    const factor = Math.exp(state.logarithms[place]!);
    const told = share < MEASURED ? "told" : share < NARROWED ? "partlyTold" : "hardlyTold";
    // A leak is times or over, since a percentage would reach below nothing.
    const [unit, whole] = unknown.kind === "leak" ? ["times", 1] : ["%", 100];
    const error = (middle: number, off: number): number =>
      unknown.kind === "leak" ? Math.exp(COVERAGE * off) : middle * whole * COVERAGE * off;
    return {
      ...{ part: "input", what: words, before: whole, after: whole * factor, unit },
      errorBefore: error(1, unknown.deviation),
      errorAfter: error(factor, deviation),
      inWords: joinNotes([
        sayNote(told),
        ...(others.length === 0 ? [] : [sayNote("goesWith", { which: others.join(" and ") })]),
      ]),
    };
  });
  return { rows, untouched: known.length - shown.length, apart };
}

/** An unknown as a sentence names it. */
export function wordsOf({ kind, run, gate }: Unknown, { sets, typed }: Calibration): string {
  if (kind === "meter") {
    const names = [...new Set(typed.flatMap(({ one }) => (one?.meter == null ? [] : [one.meter])))];
    const [quantity, ...name] = names[run]!.split(" ");
    return name.length === 0
      ? "the airflow meter"
      : `${quantity === "air" ? "airflow" : "pressure"} meter ${name.join(" ")}`;
  }
  const words = inputInWords(kind, sets[0]!.table.runs[run]?.run.name ?? "");
  return gate === null || gate === "none" ? words : `${words}, gate ${gate}`;
}
