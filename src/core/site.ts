/** What is set for a site. Everything in it comes from `setting` entries on top of what the site was made with. */
export interface SiteSettings {
  readonly lat: number
  readonly lon: number
  /** IANA. */
  readonly zone: string
  readonly units: 'metric' | 'us'
  readonly lang: 'en' | 'es' | 'fr'
  /** Local times HH:MM of the posts. */
  readonly morning: string
  readonly evening: string
  /** Kinds of posts wanted: evening, morning, watch, wrap-up. */
  readonly posts: readonly string[]
  /** ISO weekdays 1 (Monday) … 7. */
  readonly days: readonly number[]
  /** Working hours HH:MM-HH:MM, within which the watch speaks. */
  readonly hours: string
  /** Id of the limits sheet. */
  readonly limits: string
  /** Kind of substrate: a key of the sheet's `substrates`. */
  readonly substrate: string
  /** Chat channel, or null. */
  readonly channel: string | null
  readonly roof: { readonly widthM: number; readonly depthM: number; readonly heightM: number } | null
  readonly closed: boolean
  /** An invented site, labelled so wherever it is shown. */
  readonly invented: boolean
}

/** A workspace and a site in it: the key of everything kept. */
export interface SiteKey {
  readonly workspace: string
  readonly site: string
}

export const defaultSettings = {
  units: 'metric',
  lang: 'en',
  morning: '05:30',
  evening: '17:00',
  posts: ['evening', 'morning', 'watch', 'wrap-up'],
  days: [1, 2, 3, 4, 5, 6],
  hours: '06:00-18:00',
  limits: 'common-practice',
  substrate: 'board',
  channel: null,
  roof: null,
  closed: false,
  invented: false
} as const satisfies Omit<SiteSettings, 'lat' | 'lon' | 'zone'>

/** The one site of a new store. Invented: no such roof. */
export const demoSite: SiteSettings = {
  ...defaultSettings,
  lat: 50,
  lon: 8,
  zone: 'Europe/Berlin',
  roof: { widthM: 24, depthM: 36, heightM: 8 },
  invented: true
}
