/** BUDGET over a table with wrong rows: each is told where it stands, and what does not hang on it computes. */
import "../../support/customFunctions";
import { MOST_WRONG } from "../../../src/functions/answer";
import { budget } from "../../../src/functions/systems/budget";
import { refusal, shown } from "../../support/refusal";
import { type Row, table } from "../../support/tables";

const saw: Row = { Run: "saw", To: "arm", Diameter: 4, Length: 10, Hood: "plain end", Airflow: 350, Gate: "open" };
const sander: Row = { ...saw, Run: "sander", Length: 20 };
const planer: Row = { ...saw, Run: "planer", To: "main" };
const lathe: Row = { ...saw, Run: "lathe", To: "main", Gate: "shut", "Leak shut": 0.5 };
const arm: Row = { Run: "arm", To: "main", Diameter: 5, Length: 10 };
const main: Row = { Run: "main", To: "fan", Diameter: 6, Length: 10 };
const out: Row = { Run: "out", To: "outside", Diameter: 6, Length: 5 };
const shop = [saw, sander, planer, lathe, arm, main, out];

/** Each row of the answer below its header, errors in words. */
const answerOf = (rows: readonly Row[]): unknown[][] =>
  budget(table(rows))
    .slice(1)
    .map((row) => row.map(shown));
const [RUN, AIRFLOW, RUN_LOSS, SUCTION, PATH, GOVERNS, BALANCED, NOTE] = [0, 1, 7, 8, 9, 10, 11, 12];

const whole = answerOf(shop);
const replaced = (name: string, facts: Row): Row[] =>
  shop.map((row) => (row.Run === name ? { ...row, ...facts } : row));

test("a wrong row says in its note what is wrong, and as #VALUE! in the place of each number", () => {
  const answer = answerOf(replaced("arm", { Length: "long" }));
  const sentence = 'Length of run "arm" (row 6) must be a number (ft); got "long"';
  expect(answer[4]).toEqual(["arm", ...Array<string>(11).fill(`#VALUE! ${sentence}`), sentence]);
});

test("what is downstream of it waits for it by name, the fan too, whose total is never said without it", () => {
  const answer = answerOf(replaced("arm", { Length: "long" }));
  const waits = 'waits for run "arm" (row 6)';
  const error = `#N/A ${waits}`;
  expect(answer[5]).toEqual(["main", ...Array<string>(11).fill(error), waits]);
  expect(answer[6]).toEqual(["out", ...Array<string>(7).fill(error), "", "", "", "", waits]);
  expect(answer[7]).toEqual(["Fan", error, "", "", "", "", "", error, error, error, "", "", waits]);
});

test("upstream of it and beside it numbers are what they were; what the way to the fan decides waits", () => {
  const answer = answerOf(replaced("arm", { Length: "long" }));
  const error = '#N/A waits for run "arm" (row 6)';
  for (const row of [0, 1, 2]) {
    expect(answer[row]!.slice(RUN, PATH)).toEqual(whole[row]!.slice(RUN, PATH));
    expect(answer[row]!.slice(PATH, NOTE)).toEqual([error, error, error]);
    expect(answer[row]![NOTE]).toMatch(/^(dust settles.*; )?waits for run "arm" \(row 6\)$/);
  }
});

test("a junction of which all is known says who governs there, though the way goes on to a wrong row", () => {
  const answer = answerOf(replaced("main", { Diameter: "six" }));
  for (const row of [0, 1]) {
    expect(answer[row]!.slice(GOVERNS, NOTE)).toEqual(whole[row]!.slice(GOVERNS, NOTE));
    expect(answer[row]![PATH]).toBe('#N/A waits for run "main" (row 7)');
  }
  expect(answer[4]!.slice(RUN, PATH)).toEqual(whole[4]!.slice(RUN, PATH));
  expect([answer[4]![GOVERNS], answer[4]![BALANCED]]).toEqual(Array(2).fill('#N/A waits for run "main" (row 7)'));
});

