import { describe, expect, test } from 'vitest'
import { dewPointC, relativeHumidityPct } from '../../../src/core/physics/air.js'
import { convectionWm2K } from '../../../src/core/physics/convection.js'
import { evaporationMmPerHour, gammaKpaK } from '../../../src/core/physics/evaporation.js'
import { saturationWaterPa } from '../../../src/core/physics/saturation.js'
import { skyLongWaveWm2 } from '../../../src/core/physics/sky.js'
import { surfaceC as steadyC } from '../../../src/core/physics/surface.js'
import type { Drive } from '../../../src/core/roof/drive.js'
import { gridOf } from '../../../src/core/roof/grid.js'
import { type Run, runSurface } from '../../../src/core/roof/run.js'
import type { Told } from '../../../src/core/roof/step.js'
import { type Surface, surfacesOf } from '../../../src/core/roof/surface.js'
import { sheet } from '../../support/facts.js'

const kinds = ['board', 'foil', 'concrete', 'steel', 'membrane', 'plywood'] as const

interface Air {
  readonly airC: number
  readonly rhPct: number
  readonly windKmh: number
  readonly cloudPct: number
  readonly sunWm2: number
  readonly rainMmH?: number
}

/** Weather by step; 12 steps an hour. */
function drive(hours: number, of: (hour: number) => Air): Drive {
  const all = Array.from({ length: hours * 12 }, (_, step) => of((step + 1) / 12))
  const arrayOf = (value: (air: Air) => number) => Float64Array.from(all, value)
  return {
    steps: all.length,
    airC: arrayOf(({ airC }) => airC),
    vapourPa: arrayOf(({ airC, rhPct }) => saturationWaterPa(dewPointC(airC, rhPct))),
    skyWm2: arrayOf(({ airC, rhPct, cloudPct }) => skyLongWaveWm2(airC, dewPointC(airC, rhPct), cloudPct)),
    sunWm2: arrayOf(({ sunWm2 }) => sunWm2),
    hWm2K: arrayOf(({ windKmh }) => convectionWm2K(windKmh)),
    rainMm: arrayOf(({ rainMmH }) => (rainMmH ?? 0) / 12),
    gammaPaK: 1000 * gammaKpaK(1013.25)
  }
}

function surface(kind: string): Surface {
  const surfaces = surfacesOf(sheet(), kind)
  if (surfaces === null) throw new Error(kind)
  return surfaces.substrate
}

function run(of: Surface, weather: Drive, filmMm = 0, told: readonly Told[] = []): Run {
  return runSurface(of, gridOf(of.layers, 300), weather, { surfaceC: weather.airC[0] as number, filmMm, movedK: 0 }, told)
}

/** A clear, calm night after a mild day. */
const clearNight: Air = { airC: 12, rhPct: 90, windKmh: 3, cloudPct: 0, sunWm2: 0 }

/** Weather that no one would choose, the same each time. */
function wild(seed: number): Drive {
  let state = seed
  const next = () => {
    state = (state * 16807) % 2147483647
    return state / 2147483647
  }
  const air = -25 + 60 * next()
  return drive(72, (hour) => ({
    airC: air + 8 * Math.sin(hour / 4),
    rhPct: 20 + 80 * next(),
    windKmh: 60 * next() ** 2,
    cloudPct: 100 * next(),
    sunWm2: Math.max(0, 1000 * Math.sin((hour * Math.PI) / 12)) * next(),
    rainMmH: next() > 0.95 ? 20 * next() : 0
  }))
}

