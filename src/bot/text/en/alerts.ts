import type { Text } from '../text.js'

export const alerts: Text['alerts'] = {
  line: (event, when, service) => `${event}, ${when} (${service}): follow the service’s instruction`,
  until: (at) => `until ${at}`,
  services: { nws: 'US National Weather Service' },
  notKnown: 'severe-weather alerts not known',
  notKnownSince: (at) => `severe-weather alerts not known since ${at}`,
  head: 'severe-weather alert',
  over: (event) => `over: ${event}`
}
