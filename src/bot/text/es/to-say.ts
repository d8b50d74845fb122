import type { ClosingFix } from '../../../core/fix.js'
import type { Sayable } from '../text.js'

export const toSay: Readonly<Record<Exclude<Sayable, ClosingFix>, string>> = {
  'read:kit': 'juego T',
  'read:air': 'aire T',
  'read:humidity': 'hr N',
  'read:substrate': 'cubierta T',
  'read:sheet': 'lámina T',
  'read:wind': 'viento V',
  'read:gust': 'racha V',
  'state:rain': 'sin lluvia',
  'state:chance': 'lluvia N %',
  'state:dry': 'seco',
  'state:fleece': 'fieltro seco',
  'state:clean': 'limpio',
  'state:lap': 'traslape limpio',
  'state:compatibility': 'compatible',
  'state:intakes': 'tomas ninguna',
  'state:moisture': 'ensayo pasa',
  'state:unrolled': 'reposado',
  'state:mixed': 'mezclado',
  'state:expiry': 'caduca FECHA',
  'state:tight': 'apretado purgado boquilla probado',
  'state:purged': 'purgado boquilla probado',
  'state:nozzle': 'boquilla probado',
  'state:tested': 'probado',
  'state:lead': 'cable L SECCIÓN',
  'state:thunder': 'sin trueno',
  'mix:kit': 'mezclado',
  'weld:coupon': 'robot ANCHO película',
  'test:moisture': 'ensayo pasa',
  'fit:nozzle': 'boquilla'
}
