/** Whether a formula comes to something else without a change of what it reads, as TODAY does. */
export const changesByItself = (formula: string): boolean =>
  /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i.test(formula.replace(/"(?:[^"]|"")*"/g, '""'));
