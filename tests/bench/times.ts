/** The value at a share of the way through the sorted list. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
}

export function median(values: readonly number[]): number {
  return quantile(values, 0.5)
}
