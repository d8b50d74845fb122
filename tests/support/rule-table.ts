import { describe, expect, it } from 'vitest'
import type { Activity } from '../../src/core/finding.js'
import type { LimitsSheet } from '../../src/core/limits/sheet.js'
import type { Rule } from '../../src/core/rules/rule.js'
import { type Row, shortly } from './facts.js'

/** Checks one rule row by row: what is known → outcome and fix. The title names the source of the limits. */
export function ruleTable(title: string, rule: Rule, activity: Activity, rows: readonly Row[], on?: LimitsSheet): void {
  describe(title, () => {
    it.each(rows)('%s', (_, overrides, outcome, fix) => {
      expect(shortly(rule, activity, overrides, on)).toEqual([outcome, fix])
    })
  })
}
