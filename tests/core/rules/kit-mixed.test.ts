import { kitMixed } from '../../../src/core/rules/kit-mixed.js'
import { gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source; its age from memory.
ruleTable('kit-mixed: within 30 min (common practice, no source; its age from memory)', kitMixed, 'spray', [
  ['mixed just now', { kit: { mixed: said(true) } }, 'go', null],
  ['mixed 30 min ago', { kit: { mixed: said(true, 30) } }, 'go', null],
  ['mixed 31 min ago', { kit: { mixed: said(true, 31) } }, 'caution', 'mix:kit'],
  ['stated not mixed', { kit: { mixed: said(false) } }, 'no-go', 'mix:kit'],
  ['not stated today', { kit: { mixed: gone } }, 'unknown', 'state:mixed'],
  ['stated on another day', { kit: { mixed: tooOld } }, 'unknown', 'state:mixed']
])
