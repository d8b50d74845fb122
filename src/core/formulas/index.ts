import { air, heatIndex, windChill } from './air.js'
import { convert } from './convert.js'
import { drying, evaporation } from './drying.js'
import { openTime, reach } from './foam.js'
import { type Formula, type Refusal, refuse } from './formula.js'
import { cylinder } from './kits.js'
import { type FormulaAnswer, runOne } from './run.js'
import { courses, fasteners, lift, strip } from './sheets.js'
import { sun } from './sun.js'
import { convection, sky, surface } from './surface.js'
import { wbgt } from './wbgt.js'
import { chart, rate, voltage } from './welds.js'
import { zones } from './zones.js'

/** The engine's own formulas by name: the functions that the rules use, no second copy. */
export const formulas: Readonly<Record<string, Formula>> = {
  air,
  'heat-index': heatIndex,
  'wind-chill': windChill,
  wbgt,
  sun,
  sky,
  convection,
  surface,
  evaporation,
  drying,
  cylinder,
  'open-time': openTime,
  reach,
  rate,
  chart,
  convert,
  voltage,
  lift,
  fasteners,
  courses,
  strip,
  zones
}

export type { Formula, FormulaAnswer, Refusal }

/** Runs a formula by name on inputs as typed (`KEY=VALUE`) or as JSON. */
export function runFormula(name: string, inputs: Readonly<Record<string, unknown>>): FormulaAnswer | Refusal {
  const formula = Object.hasOwn(formulas, name) ? formulas[name] : undefined
  if (formula === undefined) return refuse('unknown-command', name, `formulas: ${Object.keys(formulas).join(' ')}`)
  return runOne(formula, inputs)
}
