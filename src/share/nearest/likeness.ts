/** The cells of one line: a name, or a word of names, beside the one that is wanted. Each is the address of a cell. */
export interface Line {
  readonly name: string;
  readonly begins: string; // signs that both have at their beginnings
  readonly ends: string; // and then at their ends
  readonly longer: string; // what is left of the longer one between them
  readonly shorter: string;
  readonly distance: string;
}

/** The name that is wanted: an address, and ranges of how many signs, and of its first and last so many. Where it is blank nothing is compared. */
export interface WantedCells {
  readonly name: string;
  readonly signs: string;
  readonly first: string;
  readonly last: string;
}

/** Its first so many signs, or its last; a hyphen, which no name has as it is compared, where it has not so many. */
export const partOf = (part: "LEFT" | "RIGHT", name: string, signs: string): string =>
  `IF(LEN(${name})<${signs},"-",${part}(${name},${signs}))`;

/** What is not known to be alike has a distance that is no whole number, so that a name near it is not told as the nearest. */
export const UNSURE = 0.5;

const FAR = 3;

/** Where a name is blank it is none. */
const NO_NAME = 99;

/**
 * How many signs must be typed anew, left out or put in to make one name of the other, as the functions count it. What both have at
 * their ends never changes; where at most two signs are then left of one of them, or two changes are enough, the number is right.
 * Else it is at least three, or as many as one is longer, less a half.
 */
export function likenessCells(
  { name, begins, ends, longer, shorter }: Line,
  { name: wanted, signs, first, last }: WantedCells,
): readonly [begins: string, ends: string, longer: string, shorter: string, distance: string] {
  const same = (part: "LEFT" | "RIGHT", parts: string): string => `SUMPRODUCT(1*(${part}(${name},${signs})=${parts}))`;
  const asked = (formula: string): string => `IF(${wanted}="","",${formula})`;
  const least = `MIN(LEN(${name}),LEN(${wanted}))`;
  const between = (text: string): string => `MID(${text},${begins}+1,LEN(${text})-${begins}-${ends})`;
  const either = (one: string, other: string): string => `IF(LEN(${name})<LEN(${wanted}),${one},${other})`;
  return [
    asked(same("LEFT", first)),
    asked(`MIN(${least}-${begins},${same("RIGHT", last)})`),
    asked(either(between(wanted), between(name))),
    asked(either(between(name), between(wanted))),
    `IF(OR(${wanted}="",${name}=""),${NO_NAME},${distance(longer, shorter)})`,
  ];
}

/** Of two texts that differ in their first signs and in their last. */
function distance(longer: string, shorter: string): string {
  const [long, short] = [`LEN(${longer})`, `LEN(${shorter})`];
  const inside = `MID(${longer},2,${long}-2)`;
  const isIn = (sign: string, text: string): string => `ISNUMBER(FIND(${sign},${text}))`;
  const [first, last] = [`LEFT(${shorter},1)`, `RIGHT(${shorter},1)`];
  const inOrder = `ISNUMBER(FIND(${last},${longer},FIND(${first},${longer})+1))`;
  const ofTwo = `${long}-IF(${inOrder},2,IF(OR(${isIn(first, inside)},${isIn(last, inside)}),1,0))`;
  const afterFirst = `MID(${shorter},2,${short})`;
  const beforeLast = `LEFT(${shorter},${short}-1)`;
  const equal = [
    `${inside}=MID(${shorter},2,${short}-2)`,
    `MID(${longer},2,${long})=${beforeLast}`,
    `LEFT(${longer},${long}-1)=${afterFirst}`,
  ];
  const two = `IF(${long}=${short},OR(${equal.join(",")}),IF(${long}=${short}+1,OR(${inside}=${afterFirst},${inside}=${beforeLast}),${inside}=${shorter}))`;
  const further = `IF(${two},2,MAX(${FAR},${long}-${short})-${UNSURE})`;
  return `IF(${short}=0,${long},IF(${short}=1,${long}-${isIn(shorter, longer)},IF(${short}=2,${ofTwo},${further})))`;
}
