import type { Text } from '../text.js'

export const alerts: Text['alerts'] = {
  line: (event, when, service) => `${event}, ${when} (${service}): siga las instrucciones del servicio`,
  until: (at) => `hasta las ${at}`,
  services: { nws: 'Servicio Meteorológico Nacional de EE. UU.' },
  notKnown: 'no se conocen los avisos de tiempo severo',
  notKnownSince: (at) => `no se conocen los avisos de tiempo severo desde las ${at}`,
  head: 'aviso de tiempo severo',
  over: (event) => `terminado: ${event}`
}