describe("where branches cost by the airflows that meet", () => {
  const [FITTINGS, DEVICE] = [5, 6];
  const straight: Row = { ...sander, To: "arm" };
  const branched = (facts: Row): Row[] => [{ ...saw, Fittings: "branch 45", ...facts }, straight, arm, main];
  const sound = answerOf(branched({}));
  const error = '#N/A waits for run "saw" (row 2)';

  test.each<[string, Row]>([
    ["is wrong, a branch named on it", { Length: "long" }],
    ["is wrong, its list of fittings too", { Fittings: "branch 45; brunch" }],
    ["goes where nobody knows", { To: "amr" }],
  ])("a run beside a row that %s waits with what its junction costs, and its air is known", (_, facts) => {
    const [, beside] = answerOf(branched(facts));
    expect(beside!.slice(RUN, FITTINGS)).toEqual(sound[1]!.slice(RUN, FITTINGS));
    expect(beside![DEVICE]).toEqual(sound[1]![DEVICE]);
    expect([FITTINGS, RUN_LOSS, SUCTION, PATH].map((column) => beside![column])).toEqual(Array(4).fill(error));
  });

  test("a branch whose junction is not known waits likewise; a plain one, or one beside none, has its numbers", () => {
    const other = (fittings: string): unknown[] =>
      answerOf([{ ...saw, Length: "long" }, { ...straight, Fittings: fittings }, arm, main])[1]!;
    expect([FITTINGS, RUN_LOSS].map((column) => other("branch 30")[column])).toEqual([error, error]);
    const plain = answerOf([saw, { ...straight, Fittings: "branch 30 plain" }, arm, main])[1]!;
    expect(other("branch 30 plain").slice(RUN, PATH)).toEqual(plain.slice(RUN, PATH));
    const elbow = answerOf([saw, { ...straight, Fittings: "elbow 1.5" }, arm, main])[1]!;
    expect(other("elbow 1.5").slice(RUN, PATH)).toEqual(elbow.slice(RUN, PATH));
  });
});

test("the leak of a shut gate waits for its junction's suction; without a leak it is 0 whatever comes", () => {
  const leaking = answerOf(replaced("arm", { Length: "long" }))[3]!;
  expect(leaking[AIRFLOW]).toBe('#N/A waits for run "arm" (row 6)');
  expect(leaking[SUCTION]).toBe('#N/A waits for run "arm" (row 6)');
  expect(leaking[NOTE]).toBe('gate shut: only its leak flows; waits for run "arm" (row 6)');
  const tight = replaced("arm", { Length: "long" }).map((row) => ({ ...row, "Leak shut": null }));
  expect(answerOf(tight)[3]![AIRFLOW]).toBe(0);
});

