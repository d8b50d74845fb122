import { scaleLinear } from 'd3-scale'
import type { Instant } from '../../../core/instant.js'
import type { DayChart } from '../../../core/plan/day-chart.js'

/** A strip of the picture, in pixels from its top. */
export interface Strip {
  readonly top: number
  readonly bottom: number
}

/** Sizes for a phone that shows the picture 380 px wide: 30 px here are 11 px there. */
export const width = 1000
export const height = 962
export const size = { title: 38, label: 32, tick: 30 } as const

/** Left and right of it is room for names and numbers. */
export const plot = { left: 150, right: 836 } as const

export const strips = {
  sun: { top: 64, bottom: 106 },
  rows: { top: 118, bottom: 352 },
  middleAxis: { top: 352, bottom: 398 },
  temperature: { top: 404, bottom: 604 },
  wind: { top: 648, bottom: 772 },
  rain: { top: 784, bottom: 908 },
  axis: { top: 908, bottom: height }
} as const

export type X = (at: Instant) => number

export function xOf({ from, to }: Pick<DayChart, 'from' | 'to'>): X {
  return scaleLinear().domain([from, to]).range([plot.left, plot.right])
}

/** Some y for each value: the low end of the domain at the bottom of the strip. */
export function yOf(domain: readonly [number, number], { top, bottom }: Strip): (value: number) => number {
  return scaleLinear().domain(domain).range([bottom, top])
}

/** Where words of some width go so that they stay in the plot and off the line of now. */
export function kept(middle: number, wide: number, { now }: Pick<DayChart, 'now'>, x: X): number {
  const half = wide / 2
  const inside = Math.min(Math.max(middle, plot.left + half), plot.right - half)
  const line = now === null ? Number.NEGATIVE_INFINITY : x(now)
  if (Math.abs(inside - line) >= half + nowMargin) return inside
  const [before, after] = [line - half - nowMargin, line + half + nowMargin]
  const fitsAfter = after <= plot.right - half
  return fitsAfter && (inside >= line || before < plot.left + half) ? after : before
}

const nowMargin = 6

/** Labels at their places, moved down and up as little as it takes to stand `step` apart within the strip. In the order given. */
export function spaced(wanted: readonly number[], step: number, { top, bottom }: Strip): readonly number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0))
  const placed = wanted.map(() => 0)
  let least = top
  for (const index of order) {
    placed[index] = Math.max(least, wanted[index] ?? top)
    least = (placed[index] ?? top) + step
  }
  let most = bottom
  for (const index of order.reverse()) {
    placed[index] = Math.min(most, placed[index] ?? bottom)
    most = (placed[index] ?? bottom) - step
  }
  return placed
}
