/**
 * The sum of the products of two rows.
 *
 * @returns a . b
 * @source house
 */
export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let place = 0; place < a.length; place++) sum += a[place]! * b[place]!;
  return sum;
}
