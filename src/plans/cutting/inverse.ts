/** The inverse of a square matrix, row after row, by elimination with the largest pivot; null where it has none. Uses `matrix` up. */
export function invertedOf(matrix: Float64Array, rows: number): Float64Array | null {
  const inverse = new Float64Array(rows * rows);
  for (let row = 0; row < rows; row++) inverse[row * rows + row] = 1;
  for (let step = 0; step < rows; step++) {
    const pivotRow = largestBelow(matrix, rows, step);
    const pivot = matrix[pivotRow * rows + step] as number;
    if (Math.abs(pivot) < 1e-11) return null;
    for (const side of [matrix, inverse]) {
      for (let k = 0; k < rows; k++) {
        const value = (side[pivotRow * rows + k] as number) / pivot;
        side[pivotRow * rows + k] = side[step * rows + k] as number;
        side[step * rows + k] = value;
      }
    }
    for (let row = 0; row < rows; row++) {
      const times = matrix[row * rows + step] as number;
      if (row === step || times === 0) continue;
      for (const side of [matrix, inverse]) {
        for (let k = 0; k < rows; k++)
          side[row * rows + k] = (side[row * rows + k] as number) - times * (side[step * rows + k] as number);
      }
    }
  }
  return inverse;
}

/** The row from `step` on with the largest number in the column `step`. */
function largestBelow(matrix: Float64Array, rows: number, step: number): number {
  let best = step;
  for (let row = step + 1; row < rows; row++) {
    if (Math.abs(matrix[row * rows + step] as number) > Math.abs(matrix[best * rows + step] as number))
      best = row;
  }
  return best;
}
