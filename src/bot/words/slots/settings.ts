import { atEnd, noValue, takeChunk } from '../cursor.js'
import type { Fields } from '../fields.js'
import { Refused } from '../refused.js'
import { takeChoice } from '../take.js'
import { choicesOf } from '../vocabulary.js'
import { type Heard, type Meaning, note, put, type Vocabulary, type Walk } from '../walk.js'

const langs = choicesOf([
  ['en', { en: 'en english', es: 'inglés', fr: 'anglais' }],
  ['es', { en: 'es spanish', es: 'español', fr: 'espagnol' }],
  ['fr', { en: 'fr french', es: 'francés', fr: 'français' }]
] as const)

const systems = choicesOf([
  ['metric', { en: 'metric', es: 'métric(o,a,os,as)', fr: 'métrique(,s)' }],
  ['us', { en: 'us imperial', es: 'eeuu', fr: 'us' }]
] as const)

function choice<Key extends 'lang' | 'units'>(key: Key, choices: ReadonlyMap<string, Exclude<Fields[Key], undefined>>): Meaning['read'] {
  return (walk, heard) => {
    const chosen = takeChoice(walk, heard, choices)
    put(walk, heard, key, chosen)
    note(walk, key, chosen)
  }
}

/** Language and units: of a person and of a site. */
export const speech = {
  lang: { words: { en: 'lang language', es: 'idioma', fr: 'langue' }, read: choice('lang', langs) },
  units: { words: { en: 'units', es: 'unidades', fr: 'unités' }, read: choice('units', systems) }
} satisfies Vocabulary

type TextKey = 'posts' | 'days' | 'morning' | 'evening' | 'hours' | 'limits' | 'substrate' | 'channel' | 'zone'
type Setting<Key extends TextKey> = Exclude<Fields[Key], undefined>

/** The value after a label as typed; what `read` does not accept (undefined) is refused by the code given. */
export function setting<Key extends TextKey>(
  key: Key,
  read: (typed: string) => Setting<Key> | undefined,
  code: 'unknown-word' | 'bad-number' = 'unknown-word'
): Meaning['read'] {
  return (walk, heard) => {
    if (atEnd(walk)) throw new Refused('missing', heard.raw, { label: key })
    const before = walk.pos
    const typed = takeList(walk)
    const value = read(typed)
    if (value === undefined) throw refusedSetting(walk, before, heard, key, typed, code)
    put(walk, heard, key, value)
    note(walk, key, Array.isArray(value) ? value.join(',') : String(value ?? 'off'))
  }
}

function refusedSetting(walk: Walk, before: number, heard: Heard, key: string, typed: string, code: 'unknown-word' | 'bad-number'): Refused {
  walk.pos = before
  const none = noValue(walk, heard.raw, key)
  if (none.code === 'missing') return none
  return new Refused(code === 'bad-number' && /\p{Nd}/u.test(typed) ? 'bad-number' : 'unknown-word', typed, {
    label: key,
    ...(code === 'bad-number' ? { hint: 'clock' } : {})
  })
}

/** One value; after a comma at its end the next one belongs to it too: `evening, morning`. */
function takeList(walk: Walk): string {
  let list = ''
  for (let count = 0; count < 10; count += 1) {
    list += takeChunk(walk)
    if (walk.text[walk.pos - 1] !== ',' || atEnd(walk)) break
    list += ','
  }
  return list
}
