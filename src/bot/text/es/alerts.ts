import type { Text } from '../text.js'
import { theTime } from './at-time.js'

export const alerts: Text['alerts'] = {
  line: (event, when, service) => `${event}, ${when} (${service}): siga las instrucciones del servicio`,
  until: (at) => `hasta ${theTime(at)}`,
  services: { nws: 'Servicio Meteorológico Nacional de EE. UU.' },
  notKnown: 'no se conocen los avisos de tiempo severo',
  notKnownSince: (at) => `no se conocen los avisos de tiempo severo desde ${theTime(at)}`,
  head: 'aviso de tiempo severo',
  over: (event) => `terminado: ${event}`
}
