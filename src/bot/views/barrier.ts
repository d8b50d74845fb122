import type { FindingId } from '../answer.js'
import type { Text } from '../text/text.js'

/** What stands against a window: a number by its name, a deck or a sheet that is not ready by how it then is. */
export function barrier(rule: FindingId, { findings }: Text): string {
  const { name, is } = findings[rule]
  if (rule === 'substrate-dry') return is['no-go']
  return rule === 'sheet-relaxed' ? is.caution : name
}
