import { type Cylinder, cylinderRanges, type Left, leftIn, type PlaceIn, secondsUntil } from '../kits/cylinder.js'
import { formula, type Refusal, type Result, refuse } from './formula.js'

const temperature = { kind: 'number', unit: 'C', min: -100, max: 500 } as const

function ranged(key: keyof Cylinder, unit: string) {
  const [min, max] = cylinderRanges[key]
  return { kind: 'number', unit, min, max } as const
}

export const cylinder = formula({
  name: 'cylinder',
  inputs: {
    radiusM: ranged('radiusM', 'm'),
    heightM: ranged('heightM', 'm'),
    rhoKgM3: ranged('rhoKgM3', 'kg/m3'),
    cJKgK: ranged('cJKgK', 'J/kgK'),
    kWMK: ranged('kWMK', 'W/mK'),
    hWM2K: ranged('hWM2K', 'W/m2K'),
    exposedEnds: { ...ranged('exposedEnds', ''), whole: true },
    fromC: temperature,
    toC: temperature,
    afterMin: { kind: 'number', unit: 'min', min: 0, max: 1e7, default: null },
    targetC: { ...temperature, default: null }
  },
  source:
    'Carslaw & Jaeger, Conduction of Heat in Solids, 1.15, 3.11, 7.7: product of the series of infinite cylinder and slab; shell at half height, mean by volume, core the centre; times null where the target is never reached',
  run({ fromC, toC, afterMin, targetC, ...body }): Result | Refusal {
    if (afterMin !== null && targetC !== null) return refuse('inconsistent', 'targetC', 'afterMin or targetC, not both')
    const after = leftIn(body)
    if (afterMin !== null) {
      const { shell, mean, core } = after(afterMin * 60)
      const at = (left: number) => toC + (fromC - toC) * left
      return { shellC: at(shell), meanC: at(mean), coreC: at(core) }
    }
    if (targetC === null) return refuse('missing', 'afterMin', 'afterMin or targetC is needed')
    const min = (place: PlaceIn) => minutesUntil(fromC, toC, targetC, place, after)
    return { shellMin: min('shell'), meanMin: min('mean'), coreMin: min('core') }
  }
})

/** 0 where it is there already; null where it never comes, the surroundings themselves included. */
function minutesUntil(fromC: number, toC: number, targetC: number, place: PlaceIn, after: (s: number) => Left): number | null {
  if (targetC === fromC) return 0
  const left = (targetC - toC) / (fromC - toC)
  return left > 0 && left < 1 ? secondsUntil(left, place, after) / 60 : null
}
