import type { SiteSettings } from '../../core/site.js'
import type { Lang, Units } from '../answer.js'

/** Language, units and IANA zone that an answer is given in. */
export interface How {
  readonly lang: Lang
  readonly units: Units
  readonly zone: string
}

/** As the site itself has it: for what nobody asked. */
export function howOf({ lang, units, zone }: SiteSettings): How {
  return { lang, units, zone }
}
