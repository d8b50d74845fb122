import type { Lang, Units } from '../answer.js'

/** Language, units and IANA zone that an answer is given in. */
export interface How {
  readonly lang: Lang
  readonly units: Units
  readonly zone: string
}
