import { saturationIcePa, saturationWaterPa } from '../physics/saturation.js'

/** The curves of `saturation.ts` as tables with straight lines between, within 5e-5 of them: a run asks ten thousand times. */
const lowC = -100
const highC = 150
const perK = 4

export const vapourTable = {
  lowC,
  highC,
  perK,
  water: table(saturationWaterPa),
  /** Over ice, which the curve leaves at 0 °C: above that it is of water, as there is no ice. */
  ice: table((c) => (c <= 0 ? saturationIcePa(c) : saturationWaterPa(c)))
} as const

function table(curve: (c: number) => number): Float64Array {
  return Float64Array.from({ length: (highC - lowC) * perK + 2 }, (_, index) => curve(lowC + index / perK))
}
