import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { Noted } from '../log/states/noted.js'
import type { RoofSeries } from '../roof/series.js'
import { type Sighting, simulate } from '../roof/simulate.js'
import { surfacesOf } from '../roof/surface.js'
import type { Forecast } from '../weather/forecast.js'
import { ageOf } from '../weather/lookup.js'
import { airRead } from './local-of.js'
import type { Memory } from './memory.js'

/** Of a roof whose height was not told, m. Source: from memory. */
const usualHeightM = 8
const highestM = 370

/**
 * The roof as known at `now`: the hours of the forecast (those kept of last night among them), moved by what was last read of
 * air, humidity and wind, and both surfaces by what was read and stated of them. Null without a forecast that still says
 * something, or for a substrate that the limits sheet does not know. Reckon it once for a question, and
 * no farther ahead (hours, 72 at the most) than it looks. Pure.
 */
export function roofOf(memory: Memory, forecast: Forecast | null, sheet: LimitsSheet, now: Instant, aheadH = 72): RoofSeries | null {
  const surfaces = surfacesOf(sheet, memory.settings.substrate)
  if (forecast === null || surfaces === null || ageOf(forecast, now) === 'dead') return null
  const { lat, lon, roof } = memory.settings
  const { airK, rhPct, windKmh } = sheet.spread
  return simulate(forecast.hours, {
    lat,
    lon,
    heightM: Math.min(highestM, roof?.heightM ?? usualHeightM),
    knownAt: now,
    issuedAt: forecast.issuedAt,
    aheadS: aheadH * 3600,
    spread: { airK, rhPct, windKmh },
    read: airRead(memory, now),
    surfaces,
    told: { substrate: toldOf(memory, now, 'substrateC', 'substrateDry'), sheet: toldOf(memory, now, 'sheetC', 'lapDry') }
  })
}

function toldOf(memory: Memory, now: Instant, read: 'substrateC' | 'sheetC', dry: 'substrateDry' | 'lapDry'): readonly Sighting[] {
  const told: Sighting[] = []
  const add = <T>(noted: Noted<T> | undefined, sighting: (value: T) => Omit<Sighting, 'at'>): void => {
    if (noted !== undefined && noted.at <= now) told.push({ at: noted.at, ...sighting(noted.value) })
  }
  for (const { latest, rainFellAt } of [memory.yesterday, memory.today]) {
    add(latest[read], (surfaceC) => ({ surfaceC }))
    if (rainFellAt !== null && rainFellAt <= now) told.push({ at: rainFellAt, wet: 'rain' })
    add(latest[dry], (isDry) => ({ wet: isDry ? 'dry' : 'wet' }))
  }
  return told
}
