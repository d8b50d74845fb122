import type { LimitsSheet } from '../../limits/sheet.js'
import type { Outcome } from '../../outcome.js'
import { addend, factor, type TakeoffLine, totalOf } from './line.js'

/** Standard acceleration of gravity, m/s² (CGPM 1901). */
const gravity = 9.80665

type Sizes = Pick<LimitsSheet, 'sheet' | 'takeoff'>

/** What stands on the roof when all rolls and kits do, kg. Common practice, no source. */
export function weightLine(rolls: number, kits: number, { sheet, takeoff }: Sizes): TakeoffLine {
  const rollM2 = sheet.rollM * sheet.widthM
  const sum = [
    addend('rolls', [factor('', rolls, 'piece'), factor('×', rollM2, 'm2'), factor('×', takeoff.sheetKgM2, 'kg/m2')]),
    addend('kits', [factor('', kits, 'piece'), factor('×', takeoff.kitKg, 'kg')])
  ]
  return { item: 'weight', value: totalOf(sum), unit: 'kg', sum, wastePct: 0, whole: false, bound: null, spacingMm: null, sale: null }
}

/** Its load on the ground it is staged on, kPa = kg × 9.80665 ÷ m² ÷ 1000. */
export function pressureLine(weightKg: number, { takeoff }: Sizes): TakeoffLine {
  const factors = [factor('', weightKg, 'kg'), factor('×', gravity / 1000, 'kN/kg'), factor('÷', takeoff.stagingM2, 'm2')]
  const sum = [addend(null, factors)]
  return { item: 'pressure', value: totalOf(sum), unit: 'kPa', sum, wastePct: 0, whole: false, bound: null, spacingMm: null, sale: null }
}

/** A staging load against the engineer's limit, kPa ≥ 0: unknown while nobody said it. */
export function stagingOutcome(pressureKPa: number, limitKPa: number | null): Outcome {
  if (limitKPa === null) return 'unknown'
  return pressureKPa <= limitKPa ? 'go' : 'no-go'
}
