import { certain, type Fact, missing } from '../fact.js'
import type { Facts, SurfaceState } from '../facts.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { Noted } from '../log/states/noted.js'
import { type AirFacts, condensation } from './air.js'
import { combine } from './combine.js'
import type { SunEvents } from './daylight.js'
import { inForce } from './in-force.js'
import { last, lastRain, type Memory } from './memory.js'

export type RoofFacts = Pick<
  Facts,
  'substrateC' | 'sheetC' | 'substrateDewMarginK' | 'sheetDewMarginK' | 'substrateDry' | 'fleeceDry' | 'seamDry' | 'surfaceWet'
>

/** Within this of sunrise a surface moves fast, so that its reading ages fast. From memory. */
export const nearSunriseS = 3600

/** Temperature and wetness of the surfaces, from what was read and stated. */
export function gatherRoof(memory: Memory, air: AirFacts, raining: Fact<boolean>, sun: SunEvents, sheet: LimitsSheet, now: Instant): RoofFacts {
  const age = sheet.maxAgeMin
  const nearSunrise = sun.rises.some((rise) => Math.abs(rise - now) <= nearSunriseS)
  const substrateAge = nearSunrise ? Math.min(age.substrate, age.substrateNearSunrise) : age.substrate
  const substrateC = inForce(last(memory, 'substrateC'), substrateAge, now, 'reading', missing)
  const sheetC = inForce(last(memory, 'sheetC'), age.sheet, now, 'reading', missing)
  const margin = (surface: Fact) => combine(surface, air.dewPointC, (surfaceC, dewC) => surfaceC - condensation(dewC))
  const substrateDewMarginK = margin(substrateC)
  const sheetDewMarginK = margin(sheetC)
  const surface = (key: 'substrateDry' | 'fleeceDry' | 'lapDry', dewMarginK: Fact) =>
    dryness(last(memory, key), lastRain(memory), dewMarginK, age.dry, now)
  const substrateDry = surface('substrateDry', substrateDewMarginK)
  return {
    substrateC,
    sheetC,
    substrateDewMarginK,
    sheetDewMarginK,
    substrateDry,
    fleeceDry: surface('fleeceDry', substrateDewMarginK),
    seamDry: surface('lapDry', sheetDewMarginK),
    surfaceWet: wetness(substrateDry, substrateDewMarginK, raining)
  }
}

/** Dry as stated, unless rain was stated since, or a reading since put the surface at or below the dew point. */
function dryness(noted: Noted<boolean> | undefined, rainAt: Instant | null, dewMarginK: Fact, maxAgeMin: number, now: Instant): Fact<SurfaceState> {
  const stated = inForce(noted, maxAgeMin, now, 'statement', missing)
  if (stated.value === null || stated.at === null) return { ...stated, value: null }
  if (!stated.value) return { ...stated, value: 'wet' }
  if (rainAt !== null && rainAt >= stated.at) return certain('rain', rainAt, 'log')
  const dewAt = dewMarginK.origin === 'reading' && dewMarginK.value !== null && dewMarginK.value <= 0 ? dewMarginK.at : null
  return dewAt !== null && dewAt > stated.at ? certain('dew', dewAt, 'log') : { ...stated, value: 'dry' }
}

function wetness(substrateDry: Fact<SurfaceState>, dewMarginK: Fact, raining: Fact<boolean>): Fact<boolean> {
  if (raining.value === true) return raining
  if (dewMarginK.value !== null && dewMarginK.value <= 0) return { ...dewMarginK, value: true }
  if (substrateDry.value === null) return missing
  return { ...substrateDry, value: substrateDry.value !== 'dry' }
}