test("a row of which only the name is typed is wrong, and nobody knows yet which main it joins", () => {
  const answer = answerOf([...shop, { Run: "jointer" }]);
  expect(answer[7]![NOTE]).toBe('Diameter of run "jointer" (row 9) must be a number (in); got a blank cell');
  expect(answer.map((row) => row[AIRFLOW])).toEqual([
    ...[350, 350, 350].map((airflow) => expect.closeTo(airflow, 9)),
    ...Array<string>(4).fill('#N/A waits for run "jointer" (row 9)'),
    expect.stringMatching(/^#VALUE! Diameter of run "jointer"/),
    '#N/A waits for run "jointer" (row 9)',
  ]);
});

test("a row that lacks its To alone says so, with its nearest names", () => {
  const [row] = answerOf([{ ...saw, To: null }, arm, main]);
  expect(row![NOTE]).toMatch(/^To of run "saw" \(row 2\) must be the name of another run, or "fan" for the last one/);
  expect(row![AIRFLOW]).toBe(`#VALUE! ${String(row![NOTE])}`);
});

test.each<[string, Row]>([
  ["a hood", { Hood: "plain end", Airflow: 350 }],
  ["fittings", { Fittings: "elbow 1.5" }],
])("a row that begins with %s is a run without a name, never passed over", (_, facts) => {
  const answer = answerOf([...shop.slice(0, 6), facts]);
  expect(answer[6]![NOTE]).toBe("Run of row 8 must be a name; got a blank cell");
  expect(answer.at(-1)![AIRFLOW]).toMatch(/^#N.A waits for the run without a name \(row 8\)/);
});

test("a row of numbers without a name is one of totals", () => {
  expect(answerOf([...shop, { Airflow: 1400, Length: 75 }])).toEqual(whole);
});

test("a row without a name is told, and is waited for without one", () => {
  const answer = answerOf([saw, { ...sander, Run: null }, arm, main]);
  expect(answer[1]![RUN]).toBe("");
  expect(answer[1]![NOTE]).toBe("Run of row 3 must be a name; got a blank cell");
  expect(answer[2]![NOTE]).toBe("waits for the run without a name (row 3)");
});

test("hoods typed first compute, and say that their main is not there yet; the fan waits for a run that ends at it", () => {
  const answer = answerOf([saw, sander]);
  expect(answer[0]!.slice(RUN, PATH)).toEqual(whole[0]!.slice(RUN, PATH));
  expect(answer.map((row) => row[NOTE])).toEqual([
    expect.stringMatching(/waits for run "arm", which no row has$/),
    expect.stringMatching(/waits for run "arm", which no row has$/),
    'waits for a run whose To is "fan"',
  ]);
});

test("a misspelt To names the nearest run that can be joined, and the mains that it may have meant wait", () => {
  const answer = answerOf(replaced("saw", { To: "amr" }));
  expect(answer[0]![NOTE]).toMatch(/waits for run "amr", which no row has \(nearest: "arm"\)$/);
  expect(answer[4]![NOTE]).toBe('waits for run "saw" (row 2)');
  expect(answer[7]![PATH]).toBe('#N/A waits for run "saw" (row 2)');
});

test("a wrong run after the fan leaves the fan's air and suction; its pressure waits, and so do losses after it", () => {
  const answer = answerOf([
    ...replaced("out", { To: "pipe", Side: "discharge" }),
    { ...out, Run: "pipe", Length: "x" },
  ]);
  const error = '#N/A waits for run "pipe" (row 9)';
  const fan = answer.at(-1)!;
  expect([fan[AIRFLOW], fan[SUCTION]]).toEqual([whole.at(-1)![AIRFLOW], whole.at(-1)![SUCTION]]);
  expect([fan[RUN_LOSS], fan[PATH]]).toEqual([error, error]);
  expect(answer[6]!.slice(RUN, 4)).toEqual(whole[6]!.slice(RUN, 4));
  expect(answer[6]!.slice(4, 8)).toEqual(Array(4).fill(error));
  for (const row of [0, 4, 5]) expect(answer[row]).toEqual(whole[row]);
});

test("several wrong rows are each told in place; who waits names the first", () => {
  const rows = replaced("saw", { Hood: "plane end" }).map((row) =>
    row.Run === "planer" ? { ...row, Diameter: -4 } : row,
  );
  const answer = answerOf(rows);
  expect(answer.map((row) => row[NOTE])).toEqual([
    expect.stringMatching(/^Hood of run "saw" \(row 2\) must be .*nearest: "plain end"/),
    expect.stringMatching(/waits for run "saw" \(row 2\)$/),
    'Diameter of run "planer" (row 4) must be above 0 in; got -4',
    expect.stringMatching(/waits for run "saw" \(row 2\)$/),
    ...Array<string>(4).fill('waits for run "saw" (row 2)'),
  ]);
});

test("mended, it answers as before; blank rows between stay blank", () => {
  answerOf(replaced("arm", { Length: "long" }));
  expect(answerOf(shop)).toEqual(whole);
  const [first, ...rest] = replaced("arm", { Length: "long" });
  expect(answerOf([first!, { Run: null }, ...rest])[1]).toEqual(Array(13).fill(""));
});

test(`more than ${MOST_WRONG} rows in trouble are one refusal: that range is no runs table`, () => {
  const many = (count: number): Row[] =>
    Array.from({ length: count }, (_, index) => ({ Run: `r${index}`, To: "main" }));
  expect(refusal(() => budget(table([...many(MOST_WRONG + 1), main]))).message).toBe(
    'Diameter of run "r0" (row 2) must be a number (in); got a blank cell',
  );
  const chain = Array.from({ length: MOST_WRONG + 1 }, (_, index): Row => ({
    ...arm,
    Run: `r${index}`,
    To: `r${index + 1}`,
  }));
  expect(refusal(() => budget(table([{ ...saw, To: "r0", Length: "long" }, ...chain]))).message).toMatch(
    /^Length of run "saw" \(row 2\) must be/,
  );
});
