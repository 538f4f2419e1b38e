/** u^2 below which `logOfRatio` is right to 1.2e-16, below the last digit of a logarithm of size 1. */
export const NEAR = 4e-4;

/**
 * The natural logarithm of the ratio of two numbers that lie close to each other: a few products where the logarithm costs
 * several times that, so that of one number that of the next is known.
 *
 *     ln(y/y0) = 2 (u + u^3/3 + u^5/5 + u^7/7),  u = (y - y0)/(y + y0)
 *
 * @param u as above, its square below NEAR
 * @param square u^2, which the caller has asked already
 * @returns ln(y/y0)
 * @source house the series of the inverse hyperbolic tangent, cut off
 */
export const logOfRatio = (u: number, square: number): number =>
  u * (2 + square * (2 / 3) + square * square * (2 / 5 + square * (2 / 7)));
