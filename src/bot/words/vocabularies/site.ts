import { round6 } from '../../../core/units.js'
import { atEnd, find, takeChunk, unknownWord } from '../cursor.js'
import { type Fields, picked } from '../fields.js'
import { matchAt } from '../match.js'
import { missing, Refused } from '../refused.js'
import type { Said } from '../said.js'
import { setting, speech } from '../slots/settings.js'
import { readChannel, readDays, readHours, readId, readPosts, readTime, readZone } from '../slots/site-values.js'
import { flag } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import { type Grammar, type Heard, note, put, type Vocabulary, type Walk } from '../walk.js'

const degrees = '[-−]?\\d{1,3}(?:\\.\\d{1,10})?'
const placeAt = new RegExp(`(${degrees})(?:\\s{0,3},\\s{0,3}|\\s{1,3})(${degrees})(?!\\d|[.,]\\d|[\\p{L}°])`, 'uy')

/** LAT,LON in decimal degrees, north and east positive. */
function readPlace(walk: Walk, heard: Heard): void {
  if (atEnd(walk)) throw new Refused('missing', heard.raw, { label: 'at' })
  const match = matchAt(placeAt, walk.text, walk.pos)
  if (!match) throw new Refused(/[\d+−-]/.test(walk.text[walk.pos] ?? '') ? 'bad-number' : 'missing', heard.raw, { label: 'at' })
  const [lat, lon] = [match[1], match[2]].map((part) => round6(Number((part as string).replace('−', '-')))) as [number, number]
  if (!(Math.abs(lat) <= 90)) throw new Refused('out-of-range', match[1] as string, { label: 'latitude', min: -90, max: 90, unit: '°' })
  if (!(Math.abs(lon) <= 180)) throw new Refused('out-of-range', match[2] as string, { label: 'longitude', min: -180, max: 180, unit: '°' })
  walk.pos += match[0].length
  put(walk, heard, 'lat', lat)
  put(walk, heard, 'lon', lon)
  note(walk, 'at', `${lat},${lon}`)
}

export function takeSiteName(walk: Walk): void {
  const before = walk.pos
  const name = takeChunk(walk)
  if (!/^[a-z0-9][a-z0-9-]{0,39}$/i.test(name)) {
    walk.pos = before
    throw unknownWord(walk, name || undefined)
  }
  put(walk, { raw: name, label: 'site' }, 'siteName', name.toLowerCase())
  note(walk, 'site', name.toLowerCase())
}

function readNew(walk: Walk, heard: Heard): void {
  if (atEnd(walk) || find(walk, walk.lexicon)) throw new Refused('missing', heard.raw, { label: 'site' })
  walk.fields.siteNew = true
  takeSiteName(walk)
}

export const siteVocabulary: Vocabulary = {
  ...speech,
  posts: { words: { en: 'posts', es: 'avisos', fr: 'messages' }, read: setting('posts', readPosts) },
  morning: { words: { en: 'morning', es: 'mañana', fr: 'matin' }, read: setting('morning', readTime, 'bad-number') },
  evening: { words: { en: 'evening', es: 'tarde', fr: 'soir' }, read: setting('evening', readTime, 'bad-number') },
  days: { words: { en: 'days', es: 'días', fr: 'jours' }, read: setting('days', readDays) },
  hours: { words: { en: 'hours', es: 'horas horario', fr: 'heures horaire' }, read: setting('hours', readHours, 'bad-number') },
  limits: { words: { en: 'limits', es: 'límites', fr: 'limites' }, read: setting('limits', readId) },
  substrate: { words: { en: 'substrate', es: 'sustrato soporte', fr: 'support' }, read: setting('substrate', readId) },
  channel: { words: { en: 'channel', es: 'canal', fr: 'canal' }, read: setting('channel', readChannel) },
  zone: { words: { en: 'zone', es: 'zona', fr: 'fuseau' }, read: setting('zone', readZone) },
  at: { words: { en: 'at', es: 'a', fr: 'à' }, read: readPlace },
  closed: { words: { en: 'closed', es: 'cerrad(o,a)', fr: 'fermé(,e)' }, read: flag({ closed: true }) },
  open: { words: { en: 'open', es: 'abiert(o,a)', fr: 'ouvert(,e)' }, read: flag({ closed: false }, { label: 'closed', value: false }) },
  new: { words: { en: 'new', es: 'nuev(o,a)', fr: 'nouveau nouvelle' }, read: readNew }
}

/** What stands first and is no key is the name of the site. */
function other(walk: Walk): boolean {
  if (walk.items > 0) return false
  takeSiteName(walk)
  return true
}

const settable = ['units', 'lang', 'posts', 'morning', 'evening', 'days', 'hours', 'limits', 'substrate', 'channel', 'closed'] as const

function madeSite(fields: Fields): Said {
  const { siteName, lat, lon, zone } = fields
  if (siteName === undefined) throw missing('site')
  if (lat === undefined || lon === undefined) throw missing('at')
  if (zone === undefined) throw missing('zone')
  const [extra] = settable.filter((key) => fields[key] !== undefined)
  if (extra !== undefined) throw new Refused('inconsistent', extra, { label: extra, other: 'new' })
  return { command: 'site new', name: siteName, lat, lon, zone }
}

function build({ fields }: Walk): Said {
  if (fields.siteNew) return madeSite(fields)
  const name = fields.siteName ?? null
  const change = picked(fields, [...settable, 'zone', 'lat', 'lon'])
  if (Object.keys(change).length === 0) return { command: 'site show', name }
  if (change.closed !== undefined && name === null) throw missing('site')
  return { command: 'site set', name, change }
}

const lexicon = lexiconOf(siteVocabulary, other)

export const site: Grammar = { command: 'site', lexicon: () => lexicon, build }
