import { airTemperature } from './air-temperature.js'
import type { Rule } from './rule.js'

/** Every rule by its id. A new rule is one file and one line here. */
export const rules = {
  'air-temperature': airTemperature
} as const satisfies Record<string, Rule>

export type RuleId = keyof typeof rules
