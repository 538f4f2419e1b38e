/**
 * The notes of functions of later files: part of noteWords.ts, which says how they are written. The build leaves them out of the file
 * that cells wait for (src/functions/tellNotes.ts) and of the pages, so that none of them is one that a reader outside the functions asks for.
 */
export const laterNoteWords = {
  // of the fan, by SCENARIOS
  humpInShort: { words: "the curve has a hump: {count} points meet, this is the stable one" },
  twoStableInShort: {
    words: "the curve has a hump: {count} points meet, two are stable; from rest the fan stays at {less}",
  },
  // of the fan, by UNCERTAINTY
  errorsFrom: { words: "each ± is two standard deviations: 19 of 20, if the errors are as told" },
  errorsAfterReadings: {
    words: "each ± is two standard deviations, after {count} readings: 19 of 20, if the errors are as told",
  },
  errorsByLeaks: { words: "where leaks make much of a number its ± may be a third too small" },
  errorsAtHump: { words: "the curve has a hump: the fan may also jump to another point, which ± does not count" },
  errorsPastCurve: { words: "part of what may be lies beyond the fan's curve, so ± is too small" },
  // of the slowest run, by SCENARIOS: how fast its air is, and what that means
  slowest: { words: "{run}: {velocity}, {meaning}" },
  fastEnough: { words: "fast enough" },
  // of a set of open gates, by TOGETHER
  tooLittleAir: { words: "too little air at: {hoods}" },
  bleed: { words: "works with one more gate open: {gates}" },
  noneWanted: { words: "no airflow is asked for at an open hood, so none is judged" },
  // of a choice of sizes, by SIZES: a need, and how sure the choice is
  needOfAir: { words: "air in {scenario}" },
  needOfSpeed: { words: "velocity in {scenario}" },
  needOfCalm: { words: "greatest velocity in {scenario}" },
  wrongWay: { words: ", whose air runs the wrong way" },
  needAt: { words: "{need} at {run} at {has}, where {wanted} is asked for" },
  sizesBest: { words: "best of all: no choice from this stock that gives each need its {percent} % more costs less" },
  sizesFound: {
    words:
      "best found: each need has its {percent} % more; that none costs less is not proved, only that none costs less than {price}",
  },
  sizesFoundOnly: { words: "best found: each need has its {percent} % more; whether one costs less is not proved" },
  sizesImpossible: {
    words: "impossible: no choice from this stock meets all with {percent} % more; these sizes leave {need}",
  },
  sizesMissed: {
    words: "none found that meets all with {percent} % more, which proves nothing; these sizes leave {need}",
  },
  sizesNoAnswer: {
    words:
      "no answer: in {scenario} the fan works beyond its curve, which reaches from {least} to {most}; type its further points",
  },
  sizesBeyond: {
    words:
      "with other sizes the fan works beyond its curve, which reaches from {least} to {most}: of those nothing is known",
  },
  sizesSpare: { words: "every need is met, by {spare} % more at least" },
  sizesShort: { words: "each need gets {percent} % of what it asks for, or more" },
  sizesNotAlone: {
    words: "even for {one} by itself no sizes were found that give {wanted} % of each need: {percent} % at best",
  },
  sizesClash: {
    words: "no sizes were found that give both {one} and {other} {wanted} % of each need: {percent} % at best",
  },
  sizesMoreClash: { words: "and so with {count} more" },
  sizesUntried: { words: "the search stopped before all were tried" },
  sizesBleed: { words: "with {gates}, sizes of their own leave each need {percent} % or more" },
  sizesLeftOpen: { words: "{gate} left open too in {scenario}" },
  sizesBlocked: { words: "the other needs leave no size with which {need} at {run} is met" },
  sizesMost: { words: "no choice gives {run} more than {most} in {scenario}, where {wanted} is asked for" },
  sizesOfFan: {
    words:
      "the sizes above are for {fan}, which of these fans meets the needs with the least pipe, or comes nearest; what fans cost is not counted",
  },
  sizesByVelocity: {
    words: "by velocity alone, {percent} % above what the dust needs with the least air that flows there",
  },
  strongerFan: { words: "this fan at {speed} of its speed would do it, with sizes of its own" },
  noStrongerFan: { words: "no higher speed of this fan, up to twice its own, was found to do it" },
  fanFor: { words: "{scenario}: {airflow} at {pressure} fan static pressure" },
  measureFirst: {
    words: "sizes are as sure as the fan's curve and the losses typed: measure what can be measured before you buy",
  },
  // in short, by CALIBRATE
  fanWeaker: { words: "the fan gives {percent} % less pressure than its curve at {airflow}, ± {error} %" },
  fanStronger: { words: "the fan gives {percent} % more pressure than its curve at {airflow}, ± {error} %" },
  fanAsPrinted: { words: "the fan gives what its curve says at {airflow}, as far as these readings tell: ± {error} %" },
  noReadings: { words: "nothing is read yet" },
  readingsAgree: { words: "all readings agree: {count}" },
  readingsAside: { words: "{count} of {total} readings fit no plausible system and are left out: {which}" },
  rowsWrong: { words: "{count} cannot be used: see their words" },
  readNext: {
    words: "read next: {what}, {open}; takes the ± at the hoods from {now} to {then} %",
  },
  notApart: { words: "not told apart: {pair}" },
  notApartMore: { words: "not told apart: {pair}, and {count} more pairs" },
  untouched: { words: "{count} inputs hardly touched" },
  pastCurve: { words: "these readings ask for more air than the fan's curve has points for: type more of its points" },
  humpInSet: { words: "the curve has a hump: {open}: the fan may also jump to another point" },
  // of an input, by CALIBRATE
  told: { words: "measured" },
  partlyTold: { words: "narrowed" },
  hardlyTold: { words: "hardly touched by these readings" },
  goesWith: { words: "not told apart from {which}" },
  // of a reading, by CALIBRATE
  agrees: { words: "agrees; a slip below {factor} times would not show" },
  leftOut: { words: "left out: {factor} times what all others say" },
  placeOff: { words: "so are all airflows there" },
  meterOff: { words: "so are all readings of this meter" },
  orAnother: { words: "or {which} is wrong in its place, and is left out too" },
  orThis: { words: "left out: this one or {which} is wrong" },
  orBlocked: { words: "or the duct there is blocked: read the suction behind the hood" },
  slipDecimal: { words: "a decimal place?" },
  slipArea: { words: "a decimal place of the area?" },
  slipRadius: { words: "diameter and radius of the area mixed up?" },
  slipSquare: { words: "a square typed for the round duct?" },
  slipUnits: { words: "cfm and m³/h mixed up?" },
  slipSize: { words: "the area of {size}?" },
  // of a fan's curve, by FANCURVE
  throttlesRead: { words: "{count} readings; each ± is two standard deviations: 19 of 20, if readings stray as told" },
  throttleLeftOut: {
    words: "row {row} of readings is left out: its pressure is {factor} times what the others say of its airflow",
  },
  throttlesBend: {
    words:
      "these readings contradict each other or the printed curve: ± is too small, so read again, or leave the printed curve out",
  },
  throttlesRise: { words: "the curve rises somewhere: where it does so, read once more, closer together" },
  freeBlowing: { words: "nothing is read after the fan, so it counts as blowing freely" },
  beyondRead: { words: "beyond what was read: the shape as printed" },
  // of a leak, by LEAKGAINS
  suctionSolved: { words: "taken at the suction that is solved there, {suction}" },
  // of a machine's port whose pipe gets another width, by GAINS and SIZES: a run counts as wide as its pipe from its hood on
  portStays: {
    words: "the port of {runs} stays as it is: type it as a run of its own, 0 long, before the new pipe",
  },
  // of a change, by GAINS
  settlesElsewhere: { words: "dust would settle in: {runs}" },
  nothingGains: { words: "no single change gains anything here" },
  stillShut: { words: "no air comes through it then: every gate before it is shut, too" },
  stillSettles: { words: "dust still settles in: {runs}" },
  sharedRun: { words: "other hoods may share it: see what SIZES finds for all" },
  allServed: { words: "nothing to mend: the open hoods have their air, and all dust is carried" },
  noneOpen: { words: "no open hood" },
  noneMends: { words: "no single change mends this" },
} as const satisfies Readonly<Record<string, { readonly words: string }>>;
