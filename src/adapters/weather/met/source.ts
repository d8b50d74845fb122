import type { LiveSource } from '../live-source.js'
import { fetchMet, metUrl } from './index.js'

export interface MetOptions {
  /** Null: the public service. */
  readonly baseUrl: string | null
  readonly contact: string
  readonly version: string
}

/** MET Norway as a live source: the whole world. */
export function metSource(options: MetOptions): LiveSource {
  const { contact, version } = options
  const baseUrl = options.baseUrl ?? metUrl
  return {
    name: 'met',
    covers: () => true,
    fetch: (lat, lon, lastModified, now) => fetchMet({ baseUrl, contact, version, fetch, lat, lon, lastModified, now })
  }
}
