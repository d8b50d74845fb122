import type { LimitsSheet } from '../core/limits/sheet.js'
import type { Sheets } from './ports.js'

const builtIn = 'common-practice'

/** The limits sheet of an id, or the built-in one where there is none of it. Null: no site chose any. */
export function sheetOf(id: string | null, sheets: Sheets): LimitsSheet {
  const sheet = sheets.byId(id ?? builtIn) ?? sheets.byId(builtIn)
  if (sheet === null) throw new Error('the built-in limits sheet is missing')
  return sheet
}
