/** How much work it is to read a formula: brackets in brackets, and long rows of operators, which are read one inside another. */
export interface FormulaWork {
  readonly deepest: number; // brackets open at a time, or signs in a row
  readonly steps: number;
}

/** What stands in quotes is one step, whatever it says. */
const STEPS = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[({]|[)}]|[,;]|<>|[<>]=|[-+*/^&=<>%]/g;

export function formulaWork(formula: string): FormulaWork {
  const open = [{ operators: 0 }];
  let [deepest, steps, signs] = [0, 0, 0];
  const close = (): void => {
    const { operators } = open.pop() ?? { operators: 0 };
    steps += operators ** 2 / 2 + operators * open.length;
  };
  let last = 0;
  for (const { 0: part, index } of formula.matchAll(STEPS)) {
    const isNext = formula.slice(last, index).trim() === "";
    last = index + part.length;
    signs = isNext && /^[-+%]$/.test(part) ? signs + 1 : 0;
    if (part === "(" || part === "{") open.push({ operators: 0 });
    else if (part === ")" || part === "}") close();
    else if (part === "," || part === ";") {
      close(); // each argument begins anew
      open.push({ operators: 0 });
    } else if (!/^["']/.test(part)) (open.at(-1) ?? { operators: 0 }).operators++;
    deepest = Math.max(deepest, open.length - 1, signs);
  }
  while (open.length > 0) close();
  return { deepest, steps };
}

/** Formulas that differ in their addresses and numbers only are read once. */
export const formOf = (formula: string): string =>
  formula.replace(/\$?[A-Za-z]{1,3}\$?\d+/g, "A1").replace(/\d+/g, "1");
