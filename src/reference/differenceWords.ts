/** What DIFFERENCE says in its column of the verdict; a copy says the same. */
export const differenceWords = {
  more: "more, beyond chance",
  less: "less, beyond chance",
  "too small": "too small to tell",
  "no change": "no change",
  "other way": "not shown: it went the other way",
  single: "no verdict: single readings, and nothing tells how far one strays from the next",
  alike: "no verdict: the readings do not differ at all, so nothing tells how far one strays from the next",
  scattered: "no verdict: the readings differ by more than percent and floor allow",
} as const;

/** Behind the verdict where a reading is below 0: a suction typed with a minus would come out the other way round. */
export const BELOW_NOTHING = "; readings below 0 count by sign, -4 as less than -2: type suctions without it";
