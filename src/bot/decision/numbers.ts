import type { Facts } from '../../core/facts.js'
import { kitOpenTimeS } from '../../core/kits/kit-open-time.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { Json } from '../../core/log/entry.js'
import type { KitState } from '../../core/log/states/kit.js'
import { frostPointC, standardPressureHpa, wetBulbC } from '../../core/physics/air.js'
import { windChillC } from '../../core/physics/wind-chill.js'
import { runNumbers } from './run-numbers.js'

/** The numbers of `spray` and `air`; null for what is not known. */
export function conditionNumbers(facts: Facts, kit: KitState, sheet: LimitsSheet): Readonly<Record<string, Json>> {
  const air = facts.airC.value
  const rh = facts.rhPct.value
  const wind = facts.windKmh.value
  const parts = [facts.kit.isoC.value, facts.kit.resinC.value].flatMap((value) => value ?? [])
  const moist = air !== null && rh !== null && rh > 0
  const surface = facts.substrateC.value
  const openTimeS = surface === null ? null : kitOpenTimeS(surface, kit, sheet)
  return {
    airC: air,
    rhPct: rh,
    dewPointC: facts.dewPointC.value,
    frostPointC: moist ? frostPointC(air, rh) : null,
    wetBulbC: moist ? wetBulbC(air, rh, standardPressureHpa) : null,
    substrateC: surface,
    substrateSpreadK: surface === null ? null : facts.substrateC.spread,
    dewMarginK: facts.substrateDewMarginK.value,
    kitColdC: parts.length === 0 ? null : Math.min(...parts),
    kitHotC: parts.length === 0 ? null : Math.max(...parts),
    windKmh: wind,
    gustKmh: facts.gustKmh.value,
    rainChancePct: facts.rainChancePct.value,
    heatIndexC: facts.heatIndexC.value,
    windChillC: air === null || wind === null ? null : windChillC(air, wind),
    daylightMin: facts.daylightMin,
    wbgtC: facts.wbgtC.value,
    openTimeS,
    ...runNumbers(openTimeS, sheet)
  }
}
