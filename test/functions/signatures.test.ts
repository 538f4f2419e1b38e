/** What a function's file says of its arguments is what the core holds them to: a copy's formulas and the tests go by it. */
import "../support/customFunctions";
import type { Limits } from "../../src/core/errors";
import { fromSI, unitOf } from "../../src/reference/quantities";
import { exampleArguments, signed } from "../support/cellFunctions";
import { refusal } from "../support/refusal";

const SLIGHTLY = 1e-6; // of the limit, or alone where that is 0

/** Just this side and just that side of each limit, in SI. */
function beside({ above, atLeast, below, atMost }: Limits): { side: string; inside: number; outside: number }[] {
  const off = (limit: number, sign: number): number => limit + sign * SLIGHTLY * Math.max(1, Math.abs(limit));
  return [
    ...(above === undefined ? [] : [{ side: "above", inside: off(above, 1), outside: above }]),
    ...(atLeast === undefined ? [] : [{ side: "at least", inside: off(atLeast, 1), outside: off(atLeast, -1) }]),
    ...(below === undefined ? [] : [{ side: "below", inside: off(below, -1), outside: below }]),
    ...(atMost === undefined ? [] : [{ side: "at most", inside: off(atMost, -1), outside: off(atMost, 1) }]),
  ];
}

const numbers = signed.flatMap((declared) =>
  declared.rules.flatMap((rule, index) =>
    rule.kind !== "number"
      ? []
      : beside(rule.limits).map((limit) => ({
          ...declared,
          ...limit,
          unit: unitOf(rule.quantity, "IP"),
          isBlank: !rule.needed && rule.zero !== "none",
          argument: declared.names[index]!,
          at: declared.first + index,
        })),
  ),
);

const outcome = (call: () => unknown): string => {
  try {
    call();
    return "answers";
  } catch {
    return refusal(call).message;
  }
};

test("there are limits to look at", () => expect(numbers.length).toBeGreaterThan(60));

test.each(numbers)("$name holds $argument to $side as its signature says", (row) => {
  const { call, argument, at, inside, outside, unit, isBlank } = row;
  const given = exampleArguments(row);
  const said = (si: number): string =>
    outcome(() => call(...given.map((value, index) => (index === at ? [[fromSI(si, unit)]] : value))));
  const refused = new RegExp(`^${argument} must be (above|at least|below|at most|from) `);
  if (outside !== 0 || !isBlank) expect(said(outside)).toMatch(refused); // a 0 that counts as blank is another matter
  expect(said(inside)).not.toMatch(refused);
});

const optional = signed.flatMap((declared) =>
  declared.rules.flatMap((rule, index) =>
    rule.kind === "number" && !rule.needed && rule.usual !== null
      ? [{ ...declared, usual: fromSI(rule.usual, unitOf(rule.quantity, "IP")), at: declared.first + index }]
      : [],
  ),
);

test.each(optional)("$name without its argument $at answers as with the usual value", (row) => {
  const { call, at, usual } = row;
  const with_ = (cell: number | null): number =>
    call(...exampleArguments(row).map((value, index) => (index === at ? cell && [[cell]] : value)))[0]![0] as number;
  const answer = with_(usual);
  expect(Math.abs(with_(null) - answer)).toBeLessThanOrEqual(1e-12 * Math.abs(answer));
});
