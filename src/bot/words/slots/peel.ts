import type { Words } from '../forms.js'

/** How a coupon or a void looks once pulled apart. */
export const peelWords = {
  film: { en: 'film', es: 'película(,s)', fr: 'film' },
  parted: { en: 'parted', es: 'separad(o,a,os,as)', fr: 'décollé(,e,s,es)' },
  scorched: { en: 'scorched', es: 'quemad(o,a,os,as)', fr: 'brûlé(,e,s,es)' },
  glossy: { en: 'glossy', es: 'brillante(,s)', fr: 'brillant(,e,s,es)' },
  uneven: { en: 'uneven', es: 'desigual(,es)', fr: 'inégal(,e,es) inégaux' },
  wrinkled: { en: 'wrinkled', es: 'arrugad(o,a,os,as)', fr: 'plissé(,e,s,es)' }
} as const satisfies Record<string, Words>

export const robotWords = { en: 'robot', es: 'robot', fr: 'robot automate' }
export const handWords = { en: 'hand', es: 'mano', fr: 'main' }
