import { fixed, type Translator } from "../translation";

const stays =
  (why: string): Translator =>
  () =>
    fixed(why);

const ROOT = "it is the root of a system of equations, which plain formulas cannot find honestly";

const SEARCHED = "it is searched for by solving the system again and again, which plain formulas cannot do";

/** Functions whose answers stay as the values that stood when the copy was made. */
export const fixedFunctions: Readonly<Record<string, Translator>> = {
  SCENARIOS: stays(ROOT),
  GAINS: stays(ROOT),
  LEAKGAINS: stays(ROOT),
  SIZES: stays("it is searched for among many combinations, which plain formulas cannot do"),
  TOGETHER: stays(ROOT),
  UNCERTAINTY: stays(ROOT),
  GAINUNCERTAINTY: stays(ROOT),
  BUDGETUNCERTAINTY: stays("it draws the inputs some hundred times, which plain formulas cannot do"),
  CALIBRATE: stays(SEARCHED),
  CALIBRATEDRUNS: stays(SEARCHED),
  CALIBRATEDCURVE: stays(SEARCHED),
  CALIBRATEDUNCERTAINTY: stays(SEARCHED),
  FANCURVE: stays("it is fitted to its readings step by step, which plain formulas cannot do"),
  CAUTIONS: stays("a printed table, which nothing in the sheet changes"),
  ABOUT: stays("it says which version computed the sheet that was copied"),
};
