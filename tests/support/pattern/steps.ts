import type { Node } from './parse.js'

export interface Walked {
  readonly steps: number
  readonly matched: boolean
}

type Go = (at: number) => boolean

/** Steps that a backtracking matcher takes to find a pattern in a text, from every place if need be; it gives up after so many. */
export function walk(pattern: Node, flags: string, text: string, most = 300_000): Walked {
  const chars = flags.includes('u') ? Array.from(text) : text.split('')
  let steps = 0

  function edge(of: string, at: number): boolean {
    const lines = flags.includes('m')
    const isEnd = (char: string | undefined) => char === undefined || (lines && /[\n\r\u2028\u2029]/.test(char))
    if (of === '^') return isEnd(chars[at - 1])
    if (of === '$') return isEnd(chars[at])
    const word = (char: string | undefined) => char !== undefined && /\w/.test(char)
    return (word(chars[at - 1]) !== word(chars[at])) === (of === 'b')
  }

  function repeat(node: Node & { is: 'repeat' }, done: number, at: number, go: Go): boolean {
    const more = () => done < node.most && run(node.what, at, (next) => (next > at || done < node.least) && repeat(node, done + 1, next, go))
    if (done < node.least) return more()
    return node.lazy ? go(at) || more() : more() || go(at)
  }

  function row(parts: readonly Node[], index: number, at: number, go: Go): boolean {
    const part = parts[index]
    return part === undefined ? go(at) : run(part, at, (next) => row(parts, index + 1, next, go))
  }

  function run(node: Node, at: number, go: Go): boolean {
    steps += 1
    if (steps > most) throw new TooMany()
    if (node.is === 'one') return at < chars.length && node.takes(chars[at] as string) && go(at + 1)
    if (node.is === 'row') return row(node.parts, 0, at, go)
    if (node.is === 'or') return node.ways.some((way) => run(way, at, go))
    if (node.is === 'repeat') return repeat(node, 0, at, go)
    if (node.is === 'edge') return edge(node.of, at) && go(at)
    const seen = node.behind ? at > 0 && run(node.what, at - 1, (next) => next === at) : run(node.what, at, () => true)
    return seen !== node.not && go(at)
  }

  try {
    const last = flags.includes('y') ? 0 : chars.length
    for (let from = 0; from <= last; from += 1) if (run(pattern, from, () => true)) return { steps, matched: true }
    return { steps, matched: false }
  } catch (error) {
    if (error instanceof TooMany) return { steps, matched: false }
    throw error
  }
}

class TooMany extends Error {}
