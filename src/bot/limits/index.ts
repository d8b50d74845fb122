import { commonPractice, commonPracticeUs } from '../../core/limits/common-practice.js'
import { resolveSheet } from '../../core/limits/resolve.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'

/** The sheets that come with the program. */
export function builtInSheets(): readonly LimitsSheet[] {
  return [commonPractice, commonPracticeUs].map(resolveSheet)
}
