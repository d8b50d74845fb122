import type { FindingId } from '../answer.js'
import type { Text } from '../text/text.js'

/** What stands against a window before it or after it: a number by its name, what is no number by how it then is. */
export function barrier(rule: FindingId, { findings, day }: Text, side: 'before' | 'after'): string {
  const { name, is } = findings[rule]
  if (rule === 'daylight') return day.noLight[side]
  if (rule === 'ice') return is.caution
  if (rule === 'substrate-dry') return is['no-go']
  return rule === 'sheet-relaxed' ? is.caution : name
}
