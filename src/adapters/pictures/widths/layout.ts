/** Sizes for a phone that shows the picture 380 px wide: 30 px here are 11 px there. */
export const width = 1000
export const height = 640
export const sizes = { title: 38, label: 30, tick: 28 } as const

/** The plot; right of it stand the names of the lines. */
export const left = 24
export const right = 640
export const top = 110
export const bottom = 560

/** Where the coupon of an order and a width in mm stand. */
export interface XY {
  readonly x: (index: number) => number
  readonly y: (mm: number) => number
}
