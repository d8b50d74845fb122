/** A pattern as what a backtracking matcher walks through. `one` takes a single character. */
export type Node =
  | { readonly is: 'one'; readonly source: string; readonly takes: (char: string) => boolean }
  | { readonly is: 'row'; readonly parts: readonly Node[] }
  | { readonly is: 'or'; readonly ways: readonly Node[] }
  | { readonly is: 'repeat'; readonly what: Node; readonly least: number; readonly most: number; readonly lazy: boolean }
  | { readonly is: 'look'; readonly what: Node; readonly not: boolean; readonly behind: boolean }
  | { readonly is: 'edge'; readonly of: '^' | '$' | 'b' | 'B' }

/** Reads a pattern of ECMAScript; what looks behind looks at one character. Throws for what refers back. Source: ECMA-262, 22.2.1. */
export function parsePattern(pattern: string, flags: string): Node {
  let at = 0
  const some = flags.replace(/[gy]/g, '')

  function either(): Node {
    const ways = [row()]
    while (pattern[at] === '|') {
      at += 1
      ways.push(row())
    }
    return ways.length === 1 ? (ways[0] as Node) : { is: 'or', ways }
  }

  function row(): Node {
    const parts: Node[] = []
    while (at < pattern.length && pattern[at] !== '|' && pattern[at] !== ')') parts.push(repeated(atom()))
    return { is: 'row', parts }
  }

  function repeated(what: Node): Node {
    const found = /^(?:[*+?]|\{(\d+)(,(\d*))?\})(\??)/.exec(pattern.slice(at))
    if (found === null) return what
    at += found[0].length
    const [sign = '', low, comma, high, lazy] = found
    const told = low === undefined ? null : [Number(low), comma === undefined ? Number(low) : high === '' ? Infinity : Number(high)]
    const [least, most] = told ?? [sign[0] === '+' ? 1 : 0, sign[0] === '?' ? 1 : Infinity]
    return { is: 'repeat', what, least: least as number, most: most as number, lazy: lazy === '?' }
  }

  function atom(): Node {
    const rest = pattern.slice(at)
    const head = /^\((?:\?(?::|<?=|<?!|<[A-Za-z]\w*>))?/.exec(rest)?.[0]
    if (head !== undefined) {
      at += head.length
      const what = either()
      at += 1
      return /^\(\?<?[=!]$/.test(head) ? { is: 'look', what, not: head.endsWith('!'), behind: head.includes('<') } : what
    }
    const edge = /^(?:[\^$]|\\[bB])/.exec(rest)?.[0]
    if (edge !== undefined) {
      at += edge.length
      return { is: 'edge', of: edge.at(-1) as '^' }
    }
    const single =
      /^(?:\[(?:\\.|[^\]\\])*\]|\\u\{[0-9a-f]+\}|\\u[0-9a-f]{4}|\\x[0-9a-f]{2}|\\[pP]\{[^}]*\}|\\c[A-Z]|\\[^1-9k]|.)/isu.exec(rest)?.[0] ?? ''
    if (single === '') throw new Error(`cannot be read: ${rest}`)
    at += single.length
    return one(single, some)
  }

  const whole = either()
  if (at !== pattern.length) throw new Error(`cannot be read: ${pattern.slice(at)}`)
  return whole
}

/** The engine itself says which single characters it takes. */
function one(source: string, flags: string): Node {
  const alone = new RegExp(`^(?:${source})$`, flags.replace('m', ''))
  const known = new Map<string, boolean>()
  const takes = (char: string) => {
    const told = known.get(char) ?? alone.test(char)
    known.set(char, told)
    return told
  }
  return { is: 'one', source, takes }
}
