import { round6 } from '../../../core/units.js'
import { atEnd, find, rawAt, takeChunk, unknownWord } from '../cursor.js'
import { type Fields, picked } from '../fields.js'
import { matchAt } from '../match.js'
import { readPlaceAt } from '../place.js'
import { missing, Refused } from '../refused.js'
import type { Said } from '../said.js'
import { siteNameAt, siteNameOf } from '../site-name.js'
import { setting, speech } from '../slots/settings.js'
import { readChannel, readDays, readHours, readId, readPosts, readTime, readZone } from '../slots/site-values.js'
import { flag } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import { type Grammar, type Heard, note, put, type Vocabulary, type Walk } from '../walk.js'

/** LAT,LON in degrees, north and east positive, or with compass letters. */
function readPlace(walk: Walk, heard: Heard): void {
  if (atEnd(walk)) throw new Refused('missing', heard.raw, { label: 'at', hint: 'place' })
  const place = readPlaceAt(walk.text, walk.pos)
  if (place === null) throw noPlace(walk, heard)
  const [lat, lon] = [round6(place.lat), round6(place.lon)]
  if (!(Math.abs(lat) <= 90)) throw new Refused('out-of-range', place.typed.lat, { label: 'latitude', min: -90, max: 90, unit: '°' })
  if (!(Math.abs(lon) <= 180)) throw new Refused('out-of-range', place.typed.lon, { label: 'longitude', min: -180, max: 180, unit: '°' })
  walk.pos = place.end
  put(walk, heard, 'lat', lat)
  put(walk, heard, 'lon', lon)
  note(walk, 'at', `${lat},${lon}`)
}

/** What was typed is named, and how coordinates are written. A town is no place: nothing here knows where it lies. */
function noPlace(walk: Walk, heard: Heard): Refused {
  if (find(walk, walk.lexicon)) return new Refused('missing', heard.raw, { label: 'at', hint: 'place' })
  const typed = rawAt(walk.text, walk.pos)
  const number = /[\d+−-]/.test(walk.text[walk.pos] ?? '')
  return new Refused(number ? 'bad-number' : 'unknown-word', number ? (matchAt(/[^\s,;]+/y, walk.text, walk.pos)?.[0] ?? typed) : typed, {
    label: 'at',
    hint: 'place'
  })
}

/** The words from here to the next one that is known: a name of several words. */
function freeWords(walk: Walk): string {
  const start = walk.pos
  let end = start
  for (let count = 0; count < 8 && !atEnd(walk) && walk.text[walk.pos] !== '@' && !find(walk, walk.lexicon); count += 1) {
    takeChunk(walk)
    end = walk.pos
  }
  walk.pos = start
  return walk.text.slice(start, end).trim()
}

/** Takes the name of a site. `North Roof 2` and `Dach_2` are refused with the name that they could be. */
export function takeSiteName(walk: Walk): void {
  const before = walk.pos
  const name = takeChunk(walk)
  const behind = atEnd(walk) || /^\d+\s*[x×]/i.test(walk.text.slice(walk.pos, walk.pos + 12)) ? '' : freeWords(walk)
  if (!siteNameAt.test(name) || behind !== '') {
    walk.pos = before
    const typed = freeWords(walk) || name
    const offer = siteNameOf(typed)
    if (offer === null) throw unknownWord(walk, name || undefined)
    throw new Refused('unknown-word', typed, { label: 'site', hint: 'siteName', nearest: offer })
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

/** `site roof 80x120`: an outline is given to `sheets`; no setting of a site holds one. */
function refuseRoof(walk: Walk): false {
  const size = matchAt(/\d+(?:[.,]\d+)?\s?(?:m|ft|')?\s?[x×]\s?\d+(?:[.,]\d+)?\s?(?:m|ft|')?/iy, walk.text, walk.pos)?.[0].trim()
  if (size !== undefined) throw new Refused('unknown-word', size, { label: 'outline', hint: 'siteRoof', nearest: `sheets ${size}` })
  return false
}

/** What stands first and is no key is the name of the site. */
function other(walk: Walk): boolean {
  if (walk.items > 0) return refuseRoof(walk)
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
