import type { Text } from '../text.js'
import { theTime, untilTheTime } from './at-time.js'

export const alerts: Text['alerts'] = {
  line: (event, when, service) => `${event}, ${when} (${service}) : suivre la consigne du service`,
  until: (at) => untilTheTime(at),
  services: { nws: 'Service météorologique national des États-Unis' },
  notKnown: 'alertes de temps violent non connues',
  notKnownSince: (at) => `alertes de temps violent non connues depuis ${theTime(at)}`,
  head: 'alerte de temps violent',
  over: (event) => `terminé : ${event}`
}
