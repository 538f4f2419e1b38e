import type { UnitSystem } from "../../reference/quantities";

/** What decides which words are true in a copy. */
export interface CopyFacts {
  readonly units: UnitSystem;
  /** Whether a call, as the book's texts quote it, is plain formulas in the copy. */
  readonly isLive: (call: string) => boolean;
  /** Whether every call of a function is. */
  readonly allLive: (name: string) => boolean;
  /** Sheets that the copy added; null where it is of values, in which nothing follows. */
  readonly sheets: { readonly workings: string; readonly fixed: string } | null;
}

type Words = string | ((facts: CopyFacts, ...found: string[]) => string | null);
type Rule = readonly [was: RegExp, is: Words];

/** A text as the sheets of a budget write it: whole, letter by letter. */
const whole = (words: string): RegExp => new RegExp(`^${words.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}$`);

const UNITS: Readonly<Record<UnitSystem, string>> = {
  IP: "I-P: cfm, fpm, in.w.g., in, ft.",
  SI: "SI: m³/h, m/s, Pa, mm, m.",
};

/** True only while the function is fixed. */
const ifFixed =
  (name: string, words: string): Words =>
  ({ allLive }) =>
    allLive(name) ? null : words;

/** Words in place of something to try with a function that has no live call. */
const ifStill =
  (name: string, words: string): Words =>
  ({ isLive, sheets }) =>
    isLive(`DUCT.${name}(`) ? null : sheets === null ? STILL : words;

const STILL = "Nothing here recalculates.";

/** A sentence on what is struck out, which nothing is in a copy of values. */
const struck =
  (words: string): Words =>
  ({ sheets }) =>
    sheets === null ? STILL : words;

/** True only of a copy of values, in which no cell is for anybody to fill. */
const ofValues =
  (words: string): Words =>
  ({ sheets }) =>
    sheets === null ? words : null;

const filledBy = ({ isLive, sheets }: CopyFacts, call: string): string =>
  sheets === null
    ? STILL
    : isLive(call)
      ? `Plain formulas fill this table; their steps stand on the sheet ${sheets.workings}.`
      : `This table is fixed, and is struck out once it is old: see the sheet ${sheets.fixed}.`;

/**
 * Texts and notes of a budget's sheets that are not so in a copy, and what is so there. A member has no add-in: nothing can be asked of it, no
 * function typed, no units chosen, and a fixed number does not follow.
 */
