/** From here on Hankel's expansion is the better one: its smallest term is near e^(−2x). */
const farFrom = 12
const mostTerms = 60

/**
 * Bessel functions of the first kind J0 and J1 of x ≥ 0, to 1e-10; NaN for anything else.
 * Source: Abramowitz & Stegun, 9.1.10 (power series) below 12, 9.2.5, 9.2.9 and 9.2.10 (Hankel) from there.
 */
export function bessel(x: number): { readonly j0: number; readonly j1: number } {
  if (!(x >= 0 && x < Infinity)) return { j0: Number.NaN, j1: Number.NaN }
  return x < farFrom ? { j0: powers(0, x), j1: powers(1, x) } : { j0: hankel(0, x), j1: hankel(1, x) }
}

function powers(order: 0 | 1, x: number): number {
  const quarter = -(x * x) / 4
  let term = order === 0 ? 1 : x / 2
  let sum = term
  for (let k = 1; k <= mostTerms && Math.abs(term) > 1e-18; k += 1) {
    term *= quarter / (k * (k + order))
    sum += term
  }
  return sum
}

function hankel(order: 0 | 1, x: number): number {
  const mu = 4 * order * order
  let term = 1
  let even = 1
  let odd = 0
  for (let k = 1; k <= mostTerms; k += 1) {
    const next = (term * (mu - (2 * k - 1) ** 2)) / (k * 8 * x)
    // Asymptotic: it parts again after its smallest term.
    if (Math.abs(next) >= Math.abs(term) || Math.abs(next) < 1e-17) break
    term = next
    if (k % 2 === 1) odd += k % 4 === 1 ? term : -term
    else even += k % 4 === 2 ? -term : term
  }
  const phase = x - (order / 2 + 0.25) * Math.PI
  return Math.sqrt(2 / (Math.PI * x)) * (even * Math.cos(phase) - odd * Math.sin(phase))
}
