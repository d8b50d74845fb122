const mostTerms = 200

/** e^(x²)·erfc(x), x ≥ 0: series of Abramowitz & Stegun 7.1.6 below 2, continued fraction 7.1.14 from there. */
export function scaledErfc(x: number): number {
  return x < 2 ? Math.exp(x * x) - series(x) : fraction(x)
}

/** e^(x²)·erf(x). */
function series(x: number): number {
  let term = (2 * x) / Math.sqrt(Math.PI)
  let sum = term
  for (let n = 1; n <= mostTerms && term > 1e-17; n += 1) {
    term *= (2 * x * x) / (2 * n + 1)
    sum += term
  }
  return sum
}

function fraction(x: number): number {
  let tail = x
  for (let n = mostTerms; n >= 1; n -= 1) tail = x + n / 2 / tail
  return 1 / (Math.sqrt(Math.PI) * tail)
}

/**
 * What is left of a temperature difference at the surface of a body so thick that its middle does not know yet, and the
 * heat that has gone in per area, both after Fourier number `fourier` ≥ 0 at Biot number `biot` > 0 over the same length L
 * (heat in units of ρ·c·L·ΔT). Source: Carslaw & Jaeger 2.7; Incropera table 5.1, from memory.
 */
export function halfSpace(biot: number, fourier: number): { readonly surface: number; readonly taken: number } {
  const beta = biot * Math.sqrt(fourier)
  const surface = scaledErfc(beta)
  // Below that the difference of near equals loses all its digits.
  const taken = beta < 1e-5 ? biot * fourier : (surface - 1 + (2 * beta) / Math.sqrt(Math.PI)) / biot
  return { surface, taken }
}
