import { intakes } from '../../../src/core/rules/intakes.js'
import { gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source.
ruleTable('intakes (common practice, no source)', intakes, 'spray', [
  ['none downwind', { intakes: said('none') }, 'go', null],
  ['shut or screened', { intakes: said('shut') }, 'caution', null],
  ['open downwind', { intakes: said('open') }, 'no-go', 'shut:intakes'],
  ['not stated today', { intakes: gone }, 'unknown', 'state:intakes'],
  ['stated on another day', { intakes: tooOld }, 'unknown', 'state:intakes']
])
