import type { Plan } from './cuts.js'
import type { SheetSizes } from './layout.js'
import { cutStock } from './stock.js'

/** The same sheets cut from fewer rolls where a plan of the whole stock finds that, and how few there can be at the least. */
export function repacked(plan: Plan, { rollMm }: Pick<SheetSizes, 'rollMm'>): { readonly plan: Plan; readonly leastRolls: number } {
  const lengths = plan.sheets.map(({ fromMm, toMm }) => Math.min(rollMm, toMm - fromMm))
  const { rolls, bound } = cutStock(lengths, rollMm)
  if (rolls.length >= plan.rolls) return { plan, leastRolls: Math.min(bound, plan.rolls) }
  const rollOf = new Map(rolls.flatMap(({ pieces }, roll) => pieces.map((piece) => [piece, roll] as const)))
  const sheets = plan.sheets.map((sheet, i) => ({ ...sheet, roll: rollOf.get(i) as number }))
  return { plan: { ...plan, sheets, rolls: rolls.length }, leastRolls: bound }
}
