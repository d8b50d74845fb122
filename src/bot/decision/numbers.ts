import type { Facts } from '../../core/facts.js'
import { openTimeS } from '../../core/kits/open-time.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { KitState } from '../../core/log/states/kit.js'
import { frostPointC, standardPressureHpa, wetBulbC } from '../../core/physics/air.js'
import { windChillC } from '../../core/physics/wind-chill.js'

/** The numbers of `spray` and `air`; null for what is not known. */
export function conditionNumbers(facts: Facts, kit: KitState, sheet: LimitsSheet): Record<string, number | null> {
  const air = facts.airC.value
  const rh = facts.rhPct.value
  const wind = facts.windKmh.value
  const parts = [facts.kit.isoC.value, facts.kit.resinC.value].flatMap((value) => value ?? [])
  const moist = air !== null && rh !== null && rh > 0
  const surface = facts.substrateC.value
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
    openTimeS: surface === null ? null : kitOpenTimeS(surface, kit, sheet),
    reachM: null,
    stopEveryM: null
  }
}

/** A substrate this far from that of the test spray needs a new one. From memory. */
const foamHoldsK = 5

/** Open time on this substrate, scaled by the kit's last test spray while that holds; null outside the formula's range. */
function kitOpenTimeS(substrateC: number, kit: KitState, sheet: LimitsSheet): number | null {
  const scale = foamScale(substrateC, kit, sheet)
  const plain = openTimeS(substrateC, sheet.foam.openTime)
  return plain === null ? null : plain * (scale ?? 1)
}

/** Seconds of the last test spray over those of the sheet on its substrate; null when it does not hold here. */
function foamScale(substrateC: number, kit: KitState, sheet: LimitsSheet): number | null {
  const test = kit.foam?.value
  if (!test || test.gelS === undefined || test.substrateC === undefined) return null
  if (Math.abs(test.substrateC - substrateC) > foamHoldsK) return null
  const plain = openTimeS(test.substrateC, sheet.foam.openTime)
  return plain === null ? null : test.gelS / plain
}
