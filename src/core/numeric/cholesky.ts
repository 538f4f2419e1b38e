/** The lower triangle L of a symmetric matrix A = L L^T, row by row. */
export type Triangle = readonly Float64Array[];

/**
 * Cholesky's decomposition of a symmetric, positive definite matrix.
 *
 *     A = L L^T
 *
 * @param matrix its rows; only the lower triangle is read
 * @returns the rows of L, each up to its diagonal
 * @throws RangeError where the matrix is not positive definite: a mistake of ours
 * @source house definition
 */
export function cholesky(matrix: readonly ArrayLike<number>[]): Triangle {
  const rows: Float64Array[] = [];
  matrix.forEach((line, row) => {
    const own = new Float64Array(row + 1);
    for (let column = 0; column <= row; column++) {
      const other = column === row ? own : rows[column]!;
      let rest = line[column]!;
      for (let place = 0; place < column; place++) rest -= own[place]! * other[place]!;
      if (column < row) own[column] = rest / other[column]!;
      else if (rest > 0) own[column] = Math.sqrt(rest);
      else throw new RangeError(`not positive definite in row ${row + 1}`);
    }
    rows.push(own);
  });
  return rows;
}

/**
 * The x of A x = b.
 *
 * @param triangle L
 * @param right b
 * @returns x
 * @source house definition
 */
export function solveTriangle(triangle: Triangle, right: ArrayLike<number>): Float64Array {
  const answer = Float64Array.from(right);
  triangle.forEach((line, row) => {
    for (let place = 0; place < row; place++) answer[row]! -= line[place]! * answer[place]!;
    answer[row]! /= line[row]!;
  });
  for (let row = triangle.length - 1; row >= 0; row--) {
    answer[row]! /= triangle[row]![row]!;
    for (let place = 0; place < row; place++) answer[place]! -= triangle[row]![place]! * answer[row]!;
  }
  return answer;
}
