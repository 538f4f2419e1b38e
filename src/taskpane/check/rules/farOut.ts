import { DUCT_ACROSS, PLAUSIBLE } from "../../../reference/plausible";
import { toSI, type UnitSystem, unitOf } from "../../../reference/quantities";
import { plain } from "../../../core/naming/findNamed";
import type { Calculated } from "../../../sheets/calculated";
import { filledAddresses } from "../../../sheets/rectangle";
import type { BookAnswer } from "../answersIn";
import { type CheckRule, type Finding, practice } from "../finding";
import { inGroups } from "../inGroups";
import type { BookRuns } from "../runs";
import { wholeCallsIn } from "../named/callsIn";

type Plausible = keyof typeof PLAUSIBLE;

/** What a function answers, and the place of its units argument, from 0. */
const ANSWERS: Readonly<Record<string, readonly [Plausible, number]>> = {
  AIRFLOW: ["airflow", 3],
  VELOCITY: ["velocity", 3],
  PITOTVELOCITY: ["velocity", 2],
  TRAVERSE: ["velocity", 3],
  VELOCITYPRESSURE: ["pressure", 2],
  FRICTION: ["lossPerLength", 4],
  RUNLOSS: ["pressure", 5],
  FITTINGLOSS: ["pressure", 5],
  HOODSUCTION: ["pressure", 4],
  HOODAIRFLOW: ["airflow", 4],
  LEAK: ["airflow", 4],
  GATELEAK: ["airflow", 4],
  SEAMLEAK: ["airflow", 3],
  FANPRESSURE: ["pressure", 2],
};

const WHY =
  "Mostly a slip of units: look at the units argument, and whether a diameter stands in inches or millimetres, an airflow in cfm or m³/h.";

const LENGTH_WHY =
  "Mostly a comma that was meant as a decimal one, which the sheet takes for thousands (type 2.5, not 2,500), or a length in millimetres: it goes into a cell in m or ft.";

/** Answers that no workshop's ducts can have. They compute all the same. */
export const farOut: CheckRule = ({ book, answers, runs }) => [
  ...ofCalls(book),
  ...ofRuns(answers),
  ...ofLengths(runs),
  ...ofDiameters(runs),
];

function ofCalls(book: Calculated): Finding[] {
  return wholeCallsIn(book).flatMap(({ sheet, at, name, args }) => {
    const answer = ANSWERS[name];
    if (answer === undefined) return [];
    const [quantity, units] = answer;
    const system = args(units).some((word) => plain(String(word)) === "si") ? "SI" : "IP";
    const shown = book.shown.get(sheet);
    return filledAddresses(at, shown?.get(at)?.fills ?? { rows: 1, columns: 1 }).flatMap((there) => {
      const value = shown?.get(there)?.value;
      return typeof value === "number" ? judged(there, sheet, there, value, quantity, system) : [];
    });
  });
}

/** A run's velocity as BUDGET and SOLVE have it: an answer in SI. */
const ofRuns = (answers: readonly BookAnswer[]): Finding[] =>
  answers.flatMap(({ sheet, system, rows }) =>
    rows.flatMap((row) =>
      row.velocity === null || row.velocity <= PLAUSIBLE.velocity
        ? []
        : [finding(row.run, sheet, row.at("velocity"), row.velocity, "velocity", system)],
    ),
  );

/** What was typed as 2,500 for two and a half stands as 2500, where a comma sets thousands apart; the cell shows no more than that. */
const ofLengths = (tables: readonly BookRuns[]): Finding[] =>
  tables.flatMap(({ sheet, system, runs }) =>
    runs.flatMap(({ name, pipe, hose, at }) =>
      (
        [
          ["Length", pipe],
          ["Flex", hose],
        ] as const
      ).flatMap(([column, length]) =>
        length <= PLAUSIBLE.length
          ? []
          : [{ ...finding(name, sheet, at(column), length, "length", system), why: LENGTH_WHY }],
      ),
    ),
  );

/** 4 for four inches in a table in mm, 100 for mm in one in inches: too fast is all that its answers say, or nothing. */
const ofDiameters = (tables: readonly BookRuns[]): Finding[] =>
  tables.flatMap(({ sheet, system, runs }) =>
    runs.flatMap(({ name, diameter, at }) => {
      if (diameter === null || (diameter >= DUCT_ACROSS.narrowest && diameter <= DUCT_ACROSS.widest)) return [];
      const isNarrow = diameter < DUCT_ACROSS.narrowest;
      const [typed, read] = system === "SI" ? ["inches", "millimetres"] : ["millimetres", "inches"];
      return [
        {
          rule: "Far out",
          what: `${name}: a diameter of ${inGroups(diameter, "diameter", system)} is ${isNarrow ? "narrower" : "wider"} than any workshop's duct.`,
          why: `${isNarrow === (system === "SI") ? `Mostly ${typed} where the table has ${read}` : "Mostly a decimal place that slipped"}: all that flows is computed with it.`,
          source: practice,
          sheet,
          at: at("Diameter"),
        },
      ];
    }),
  );

function judged(
  who: string,
  sheet: string,
  at: string,
  value: number,
  quantity: Plausible,
  system: UnitSystem,
): Finding[] {
  const si = toSI(value, unitOf(quantity, system));
  return si < 0 || si > PLAUSIBLE[quantity] ? [finding(who, sheet, at, si, quantity, system)] : [];
}

function finding(who: string, sheet: string, at: string, si: number, quantity: Plausible, system: UnitSystem): Finding {
  const bound = si < 0 ? "0" : `the ${inGroups(PLAUSIBLE[quantity], quantity, system)} of any workshop`;
  const beyond = si < 0 ? "is below" : "is far above";
  return {
    rule: "Far out",
    what: `${who}: ${inGroups(si, quantity, system)} ${beyond} ${bound}.`,
    why: WHY,
    source: practice,
    sheet,
    at,
  };
}
