import type { LimitsSheet } from '../limits/sheet.js'
import type { Layout } from './layout.js'
import { cutStock } from './stock.js'
import { barsLine, fastenersLine } from './takeoff/bases.js'
import { kitsLine, nozzlesLine } from './takeoff/foam.js'
import { legsOf } from './takeoff/legs.js'
import { addend, factor, type TakeoffItem, type TakeoffLine, wholeLine } from './takeoff/line.js'
import { pressureLine, weightLine } from './takeoff/staging.js'
import type { ZoneAnswer } from './zones/index.js'

export type { TakeoffItem, TakeoffLine } from './takeoff/line.js'

export type TakeoffSheet = Pick<LimitsSheet, 'sheet' | 'foam' | 'takeoff'>

export type Takeoff = Readonly<Record<TakeoffItem, TakeoffLine>>

/**
 * What a roof that is laid out takes, each line with its sum. `zones`: null where none were asked for. The pattern of a zone, the
 * spacing of fasteners and the load that a deck carries are the engineer's. Common practice, no source.
 */
export function takeoff(layout: Layout, zones: ZoneAnswer | null, sheet: TakeoffSheet): Takeoff {
  const legs = legsOf(layout)
  const rolls = wholeLine({ item: 'rolls', sum: [addend(null, [factor('', layout.rolls.length, 'piece')])] })
  const kits = kitsLine(layout.areaMm2 / 1e6, zones, sheet)
  const weight = weightLine(rolls.value, kits.value, sheet)
  return {
    rolls,
    bareBack: bareBackLine(layout, sheet),
    kits,
    nozzles: nozzlesLine(kits.value, sheet),
    patches: wholeLine({ item: 'patches', sum: [addend(null, [factor('', layout.patches.length, 'piece')])] }),
    cleaner: cleanerLine(weldM(layout), sheet),
    fasteners: fastenersLine(legs, sheet),
    bars: barsLine(legs, sheet),
    weight,
    pressure: pressureLine(weight.value, sheet)
  }
}

/** Bare-back rolls for the strips, cut from them as few as can be found; a strip longer than the roll comes in parts of a roll length. */
function bareBackLine({ strips }: Layout, { takeoff: { bareBackRollM } }: TakeoffSheet): TakeoffLine {
  const rollMm = bareBackRollM * 1000
  const lengths = strips.flatMap(({ lengthMm }) => inRolls(lengthMm, rollMm))
  const { rolls, bound } = cutStock(lengths, rollMm)
  const totalM = lengths.reduce((sum, lengthMm) => sum + lengthMm, 0) / 1000
  const sum = [addend(null, [factor('', totalM, 'm'), factor('÷', bareBackRollM, 'm')])]
  const line = wholeLine({ item: 'bareBack', sum, bound })
  return { ...line, value: rolls.length, sale: { packs: rolls.length, of: 1, unit: 'piece' } }
}

function inRolls(lengthMm: number, rollMm: number): readonly number[] {
  const whole = Math.floor(lengthMm / rollMm)
  const rest = lengthMm - whole * rollMm
  return [...Array.from({ length: whole }, () => rollMm), ...(rest > 0.001 ? [rest] : [])]
}

function cleanerLine(weldedM: number, { takeoff: { cleanerMPerL, cleanerCanL } }: TakeoffSheet): TakeoffLine {
  const sum = [addend(null, [factor('', weldedM, 'm'), factor('÷', cleanerMPerL, 'm/l')])]
  return wholeLine({ item: 'cleaner', unit: 'l', sum, pack: cleanerCanL })
}

/** All there is to weld, m: side laps, strips and patches. */
function weldM({ seams, strips, patches }: Layout): number {
  const laps = seams.reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0)
  const around = [...strips, ...patches].reduce((sum, { weldPerimeterMm }) => sum + weldPerimeterMm, 0)
  return (laps + around) / 1000
}