describe('the balance of a surface', () => {
  test('energy closes to 0.1 % of what comes and goes, and nothing is made of water: every kind, wild weather', () => {
    // Physical laws: conservation of energy and of mass.
    for (const kind of kinds) {
      for (let seed = 1; seed <= 8; seed += 1) {
        const of = surface(kind)
        const { ledger, filmMm, surfaceC } = run(of, wild(seed), of.filmMaxMm)
        const { sunJ, longWaveJ, convectionJ, latentJ, interiorJ, storedJ } = ledger()
        const turned = [sunJ, longWaveJ, convectionJ, latentJ, interiorJ, storedJ].reduce((sum, joule) => sum + Math.abs(joule), 0)
        expect(Math.abs(sunJ + longWaveJ + convectionJ + latentJ + interiorJ - storedJ) / turned, `${kind} ${seed}`).toBeLessThan(1e-3)
        const gained = (filmMm.at(-1) as number) - (filmMm[0] as number)
        expect(ledger().dewMm + ledger().rainMm - ledger().evaporatedMm - ledger().runOffMm, `${kind} ${seed}`).toBeCloseTo(gained, 6)
        expect(filmMm.every((mm) => mm >= 0 && mm <= of.filmMaxMm)).toBe(true)
        expect(surfaceC.every((c) => c > -80 && c < 120)).toBe(true)
      }
    }
  })

  test('no water from nothing: a dry surface in dry air stays dry', () => {
    const { filmMm, ledger } = run(
      surface('board'),
      drive(48, () => ({ airC: 20, rhPct: 20, windKmh: 10, cloudPct: 50, sunWm2: 0 }))
    )
    expect(Math.max(...filmMm)).toBe(0)
    expect(ledger().latentJ).toBe(0)
  })

  test('a shower on a hot roof: the jump is taken without swinging', () => {
    const weather = drive(8, (hour) => ({ airC: 30, rhPct: 45, windKmh: 10, cloudPct: 60, sunWm2: 600, rainMmH: hour > 4 ? 5 : 0 }))
    const { surfaceC } = run(surface('board'), weather)
    expect(surfaceC[47]).toBeGreaterThan(45)
    for (const c of surfaceC.subarray(52)) expect(c > 18 && c < 32, String(c)).toBe(true)
  })

  test('it comes to rest where the steady surface of `surface.ts` does, with nothing lost below (sol-air theory)', () => {
    for (const [airC, rhPct, windKmh, sunWm2, cloudPct] of [
      [20, 30, 10, 700, 20],
      [30, 20, 5, 900, 0],
      [5, 40, 30, 200, 90],
      [15, 30, 15, 0, 50]
    ] as const) {
      const bare = surface('plywood')
      const { surfaceC } = run(
        bare,
        drive(96, () => ({ airC, rhPct, windKmh, sunWm2, cloudPct }))
      )
      const { absorptance, emissivity } = bare
      const expected = steadyC({ airC, dewPointC: dewPointC(airC, rhPct), windKmh, sunWm2, cloudPct, absorptance, emissivity })
      expect(surfaceC.at(-1)).toBeCloseTo(expected, 2)
    }
  })

  test('a wet surface gives off what FAO-56 eq. 53 gives without surface resistance, at its own net radiation', () => {
    // The Penman form takes the saturation curve as straight between air and surface, and long-wave out as told: a few per cent.
    const [airC, rhPct, windKmh] = [22, 50, 12]
    const flood: Surface = { ...surface('plywood'), filmMaxMm: 100 }
    const { ledger } = run(
      flood,
      drive(10, () => ({ airC, rhPct, windKmh, cloudPct: 40, sunWm2: 300 })),
      100
    )
    const netWm2 = (ledger().sunJ + ledger().longWaveJ) / 36000
    const groundWm2 = ledger().storedJ / 36000
    // Its aerodynamic part is of grass; h of a roof takes its place: γ·h/(ρ·c_p)-form of the same equation.
    const slope = (4098 * saturationWaterPa(airC)) / (airC + 237.3) ** 2
    const gamma = 1000 * gammaKpaK(1013.25)
    const deficitPa = saturationWaterPa(airC) * (1 - rhPct / 100)
    const wm2 = (slope * (netWm2 - groundWm2) + convectionWm2K(windKmh) * deficitPa) / (slope + gamma)
    const mmPerHour = (wm2 * 0.0036) / 2.45
    expect(ledger().evaporatedMm / 10 / mmPerHour).toBeGreaterThan(0.97)
    expect(ledger().evaporatedMm / 10 / mmPerHour).toBeLessThan(1.03)
    expect(evaporationMmPerHour({ airC, rhPct, windKmh, netWm2, groundWm2 })).toBeGreaterThan(0)
  })

  test('radiative cooling: on a clear calm night a board lies 3…10 K below the air, under cloud and wind under 2 K', () => {
    // Common experience of frost on roofs in air above 0 °C; the size from memory. Without sky long-wave it would not fall below the air.
    const dry = { rhPct: 40, airC: 12, sunWm2: 0 }
    const clear =
      12 -
      (run(
        surface('board'),
        drive(10, () => ({ ...dry, windKmh: 3, cloudPct: 0 }))
      ).surfaceC.at(-1) as number)
    const covered =
      12 -
      (run(
        surface('board'),
        drive(10, () => ({ ...dry, windKmh: 25, cloudPct: 100 }))
      ).surfaceC.at(-1) as number)
    expect(clear > 3 && clear < 10, String(clear)).toBe(true)
    expect(covered < 2, String(covered)).toBe(true)
    const blind = { ...drive(10, () => ({ ...dry, windKmh: 3, cloudPct: 0 })) }
    const own = run({ ...surface('board'), emissivity: 0 }, blind).surfaceC.at(-1) as number
    expect(own).toBeGreaterThan(11)
  })

  test('latent heat: dew keeps a surface warmer than dry cooling would, drying keeps it cooler', () => {
    const night = drive(8, () => clearNight)
    const dewed = run(surface('board'), night)
    const without = run(surface('board'), { ...night, vapourPa: night.vapourPa.map(() => 0) })
    expect((dewed.surfaceC.at(-1) as number) - (without.surfaceC.at(-1) as number)).toBeGreaterThan(0.5)
    const sunny = drive(2, () => ({ airC: 20, rhPct: 50, windKmh: 10, cloudPct: 0, sunWm2: 500 }))
    const wet = run({ ...surface('board'), filmMaxMm: 5 }, sunny, 5)
    expect((run(surface('board'), sunny).surfaceC[12] as number) - (wet.surfaceC[12] as number)).toBeGreaterThan(8)
  })

  test('film limit: what does not hold runs off, and with no limit at all nothing stays', () => {
    const rain = drive(3, (hour) => ({ ...clearNight, rainMmH: hour < 2 ? 10 : 0 }))
    for (const filmMaxMm of [0, 0.1, 0.5]) {
      const { filmMm, ledger } = run({ ...surface('board'), filmMaxMm }, rain)
      expect(Math.max(...filmMm)).toBeCloseTo(filmMaxMm, 9)
      expect(ledger().runOffMm).toBeGreaterThan(18)
    }
  })

  test('a clear calm night dews no later than a cloudy or a windy one', () => {
    const onset = (change: Partial<Air>) => {
      const row = run(
        surface('board'),
        drive(14, () => ({ ...clearNight, ...change }))
      ).filmMm.findIndex((mm) => mm > 0.01)
      return row < 0 ? Number.POSITIVE_INFINITY : row
    }
    const first = onset({})
    expect(first).toBeLessThan(12 * 6)
    for (const cloudPct of [20, 50, 80, 100])
      for (const windKmh of [3, 10, 25, 50]) expect(onset({ cloudPct, windKmh }), `${cloudPct} % ${windKmh} km/h`).toBeGreaterThanOrEqual(first)
  })

  test('frost: below 0 °C water settles from the frost point on, sooner than from the dew point', () => {
    // A surface at −5 °C in air whose dew point is −5.3 °C and frost point −4.7 °C (WMO-No. 8, annex 4.B).
    const rhPct = relativeHumidityPct(-5, -5.3)
    const still: Drive = { ...drive(4, () => ({ airC: -5, rhPct, windKmh: 5, cloudPct: 100, sunWm2: 0 })) }
    const held = run({ ...surface('plywood'), emissivity: 0 }, still)
    expect(held.ledger().dewMm).toBeGreaterThan(0)
  })

  test('a reading is passed through and forgotten; dry and wet set the film', () => {
    const weather = drive(30, () => ({ airC: 20, rhPct: 40, windKmh: 10, cloudPct: 30, sunWm2: 500 }))
    const plain = run(surface('board'), weather, 0.3)
    const read = (plain.surfaceC[24] as number) + 6
    const { surfaceC, filmMm } = run(surface('board'), weather, 0.3, [
      { step: 2, surfaceC: null, filmShare: 0 },
      { step: 23, surfaceC: read, filmShare: null },
      { step: 200, surfaceC: null, filmShare: 1 }
    ])
    expect(surfaceC[24]).toBeCloseTo(read, 9)
    // 1/e after 6 h, as DESIGN §5.8 has it.
    expect((surfaceC[24 + 72] as number) - (plain.surfaceC[24 + 72] as number)).toBeCloseTo(6 / Math.E, 1)
    expect(filmMm[3]).toBe(0)
    expect(filmMm[201]).toBe(0.3)
  })
})

describe('the grid below a surface', () => {
  test('insulated: against the room at 20 °C; bare: no heat downward', () => {
    expect(gridOf(surface('board').layers, 300).insulated).toBe(true)
    for (const kind of ['concrete', 'steel', 'plywood']) expect(gridOf(surface(kind).layers, 300).insulated).toBe(false)
  })

  test('impossible layers and steps are refused', () => {
    const [layer] = surface('board').layers
    if (layer === undefined) throw new Error('no layer')
    for (const bad of [Number.NaN, 0, -1, 5]) expect(() => gridOf([{ ...layer, thicknessM: bad }], 300)).toThrow(RangeError)
    expect(() => gridOf([], 300)).toThrow(RangeError)
    expect(() => gridOf([layer], Number.NaN)).toThrow(RangeError)
  })
})