const rules: readonly Rule[] = [
  // how to read the cells
  [whole("boxed cell"), ofValues("any cell")],
  [whole("yours to fill"), ofValues("as it stood on the day of the copy")],
  [
    whole("is yours to fill or change. Cells without a box are computed, or explain."),
    ofValues("is as it stood on the day of the copy."),
  ],
  [
    whole("An input: type, choose or leave blank. Nothing else needs a change."),
    ofValues("As it stood on the day of the copy."),
  ],
  [
    whole("A result or an explanation. Typed over, it no longer computes; undo brings it back."),
    ofValues("A result or an explanation, likewise."),
  ],
  // Start
  [
    whole("Fill the boxed cells, sheet by sheet, in the order below. Everything else computes itself."),
    struck(
      "A copy: change what is boxed, and what recalculates follows. What is slanted is fixed; once it is old it is struck out.",
    ),
  ],
  [
    /^IP: cfm, fpm, .* Choose (first|before you type numbers)\.$/,
    ({ units }) => `${UNITS[units]} Fixed in this copy: another word there changes nothing.`,
  ],
  [/^IP or SI\. Every formula of the budget takes its units from this cell.*$/s, "The units of all numbers here."],
  [
    /^Choose the units above, then your air's temperature, your altitude and (.*)$/,
    "Type your air's temperature, your altitude and $1 The units are fixed.",
  ],
  [
    whole("Open and shut gates: what really flows with that fan, what leaks take, which change would help most."),
    ({ isLive }) =>
      isLive("DUCT.SOLVE(")
        ? "Open and shut gates, and read what flows then. What is slanted there is as of the day of the copy."
        : "Read what flowed with that fan on the day of the copy, what leaks took, and which change helped most.",
  ],
  [
    whole("See which machines can run together, and have the pipe sizes chosen for those that shall."),
    "Read which machines can run together, as of the day of the copy, and which pipe its maker chose.",
  ],
  [
    whole("Type what you read in the ducts: what fan, hoses and leaks really do, and which reading is a slip."),
    "Read what was measured in the ducts, and what it said of fan, hoses and leaks on the day of the copy.",
  ],
  [
    whole("Hold a vendor's numbers against physics before you buy."),
    ifFixed("CLAIM", "Read what was said of a vendor's numbers on the day of the copy."),
  ],
  [/^Type your air's .*$/s, ofValues(STILL)],
  // Runs, Flow
  [/^Try it: .*$/s, ofValues(STILL)],
  [
    /^Try it: .* in [A-Z]+\d+, press Enter(?:: the fan is asked for less|, and watch its check change)\.$/,
    ifStill("BUDGET", "What the hoods ask for is fixed in this copy."),
  ],
  [
    /^Try it: type shut .* in A\d+\. The others get more air; .*$/s,
    ifStill("SOLVE", "What flows is fixed: another gate strikes it out."),
  ],
  // Budget
  [/^(Row 2 of the table is .* count like any other)(: .* marks them)?[:,] the pane's Check names them\.$/s, "$1$2."],
  [
    /^=DUCT\.BUDGET\(.*\) fills the table; its row 2 is the first run\. (.*)$/s,
    (_, more) =>
      `Row 2 of the table is the first run. ${more
        .replace(/, and Check in the pane names those that it takes\.$/, ".")
        .replace(/: Check in the pane names those that it takes\.$/, ".")}`,
  ],
  // tables that one formula fills
  [/^One formula fills this table: =(DUCT\..*\))$/s, filledBy],
  [
    /^One formula fills this table: =(DUCT\.CLAIM\(.*\))\. (Where it is said.*)$/s,
    (facts, call, more) => `${filledBy(facts, call)} ${more}`,
  ],
  [
    /^(Each change alone.*?)[.:] =DUCT\.GAINS\(.*$/s,
    ({ sheets }, change) => `${change}. ${sheets === null ? STILL : `Fixed: see the sheet ${sheets.fixed}.`}`,
  ],
  [
    whole(
      "Which gates are open together? Each column is headed by a run's name. Name a scenario and mark its gates; a blank is shut.",
    ),
    "Which gates were open together in each scenario; a blank is shut. The answers below are as of the day of the copy.",
  ],
  [
    whole("Change what you know better; measure first what an airflow is mostly unsure by."),
    "How far each input may be off, and what an airflow is mostly unsure by, as of the day of the copy.",
  ],
  [
    whole("Loss when it is clean, where it is dirty now: what cleaning would give is then tried too."),
    "Loss when it is clean, where it is dirty now. What cleaning would give is as of the day of the copy.",
  ],
  // Sizes
  [
    /^Names of runs between ; in each row: all of these sets shall work\. Blank: .*$/s,
    "The sets of gates that its maker asked for: a copy searches nothing.",
  ],
  [/^Diameters that you can buy\. Blank: .*$/s, "The diameters that its maker could buy: a copy searches nothing."],
  [/^In any money\. Blank: .*$/s, "In any money, as its maker gave them: a copy searches nothing."],
  [
    whole("Written by the pane (Build, Choose sizes). Nothing here computes with it."),
    "Sizes as the maker of the copy had them searched, if at all: a copy searches nothing. Nothing here computes with it.",
  ],
  [/^The same in a cell, searched again with every change: =DUCT\..*$/s, "Nothing is searched in a copy."],
  // Leaks, Readings
  [
    /^([A-Z](?: and [A-Z])?|Mean|Area): =?(?:IF\(.*)?DUCT\.\w+\(.*\)(, grown with the larger reading)?$/s,
    ({ sheets }, what, more) =>
      sheets === null
        ? STILL
        : `${what}: plain formulas${more ?? ""}; their steps stand on the sheet ${sheets.workings}.`,
  ],
  [
    /^(The leaks of the sheet .*, all of them mended, with the fan and the open gates of the sheet .*?\.).*$/s,
    ({ allLive }, first) => (allLive("SOLVE") ? null : `${first} As of the day of the copy: column F does not follow.`),
  ],
  [/^(Column F is column [A-Z]+ of the sheet .*: )what SOLVE gives as (.*)$/s, "$1$2"],
  // Measured
  [
    /^Try it: type \S+ in E\d+, as it should have been, and the slip is gone\.$/,
    struck("The readings were judged on the day of the copy: another one strikes out what is said of them."),
  ],
  [
    whole("What you read in the ducts of the sheet Runs, and what it says of fan, hoses, entries, leaks and meter."),
    "What was read in the ducts, and what it said of fan, hoses, entries, leaks and meter on the day of the copy: fixed.",
  ],
  [
    /^A row for a place and a set of open gates\. Fill any of .*$/s,
    struck(
      "A row for a place and a set of open gates. Another reading strikes out what is said of them: nothing judges it in a copy.",
    ),
  ],
  [/^One formula says all this: =(DUCT\..*\))$/s, filledBy],
  [
    /^Choose "as calibrated" in B2 of the sheet .*$/s,
    "What the ducts and the fan would be by these readings, the maker of the copy can compute.",
  ],
  [
    /^(The sheet .* was there before these readings and goes by what is typed\.) (?:In a cell )?CALIBRATED.*$/s,
    "$1 What the ducts and the fan would be by them, the maker of the copy can compute.",
  ],
  // Claims
  [
    /^Try it: type .* in B\d+, press Enter, and read the verdicts\.$/,
    ifStill("CLAIM", "The verdicts are fixed: another number in column B strikes them out."),
  ],
  // About
  [
    /^The sheet .* names them once; every formula takes them from there\. Numbers that are typed are not converted\.$/,
    ({ units }) => `${UNITS[units]} Fixed in this copy.`,
  ],
  [
    /^Type =DUCT\. in a cell and choose; .*$/s,
    "This copy has none of ours: plain formulas or numbers stand in their place.",
  ],
  [
    whole("Select it: a sentence says which argument is wrong and what it must be."),
    "Look in the first cells of its row, or at the note of the cell: they say what is wrong, or was.",
  ],
  [
    /^Text, inputs and ordinary formulas stay\. Cells with DUCT\. functions keep .*$/s,
    "This is a copy for that: its first sheet says what recalculates and what is fixed.",
  ],
  [whole("Without the add-in"), "For whom it is"],
  [whole("Nothing leaves the workbook: the functions compute on your own machine."), "Nothing leaves the workbook."],
];

/** What stands in a copy for a text or a note of the book; null where it stays. */
export function wordsInCopy(was: string, facts: CopyFacts): string | null {
  for (const [pattern, is] of rules) {
    const found = pattern.exec(was);
    if (found === null) continue;
    const words = typeof is === "string" ? was.replace(pattern, is) : is(facts, ...found.slice(1));
    if (words !== null) return words;
  }
  return null;
}
