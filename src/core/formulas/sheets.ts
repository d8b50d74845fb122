import { liftKmh } from '../physics/lift.js'
import { courseCount } from '../sheets/courses.js'
import { fastenersOnLeg, largestFirstMm } from '../sheets/fasteners.js'
import { stripSize, stripsFromRoll } from '../sheets/strip.js'
import { formula } from './formula.js'

const mm = { kind: 'number', unit: 'mm', min: 0, max: 10_000 } as const

export const lift = formula({
  name: 'lift',
  inputs: { kgM2: { kind: 'number', unit: 'kg/m2', min: 0, max: 100, above: true }, cp: { kind: 'number', unit: '', min: -10, max: 10 } },
  source: '½·ρ·v²·|cp| = weight; ρ 1.25 kg/m³ (EN 1991-1-4), g 9.80665 m/s²; cp not 0',
  run: ({ kgM2, cp }) => ({ windKmh: liftKmh(kgM2, cp) })
})

export const fasteners = formula({
  name: 'fasteners',
  inputs: {
    legM: { kind: 'number', unit: 'm', min: 0, max: 10_000, above: true },
    spacingMm: { ...mm, above: true },
    firstMm: { ...mm, default: null }
  },
  source: 'common practice, no source: ceil((L − 2a)/s) + 1 on a leg, first at a ≤ min(s/2, 150 mm), which it is when not given',
  run: ({ legM, spacingMm, firstMm }) => ({ count: fastenersOnLeg(legM, spacingMm, firstMm ?? largestFirstMm(spacingMm)) })
})

export const courses = formula({
  name: 'courses',
  inputs: {
    widthM: { kind: 'number', unit: 'm', min: 0, max: 10_000, above: true },
    sheetM: { kind: 'number', unit: 'm', min: 0, max: 100, above: true },
    lapMm: mm
  },
  source: 'geometry: ceil((B − lap)/(W − lap))',
  run: ({ widthM, sheetM, lapMm }) => ({ count: courseCount(widthM, sheetM, lapMm) })
})

/** Defaults are those of the common-practice limits sheet. */
export const strip = formula({
  name: 'strip',
  inputs: {
    widthM: { kind: 'number', unit: 'm', min: 0, max: 100, above: true },
    sheets: { kind: 'number', unit: '', min: 1, max: 1000, whole: true, default: 1 },
    gapMm: { ...mm, min: -1000, max: 1000, default: 6 },
    offMm: { ...mm, min: -1000, max: 1000, default: 0 },
    edgeMm: { ...mm, default: null },
    lapMm: { ...mm, default: 80 },
    pastLapMm: { ...mm, default: 75 },
    stripWidthMm: { ...mm, above: true, default: 150 },
    cornerRadiusMm: { ...mm, default: 25 },
    minWidthMm: { ...mm, default: 38 },
    rollM: { kind: 'number', unit: 'm', min: 0, max: 1000, default: null }
  },
  source: 'common practice, no source; perimeter 2(l + w) − (8 − 2π)r is geometry; count: strips from a roll of rollM, null without one',
  run({ minWidthMm, rollM, ...input }) {
    const size = stripSize(input)
    return { ...size, minWidthMm, count: rollM === null ? null : stripsFromRoll(rollM, size.lengthMm) }
  }
})
