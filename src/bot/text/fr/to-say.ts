import type { ClosingFix } from '../../../core/fix.js'
import type { Sayable } from '../text.js'

export const toSay: Readonly<Record<Exclude<Sayable, ClosingFix>, string>> = {
  'read:kit': 'trousse T',
  'read:air': 'air T',
  'read:humidity': 'hr N',
  'read:substrate': 'support T',
  'read:sheet': 'feuille T',
  'read:wind': 'vent V',
  'read:gust': 'rafale V',
  'state:rain': 'sans pluie',
  'state:chance': 'pluie N %',
  'state:dry': 'sec',
  'state:fleece': 'feutre sec',
  'state:clean': 'propre',
  'state:lap': 'recouvrement propre',
  'state:compatibility': 'compatible',
  'state:intakes': 'prises aucune',
  'state:moisture': 'essai bon',
  'state:unrolled': 'détendu',
  'state:mixed': 'mélangé',
  'state:expiry': 'expire DATE',
  'state:tight': 'serré purgé buse testé',
  'state:purged': 'purgé buse testé',
  'state:nozzle': 'buse testé',
  'state:tested': 'testé',
  'state:lead': 'rallonge L SECTION',
  'state:thunder': 'sans tonnerre',
  'mix:kit': 'mélangé',
  'weld:coupon': 'robot LARGEUR film',
  'test:moisture': 'essai bon',
  'fit:nozzle': 'buse'
}
