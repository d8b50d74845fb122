/** A symmetric matrix taken apart: `vectors[k]` belongs to `values[k]`, each of length one. */
export interface Eigen {
  readonly values: Float64Array
  readonly vectors: readonly Float64Array[]
}

/** Ten sweeps are enough for a few hundred rows; what is left then is the last digit. */
const mostSweeps = 60

/** Eigenvalues and vectors of a symmetric matrix by Jacobi's rotations. Source: Golub & Van Loan, Matrix Computations, §8.5. */
export function eigenOf(matrix: readonly Float64Array[]): Eigen {
  const n = matrix.length
  const rows = matrix.map((row) => Float64Array.from(row))
  const vectors = rows.map((_, i) => Float64Array.from({ length: n }, (__, j) => (i === j ? 1 : 0)))
  for (let sweep = 0; sweep < mostSweeps; sweep += 1) {
    let turned = false
    for (let p = 0; p < n; p += 1) for (let q = p + 1; q < n; q += 1) turned = rotate(rows, vectors, p, q) || turned
    if (!turned) break
  }
  return { values: Float64Array.from(rows, (row, i) => row[i] as number), vectors }
}

/** Turns two rows and columns so that they no longer share anything; false where what they share is below the last digit. */
function rotate(rows: readonly Float64Array[], vectors: readonly Float64Array[], p: number, q: number): boolean {
  const [rowP, rowQ] = [rows[p] as Float64Array, rows[q] as Float64Array]
  const shared = rowP[q] as number
  const [own, other] = [rowP[p] as number, rowQ[q] as number]
  if (!(Math.abs(shared) > Number.EPSILON * Math.sqrt(Math.abs(own * other)))) return false
  const slope = (other - own) / (2 * shared)
  const tan = (slope < 0 ? -1 : 1) / (Math.abs(slope) + Math.hypot(slope, 1))
  const cos = 1 / Math.hypot(tan, 1)
  const sin = tan * cos
  turn(rowP, rowQ, cos, sin)
  for (const row of rows) {
    const [a, b] = [row[p] as number, row[q] as number]
    row[p] = cos * a - sin * b
    row[q] = sin * a + cos * b
  }
  turn(vectors[p] as Float64Array, vectors[q] as Float64Array, cos, sin)
  return true
}

function turn(one: Float64Array, other: Float64Array, cos: number, sin: number): void {
  for (let i = 0; i < one.length; i += 1) {
    const [a, b] = [one[i] as number, other[i] as number]
    one[i] = cos * a - sin * b
    other[i] = sin * a + cos * b
  }
}
