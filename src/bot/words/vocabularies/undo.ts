import { parseEntryId } from '../../../core/log/entry.js'
import { takeChunk, unknownWord } from '../cursor.js'
import { lexiconOf } from '../vocabulary.js'
import { type Grammar, note, type Walk } from '../walk.js'

/** Ids `SITE-SEQ`, with spaces or commas between them. */
function other(walk: Walk): boolean {
  const before = walk.pos
  for (const typed of takeChunk(walk).split(',')) {
    const id = typed.toLowerCase()
    const site = parseEntryId(id)?.site ?? ''
    if (!/^[a-z0-9][a-z0-9-]{0,39}$/.test(site)) {
      walk.pos = before
      throw unknownWord(walk, typed || undefined)
    }
    walk.fields.ids = [...new Set([...(walk.fields.ids ?? []), id])]
    note(walk, 'entry', id)
  }
  return true
}

const lexicon = lexiconOf({}, other)

/** Without an id: what the person logged last. */
export const undo: Grammar = { command: 'undo', lexicon: () => lexicon, build: ({ fields }) => ({ command: 'undo', ids: fields.ids ?? [] }) }
