export interface Element {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" }

function unescaped(text: string): string {
  return text.replace(/&([a-z#0-9]+);/g, (whole, name: string) => {
    const found = entities[name]
    if (found === undefined) throw new Error(`unknown entity ${whole}`)
    return found
  })
}

/** Start and empty tags in order; throws where tags do not nest, an attribute stands twice, or a sign is not escaped. Enough of XML for our own SVG. */
export function elementsOf(xml: string): readonly Element[] {
  const open: string[] = []
  const found: Element[] = []
  let end = 0
  for (const match of xml.matchAll(/<(\/?)([a-zA-Z]+)((?: [a-zA-Z0-9:-]+="[^"<]*")*)(\/?)>/g)) {
    const [whole, closes, name = '', written = '', empty] = match
    const between = xml.slice(end, match.index)
    if (/[<>]|&(?!(amp|lt|gt|quot|#39);)/.test(between)) throw new Error(`not escaped: ${between.slice(0, 60)}`)
    end = match.index + whole.length
    if (closes === '/') {
      if (open.pop() !== name) throw new Error(`</${name}> does not nest`)
      continue
    }
    const pairs = [...written.matchAll(/ ([a-zA-Z0-9:-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, unescaped(value)] as const)
    if (new Set(pairs.map(([key]) => key)).size !== pairs.length) throw new Error(`an attribute twice: ${whole}`)
    found.push({ name, attributes: Object.fromEntries(pairs) })
    if (empty !== '/') open.push(name)
  }
  if (end !== xml.length || open.length > 0) throw new Error(`not closed: ${open.join()} ${xml.slice(end, end + 60)}`)
  return found
}

/** What stands in each `text` of an SVG. */
export function wordsOf(svg: string): readonly string[] {
  return [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, words = '']) => unescaped(words))
}
