declare module 'jstat' {
  interface Jstat {
    readonly normal: { cdf(x: number, mean: number, sigma: number): number }
    readonly chisquare: { inv(chance: number, freedom: number): number }
    readonly poisson: { cdf(count: number, mean: number): number }
    mean(values: readonly number[]): number
    diff(values: readonly number[]): number[]
  }
  const jstat: Jstat
  export default jstat
}
