/** A formula that is nothing but a text, and one that is nothing but a number. */
export const TEXT = /^="(?:[^"]|"")+"$/;
export const NUMBER = /^=-?\d+(\.\d+)?$/;

/** Whether no formula is left in the copy. */
export const isPlain = (formula: string): boolean => TEXT.test(formula) || NUMBER.test(formula);
