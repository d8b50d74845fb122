import type { Node } from './parse.js'

/** What is tried where a pattern takes many characters; the first that it takes stands for them. */
const usual = [...'a0 \n-.,:/"(<\\@=?', '\t', 'A', 'F', '½', '°', '−', '\u00a0', 'é']

/** A text that a node takes, as short as may be; null: none was found. `first`: the character to be taken where it can be. */
function shortest(node: Node, first: string): string | null {
  if (node.is === 'one') return [first, node.source, node.source.slice(1), ...usual].find((char) => char.length === 1 && node.takes(char)) ?? null
  if (node.is === 'edge' || node.is === 'look') return ''
  if (node.is === 'repeat') {
    const each = node.least === 0 ? '' : shortest(node.what, first)
    return each === null ? null : each.repeat(node.least)
  }
  if (node.is === 'or') return node.ways.map((way) => shortest(way, first)).find((text) => text !== null) ?? null
  const parts = node.parts.map((part) => shortest(part, first))
  return parts.includes(null) ? null : parts.join('')
}

interface Pump {
  readonly before: string
  readonly again: string
}

/** Every repetition without a near end, once round, and what leads there; and what leads there itself, again and again. */
function pumpsOf(node: Node, before: string, first: string): readonly Pump[] {
  if (node.is === 'or') return node.ways.flatMap((way) => pumpsOf(way, before, first))
  if (node.is === 'repeat') {
    const ways = node.what.is === 'or' ? node.what.ways : [node.what]
    const single = ways.map((way) => shortest(way, first)).filter((text) => text !== null && text !== '')
    const mixed = ['a.', 'a-', 'a '].filter((both) => ways.some((way) => way.is === 'one' && [...both].every(way.takes)))
    const rounds = node.most < 20 ? [] : [...single, ...mixed]
    return [...rounds.map((again) => ({ before, again: again as string })), ...pumpsOf(node.what, before, first)]
  }
  if (node.is !== 'row') return []
  const pumps: Pump[] = []
  let led = before
  for (const part of node.parts) {
    pumps.push(...pumpsOf(part, led, first))
    led += shortest(part, first) ?? ''
    if (led !== '') pumps.push({ before: '', again: led })
  }
  return pumps
}

/** Ends that no pattern waits for, so that all other ways are tried. */
const ends = ['', '\u0001', '\n\u0001']

/** Texts of some length that keep a matcher busy if anything does: made of what the pattern itself takes. */
export function attacksOn(pattern: Node, length: number): readonly string[] {
  const begin = shortest(pattern, '')?.[0] ?? ''
  const pumps = ['', begin].flatMap((first) => pumpsOf(pattern, '', first))
  const texts = pumps.flatMap(({ before, again }) => {
    const many = again.repeat(Math.ceil(length / again.length))
    return ends.map((end) => before + many + end)
  })
  return [...new Set(texts)]
}
