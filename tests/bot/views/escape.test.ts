import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clip, escapeText, withEntities, withoutEntities } from '../../../src/bot/views/escape.js'
import { blockProblems } from '../../support/blocks.js'

describe('escapeText', () => {
  it.each([
    ['<!channel>', '&lt;!channel&gt;'],
    ['<@U1>', '&lt;@U1&gt;'],
    ['a & b', 'a &amp; b'],
    ['*bold*', '∗bold∗'],
    ['~out~', '∼out∼'],
    ['`code`', 'ˋcodeˋ'],
    ['_slant_', 'ˍslantˍ'],
    ['lot_7', 'lot_7'],
    ['https://example.org/x', 'https: //example.org/x'],
    ['<https://example.org|here>', '&lt;https: //example.org|here&gt;'],
    ['one\ntwo\t three', 'one two three'],
    ['> quoted', '&gt; quoted'],
    ['a\u202eb\u200bc\u0007', 'abc'],
    ['Peña & Söhne 屋根', 'Peña &amp; Söhne 屋根']
  ])('%j', (typed, shown) => {
    expect(escapeText(typed)).toBe(shown)
  })

  it('cuts long text before it escapes, so that no entity is cut', () => {
    expect(escapeText('&'.repeat(100), 5)).toBe('&amp;&amp;&amp;&amp;…')
    expect([...clip('🙂'.repeat(9), 4)]).toHaveLength(4)
  })

  it('leaves nothing that the chat service would read as markup, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (typed) => {
        const shown = escapeText(typed)
        expect(shown).not.toMatch(/[<>*~`\n]|&(?!amp;|lt;|gt;)|:\/\//)
        expect(blockProblems({ text: `x ${shown.replace(/undefined|null|NaN|\[object/g, '')}`, blocks: [{ type: 'divider' }] })).toEqual([])
      })
    )
  })
})

it('what was made fit for markup is as typed again where none is read', () => {
  for (const typed of ['<b>bold</b> & more', '&lt; typed as such', '&amp;amp;']) expect(withoutEntities(withEntities(typed))).toBe(typed)
})
