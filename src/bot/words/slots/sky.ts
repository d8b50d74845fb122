import { skip } from '../cursor.js'
import { atNumber } from '../quantity.js'
import { flag, negated, putNumber, state, takeNumber } from '../take.js'
import type { Heard, Vocabulary, Walk } from '../walk.js'
import { slots } from './numbers.js'

/** `rain` alone is falling; `rain 10 %` is none now and that chance until closed up. */
function readRain(walk: Walk, heard: Heard): void {
  skip(walk)
  if (!atNumber(walk)) {
    state(walk, heard, { rainFalling: true })
    return
  }
  const chance = takeNumber(walk, slots.rain, heard)
  state(walk, heard, { rainFalling: false }, false)
  putNumber(walk, heard, 'rainChancePct', { ...slots.rain, label: 'rain chance' }, chance)
  walk.numbered = heard
}

/** What the sky does, as stated. */
export const sky = {
  rain: { words: { en: 'rain', es: 'lluvia(,s)', fr: 'pluie(,s)' }, read: readRain, negated: negated({ rainFalling: false }) },
  thunder: {
    words: { en: 'thunder', es: 'trueno(,s) tormenta(,s)', fr: "tonnerre(,s) orage(,s) d'orage(,s)" },
    read: flag({ thunder: true }),
    negated: negated({ thunder: false })
  }
} satisfies Vocabulary
