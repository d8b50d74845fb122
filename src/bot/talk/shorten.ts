import type { KnownBlock } from '@slack/types'
import type { Lang } from '../answer.js'
import { texts } from '../text/index.js'
import { section } from '../views/page.js'

/** Lines of an answer that a channel shows; the rest is a press away, in the thread. */
const mostLines = 12

/** An answer as a channel reads it, and what of it goes behind the button; null for nothing. */
export function shortened(
  blocks: readonly KnownBlock[],
  lang: Lang
): { readonly blocks: readonly KnownBlock[]; readonly rest: readonly KnownBlock[] | null } {
  const divider = blocks.findIndex(({ type }) => type === 'divider')
  const details = divider < 0 ? [] : blocks.slice(divider + 1, divider + 2)
  const shown = divider < 0 ? blocks : [...blocks.slice(0, divider), ...blocks.slice(divider + 2)]
  const [long, left] = splitList(shown, lang)
  const rest = [...left, ...details]
  return rest.length === 0 ? { blocks, rest: null } : { blocks: long, rest }
}

/** A list that is longer than a screen, and its second part. */
function splitList(blocks: readonly KnownBlock[], lang: Lang): readonly [readonly KnownBlock[], readonly KnownBlock[]] {
  const at = blocks.findIndex(({ type }) => type === 'section')
  const text = textOf(blocks[at])
  const lines = text?.split('\n') ?? []
  if (lines.length <= mostLines + 1) return [blocks, []]
  const more = texts[lang].frame.more(lines.length - mostLines)
  const first = section([...lines.slice(0, mostLines), more].join('\n'))
  return [[...blocks.slice(0, at), first, ...blocks.slice(at + 1)], [section(lines.slice(mostLines).join('\n'))]]
}

/** Text of a section; null for any other block. */
export function textOf(block: KnownBlock | undefined): string | null {
  return block?.type === 'section' ? (block.text?.text ?? null) : null
}
