import { takeChunk } from '../cursor.js'
import { picked } from '../fields.js'
import { missing } from '../refused.js'
import type { Said } from '../said.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Vocabulary, Walk } from '../walk.js'
import { siteVocabulary, takeSiteName } from './site.js'

const { new: _new, closed: _closed, open: _open, ...settings } = siteVocabulary

/** The words of a site that is to be. */
export const startVocabulary: Vocabulary = settings

/** What stands first and is no key is the name of the site. */
function other(walk: Walk): boolean {
  if (walk.items > 0) return false
  const before = walk.pos
  const shown = takeChunk(walk) !== ''
  walk.pos = before
  if (shown) takeSiteName(walk)
  return shown
}

const settable = ['units', 'lang', 'posts', 'morning', 'evening', 'days', 'hours', 'limits', 'substrate', 'channel'] as const

/** A site with all that it needs, in one line; without a word, how to. */
function build({ fields, items }: Walk): Said {
  const { siteName, lat, lon, zone } = fields
  if (items === 0) return { command: 'start', site: null }
  if (siteName === undefined) throw missing('site')
  if (lat === undefined || lon === undefined) throw missing('at')
  if (zone === undefined) throw missing('zone')
  return { command: 'start', site: { name: siteName, lat, lon, zone, change: picked(fields, settable) } }
}

const lexicon = lexiconOf(startVocabulary, other)

export const start: Grammar = { command: 'start', lexicon: () => lexicon, build }
