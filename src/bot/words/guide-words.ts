import type { Words } from './forms.js'

/** What the page for a crew is called after `help`. */
export const guideWords: Words = { en: 'guide', es: 'guía', fr: 'guide' }
