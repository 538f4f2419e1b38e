import { difference as differenceOf, type Meant } from "../../core/measuring/difference";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { differenceTable } from "../measuringTable/differenceTable";
import { readSeries, readRepeatability } from "../measuringTable/readSeries";
import { readChoice, singleCell } from "../arguments";

/**
 * Is a change more than chance? Means before and after, their change and its ± in the readings' unit, verdict, readings needed.
 * @customfunction DIFFERENCE
 * @param before Readings before, one meter at one spot, in any shape and any unit; "still" for a 0, "not read" for none
 * @param after Readings after, taken in the same way with the same gates open, in the same unit
 * @param [percent] How far one reading strays from the next, in % of it (standard deviation), where that is known
 * @param [floor] How far one strays whatever it reads, in the readings' unit (standard deviation), where known
 * @param [repeats] In place of both: two or more readings of one thing at one spot, the meter taken away in between
 * @param [meant] "either" (default), or "less" or "more" where the change was meant to go that way
 * @returns table
 */
export function difference(
  before: unknown[][],
  after: unknown[][],
  percent?: unknown[][],
  floor?: unknown[][],
  repeats?: unknown[][],
  meant?: unknown[][],
): unknown[][] {
  return inHost(null, () => {
    const known = readRepeatability(percent, floor, repeats != null);
    const way = readChoice("meant", singleCell("meant", meant), MEANT);
    const further = repeats == null ? [] : readSeries("repeats", repeats);
    const [first, second] = [readSeries("before", before), readSeries("after", after)];
    const isBelow = [...first, ...second, ...further].some((reading) => reading < 0);
    return differenceTable(differenceOf(first, second, known, further, way), isBelow);
  });
}

const MEANT = ["either", "less", "more"] as const satisfies readonly Meant[];

export const guide: Guide = {
  maths: "|mean after - mean before| > t s √(1/n₁ + 1/n₂), s pooled from the readings",
  source: "nistHandbook",
  basis: "from memory",
  limits:
    "One meter at one spot, taken anew each time: its lasting error and a wrong area in it drop out. A hood cannot show one taped gate, which changes its air by less than readings differ: measure the leak itself. Readings below 0 count by their sign: type suctions without it.",
  cautions: ["power off", "fan inlet guard", "ladders"],
  also: ["before and after", "significant", "repeat readings"],
  example: {
    asks: "A leak read three times before and three times after mending",
    args: [[[25], [27], [26]], [[3], [2], [4]], "", "", "", "less"],
  },
};

export const formula: Formula = {
  tex: [
    "|\\bar x_2 - \\bar x_1| > t_\\nu\\, s\\sqrt{\\frac1{n_1}+\\frac1{n_2}}, \\qquad s^2 = \\frac{S_1+S_2+k^2 S_3}{\\nu}",
    "\\nu = n_1 + n_2 - 2 + (n_3 - 1)",
  ],
  letters: {
    "\\bar x": "mean of the readings before (1) or after (2)",
    n: "how many readings; n₃ those of repeats",
    S: "sum of the squares of the deviations from the own mean",
    k: "how much larger than the mean of repeats the larger mean is, at least 1",
    "t_\\nu": "Student's t of 5 % for ν degrees of freedom: both sides together, or the one side that was meant",
  },
};
