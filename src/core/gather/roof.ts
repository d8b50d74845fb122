import { certain, type Fact, missing } from '../fact.js'
import type { Facts, SurfaceState } from '../facts.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { Noted } from '../log/states/noted.js'
import { type RoofSeries, roofAt, wetSince } from '../roof/series.js'
import { type AirFacts, condensation } from './air.js'
import { combine } from './combine.js'
import type { SunEvents } from './daylight.js'
import { inForce } from './in-force.js'
import { lastRain, type Memory, type Said } from './memory.js'

export type RoofFacts = Pick<
  Facts,
  'substrateC' | 'sheetC' | 'substrateDewMarginK' | 'sheetDewMarginK' | 'substrateDry' | 'fleeceDry' | 'seamDry' | 'surfaceWet'
>

/** Within this of sunrise a surface moves fast, so that its reading ages fast. From memory. */
export const nearSunriseS = 3600

/** What is told of the surfaces: the log's, and the model's where the log is silent. */
interface Sources {
  readonly memory: Memory
  readonly said: Said
  readonly air: AirFacts
  readonly raining: Fact<boolean>
  readonly sun: SunEvents
  readonly sheet: LimitsSheet
  readonly roof: RoofSeries | null
}

/** Temperature and wetness of the surfaces: what was read and stated while it is in force, else the model's. */
export function gatherRoof({ memory, said, air, raining, sun, sheet, roof }: Sources, now: Instant): RoofFacts {
  const age = sheet.maxAgeMin
  const model = roofAt(roof, now)
  const nearSunrise = sun.rises.some((rise) => Math.abs(rise - now) <= nearSunriseS)
  const substrateAge = nearSunrise ? Math.min(age.substrate, age.substrateNearSunrise) : age.substrate
  const substrateC = inForce(said.substrateC, substrateAge, now, 'reading', model.substrate.surfaceC)
  const sheetC = inForce(said.sheetC, age.sheet, now, 'reading', model.sheet.surfaceC)
  const margin = (surface: Fact) => combine(surface, air.dewPointC, (surfaceC, dewC) => surfaceC - condensation(dewC))
  const substrateDewMarginK = margin(substrateC)
  const sheetDewMarginK = margin(sheetC)
  const surface = (key: 'substrateDry' | 'fleeceDry' | 'lapDry', dewMarginK: Fact, of: 'substrate' | 'sheet') =>
    dryness(said[key], lastRain(memory), dewMarginK, (from) => wetSince(roof, of, from, now), age.dry, now)
  const substrateDry = surface('substrateDry', substrateDewMarginK, 'substrate')
  return {
    substrateC,
    sheetC,
    substrateDewMarginK,
    sheetDewMarginK,
    substrateDry,
    fleeceDry: surface('fleeceDry', substrateDewMarginK, 'substrate'),
    seamDry: surface('lapDry', sheetDewMarginK, 'sheet'),
    surfaceWet: wetness(substrateDry, substrateDewMarginK, raining, model.substrate.wet)
  }
}

/** Dry as stated, unless since then rain was stated, a reading put the surface at or below the dew point, or the model has it wet beyond doubt. */
function dryness(
  noted: Noted<boolean> | undefined,
  rainAt: Instant | null,
  dewMarginK: Fact,
  modelWet: (from: Instant) => ReturnType<typeof wetSince>,
  maxAgeMin: number,
  now: Instant
): Fact<SurfaceState> {
  if (noted === undefined) return missing
  const stated = inForce(noted, maxAgeMin, now, 'statement', missing)
  if (stated.value === null || stated.at === null) return { ...stated, value: null }
  if (!stated.value) return { ...stated, value: 'wet' }
  if (rainAt !== null && rainAt >= stated.at) return certain('rain', rainAt, 'log')
  const dewAt = dewMarginK.origin === 'reading' && dewMarginK.value !== null && dewMarginK.value <= 0 ? dewMarginK.at : null
  if (dewAt !== null && dewAt > stated.at) return certain('dew', dewAt, 'log')
  const wet = modelWet(stated.at)
  return wet === null ? { ...stated, value: 'dry' } : { value: wet.by, at: wet.at, origin: 'model', spread: 0, stale: false }
}

/** A margin that a reading is part of tells of dew by itself; the model knows the film, and when it is in doubt. */
function wetness(substrateDry: Fact<SurfaceState>, dewMarginK: Fact, raining: Fact<boolean>, model: Fact<boolean>): Fact<boolean> {
  if (raining.value === true) return raining
  if (dewMarginK.origin !== 'model' && dewMarginK.value !== null && dewMarginK.value <= 0) return { ...dewMarginK, value: true }
  if (substrateDry.value === null) return model
  return { ...substrateDry, value: substrateDry.value !== 'dry' }
}
