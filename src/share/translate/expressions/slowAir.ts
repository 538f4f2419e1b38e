import { SLOWEST, stretches } from "../../../core/fittings/slowAir";
import { num } from "./text";

/** How many times its printed loss a mitre has in air of this Reynolds number, less the once that its K counts. */
export function moreInSlowAir(reynolds: string): string {
  const falls = stretches.map(({ from, width, fall }) => `${num(fall)}*MIN(MAX((${reynolds}-${from})/${width},0),1)`);
  return `(${num(SLOWEST)}-${falls.join("-")}-1)`;
}

/** How much that changes with the Reynolds number. */
export function slopeInSlowAir(reynolds: string): string {
  const falls = stretches.map(
    ({ from, width, fall }) => `IF(AND(${reynolds}>${from},${reynolds}<${from + width}),${num(fall / width)},0)`,
  );
  return `(0-${falls.join("-")})`;
}
