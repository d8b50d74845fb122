import type { ClosingFix } from '../../../core/fix.js'
import type { Sayable } from '../text.js'

export const toSay: Readonly<Record<Exclude<Sayable, ClosingFix>, string>> = {
  'read:kit': 'kit T',
  'read:air': 'air T',
  'read:humidity': 'rh N',
  'read:substrate': 'deck T',
  'read:sheet': 'sheet T',
  'read:wind': 'wind V',
  'read:gust': 'gust V',
  'state:rain': 'no rain',
  'state:chance': 'rain N %',
  'state:dry': 'dry',
  'state:fleece': 'fleece dry',
  'state:clean': 'clean',
  'state:lap': 'lap clean',
  'state:compatibility': 'compatible',
  'state:intakes': 'intakes none',
  'state:moisture': 'moisture passed',
  'state:unrolled': 'relaxed',
  'state:mixed': 'mixed',
  'state:expiry': 'exp DATE',
  'state:tight': 'tight purged nozzle tested',
  'state:purged': 'purged nozzle tested',
  'state:nozzle': 'nozzle tested',
  'state:tested': 'tested',
  'state:lead': 'lead L AREA',
  'state:thunder': 'no thunder',
  'mix:kit': 'mixed',
  'weld:coupon': 'robot WIDTH film',
  'test:moisture': 'moisture passed',
  'fit:nozzle': 'nozzle'
}
