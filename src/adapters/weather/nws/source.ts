import type { AlertSource } from '../alert-source.js'
import type { AskedSource, Unchanged } from '../asked-source.js'
import type { LiveSource } from '../live-source.js'
import { fetchNwsAlerts } from './alerts.js'
import type { NwsRequest } from './ask.js'
import { fetchNws, nwsUrl } from './index.js'

export interface NwsOptions {
  /** Null: the public service. */
  readonly baseUrl: string | null
  readonly contact: string
  readonly version: string
}

/** Corners south, north, west, east in degrees, drawn wide. Source: from memory. */
const boxes = [
  [24, 49.6, -125.5, -66.5], // the 48 states
  [51, 72, -180, -129.5], // Alaska
  [51, 54, 172, 180], // Aleutians beyond the date line
  [18.5, 28.7, -178.6, -154.5], // Hawaii
  [17.5, 18.7, -67.6, -64.3], // Puerto Rico, US Virgin Islands
  [13, 20.8, 144.4, 146.3], // Guam, Northern Marianas
  [-14.7, -10.9, -171.3, -168] // American Samoa
] as const

/**
 * The US National Weather Service as a live source. `covers` only spares places far away a question: parts of Canada and
 * Mexico lie in the boxes, and there the service itself says that it has nothing.
 */
export function nwsSource(options: NwsOptions): LiveSource {
  return askedBy(options, fetchNws)
}

/** The same service as a source of alerts. */
export function nwsAlerts(options: NwsOptions): AlertSource {
  return askedBy(options, fetchNwsAlerts)
}

function askedBy<Fresh>(options: NwsOptions, ask: (request: NwsRequest) => Promise<Fresh | Unchanged>): AskedSource<Fresh> {
  const { contact, version } = options
  const baseUrl = options.baseUrl ?? nwsUrl
  return {
    name: 'nws',
    covers: (lat, lon) => boxes.some(([south, north, west, east]) => lat >= south && lat <= north && lon >= west && lon <= east),
    fetch: (lat, lon, note, now) => ask({ baseUrl, contact, version, fetch, lat, lon, note, now })
  }
}
