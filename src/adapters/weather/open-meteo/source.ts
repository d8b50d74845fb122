import type { LiveSource } from '../live-source.js'
import { fetchOpenMeteo, openMeteoPaidUrl, openMeteoUrl } from './index.js'

export interface OpenMeteoOptions {
  /** Null: the public service, of those who pay where there is a key. */
  readonly baseUrl: string | null
  /** Null: the free service, for non-commercial use only. */
  readonly key: string | null
  readonly contact: string
  readonly version: string
}

/** Open-Meteo as a live source: the whole world. */
export function openMeteoSource(options: OpenMeteoOptions): LiveSource {
  const { contact, version, key } = options
  const baseUrl = options.baseUrl ?? (key === null ? openMeteoUrl : openMeteoPaidUrl)
  return {
    name: 'open-meteo',
    covers: () => true,
    fetch: (lat, lon, _lastModified, now) => fetchOpenMeteo({ baseUrl, key, contact, version, fetch, lat, lon, now })
  }
}
