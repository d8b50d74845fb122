import type { Compatibility } from '../../../core/facts.js'
import type { SiteSettings } from '../../../core/site.js'
import type { Lang, Units } from '../../answer.js'

/** A welder as its last coupon had it; null: not said. */
export interface KnownWelder {
  readonly name: string
  readonly setC: number | null
  readonly speedMMin: number | null
  readonly thicknessMm: number | null
  readonly by: string | null
}

/** What is known when a form is opened, so that nobody types it again. What was measured is never filled in: it has to be read anew. */
export interface Known {
  readonly lang: Lang
  readonly units: Units
  /** The kit last named. */
  readonly kit: { readonly name: string; readonly lot: string | null; readonly expiresOn: string | null } | null
  /** The one of the newest coupon first. */
  readonly welders: readonly KnownWelder[]
  /** Of the limits sheet's sheet, mm. */
  readonly thicknessMm: number | null
  readonly compatibility: Compatibility | null
  readonly settings: SiteSettings | null
  /** A zone that another site of the workspace has, IANA. */
  readonly zone: string | null
  /** Ids of the limits sheets, and kinds of substrate of the site's. */
  readonly limits: readonly string[]
  readonly substrates: readonly string[]
  /** The channel that the form was opened in is nobody's yet. */
  readonly channelFree: boolean
}
