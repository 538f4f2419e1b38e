/** A value and its ± with the digits that mean something. */
export interface AsMeant {
  readonly value: string;
  readonly error: string;
}

const TWO_DIGITS_BELOW = 1.95;

/**
 * A value and its ± as one writes them: the ± with one digit, with two where it begins with a 1, and the value to the same place.
 *
 * @param value any number
 * @param error at least 0; 0 leaves the value four digits
 * @returns both as texts with a decimal point
 * @source jcgm100 7.2.6
 */
export function asMeant(value: number, error: number): AsMeant {
  if (!(error > 0)) return { value: String(Number(value.toPrecision(4))), error: "0" };
  const size = Math.floor(Math.log10(error));
  const first = error / 10 ** size;
  const place = first < TWO_DIGITS_BELOW ? size - 1 : size;
  const written = (number: number): string => {
    const step = 10 ** place;
    return place >= 0 ? String(Math.round(number / step) * step) : number.toFixed(-place);
  };
  return { value: written(value), error: written(error) };
}
